import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { reportOf } from "../../src/report/report.ts";
import { workOut } from "../../src/report/work-out.ts";
import { readClimate } from "../../src/server/climate-file.ts";
import { weatherForSurvey } from "../../src/survey/normals/for-survey.ts";
import { readSurvey } from "../../src/survey/read.ts";
import { cautionSentence } from "../../src/words/en/cautions.ts";

const read = readSurvey(readFileSync(new URL("../../demo/southern.survey.json", import.meta.url), "utf8"));
if ("faults" in read) throw new Error(JSON.stringify(read.faults));
const { survey } = read;
const weather = weatherForSurvey(survey, readClimate());
if ("faults" in weather) throw new Error(JSON.stringify(weather.faults));
const report = reportOf(workOut(survey, weather.record, { notes: weather.notes }), cautionSentence);
const bed = (id: string) => report.beds.find((candidate) => candidate.id === id)!;

describe("the demo of the southern half, without a record", () => {
  it("is marked as invented", () => {
    expect(survey.site.name).toContain("(invented)");
  });

  it("is worked on fifty generated years, which the report says", () => {
    expect(report.weather.generated).toEqual({ years: 50, seed: 1 });
    expect(report.cautions.join("\n")).toMatch(/50 years were generated from monthly means/);
    expect(weather.notes.assumed.map(({ where }) => where)).toEqual(["site.normals"]);
  });

  it("needs its water from November to March, hardly any from June to August", () => {
    const { needByMonth_L } = bed("oval");
    const sum = (months: number[]) => months.reduce((total, month) => total + needByMonth_L[month - 1]!, 0);
    expect(sum([11, 12, 1, 2, 3])).toBeGreaterThan(20 * sum([6, 7, 8]));
  });

  it("has its sun from the north: the same bed needs more on a wall's north side", () => {
    expect(bed("north-wall").need_mm_year).toBeGreaterThan(1.2 * bed("south-wall").need_mm_year);
  });

  it("has dry and wet years apart, and a middle saving between theirs", () => {
    const { giveUp_kL_year, dryYear, wetYear } = report.mains;
    expect(dryYear).not.toBe(wetYear);
    expect(giveUp_kL_year.p10!).toBeLessThan(giveUp_kL_year.p50!);
    expect(giveUp_kL_year.p50!).toBeLessThan(giveUp_kL_year.p90!);
  });
});
