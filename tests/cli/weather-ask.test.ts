import { readFileSync } from "node:fs";
import { PassThrough } from "node:stream";
import { describe, expect, it } from "vitest";
import { Refused } from "../../src/cli/input.ts";
import { settledMapping } from "../../src/cli/weather-ask.ts";
import { cells, twoPlacesFile } from "../survey/record/seattle.ts";

const rows = cells(readFileSync(twoPlacesFile, "utf8"));

/** A terminal whose person types these lines, one at each prompt, and then ends the input. */
function terminalTyping(...lines: string[]) {
  const input = new PassThrough();
  const output = new PassThrough();
  let shown = "";
  output.on("data", (chunk) => {
    shown += chunk;
    if (!String(chunk).includes("A number from")) return;
    const line = lines.shift();
    if (line === undefined) input.end();
    else input.write(`${line}\n`);
  });
  return { input, output, shown: () => shown };
}

describe("at a terminal", () => {
  it("each question is asked in turn, again after an answer that is none, and settles the mapping", async () => {
    const terminal = terminalTyping("9", "New York", "2", "1");
    const mapping = await settledMapping(rows, {}, terminal);
    expect(mapping.where).toMatchObject({ header: "location", value: "New York" });
    expect(mapping.fields.wind_ms).toMatchObject({ unit: "m/s", unitCertainty: 1 });
    expect(mapping.questions).toEqual([]);
    expect(terminal.shown()).toContain("2  New York: 1,461 days, 2012-01-01 to 2015-12-31");
  });

  it("input that ends without an answer leaves the question as the refusal", async () => {
    await expect(settledMapping(rows, {}, terminalTyping())).rejects.toThrow(Refused);
  });
});

it("away from a terminal every open question is the refusal, with its flags", async () => {
  await expect(settledMapping(rows, {}, null)).rejects.toThrow("--where location=Seattle");
});
