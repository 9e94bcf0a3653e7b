import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { reportSchema } from "../../src/report/schema.ts";

const scenarios = new URL("../scenarios/", import.meta.url);
const reports = readdirSync(scenarios).filter((name) => name.endsWith(".report.json"));

/** What a report says beside the figures that the scenarios fix. */
const beside = { engine: "0.1.0", assumed: [], cautions: [], measures: [] };

test("there are four reports to hold the schema to", () => {
  expect(reports).toHaveLength(4);
});

test.each(reports)("%s has the names that the report's schema has", (name) => {
  const report = { ...beside, ...JSON.parse(readFileSync(new URL(name, scenarios), "utf8")) };
  expect(reportSchema.parse(report)).toEqual(report);
});

test("a field that the contract does not name is refused", () => {
  const report = { ...beside, ...JSON.parse(readFileSync(new URL(reports[0]!, scenarios), "utf8")) };
  expect(reportSchema.safeParse({ ...report, note: "more" }).success).toBe(false);
  expect(reportSchema.safeParse({ ...report, mains: { ...report.mains, saved_kL: 1 } }).success).toBe(false);
});
