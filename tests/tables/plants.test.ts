import { describe, expect, test } from "vitest";
import { plantKinds, plantRow, thirstClasses } from "../../src/tables/plants.ts";

describe("plantRow", () => {
  test("the class itself, where the kind has it", () => {
    const row = plantRow("lawn-cool", "moderate");
    expect(row).toMatchObject({
      thirst: "moderate",
      stoodIn: false,
      kcb: { low: 0.7, middle: 0.8, high: 0.9 },
    });
    expect(row.kcb.source).toMatch(/^Harivandi et al\. \(2009\)/);
  });

  test.each([
    ["lawn-cool", "very-low", "low"],
    ["vegetables", "very-low", "moderate"],
    ["vegetables", "low", "moderate"],
    ["succulents", "high", "moderate"],
  ] as const)("%s has no %s: the nearest is %s, and it says that it stands in", (kind, asked, given) => {
    expect(plantRow(kind, asked)).toMatchObject({ thirst: given, stoodIn: true });
  });

  test("a kind that nobody lists is an error that names it", () => {
    expect(() => plantRow("cactus-wall", "low")).toThrow(/cactus-wall/);
  });
});

describe("plants", () => {
  test("a thirstier class never asks for less", () => {
    for (const { kcbFull } of plantKinds) {
      const middles = thirstClasses.map((thirst) => kcbFull[thirst]?.middle).filter((m) => m !== undefined);
      expect(middles).toEqual([...middles].sort((a, b) => a - b));
    }
  });

  test("41 rows of kind and thirst, 123 values", () => {
    const rows = plantKinds.flatMap(({ kcbFull }) => Object.values(kcbFull)).filter((row) => row !== null);
    expect(rows).toHaveLength(41);
  });

  test("only FAO-56 rows take Eq. 70", () => {
    for (const { kcbFull } of plantKinds)
      for (const row of Object.values(kcbFull))
        if (row) expect(/^FAO-56/.test(row.source)).toBe(row.basis === "basal");
  });
});
