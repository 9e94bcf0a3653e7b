import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { weatherColumns } from "../src/engine/weather/record.ts";
import { quantities, quantityOf } from "../src/quantities.ts";

const root = new URL("../src/", import.meta.url);
const schemas = readdirSync(new URL("survey/schema/", root)).map((name) => `survey/schema/${name}`);
const files = [...schemas, "engine/grounds.ts", "engine/outcome.ts", "report/schema.ts"];

/** What a name's ending says its unit is. */
const endings: Readonly<Record<string, string>> = {
  _mm_h: "mm/h",
  _L_min: "L/min",
  _L_day: "L a day",
  _mm_year: "mm",
  _L_year: "L",
  _kL_year: "kL",
  _MJ_m2: "MJ/m²",
  _m2: "m²",
  _mm: "mm",
  _kpa: "kPa",
  _pct: "%",
  _deg: "°",
  _ms: "m/s",
  _kL: "kL",
  _years: "years",
  _L: "L",
  _m: "m",
  _c: "°C",
  _h: "h",
};
const endingOf = (name: string) => Object.keys(endings).find((ending) => name.endsWith(ending));

/** Points on a plan, of which only the numbers have a unit. */
const points = new Set(["at_m", "outline_m"]);

const names = new Set<string>(weatherColumns);
for (const file of files)
  for (const [, name] of readFileSync(new URL(file, root), "utf8").matchAll(/^\s*(\w+)\??:/gm))
    if (endingOf(name!) && !points.has(name!)) names.add(name!);

test.each([...names])("%s is in the glossary", (name) => {
  expect(quantityOf(name)).toBeDefined();
});

test("the unit in a name is the quantity's", () => {
  for (const [name, { unit }] of Object.entries(quantities)) {
    const ending = endingOf(name);
    if (ending) expect(unit, name).toBe(endings[ending]);
  }
});

test("every quantity has a meaning", () => {
  for (const [name, { meaning }] of Object.entries(quantities)) expect(meaning, name).toMatch(/\w{3}/);
});
