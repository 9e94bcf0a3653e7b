import { describe, expect, it } from "vitest";
import { dayNumber, formatIso } from "../../../src/engine/weather/dates.ts";
import { applyMapping } from "../../../src/survey/record/apply.ts";
import { guessMapping } from "../../../src/survey/record/guess.ts";
import type { Given } from "../../../src/survey/record/mapping.ts";
import { cellNumber, hasDecimalCommas, isMissing, isTrace } from "../../../src/survey/record/source-cells.ts";
import { dateTokens, dayInOrder, fullYear, yearAndDay } from "../../../src/survey/record/source-dates.ts";
import { unitNamed } from "../../../src/survey/record/source-units.ts";
import { faultSentence } from "../../../src/words/en/faults.ts";
import { noteWords } from "../../../src/words/en/weather-import.ts";
import { cells, imported } from "./seattle.ts";

/** A month of made-up days, with the lines named in place of the days'. */
function month(header: string, line: (day: number) => string, other: Record<number, string> = {}): string {
  const lines = Array.from(
    { length: 31 },
    (_, at) => other[at + 1] ?? `2024-01-${String(at + 1).padStart(2, "0")},${line(at + 1)}`,
  );
  return [header, ...lines].join("\n");
}

function faultsOf(text: string, given: Given = {}) {
  const rows = cells(text);
  const applied = applyMapping(rows, guessMapping(rows, given));
  return "faults" in applied ? applied.faults : [];
}

describe("numbers", () => {
  it.each([
    ["1.5", false, 1.5],
    ["-1.5", false, -1.5],
    ["+1.5", false, 1.5],
    ["−1.5", false, -1.5],
    [".5", false, 0.5],
    ["5.", false, 5],
    ["1e-1", false, 0.1],
    ["1,234.5", false, 1234.5],
    ["1,5", true, 1.5],
    ["1.234,5", true, 1234.5],
    ["12 °C", false, 12],
    ["3.2 mm", false, 3.2],
    ["45%", false, 45],
  ])("%s, comma decimals %s, is %d", (text, comma, value) => expect(cellNumber(text, comma)).toBe(value));

  it.each(["", "-", ".", "wet", "1.2.3", "0x10", "--1", "1/2", "Infinity"])("%j is none", (text) => {
    expect(cellNumber(text, false)).toBeNaN();
  });

  it("have comma decimals where the file's cells say so", () => {
    expect(hasDecimalCommas(["1,5", "0,0", "12"])).toBe(true);
    expect(hasDecimalCommas(["1.5", "0.0", "1,234"])).toBe(false);
    expect(hasDecimalCommas(["1", "2"])).toBe(false);
  });

  it("that are missing or a trace", () => {
    for (const text of ["", "NA", "n/a", "NaN", "null", "-", "--", "M", "."])
      expect(isMissing(text), text).toBe(true);
    for (const text of ["0", "-9", "T"]) expect(isMissing(text), text).toBe(false);
    for (const text of ["T", "trace", "tr", "0.00T"]) expect(isTrace(text), text).toBe(true);
    for (const text of ["0", "total", ""]) expect(isTrace(text), text).toBe(false);
  });
});

