import { readRecord } from "../../src/files/record.ts";
import { dailyTable } from "../../src/report/daily.ts";
import { reportOf } from "../../src/report/report.ts";
import { workOut } from "../../src/report/work-out.ts";
import { readSurvey } from "../../src/survey/read.ts";

export interface SuiteCase {
  name: string;
  survey: string;
  record: string;
}

/** Every number of the report and of the day-by-day table of each case, by path; the same code in Node and in a browser. */
export function runEngineSuite(cases: readonly SuiteCase[]): Record<string, number> {
  const figures: Record<string, number> = {};
  for (const { name, survey, record } of cases) {
    const read = readSurvey(survey);
    const weather = readRecord(record);
    if ("faults" in read || "faults" in weather) throw new Error(`${name} was refused.`);
    const worked = workOut(read.survey, weather.record, { keepDays: true });
    collect(
      reportOf(worked, ({ code }) => code),
      name,
      figures,
    );
    const { header, rows } = dailyTable(worked);
    header.forEach((column, k) => {
      if (k > 0) figures[`${name} ${column}`] = rows.reduce((sum, row) => sum + Number(row[k]), 0);
    });
  }
  return figures;
}

function collect(value: unknown, path: string, figures: Record<string, number>): void {
  if (typeof value === "number") figures[path] = value;
  else if (value !== null && typeof value === "object")
    for (const [key, inner] of Object.entries(value)) collect(inner, `${path}.${key}`, figures);
}
