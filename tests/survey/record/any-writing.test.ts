import fc from "fast-check";
import { expect, it } from "vitest";
import { dayNumber, fromDay } from "../../../src/engine/weather/dates.ts";
import { imported, two } from "./seattle.ts";

interface Writing {
  delimiter: "," | ";" | "\t" | "|";
  comma: boolean;
  order: "dmy" | "mdy" | "ymd";
  mark: "-" | "/" | ".";
  inches: boolean;
  fahrenheit: boolean;
  missing: "" | "NA" | "-999" | "-9999";
  notes: string[];
  quotes: boolean;
  crlf: boolean;
}

const writing: fc.Arbitrary<Writing> = fc.record({
  delimiter: fc.constantFrom(",", ";", "\t", "|"),
  comma: fc.boolean(),
  order: fc.constantFrom("dmy", "mdy", "ymd"),
  mark: fc.constantFrom("-", "/", "."),
  inches: fc.boolean(),
  fahrenheit: fc.boolean(),
  missing: fc.constantFrom("", "NA", "-999", "-9999"),
  notes: fc.subarray(["# made up", "An example station", "Height: 12 m", ""]),
  quotes: fc.boolean(),
  crlf: fc.boolean(),
});

const day = fc.record({
  rain: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 400 })),
  low: fc.integer({ min: -50, max: 200 }),
  range: fc.integer({ min: 0, max: 150 }),
  blank: fc.integer({ min: 0, max: 40 }),
});

it("any writing of any weather comes back as it was, its gaps where they were", () => {
  const start = fc.integer({ min: dayNumber(1900, 1, 1), max: dayNumber(2060, 1, 1) });
  const days = fc.array(day, { minLength: 400, maxLength: 460 });
  fc.assert(
    fc.property(writing, start, days, (how, first, rows) => {
      const { record } = imported(write(how, first, rows));
      expect(record.firstDay).toBe(first);
      expect(record.days).toBe(rows.length);
      rows.forEach(({ rain, low, range, blank }, at) => {
        const near = (value: number | undefined, tenths: number) =>
          blank === 0 ? Number.isNaN(value) : Math.abs(value! - tenths / 10) < 0.002;
        expect(near(record.columns.rain_mm[at], rain), `rain of day ${at}`).toBe(true);
        expect(record.columns.tmin_c?.[at]).toBeCloseTo(low / 10, 2);
        expect(record.columns.tmax_c?.[at]).toBeCloseTo((low + range) / 10, 2);
      });
    }),
    { numRuns: 40 },
  );
});

type Day = { rain: number; low: number; range: number; blank: number };

function write(how: Writing, first: number, rows: readonly Day[]): string {
  const { delimiter } = how;
  const comma = how.comma && delimiter !== ",";
  const cell = (text: string) => (how.quotes ? `"${text}"` : text);
  const number = (value: number) => value.toFixed(4).replace(".", comma ? "," : ".");
  const warmth = (tenths: number) => number(how.fahrenheit ? tenths * 0.18 + 32 : tenths / 10);
  const header = ["Date", `Rain (${how.inches ? "in" : "mm"})`, `Tmin (${how.fahrenheit ? "°F" : "°C"})`];
  header.push(`Tmax (${how.fahrenheit ? "°F" : "°C"})`);
  const lines = rows.map(({ rain, low, range, blank }, at) => {
    const { year, month, day: dayOfMonth } = fromDay(first + at);
    const parts = { d: two(dayOfMonth), m: two(month), y: String(year) };
    const date = [...how.order].map((part) => parts[part as "d" | "m" | "y"]).join(how.mark);
    const depth = blank === 0 ? how.missing : number(how.inches ? rain / 254 : rain / 10);
    return [date, depth, warmth(low), warmth(low + range)].map(cell).join(delimiter);
  });
  return [...how.notes, header.map(cell).join(delimiter), ...lines].join(how.crlf ? "\r\n" : "\n");
}
