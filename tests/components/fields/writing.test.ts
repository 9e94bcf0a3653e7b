import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { angleWriting } from "../../../components/fields/writing/angle.ts";
import { type DayForm, dayWriting } from "../../../components/fields/writing/day.ts";
import { datesWriting } from "../../../components/fields/writing/days-list.ts";
import { numbersWriting, pointsWriting, pointWriting } from "../../../components/fields/writing/lists.ts";
import { readNumber, showNumber } from "../../../components/fields/writing/number.ts";
import { quantityWriting } from "../../../components/fields/writing/quantity.ts";
import { readTime } from "../../../components/fields/writing/time.ts";
import { looseWriting } from "../../../components/fields/writing/words.ts";

describe("numbers as people write them", () => {
  test.each([
    ["20", 20],
    ["3,5", 3.5],
    ["3.5", 3.5],
    ["1 000", 1000],
    ["1\u00A0000,5", 1000.5],
    ["1,000", 1000],
    ["1.000", 1],
    ["12,345,678.9", 12345678.9],
    ["12.345.678,9", 12345678.9],
    ["1'234.5", 1234.5],
    ["0,125", 0.125],
    ["1,23,456", 123456],
    ["−4", -4],
    [".5", 0.5],
    [",5", 0.5],
    ["5.", 5],
    ["٣٫٥", 3.5],
    ["१२", 12],
  ])("%s in English", (text, value) => {
    expect(readNumber(text, "en")).toBe(value);
  });

  test("a lone sign before three digits is what the locale makes of it", () => {
    expect(readNumber("1.234", "de")).toBe(1234);
    expect(readNumber("1,234", "de")).toBe(1.234);
    expect(readNumber("1,234", "en")).toBe(1234);
    expect(readNumber("1.234", "en")).toBe(1.234);
  });

  test.each(["", "abc", "1,2,3", "1.2.3,4,5", "1..2", "--1", "1e3", "12,34,5", "1,00.5,5"])(
    "%s is none",
    (text) => {
      expect(readNumber(text, "en")).toBeNull();
    },
  );

  test.each(["en", "de", "fr", "hi", "ar", "pt-PT", "de-CH", "sv"])(
    "what is shown in %s is read back",
    (locale) => {
      fc.assert(
        fc.property(fc.integer({ min: -1e9, max: 1e9 }), (number) => {
          const value = number / 1000;
          expect(readNumber(showNumber(value, 12, locale), locale)).toBe(value + 0);
        }),
      );
    },
  );
});

describe("quantities", () => {
  const area = quantityWriting({ unit: "m²", system: "metric", locale: "en" });
  const flow = quantityWriting({ unit: "L/min", system: "metric", locale: "en" });
  const capacity = quantityWriting({ unit: "L", system: "us", locale: "en" });
  const cover = quantityWriting({ unit: "", isShare: true, system: "metric", locale: "en" });
  const price = quantityWriting({ unit: "money a kL", system: "metric", locale: "en", currency: "EUR" });

  test.each([
    [area, "20 m2", 20],
    [area, "20", 20],
    [area, "20m²", 20],
    [area, "20 sq m", 20],
    [area, "20 ft²", 20 * 0.3048 ** 2],
    [area, "20 sq. ft.", 20 * 0.3048 ** 2],
    [area, "0,5 ha", 5000],
    [flow, "2 gal/min", 2 * 3.785411784],
    [flow, "2 gpm", 2 * 3.785411784],
    [flow, "0.3 L/s", 18],
    [flow, "14 litres a minute", 14],
    [capacity, "100", 378.5411784],
    [capacity, "5 kL", 5000],
    [capacity, "5 m3", 5000],
    [capacity, "5,000 litres", 5000],
    [cover, "85", 0.85],
    [cover, "85 %", 0.85],
    [price, "2.70", 2.7],
    [price, "2,7 EUR", 2.7],
  ] as const)("%#: %s", (writing, text, value) => {
    const reading = writing.read(text);
    expect("value" in reading && reading.value).toBeCloseTo(value, 9);
  });

  test("an unknown unit is named, words are not a number, a blank is nothing", () => {
    expect(area.read("20 furlongs")).toEqual({ wrong: "unit", unit: "furlongs" });
    expect(area.read("20 L")).toEqual({ wrong: "unit", unit: "L" });
    expect(area.read("about twenty")).toEqual({ wrong: "unreadable" });
    expect(area.read("  ")).toEqual({ value: undefined });
  });

  test("are shown in the units chosen, a text that was no number as it was typed", () => {
    expect(area.show(2400)).toBe("2,400");
    expect(quantityWriting({ unit: "m²", system: "us", locale: "en" }).show(1.858)).toBe("19.999");
    expect(cover.show(0.07)).toBe("7");
    expect(cover.unit).toBe("%");
    expect(area.show("about twenty")).toBe("about twenty");
    expect(area.show(undefined)).toBe("");
    expect(price.unit).toBe("EUR a kL");
    expect(quantityWriting({ unit: "L a day", system: "us" }).unit).toBe("gal a day");
  });
});

