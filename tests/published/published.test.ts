import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { airAndSun } from "./air-and-sun.ts";
import { Inputs, type Published, published } from "./figures.ts";
import { notUsed, testedByName } from "./not-used.ts";
import { soilAndPlants } from "./soil-and-plants.ts";
import { water } from "./water.ts";

const folder = new URL("../", import.meta.url);
const workings = { ...airAndSun, ...soilAndPlants, ...water };

/** Off by no more than the entry allows for the key; where only a table is given, by nothing that shows. */
function allowed({ tolerance }: Published, key: string): number {
  if (typeof tolerance === "number") return tolerance;
  return tolerance?.[key] ?? tolerance?.default ?? 1e-9;
}

function expectNear(found: unknown, wanted: unknown, off: number, at: string): void {
  if (typeof wanted === "number") {
    expect(Math.abs((found as number) - wanted), `${at}: ${found} for ${wanted}`).toBeLessThanOrEqual(off);
  } else if (wanted !== null && typeof wanted === "object") {
    for (const [key, value] of Object.entries(found as object))
      expectNear(value, (wanted as Record<string, unknown>)[key], off, `${at}.${key}`);
  } else {
    expect(found, at).toBe(wanted);
  }
}

describe("published figures", () => {
  test.each(Object.keys(workings))("%s", (id) => {
    const entry = published.find((e) => e.id === id)!;
    const found = workings[id]!(new Inputs(entry.inputs), entry.expected);
    expect(Object.keys(found).length).toBeGreaterThan(0);
    for (const [key, value] of Object.entries(found)) {
      expect(entry.expected, key).toHaveProperty([key]);
      expectNear(value, entry.expected[key], allowed(entry, key), key);
    }
  });

  test("every entry is worked, tested in a file of its own, or listed with the reason", () => {
    const named = [...Object.keys(workings), ...Object.keys(notUsed), ...testedByName];
    expect(named.toSorted()).toEqual(published.map((entry) => entry.id).toSorted());
  });

  test("an entry that a test of its own answers is named there", () => {
    const tests = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) =>
      /\.test\.ts$/.test(file),
    );
    const text = tests.map((file) => readFileSync(new URL(file, folder), "utf8")).join("\n");
    expect(testedByName.filter((id) => !text.includes(id))).toEqual([]);
  });
});