describe("dates", () => {
  const read = (text: string, order: "dmy" | "mdy" | "ymd") => {
    const tokens = dateTokens(text);
    const day = tokens && dayInOrder(tokens, order);
    return day === null ? null : formatIso(day);
  };

  it.each([
    ["2012-04-03", "dmy", "2012-04-03"],
    ["2012/4/3", "mdy", "2012-04-03"],
    ["2012-04-03T09:00:00Z", "dmy", "2012-04-03"],
    ["2012-04-03 00:00:00+00:00", "dmy", "2012-04-03"],
    ["20120403", "dmy", "2012-04-03"],
    ["2012040309", "dmy", "2012-04-03"],
    ["03/04/2012", "dmy", "2012-04-03"],
    ["03/04/2012", "mdy", "2012-03-04"],
    ["3.4.12", "dmy", "2012-04-03"],
    ["12-04-03", "ymd", "2012-04-03"],
    ["3-Apr-2012", "mdy", "2012-04-03"],
    ["April 3, 2012", "dmy", "2012-04-03"],
    ["Tue, 3 April 2012", "mdy", "2012-04-03"],
    ["04/03/2012 12:00 AM", "mdy", "2012-04-03"],
    ["31/02/2012", "dmy", null],
    ["99999999", "ymd", null],
    ["12.5", "dmy", null],
    ["", "dmy", null],
  ] as const)("%s read as %s is %s", (text, order, iso) => expect(read(text, order)).toBe(iso));

  it("of a year and its day", () => {
    expect(yearAndDay("2012-060")).toBe(dayNumber(2012, 2, 29));
    expect(yearAndDay("2012366")).toBe(dayNumber(2012, 12, 31));
    expect(yearAndDay("2011366")).toBeNull();
  });

  it("with two-digit years go by POSIX: 69 is 1969, 68 is 2068", () => {
    expect([fullYear(69), fullYear(68), fullYear(0)]).toEqual([1969, 2068, 2000]);
  });
});

describe("units", () => {
  // Exact by definition: inch, mile and nautical mile (international), thermochemical calorie, Celsius and Fahrenheit.
  it.each([
    ["rain_mm", "in", 1, 25.4],
    ["rain_mm", "Inches", 2, 50.8],
    ["rain_mm", "tenths of mm", 109, 10.9],
    ["tmax_c", "°F", 212, 100],
    ["tmax_c", "degrees Fahrenheit", -40, -40],
    ["tmax_c", "K", 273.15, 0],
    ["wind_ms", "km/h", 36, 10],
    ["wind_ms", "mph", 3600 / 1609.344, 1],
    ["wind_ms", "knots", 3600 / 1852, 1],
    ["solar_MJ_m2", "W/m²", 1e6 / 86_400, 1],
    ["solar_MJ_m2", "langley", 1, 0.04184],
    ["solar_MJ_m2", "kWh m-2 day-1", 1, 3.6],
    ["solar_MJ_m2", "J/cm²", 100, 1],
    ["solar_MJ_m2", "MJ/m²/day", 1, 1],
    ["sun_h", "minutes", 90, 1.5],
    ["vp_kpa", "hPa", 12.3, 1.23],
    ["vp_kpa", "mbar", 10, 1],
    ["rhmean_pct", "%", 55, 55],
  ] as const)("%s in %s", (column, text, value, expected) => {
    const unit = unitNamed(column, text);
    expect(unit).not.toBeNull();
    expect(value * unit!.factor + unit!.offset).toBeCloseTo(expected, 9);
  });

  it("of another quantity are refused", () => {
    expect(unitNamed("rain_mm", "°C")).toBeNull();
    expect(unitNamed("wind_ms", "")).toBeNull();
  });
});

describe("every column of a record comes in from its header, in its unit", () => {
  it.each([
    ["et0_mm", "ET0 FAO evapotranspiration (mm)", "4.2", 4.2],
    ["tdew_c", "Dew point °F", "50", 10],
    ["vp_kpa", "vapour pressure (hPa)", "12", 1.2],
    ["rhmin_pct", "Min. relative humidity (%)", "40", 40],
    ["rhmax_pct", "RH_max", "90", 90],
    ["rhmean_pct", "Relative Humidity [%]", "70", 70],
    ["rhmax_pct", "RHmax (%)", "101", 100],
    ["wind_ms", "Mean wind speed (knots)", "10", 5.144],
    ["solar_MJ_m2", "Daily global solar exposure (MJ/m*m)", "12.5", 12.5],
    ["solar_MJ_m2", "Solar radiation (W/m^2)", "200", 17.28],
    ["solar_MJ_m2", "Sol Rad (Ly/day)", "300", 12.552],
    ["sun_h", "sunshine_duration (s)", "18000", 5],
    ["sun_h", "Sunshine (min)", "300", 5],
    ["rhmin_pct", "Relative humidity (min)", "30", 30],
  ] as const)("%s as %j", (column, header, cell, expected) => {
    const text = month(`date,rain_mm,tmin_c,tmax_c,${header}`, () => `1,5,15,${cell}`);
    expect(imported(text).record.columns[column]?.[0]).toBeCloseTo(expected, 3);
  });
});

