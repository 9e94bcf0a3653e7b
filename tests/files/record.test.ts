import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { dayNumber, formatIso } from "../../src/engine/weather/dates.ts";
import { readRecord } from "../../src/files/record.ts";
import { mostFaults } from "../../src/survey/faults.ts";
import { recordFromRows } from "../../src/survey/record/strict.ts";
import { recordFaultWords } from "../../src/words/en/weather.ts";

const seattle = new URL("../../node_modules/vega-datasets/data/seattle-weather.csv", import.meta.url);

function recordOf(text: string) {
  const outcome = readRecord(text);
  if ("faults" in outcome) throw new Error(JSON.stringify(outcome.faults.slice(0, 3)));
  return outcome.record;
}

function faultsOf(text: string) {
  const outcome = readRecord(text);
  return "faults" in outcome ? outcome.faults : [];
}

/** A record with the named cells of its one good day replaced. */
const head =
  "date,rain_mm,tmin_c,tmax_c,rhmin_pct,rhmax_pct,wind_ms,sun_h,solar_MJ_m2,vp_kpa,tdew_c,et0_mm,rhmean_pct";
const good = "2024-01-01,1,5,15,40,90,2,8,12,1,6,2,60";
function withCell(column: string, value: string): string {
  const at = head.split(",").indexOf(column);
  const row = good
    .split(",")
    .map((cell, index) => (index === at ? value : cell))
    .join(",");
  return `${head}\n${row}\n`;
}

describe("a record", () => {
  it("of Seattle is read with every one of its 1,461 days", () => {
    const rows = readFileSync(seattle, "utf8").trim().split("\n").slice(1);
    const lines = rows.map((row) => {
      const [date, rain, tmax, tmin, wind] = row.split(",");
      return [date, rain, tmin, tmax, wind].join(",");
    });
    const record = recordOf(["date,rain_mm,tmin_c,tmax_c,wind_ms", ...lines].join("\r\n"));
    expect(record.firstDay).toBe(dayNumber(2012, 1, 1));
    expect(record.days).toBe(1461);
    expect(record.columns.rain_mm[1]).toBe(10.9);
    expect(record.columns.tmin_c?.[0]).toBe(5);
    expect(record.columns.wind_ms?.[1460]).toBe(3.5);
  });

  it("may have its dates in any order; days left out and blank cells are gaps", () => {
    const record = recordOf("\ufeffdate,rain_mm,et0_mm,wind_ms\n2024-03-02,2,1,\n\n2024-02-28,1,,\n");
    expect(record.firstDay).toBe(dayNumber(2024, 2, 28));
    expect([...record.columns.rain_mm]).toEqual([1, Number.NaN, Number.NaN, 2]);
    expect([...record.columns.et0_mm!]).toEqual([Number.NaN, Number.NaN, Number.NaN, 1]);
    expect(record.columns.wind_ms).toBeUndefined();
  });

  it("may have quoted cells, spaces around them and trailing blank cells", () => {
    const record = recordOf('"date", rain_mm ,et0_mm\n"2024-03-02"," 1.5",2,,\n');
    expect(record.columns.rain_mm[0]).toBe(1.5);
  });

  it("as rows of JSON reads the same", () => {
    const outcome = recordFromRows([
      { date: "2024-03-02", rain_mm: 2, et0_mm: 1 },
      { date: "2024-02-28", rain_mm: 1, et0_mm: null },
    ]);
    expect(outcome).toEqual({ record: recordOf("date,rain_mm,et0_mm\n2024-03-02,2,1\n2024-02-28,1,\n") });
  });

  it("of 100 years is read whole", () => {
    const first = dayNumber(1920, 1, 1);
    const lines = Array.from(
      { length: 36_525 },
      (_, day) => `${formatIso(first + day)},1.2,4.5,13.4,2.1,12.4`,
    );
    const text = ["date,rain_mm,tmin_c,tmax_c,wind_ms,solar_MJ_m2", ...lines].join("\n");
    expect(recordOf(text).days).toBe(36_525);
  });
});

