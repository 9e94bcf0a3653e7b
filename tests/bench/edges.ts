import { fileURLToPath } from "node:url";
import { formatIso } from "../../src/engine/weather/dates.ts";
import { parseDelimited } from "../../src/files/delimited.ts";
import { createApp } from "../../src/server/app.ts";
import { listen, portOf } from "../../src/server/listen.ts";
import { realParts } from "../../src/server/real-parts.ts";
import { applyMapping } from "../../src/survey/record/apply.ts";
import { guessMapping } from "../../src/survey/record/guess.ts";
import { textOf } from "../helpers/worked.ts";
import { longRecord } from "./grounds.ts";
import { median_ms } from "./median.ts";

const century_days = 36_525;

/** Time to map a century of daily rows in °F and inches, from the file's text to the record's. */
export function importOf100Years_ms(): number {
  const { firstDay, columns } = longRecord(century_days);
  const fahrenheit = (c: number) => (c * 1.8 + 32).toFixed(1);
  const rows = Array.from({ length: century_days }, (_, i) =>
    [
      formatIso(firstDay + i),
      (columns.rain_mm[i]! / 25.4).toFixed(2),
      fahrenheit(columns.tmin_c![i]!),
      fahrenheit(columns.tmax_c![i]!),
    ].join(","),
  );
  const text = ["DATE,Rain (in),Tmin (°F),Tmax (°F)", ...rows].join("\n");
  return median_ms(3, () => {
    const { rows: cells } = parseDelimited(text);
    const applied = applyMapping(cells, guessMapping(cells));
    if ("faults" in applied) throw new Error("The century's file was refused.");
  });
}

/** Time of one estimate of the demo through a real port. */
export async function estimateOverHttp_ms(): Promise<number> {
  let port = 0;
  const root = fileURLToPath(new URL("../..", import.meta.url));
  const server = await listen(createApp(realParts(root, () => port, [])), 0);
  port = portOf(server);
  const body = JSON.stringify({
    survey: JSON.parse(textOf("demo/school.survey.json")),
    weather: textOf("demo/seattle.csv"),
  });
  const times: number[] = [];
  for (let k = 0; k < 12; k++) {
    const start = performance.now();
    const response = await fetch(`http://127.0.0.1:${port}/api/estimate`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body,
    });
    await response.text();
    if (response.status !== 200) throw new Error(`The estimate answered ${response.status}.`);
    times.push(performance.now() - start);
  }
  server.close();
  server.closeAllConnections();
  return times.sort((a, b) => a - b)[6]!;
}
