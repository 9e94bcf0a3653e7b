import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { dailyTable } from "../../src/report/daily.ts";
import { report, textOf, workFiles } from "../helpers/worked.ts";

/** Whole surveys with reports that two independent calculations agree on; see README.md beside them. */
const scenarios = [
  { name: "s01-marrow-lane", record: "seattle-temps.csv", share: 0.001 },
  { name: "s02-tollgate-court", record: "seattle.csv", share: 0.001 },
  { name: "s06-brook-terrace", record: "seattle-temps.csv", share: 0.001 },
  { name: "s07-wallside", record: "seattle-temps.csv", share: 0.01 },
];

/** Every number of the expected document stands in the found one within the share; all else is equal. */
function expectAgrees(found: unknown, wanted: unknown, share: number, path: string): void {
  if (typeof wanted === "number") {
    expect(typeof found, path).toBe("number");
    expect(Math.abs((found as number) - wanted), path).toBeLessThanOrEqual(share * Math.abs(wanted) + 1e-9);
  } else if (wanted !== null && typeof wanted === "object") {
    for (const [key, value] of Object.entries(wanted))
      expectAgrees((found as Record<string, unknown>)[key], value, share, `${path}.${key}`);
  } else {
    expect(found, path).toBe(wanted);
  }
}

describe.each(scenarios)("$name", ({ name, record, share }) => {
  test("gives the report that it must", () => {
    const worked = workFiles(`tests/scenarios/${name}.survey.json`, `tests/scenarios/${record}`);
    expectAgrees(report(worked), JSON.parse(textOf(`tests/scenarios/${name}.report.json`)), share, "report");
  });
});

test("s02-tollgate-court: every cell of the day-by-day table is within 1e-6", () => {
  const packed = new URL("s02-tollgate-court.daily.csv.gz", import.meta.url);
  const wanted = gunzipSync(readFileSync(packed)).toString().trim().split("\n");
  const worked = workFiles("tests/scenarios/s02-tollgate-court.survey.json", "tests/scenarios/seattle.csv", {
    keepDays: true,
  });
  const { header, rows } = dailyTable(worked);
  expect(header.join(",")).toBe(wanted[0]);
  expect(rows.length).toBe(wanted.length - 1);
  rows.forEach((row, i) => {
    const cells = wanted[i + 1]!.split(",");
    expect(row[0]).toBe(cells[0]);
    for (let k = 1; k < row.length; k++) {
      const off = Math.abs(Number(row[k]) - Number(cells[k]));
      if (off > 1e-6 * Math.abs(Number(cells[k])) + 1e-12)
        expect.fail(`${row[0]} ${header[k]}: ${row[k]} for ${cells[k]}`);
    }
  });
});