describe("what a record is refused for, each with row and column", () => {
  it.each([
    ["rain below 0", "rain_mm", "-0.1", "record-out-of-range"],
    ["rain above 2,000 mm", "rain_mm", "2000.1", "record-out-of-range"],
    ["a temperature below -60", "tmin_c", "-60.1", "record-out-of-range"],
    ["a temperature above 60", "tmax_c", "60.1", "record-out-of-range"],
    ["a mark for a missing value", "tdew_c", "-999", "record-out-of-range"],
    ["humidity above 100", "rhmax_pct", "100.5", "record-out-of-range"],
    ["humidity below 0", "rhmean_pct", "-1", "record-out-of-range"],
    ["wind below 0", "wind_ms", "-2", "record-out-of-range"],
    ["more than 24 hours of sun", "sun_h", "24.5", "record-out-of-range"],
    ["sun below 0", "solar_MJ_m2", "-1", "record-out-of-range"],
    ["sun in W/m²", "solar_MJ_m2", "250", "record-out-of-range"],
    ["vapour pressure below 0", "vp_kpa", "-1", "record-out-of-range"],
    ["text for a number", "rain_mm", "wet", "record-not-number"],
    ["NaN as text", "rain_mm", "NaN", "record-not-number"],
    ["1e400", "rain_mm", "1e400", "record-not-number"],
    ["0x10", "rain_mm", "0x10", "record-not-number"],
    ["a number with its unit", "wind_ms", "2 m/s", "record-not-number"],
    ["tmin above tmax", "tmin_c", "15.1", "record-crossed"],
    ["rhmin above rhmax", "rhmin_pct", "91", "record-crossed"],
    ["a date that is none", "date", "2023-02-29", "record-date"],
    ["a date of another form", "date", "01/02/2024", "record-date"],
    ["a blank date", "date", "", "record-date"],
  ])("%s", (_, column, value, code) => {
    expect(faultsOf(withCell(column, value))).toMatchObject([{ path: `row 2, ${column}`, code }]);
  });

  it("limits themselves are accepted", () => {
    for (const [column, value] of [
      ["rain_mm", "2000"],
      ["tmin_c", "-60"],
      ["tmax_c", "60"],
      ["rhmax_pct", "100"],
      ["sun_h", "24"],
      ["tmin_c", "15"],
    ] as const)
      expect(faultsOf(withCell(column, value))).toEqual([]);
  });

  it.each([
    [
      "the same day twice",
      "date,rain_mm,et0_mm\n2024-01-01,1,2\n2024-01-01,1,2\n",
      "row 3, date",
      "record-date-twice",
    ],
    [
      "an unknown column",
      "date,rain_mm,et0_mm,snow\n2024-01-01,1,2,3\n",
      "row 1, snow",
      "record-unknown-column",
    ],
    [
      "a column twice",
      "date,rain_mm,rain_mm,et0_mm\n2024-01-01,1,2,3\n",
      "row 1, rain_mm",
      "record-column-twice",
    ],
    ["a header without a date", "rain_mm,et0_mm\n1,2\n", "row 1", "record-no-date"],
    ["no rain", "date,et0_mm\n2024-01-01,1\n", "rain_mm", "record-no-rain"],
    ["rain that is blank throughout", "date,rain_mm,et0_mm\n2024-01-01,,1\n", "rain_mm", "record-no-rain"],
    [
      "neither evaporation nor temperatures",
      "date,rain_mm,wind_ms\n2024-01-01,1,1\n",
      "et0_mm",
      "record-no-evaporation",
    ],
    ["one temperature only", "date,rain_mm,tmin_c\n2024-01-01,1,1\n", "et0_mm", "record-no-evaporation"],
    [
      "a temperature blank throughout",
      "date,rain_mm,tmin_c,tmax_c\n2024-01-01,1,1,\n",
      "et0_mm",
      "record-no-evaporation",
    ],
    ["no rows", "date,rain_mm,et0_mm\n", "record", "record-no-rows"],
    ["nothing at all", "", "record", "record-empty"],
    ["only blank lines", "\n\n \n", "record", "record-empty"],
    [
      "a file cut short in a row",
      "date,rain_mm,et0_mm\n2024-01-01,1,2\n2024-01-",
      "row 3",
      "record-row-cells",
    ],
    ["a row too long", "date,rain_mm,et0_mm\n2024-01-01,1,2,3\n", "row 2", "record-row-cells"],
    [
      "a quotation mark left open",
      'date,rain_mm,et0_mm\n2024-01-01,"1,2\n2024-01-02,1,2\n',
      "row 2",
      "record-open-quote",
    ],
    ["a line that never ends", `date,rain_mm\n${"1,".repeat(20_000)}`, "row 2", "record-long-line"],
    ["bytes that are no text", "date,rain_mm\u0000\u0001", "record", "record-not-text"],
    [
      "more than 200 years",
      "date,rain_mm,et0_mm\n1800-01-01,1,2\n2001-01-01,1,2\n",
      "record",
      "record-too-long",
    ],
  ])("%s", (_, text, path, code) => {
    expect(faultsOf(text)).toContainEqual(expect.objectContaining({ path, code }));
  });

  it("200 years are not too many, 75,000 rows and one are", () => {
    expect(faultsOf("date,rain_mm,et0_mm\n1801-01-01,1,2\n2000-12-31,1,2\n")).toEqual([]);
    const many = `date,rain_mm,et0_mm\n${"2024-01-01,1,2\n".repeat(75_001)}`;
    expect(faultsOf(many)).toContainEqual(expect.objectContaining({ code: "record-too-many-rows" }));
  });

  it("tmin and tmax in each other's place, said as such before the rows", () => {
    const rows = Array.from({ length: 300 }, (_, day) => `${formatIso(19_000 + day)},0,20,10`);
    const faults = faultsOf(["date,rain_mm,tmin_c,tmax_c", ...rows].join("\n"));
    expect(faults[0]).toEqual({
      path: "tmin_c",
      code: "record-swapped",
      facts: { low: "tmin_c", high: "tmax_c", crossed: 300, compared: 300 },
    });
    expect(faults).toHaveLength(mostFaults);
    expect(faults.at(-1)).toEqual({ path: "record", code: "record-more-faults", facts: { count: 102 } });
  });

  it("everything, not the first: three faults are three", () => {
    const text = "date,rain_mm,tmin_c,tmax_c\n2024-01-01,-1,5,4\n2024-01-02,x,1,2\n";
    expect(faultsOf(text).map((fault) => fault.path)).toEqual([
      "row 2, rain_mm",
      "row 2, tmin_c",
      "row 3, rain_mm",
    ]);
  });

  it("rows of JSON, by their place in the document", () => {
    const outcome = recordFromRows([
      { date: "2024-01-01", rain_mm: -1, et0_mm: 1, snow: 3 },
      "2024-01-02",
      { date: 20240103, rain_mm: true, et0_mm: [1] },
    ]);
    expect("faults" in outcome && outcome.faults.map((fault) => `${fault.path} ${fault.code}`)).toEqual([
      "weather[0].snow record-unknown-column",
      "weather[0].rain_mm record-out-of-range",
      "weather[1] record-row-not-object",
      "weather[2].date record-date",
      "weather[2].rain_mm record-not-number",
      "weather[2].et0_mm record-not-number",
    ]);
  });
});

it("every fault has its sentence, which says what was found and what is wanted", () => {
  const broken = [
    withCell("rain_mm", "-1"),
    withCell("rain_mm", "wet"),
    withCell("tmin_c", "20"),
    withCell("date", "2023-02-29"),
    "date,snow\n",
    "rain_mm\n1\n",
    "",
  ];
  for (const fault of broken.flatMap(faultsOf)) {
    const say = recordFaultWords[fault.code];
    expect(say, fault.code).toBeTypeOf("function");
    expect(say?.(fault.facts)).toMatch(/^[A-Z].*\.$/);
    expect(say?.(fault.facts)).not.toMatch(/undefined|NaN|invalid|please|oops/i);
  }
  expect(
    recordFaultWords["record-out-of-range"]?.({ column: "rain_mm", low: 0, high: 2000, found: -1 }),
  ).toBe("Rain must be between 0 and 2,000 mm. You entered -1.");
});
