import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type GroundsReport, reportSchema } from "../../src/report/schema.ts";
import { demo, realApp, scenarios } from "./real.ts";
import { ask, post } from "./stand-in.ts";

async function reportOf(survey: unknown, weather: unknown): Promise<GroundsReport> {
  const answer = await post(realApp, { survey, weather });
  if (answer.status !== 200) throw new Error(await answer.text());
  return reportSchema.parse(await answer.json());
}

/** Rows of a plain CSV file as JSON carries them. */
function rowsOf(csv: string): Record<string, unknown>[] {
  const [header = [], ...lines] = csv
    .trim()
    .split("\n")
    .map((line) => line.split(","));
  return lines.map((cells) =>
    Object.fromEntries(header.map((name, i) => [name, name === "date" ? cells[i] : Number(cells[i])])),
  );
}

test("the demo as served can be posted back, and its report is of the published form", async () => {
  const served = (await (await ask(realApp, "/api/demo")).json()) as typeof demo;
  expect(served.name).toContain("invented");
  const report = await reportOf(served.survey, served.weather);
  expect(report.beds).toHaveLength(9);
  expect(report.weather).toMatchObject({ from: "2012-01-01", to: "2015-12-31", days: 1461, filled: 0 });
});

test("a record as rows gives what the same record as CSV text gives", async () => {
  const asRows = await reportOf(demo.survey, rowsOf(demo.weather));
  expect(asRows).toEqual(await reportOf(demo.survey, demo.weather));
});

describe("the whole surveys with the reports they must give, over HTTP", () => {
  test.each([
    ["s01-marrow-lane", "seattle-temps.csv"],
    ["s02-tollgate-court", "seattle.csv"],
  ])("%s", async (name, record) => {
    const read = (file: string) => readFileSync(join(scenarios, file), "utf8");
    const report = await reportOf(JSON.parse(read(`${name}.survey.json`)), read(record));
    const wanted = JSON.parse(read(`${name}.report.json`)) as GroundsReport;
    for (const [i, bed] of wanted.beds.entries()) {
      expect(Math.abs(report.beds[i]!.need_L_year / bed.need_L_year - 1)).toBeLessThan(0.001);
    }
    expect(Math.abs(report.mains.need_kL_year / wanted.mains.need_kL_year - 1)).toBeLessThan(0.001);
  });
});

test("the demo tells the story that its README says it holds", async () => {
  const { beds, mains, tanks } = await reportOf(demo.survey, demo.weather);
  const bed = (id: string) => beds.find((row) => row.id === id)!;
  expect(bed("oval").habit_L_year).toBeGreaterThan(1.15 * bed("oval").gross_L_year);
  expect(bed("senses").habit_L_year).toBeLessThan(0.5 * bed("senses").gross_L_year);
  expect(bed("cloister").habit_L_year).toBe(0);
  expect(mains.todayUnknown).toEqual(["hedge"]);
  expect(bed("bank").supplied_L_year).toBe(0);
  expect(tanks.map(({ id }) => id)).toEqual(["hall-tank", "yard-tank"]);
  expect(mains.giveUp_kL_year.p50).toBeGreaterThan(0);
  expect(mains.wetYear).not.toBe(mains.dryYear);
});