describe("days", () => {
  const read = (text: string, form: DayForm, locale = "en-GB") => dayWriting(form, locale).read(text);

  test.each([
    ["2026-03-31", "2026-03-31"],
    ["31 March 2026", "2026-03-31"],
    ["31st of March, 2026", "2026-03-31"],
    ["March 31, 2026", "2026-03-31"],
    ["31.3.2026", "2026-03-31"],
    ["31/3/26", "2026-03-31"],
    ["3/31/2026", "2026-03-31"],
    ["29 feb 2024", "2024-02-29"],
  ])("%s is a date", (text, value) => {
    expect(read(text, "date")).toEqual({ value });
  });

  test.each([
    ["25 June", "06-25"],
    ["jun 25", "06-25"],
    ["06-25", "06-25"],
    ["25/6", "06-25"],
    ["29 February", "02-29"],
    ["25 June 2026", "2026-06-25"],
  ])("%s may be a day of every year", (text, value) => {
    expect(read(text, "date-or-month-day")).toEqual({ value });
  });

  test("the order of bare numbers is the locale's, and months have its names", () => {
    expect(read("3/4/2026", "date", "en-GB")).toEqual({ value: "2026-04-03" });
    expect(read("3/4/2026", "date", "en-US")).toEqual({ value: "2026-03-04" });
    expect(read("31 mars 2026", "date", "fr")).toEqual({ value: "2026-03-31" });
    expect(read("31. März 2026", "date", "de")).toEqual({ value: "2026-03-31" });
  });

  test.each(["31 June 2026", "29 Feb 2026", "tomorrow", "2026", "32/1/2026", "25 June"])(
    "%s is no date",
    (text) => {
      expect(read(text, "date")).toEqual({ wrong: "unreadable" });
    },
  );

  test("with a time of day", () => {
    expect(read("2026-02-03T10:15", "date-or-time")).toEqual({ value: "2026-02-03T10:15" });
    expect(read("3 February 2026, 10:15", "date-or-time")).toEqual({ value: "2026-02-03T10:15" });
    expect(read("3 Feb 2026 7.30 pm", "date-or-time")).toEqual({ value: "2026-02-03T19:30" });
    expect(read("2026-02-03", "date-or-time")).toEqual({ value: "2026-02-03" });
    expect(read("2026-02-03T10:15:00Z", "date-or-time")).toEqual({ value: "2026-02-03T10:15:00Z" });
  });

  test.each(["en-GB", "en-US", "de", "fr", "es", "hi", "sv"])(
    "what is shown in %s is read back",
    (locale) => {
      const day = fc.date({ min: new Date("2000-01-01"), max: new Date("2060-12-31"), noInvalidDate: true });
      fc.assert(
        fc.property(day, fc.boolean(), (date, isYearly) => {
          const value = date.toISOString().slice(isYearly ? 5 : 0, 10);
          const writing = dayWriting("date-or-month-day", locale);
          expect(writing.read(writing.show(value))).toEqual({ value });
        }),
      );
    },
  );

  test("several, one a line", () => {
    expect(datesWriting("en-GB").read("20 March 2026\n2026-03-27")).toEqual({
      value: ["2026-03-20", "2026-03-27"],
    });
    expect(datesWriting("en-GB").show(["2026-03-20"])).toBe("20 March 2026");
  });
});

test.each([
  ["7", "07:00"],
  ["7:30", "07:30"],
  ["7.30", "07:30"],
  ["0730", "07:30"],
  ["19h30", "19:30"],
  ["7 pm", "19:00"],
  ["12 am", "00:00"],
  ["12:30 p.m.", "12:30"],
  ["24:00", "24:00"],
  ["24:30", null],
  ["25", null],
  ["7:75", null],
  ["noon", null],
])("the time %s", (text, value) => {
  expect(readTime(text)).toBe(value);
});

test.each([
  ["-34.9", -34.9],
  ["34.9 S", -34.9],
  ["S 34,9", -34.9],
  ["34° 54′ 36″ S", -34.91],
  ["47°33'N", 47.55],
  ["47.55°", 47.55],
])("the latitude %s", (text, value) => {
  expect(angleWriting("NS", "en").read(text)).toEqual({ value });
});

test("a place that is none", () => {
  for (const text of ["far away", "34 E", "-34.9 S", "34° 75′"])
    expect(angleWriting("NS", "en").read(text)).toEqual({ wrong: "unreadable" });
});

test("points and numbers in lists", () => {
  expect(pointWriting("en").read("12, 96")).toEqual({ value: [12, 96] });
  expect(pointWriting("en").read("12,96")).toEqual({ value: [12, 96] });
  expect(pointWriting("de").read("1,5; 9,25")).toEqual({ value: [1.5, 9.25] });
  expect(pointWriting("en").read("12 96 3")).toEqual({ wrong: "unreadable" });
  expect(pointsWriting("en").read("0, 0\n12 0\n\n12; 8")).toEqual({
    value: [
      [0, 0],
      [12, 0],
      [12, 8],
    ],
  });
  const outline = [
    [0, 0],
    [120.5, -3],
  ];
  for (const locale of ["en", "de", "fr"])
    expect(pointsWriting(locale).read(pointsWriting(locale).show(outline))).toEqual({ value: outline });
  expect(numbersWriting("en").read("42; 43.5; 43")).toEqual({ value: [42, 43.5, 43] });
  expect(numbersWriting("en").read("42 43")).toEqual({ value: [42, 43] });
  expect(numbersWriting("en").read("")).toEqual({ value: [] });
});

test("a number, yes or no, or words", () => {
  const loose = looseWriting("yes", "no", "en");
  expect(loose.read("30")).toEqual({ value: 30 });
  expect(loose.read("Yes")).toEqual({ value: true });
  expect(loose.read("very-low")).toEqual({ value: "very-low" });
  expect(loose.show(false)).toBe("no");
});