describe("marks for a missing value", () => {
  it("become gaps, counted by mark, where the column cannot hold them", () => {
    const text = month("date,rain mm,tmin C,tmax C", () => "1.2,5,15", {
      3: "2024-01-03,-9999,5,15",
      4: "2024-01-04,,-999.9,15",
      5: "2024-01-05,NA,5,99999",
      6: "2024-01-06,999.9,5,null",
    });
    const { record, notes } = imported(text);
    expect([2, 3, 4, 5].map((day) => record.columns.rain_mm[day])).toEqual(Array(4).fill(Number.NaN));
    expect(record.columns.tmin_c?.[3]).toBeNaN();
    expect(record.columns.tmax_c?.[4]).toBeNaN();
    expect(notes).toContainEqual({
      code: "import-missing",
      facts: { column: "rain_mm", header: "rain mm", mark: "-9999", count: 1 },
    });
    expect(notes.map(noteWords)).toContain('rain mm: "-9999" is read as not recorded, on 1 day.');
  });

  it("stay a value where the column has others like it", () => {
    const text = month("date,rain mm,tmin C,tmax C", (day) => `${day === 7 ? "99.9" : day * 2},5,15`);
    expect(imported(text).record.columns.rain_mm[6]).toBe(99.9);
  });

  it("a trace of rain is 0, and said so", () => {
    const text = month("date,rain mm,tmin C,tmax C", () => "1.2,5,15", { 3: "2024-01-03,T,5,15" });
    const { record, notes } = imported(text);
    expect(record.columns.rain_mm[2]).toBe(0);
    expect(notes).toContainEqual({ code: "import-trace", facts: { header: "rain mm", count: 1 } });
  });

  it("dates left out are gaps", () => {
    const text = month("date,rain mm,tmin C,tmax C", () => "1.2,5,15", { 3: "" });
    expect(imported(text).record.columns.rain_mm[2]).toBeNaN();
  });
});

describe("faults name the file's own row and column", () => {
  it.each([
    [
      "rain below 0",
      { 3: "2024-01-03,-1,5,15" },
      "row 4, rain in: Rain must be between 0 and 2,000 mm. You entered -1 inch.",
    ],
    [
      "text for a number",
      { 3: "2024-01-03,wet,5,15" },
      "row 4, rain in: Rain must be a number, or blank where it is not known. You entered wet.",
    ],
    [
      "a day twice",
      { 3: "2024-01-02,1,5,15" },
      "row 4, date: Each day must be there once. 2024-01-02 is in row 3 already.",
    ],
    [
      "no such day",
      { 3: "2024-02-30,1,5,15" },
      "row 4, date: The date must be a day of the calendar, read as year, month, day. You entered 2024-02-30.",
    ],
    [
      "a file cut short",
      { 31: "2024-01-31,1" },
      "row 32: A row must have as many cells as the header, 4. This one has 2.",
    ],
    [
      "tmin above tmax",
      { 3: "2024-01-03,1,16,15" },
      "row 4, tmin C: The day's lowest temperature must not be above the highest. Found tmin_c 16 and tmax_c 15.",
    ],
  ])("%s", (_, other, sentence) => {
    const text = month("date,rain in,tmin C,tmax C", () => "0.12,5,15", other);
    expect(faultsOf(text).map(faultSentence)).toEqual([sentence]);
  });

  it("tmin and tmax named in each other's place are refused as swapped", () => {
    const text = month("date,rain mm,tmin C,tmax C", () => "1,5,15");
    const faults = faultsOf(text, { columns: { tmin_c: "tmax C", tmax_c: "tmin C" } });
    expect(faults[0]).toMatchObject({ path: "tmin_c", code: "record-swapped" });
    expect(faults[1]?.path).toBe("row 2, tmax C");
  });
});
