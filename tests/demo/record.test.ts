import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readRecord } from "../../src/files/record.ts";
import { root } from "../structure/sources.ts";

const packaged = join(root, "node_modules/vega-datasets/data/seattle-weather.csv");

test("the demo's weather is the published one, figure for figure", () => {
  const wanted = readFileSync(packaged, "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => {
      const [date, rain, tmax, tmin, wind] = line.split(",");
      return [date, rain, tmin, tmax, wind].join(",");
    });
  const [header, ...rows] = readFileSync(join(root, "demo/seattle.csv"), "utf8").trim().split("\n");
  expect(header).toBe("date,rain_mm,tmin_c,tmax_c,wind_ms");
  expect(rows).toEqual(wanted);
});

test("it reads as a record of four whole years", () => {
  const read = readRecord(readFileSync(join(root, "demo/seattle.csv"), "utf8"));
  expect(read).toMatchObject({ record: { days: 1461 } });
});
