import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Given } from "../../../src/survey/record/mapping.ts";
import { answerWords, questionLine, questionWords } from "../../../src/words/en/weather-import.ts";
import { imported, questionsOf, seattle, two, twoPlacesFile, written } from "./seattle.ts";

const metric = "date,rain (mm),tmin (C),tmax (C)";
const firstTwelve = seattle.filter((day) => day.day <= 12);
const dayFirst = written(
  metric,
  (day) => [`${two(day.day)}/${two(day.month)}/${day.year}`, day.rain_mm, day.tmin_c, day.tmax_c].join(),
  firstTwelve,
);

/** Answers the only question of a text in one way, and expects nothing more to ask. */
function answered(text: string, code: string, choose: (flag: string) => boolean, given: Given = {}) {
  const questions = questionsOf(text, given);
  expect(questions.map((question) => question.code)).toEqual([code]);
  const answer = questions[0]!.answers.find((each) => choose(each.flag));
  expect(answer).toBeDefined();
  return imported(text, { ...given, ...answer?.given });
}

describe("where two readings are possible, it asks", () => {
  it("whether day or month comes first, when neither is ever over 12", () => {
    const { record } = answered(dayFirst, "import-date-order", (flag) => flag === "--dates dmy");
    expect(record.columns.rain_mm[2]).toBe(seattle[2]!.rain_mm);
    expect(questionsOf(dayFirst)[0]!.answers.map((answer) => answer.flag)).toEqual([
      "--dates dmy",
      "--dates mdy",
    ]);
  });

  it("which place, when a file holds several", () => {
    const text = readFileSync(twoPlacesFile, "utf8");
    const [question, ...more] = questionsOf(text);
    expect(more).toEqual([]);
    expect(question?.code).toBe("import-place");
    expect(question?.answers.map((answer) => answer.flag)).toEqual([
      "--where location=Seattle",
      "--where 'location=New York'",
    ]);
  });

  it("which unit, when wind may be in two", () => {
    const text = written("date,rain (mm),tmin (C),tmax (C),wind", (day) =>
      [day.iso, day.rain_mm, day.tmin_c, day.tmax_c, (day.wind_ms * 2.5).toFixed(1)].join(),
    );
    const { record } = answered(text, "import-unit", (flag) => flag === "--unit wind_ms=km/h");
    expect(record.columns.wind_ms?.[0]).toBeCloseTo((seattle[0]!.wind_ms * 2.5) / 3.6, 1);
  });

  it("which of two columns is the rain", () => {
    const text = written("date,rain gauge A mm,rain gauge B mm,tmin C,tmax C", (day) =>
      [day.iso, day.rain_mm, day.rain_mm + 1, day.tmin_c, day.tmax_c].join(),
    );
    const { record } = answered(
      text,
      "import-column",
      (flag) => flag === "--column 'rain_mm=rain gauge B mm'",
    );
    expect(record.columns.rain_mm[0]).toBe(1);
  });

  it("for rain and temperatures that no header names, offering the columns that look like them", () => {
    const text = written("d,a,b,c", (day) => [day.iso, day.tmax_c, day.rain_mm, day.tmin_c].join());
    const questions = questionsOf(text);
    expect(questions.map((question) => question.code)).toEqual(["import-no-rain", "import-no-evaporation"]);
    expect(questions[0]!.answers.map((answer) => answer.flag)).toEqual(["--column rain_mm=b"]);
    expect(questions[1]!.answers.map((answer) => answer.flag)).toEqual([
      "--column tmin_c=c --column tmax_c=a",
    ]);
    const columns = { rain_mm: "b", tmin_c: "c", tmax_c: "a" };
    expect(imported(text, { columns }).record.columns.tmax_c?.[0]).toBe(12.8);
  });

  it("whether lowest and highest are in each other's place", () => {
    const text = written(metric, (day) => [day.iso, day.rain_mm, day.tmax_c, day.tmin_c].join());
    const { record } = answered(text, "import-swapped", () => true);
    expect(record.columns.tmax_c?.[0]).toBe(12.8);
  });

  it("which column holds the dates", () => {
    const text = written("when,rain mm,tmin C,tmax C", (day) =>
      [`day ${day.iso}`, day.rain_mm, day.tmin_c, day.tmax_c].join(),
    );
    expect(questionsOf(text).map((question) => question.code)).toContain("import-no-dates");
  });

  it("every question and answer has words of its own", () => {
    const asked = [
      ...questionsOf(dayFirst),
      ...questionsOf(readFileSync(twoPlacesFile, "utf8")),
      ...questionsOf(written("d,a,b,c", (day) => [day.iso, day.tmax_c, day.rain_mm, day.tmin_c].join())),
      ...questionsOf(dayFirst, { columns: { rain_mm: "nowhere" }, units: { tmin_c: "furlong" } }),
      ...questionsOf("only,words\nhere,and there\n"),
    ];
    for (const question of asked) {
      expect(questionWords(question)).toMatch(/^[A-Z].*[.?]$/);
      for (const answer of question.answers) expect(answerWords(question, answer)).not.toBe("");
      expect(questionLine(question)).not.toMatch(/undefined|NaN|import-|\n/);
    }
  });
});

