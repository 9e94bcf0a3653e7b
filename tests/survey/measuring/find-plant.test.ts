import { describe, expect, test } from "vitest";
import { findPlant } from "../../../src/survey/measuring/find-plant.ts";
import { kinds, thirsts } from "../../../src/survey/words.ts";
import { genera } from "../../../src/tables/genera.ts";

describe("the list of genera", () => {
  test("has two hundred at least, each once, in words of the survey", () => {
    expect(genera.length).toBeGreaterThanOrEqual(200);
    expect(new Set(genera.map(({ genus }) => genus)).size).toBe(genera.length);
    for (const { kind, thirst } of genera) {
      expect(kinds).toContain(kind);
      expect(thirsts).toContain(thirst.is);
    }
  });

  test("says the climate that each source speaks for, and what is from memory", () => {
    for (const { genus, climate, thirst } of genera) {
      expect(climate, genus).toMatch(/^(dry-summer|rainy-summer|dry-warm|dry-cold|warm-wet|any)$/);
      expect(thirst.memory === true || /read/.test(thirst.source), genus).toBe(true);
    }
  });

  test("ranges hold the class between them", () => {
    for (const { genus, thirst } of genera) {
      const [from, is, to] = [thirst.from ?? thirst.is, thirst.is, thirst.to ?? thirst.is].map((word) =>
        thirsts.indexOf(word),
      ) as [number, number, number];
      expect(from <= is && is <= to, genus).toBe(true);
    }
  });

  test("speaks for every kind that is planted, and every class", () => {
    expect(new Set(genera.map(({ kind }) => kind)).size).toBe(kinds.length);
    expect(new Set(genera.map(({ thirst }) => thirst.is)).size).toBe(thirsts.length);
  });
});

describe("finding a plant", () => {
  test.each([
    ["Lavandula", "Lavandula"],
    ["lavender", "Lavandula"],
    ["lavander", "Lavandula"],
    ["Lavandula angustifolia", "Lavandula"],
    ["rododendron", "Rhododendron"],
    ["hidrangea", "Hydrangea"],
    ["fuschia", "Fuchsia"],
    ["buddleia", "Buddleja"],
    ["eucaliptus", "Eucalyptus"],
    ["callistamon", "Callistemon"],
    ["roses", "Rosa"],
    ["MAPLE", "Acer"],
    ["tomatos", "Solanum"],
    ["chrysanthemun", "Chrysanthemum"],
    ["lilly pilly", "Syzygium"],
    ["lambs ear", "Stachys"],
    ["black-eyed susan", "Rudbeckia"],
    ["agapantus", "Agapanthus"],
    ["wisterea", "Wisteria"],
    ["Ságe", "Salvia"],
  ])("%s is %s", (typed, genus) => {
    expect(findPlant(typed)[0]?.genus.genus).toBe(genus);
  });

  test("a beginning offers what begins so", () => {
    expect(findPlant("cam").map(({ genus }) => genus.genus)).toEqual(["Camellia", "Campanula", "Campsis"]);
  });

  test("a name that two share offers both", () => {
    expect(findPlant("nasturtium").map(({ genus }) => genus.genus)).toEqual(
      expect.arrayContaining(["Nasturtium", "Tropaeolum"]),
    );
  });

  test("every genus and common name finds its own", () => {
    const lost = genera.flatMap(({ genus, names }) =>
      [genus, ...names].filter((name) => !findPlant(name, 6).some((found) => found.genus.genus === genus)),
    );
    expect(lost).toEqual([]);
  });

  test("nonsense finds nothing", () => {
    for (const typed of ["", "x", "qqqqqqqq", "???", "zzzzzzzzzzzzzzzzz"])
      expect(findPlant(typed)).toEqual([]);
  });
});
