import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { quantities, quantityOf } from "../../src/quantities.ts";
import * as words from "../../src/survey/words.ts";
import { intakes } from "../../src/tables/intake.ts";
import { methods } from "../../src/tables/methods.ts";
import { mulchMaterials } from "../../src/tables/mulches.ts";
import { plantKinds, plantRow } from "../../src/tables/plants.ts";
import { roofMaterials } from "../../src/tables/roofs.ts";
import { soils } from "../../src/tables/soils.ts";
import type { Table } from "../../src/tables/table.ts";

const folder = new URL("../../data/", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
const units = new Set<string>(Object.values(quantities).map(({ unit }) => unit)).add("word");

interface Cell {
  path: string;
  value: Record<string, unknown>;
}

/** Every object of a table's rows that states a figure or a choice. */
function cells(part: unknown, path: string): Cell[] {
  if (part === null || typeof part !== "object") return [];
  const value = part as Record<string, unknown>;
  if ("middle" in value || "is" in value) return [{ path, value }];
  return Object.entries(value).flatMap(([name, inner]) => cells(inner, `${path}.${name}`));
}

test("the tables are there", () => {
  expect(files).toEqual(
    expect.arrayContaining([
      "plants.json",
      "soils.json",
      "methods.json",
      "mulches.json",
      "roofs.json",
      "intake.json",
    ]),
  );
});

describe.each(files)("%s", (file) => {
  const table = JSON.parse(readFileSync(new URL(file, folder), "utf8")) as Table<Record<string, unknown>>;
  const found = table.rows.flatMap((row, i) => cells(row, `rows[${i}]`));

  test("says what it is, from where", () => {
    expect(table.about.title).toMatch(/\w{4}/);
    expect(table.about.source).toMatch(/\w{4}/);
    expect(table.rows.length).toBeGreaterThan(0);
    expect(found.length).toBeGreaterThan(0);
  });

  test("every column has a meaning and a known unit, and every cell a column", () => {
    for (const [name, { unit, meaning }] of Object.entries(table.columns)) {
      expect(meaning, name).toMatch(/\w/);
      const quantity = quantityOf(name);
      if (quantity) expect(unit, name).toBe(quantity.unit);
      else if (name !== "value") expect(units, name).toContain(unit);
    }
    const known = [...Object.keys(table.columns), "note"];
    for (const row of table.rows) for (const name of Object.keys(row)) expect(known).toContain(name);
  });

  test("every value has a source that is cited, and every citation is used", () => {
    const used = new Set(
      found.map(({ path, value }) => {
        const citation = table.sources[String(value.source)];
        expect(citation, path).toMatch(/[a-z]{4}/i);
        expect(citation, path).not.toMatch(/^unknown/i);
        return value.source;
      }),
    );
    for (const key of Object.keys(table.sources)) expect(used, key).toContain(key);
  });

  test("low ≤ middle ≤ high", () => {
    for (const { path, value } of found) {
      if ("is" in value) continue;
      const { low, middle, high } = value as Record<string, number>;
      expect(low, path).toBeLessThanOrEqual(middle!);
      expect(middle, path).toBeLessThanOrEqual(high!);
      expect([low, middle, high].every(Number.isFinite), path).toBe(true);
    }
  });
});

describe("every word of the survey has its row", () => {
  const rows: [string, readonly string[], readonly string[]][] = [
    ["kinds", words.kinds, plantKinds.map((row) => row.kind)],
    ["methods", words.methods, methods.map((row) => row.method)],
    ["mulch materials", words.mulchMaterials, mulchMaterials.map((row) => row.material)],
    ["roof materials", words.roofMaterials, roofMaterials.map((row) => row.material)],
    ["textures", words.textures, soils.map((row) => row.texture)],
    ["textures of intake", words.textures, intakes.map((row) => row.texture)],
  ];
  test.each(rows)("%s", (_, list, column) => {
    expect([...column].sort()).toEqual([...list].sort());
  });

  test("each thirst class of each kind is answered", () => {
    for (const kind of words.kinds)
      for (const thirst of words.thirsts) expect(plantRow(kind, thirst).kcb.middle).toBeGreaterThan(0);
  });
});