describe("it does not ask where the file settles it", () => {
  it("a day over 12 settles the order", () => {
    const us = written(metric, (day) =>
      [`${day.month}/${day.day}/${day.year}`, day.rain_mm, day.tmin_c, day.tmax_c].join(),
    );
    expect(imported(us).mapping.dates).toMatchObject({ order: "mdy", certainty: 1 });
  });

  it("what is given wins over header and values", () => {
    const text = written(metric, (day) => [day.iso, day.rain_mm, day.tmin_c, day.tmax_c].join());
    const { record, mapping } = imported(text, { units: { rain_mm: "cm" }, columns: { tmin_c: "tmin (C)" } });
    expect(record.columns.rain_mm[1]).toBeCloseTo(109, 9);
    expect(mapping.fields.rain_mm).toMatchObject({ unit: "cm", unitCertainty: 1 });
    expect(mapping.fields.tmin_c?.certainty).toBe(1);
  });

  it("a field named with nothing behind it is left out", () => {
    const text = written(`${metric},wind`, (day) => [day.iso, day.rain_mm, day.tmin_c, day.tmax_c, 9].join());
    expect(imported(text, { columns: { wind_ms: "" } }).record.columns.wind_ms).toBeUndefined();
  });

  it("columns that are something else are not used", () => {
    const header =
      "date,precipitation (mm),Quality of precipitation,tmin (C),tmax (C),soil temp max (C),wind gust (km/h),wind dir,dew depression,sunrise";
    const text = written(header, (day) =>
      [day.iso, day.rain_mm, 1, day.tmin_c, day.tmax_c, 20, 90, 270, 3, 6].join(),
    );
    expect(Object.keys(imported(text).mapping.fields).sort()).toEqual(["rain_mm", "tmax_c", "tmin_c"]);
  });
});

describe("what cannot be mapped is said", () => {
  it.each<[string, string, Given, string]>([
    ["no table", "only,words\nhere,and there\n", {}, "import-no-table"],
    ["nothing", "", {}, "import-no-table"],
    ["a column that is not there", dayFirst, { columns: { rain_mm: "snow" } }, "import-no-such-column"],
    ["a unit that is none", dayFirst, { units: { rain_mm: "furlong" } }, "import-no-such-unit"],
    ["a unit of something else", dayFirst, { units: { rain_mm: "km/h" } }, "import-no-such-unit"],
    [
      "a place that is not there",
      dayFirst,
      { where: { header: "date", value: "Atlantis" } },
      "import-no-such-place",
    ],
    [
      "a row an hour",
      `time,rain mm,tmin C,tmax C\n${Array.from({ length: 240 }, (_, hour) => `2024-01-${two(1 + Math.floor(hour / 24))} ${two(hour % 24)}:00,0,1,2`).join("\n")}`,
      {},
      "import-not-daily",
    ],
  ])("%s", (_, text, given, code) => {
    expect(questionsOf(text, given).map((question) => question.code)).toContain(code);
  });
});
