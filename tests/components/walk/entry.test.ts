import { describe, expect, test } from "vitest";
import {
  bearingOf,
  type Entry,
  entryFor,
  readEntry,
  readText,
  withText,
} from "../../../components/walk/entry.ts";
import { findingOf } from "../../../src/survey/measuring/finding.ts";
import { wayOf, ways } from "../../../src/survey/measuring/ways.ts";

const metric = { system: "metric", locale: "en" } as const;

function filled(way: string, texts: string[][], more: Partial<Entry> = {}): Entry {
  return { paced: null, terms: [{ sign: 1, way, texts }], ...more };
}

describe("what is typed becomes readings", () => {
  test("one reading a blank needs no count", () => {
    const read = readEntry(filled("rectangle", [["16"], ["4,1"]]), metric);
    expect(read).toMatchObject({ how: "rectangle", readings: [16, 4.1], wrong: [], missing: [] });
  });

  test("repeats are counted, and blanks left empty between them are no readings", () => {
    const read = readEntry(filled("rectangle", [["16"], ["4.1", "", "3.9"]]), metric);
    expect(read).toMatchObject({ how: "rectangle 1,2", readings: [16, 4.1, 3.9] });
  });

  test("a list takes the rest", () => {
    const read = readEntry(filled("offsets", [["1"], ["1.5"], ["2", "3", "2"]]), metric);
    expect(read.how).toBe("offsets");
    expect(read.outcome).toMatchObject({ notes: [{ code: "rule-simpson" }] });
  });

  test("shapes are added and taken away, in paces too", () => {
    const entry: Entry = {
      paced: [["20"], ["25"]],
      terms: [
        { sign: 1, way: "rectangle", texts: [["20"], ["5"]] },
        { sign: -1, way: "circle", texts: [["2"]] },
      ],
    };
    const read = readEntry(entry, metric);
    expect(read.how).toBe("paced rectangle - circle");
    expect(read.readings).toEqual([20, 25, 20, 5, 2]);
    expect(read.outcome && "figures" in read.outcome && read.outcome.figures.area_m2!.figure).toBeCloseTo(
      (100 - Math.PI) * 0.64,
      9,
    );
  });

  test("answers of a key are typed by the letters of the sheet", () => {
    const read = readEntry(filled("soil-feel", [["B", "b", "C"]]), metric);
    expect(read.readings).toEqual([1, 1, 2]);
    expect(readText("B", wayOf("catch-cans")!.slots[0]!, metric)).toEqual({ wrong: "unreadable" });
  });

  test("units are understood, and US ones where they are set", () => {
    const slot = wayOf("rectangle")!.slots[0]!;
    expect(readText("12 ft", slot, metric)).toBeCloseTo(3.6576, 9);
    expect(readText("12", slot, { system: "us", locale: "en" })).toBeCloseTo(3.6576, 9);
    expect(readText("12 L", slot, metric)).toEqual({ wrong: "unit" });
    expect(readText("wide", slot, metric)).toEqual({ wrong: "unreadable" });
  });

  test("in a row of unlike readings each has its own unit, in US units too", () => {
    const us = { system: "us", locale: "en" } as const;
    const hose = readEntry(filled("gravity-hose", [["1000", "5", "2", "30", "400", "2", "1", "0:30"]]), us);
    const expected = [1000 * 3.785411784, 5 * 0.3048, 2 * 3.785411784, 30];
    hose.readings.slice(0, 4).forEach((reading, i) => {
      expect(reading).toBeCloseTo(expected[i]!, 9);
    });
    expect(hose.readings[7]).toBe(30);
    const tape = readEntry(filled("transect-stretches", [["0", "10", "2"]]), us);
    expect(tape.readings[1]).toBeCloseTo(3.048, 9);
    expect(tape.readings[2]).toBe(2);
    const sky = readEntry(filled("skyline-heights", [["0"], ["E", "200", "30", "12 m"]]), us);
    expect(sky.readings.slice(1, 3)).toEqual([90, 200]);
    expect(sky.readings[3]).toBeCloseTo(9.144, 9);
    expect(sky.readings[4]).toBe(12);
  });

  test("a stopwatch may be written as minutes and seconds", () => {
    const slot = wayOf("jug")!.slots[1]!;
    expect(readText("1:05", slot, metric)).toBe(65);
    expect(readText("0:42.5", slot, metric)).toBe(42.5);
  });

  test("bearings may be written as letters", () => {
    expect(["N", "ene", "SW", "up"].map(bearingOf)).toEqual([0, 67.5, 225, null]);
    const texts = [["0"], ["0.1"], ["0.5"], ["E", "SSW", "3"]];
    const read = readEntry(filled("skyline-fists", texts), metric);
    expect(read.readings).toEqual([0, 0.1, 0.5, 90, 202.5, 3]);
  });

  test("what is still blank is named in order, and nothing comes of it", () => {
    const read = readEntry(filled("triangle", [["3"], [""], ["5"]]), metric);
    expect(read.missing).toEqual([{ term: 0, slot: 1 }]);
    expect(read.outcome).toBeNull();
  });

  test("rows that belong together want all of their readings", () => {
    const read = readEntry(filled("gravity-hose", [["4500", "1.5", "7", "30", "1500"]]), metric);
    expect(read.missing).toEqual([{ term: 0, slot: 0 }]);
  });

  test("an entry stays as it was when a reading changes", () => {
    const entry = entryFor("circle");
    const next = withText(entry, 0, 0, 0, "5");
    expect(entry.terms[0]!.texts).toEqual([[""]]);
    expect(next.terms[0]!.texts).toEqual([["5"]]);
  });
});

test("every way takes an entry of its own blanks, and its `how` is read back with the same readings", () => {
  for (const way of ways) {
    const texts = way.slots.map(({ list, together = 1, unit }) =>
      list
        ? Array.from({ length: 2 * together }, (_, i) => String(i + 1))
        : [unit === "share" ? "50 %" : "2"],
    );
    const read = readEntry(filled(way.code, texts), metric);
    expect(read.missing, way.code).toEqual([]);
    expect(read.readings.length, way.code).toBe(texts.flat().length);
    expect(read.outcome, way.code).not.toBeNull();
    expect(
      findingOf({ id: "f1", at: "beds[0].x", how: read.how, readings: read.readings, when: "2025-03-02" }),
    ).toHaveProperty("refused");
  }
});
