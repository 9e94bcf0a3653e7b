import { describe, expect, test } from "vitest";
import { quantities } from "../src/quantities.ts";
import { fromSI, shown, shownUnit, toSI, unitsFor } from "../src/units.ts";

describe("exact definitions", () => {
  test("an inch is 25.4 mm, a foot 0.3048 m, a square foot 0.09290304 m²", () => {
    expect(toSI(1, "in", "mm")).toBe(25.4);
    expect(toSI(1, "ft", "m")).toBe(0.3048);
    expect(toSI(1, "ft²", "m²")).toBeCloseTo(0.09290304, 15);
  });

  test("a US gallon is 231 cubic inches, 3.785411784 L", () => {
    expect(toSI(1, "gal", "L")).toBe(3.785411784);
    expect(toSI(1, "gal", "L")).toBeCloseTo((231 * 2.54 ** 3) / 1000, 12);
    expect(toSI(1, "1000 gal", "kL")).toBeCloseTo(3.785411784, 15);
  });

  test("an acre is 43,560 square feet, 4,046.8564224 m²", () => {
    expect(toSI(1, "acre", "m²")).toBeCloseTo(4046.8564224, 9);
  });

  test("water freezes at 32 °F, boils at 212 °F, and the scales cross at −40", () => {
    expect(toSI(32, "°F", "°C")).toBeCloseTo(0, 12);
    expect(toSI(212, "°F", "°C")).toBeCloseTo(100, 12);
    expect(toSI(-40, "°F", "°C")).toBeCloseTo(-40, 12);
    expect(toSI(273.15, "K", "°C")).toBe(0);
  });

  test("a mile an hour is 0.44704 m/s, a knot 1,852 m an hour", () => {
    expect(toSI(1, "mph", "m/s")).toBe(0.44704);
    expect(toSI(3600, "kn", "m/s")).toBeCloseTo(1852, 9);
    expect(toSI(36, "km/h", "m/s")).toBeCloseTo(10, 12);
  });

  test("a cubic foot is 28.316846592 L, a hundred of them 2.8316846592 kL", () => {
    expect(toSI(1, "ft3", "L")).toBe(28.316846592);
    expect(toSI(1, "100ft3", "kL")).toBeCloseTo(2.8316846592, 12);
  });
});

test("FAO-56 Table 3: 1 W/m² is 0.0864 MJ/m² a day", () => {
  expect(toSI(1, "W/m²", "MJ/m²")).toBe(0.0864);
});

test("96.25 × gal/min ÷ ft² is in/h (a utility's page): 10 gal/min on 1,000 ft² is 0.9625 in/h", () => {
  const rate_mm_h = (60 * toSI(10, "gal/min", "L/min")!) / toSI(1000, "ft²", "m²")!;
  expect(Math.abs(fromSI(rate_mm_h, "mm/h", "in/h")! - 0.9625)).toBeLessThanOrEqual(0.001);
});

test("an inch on a square foot is 0.6234 gal", () => {
  const litres = toSI(1, "in", "mm")! * toSI(1, "ft²", "m²")!;
  expect(fromSI(litres, "L", "gal")).toBeCloseTo(0.6234, 4);
});

test("a price of 2 a kL is 7.57 a thousand gallons", () => {
  const { value, unit } = shown(2, "money/kL", "us");
  expect(unit).toBe("money/1000 gal");
  expect(value).toBeCloseTo(2 * 3.785411784, 12);
});

test("every unit typed comes back as typed", () => {
  for (const { unit } of Object.values(quantities))
    for (const typed of unitsFor(unit))
      expect(fromSI(toSI(17.3, typed, unit)!, unit, typed)).toBeCloseTo(17.3, 9);
});

test("every unit that a system shows can be typed", () => {
  for (const { unit } of Object.values(quantities))
    for (const system of ["metric", "us"] as const) expect(unitsFor(unit)).toContain(shownUnit(unit, system));
});

test("metric shows SI as it is", () => {
  expect(shown(12.5, "mm", "metric")).toEqual({ value: 12.5, unit: "mm" });
});

test("a unit of another quantity is none", () => {
  expect(toSI(1, "gal", "m")).toBeUndefined();
  expect(toSI(1, "toString", "m")).toBeUndefined();
  expect(fromSI(1, "°C", "mm")).toBeUndefined();
});
