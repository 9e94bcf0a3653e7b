import { describe, expect, test } from "vitest";
import { readCoordinates } from "../../../components/first/place-reading.ts";
import { readSize, shownText } from "../../../components/first/sizes.ts";
import { type TapeRow, withRow } from "../../../components/first/tape.ts";

describe("coordinates", () => {
  test.each([
    ["-34.93, 138.6", -34.93, 138.6],
    ["−34.93 138.6", -34.93, 138.6],
    ["34.93 S, 138.6 E", -34.93, 138.6],
    ["34.93S 138.6E", -34.93, 138.6],
    ["34° 55′ 48″ S, 138° 36′ E", -34.93, 138.6],
    ["34,93; -138,6", 34.93, -138.6],
    ["47.6 N 122.3 W", 47.6, -122.3],
  ])("%s", (text, latitude, longitude) => {
    const read = readCoordinates(text, text.includes("34,93") ? "de" : "en");
    if (read === null || read === "wrong") throw new Error(`${text} is ${read}`);
    expect(read.latitude).toBeCloseTo(latitude, 6);
    expect(read.longitude).toBeCloseTo(longitude, 6);
  });

  test.each(["Springfield", "Hill 60", "", "12"])("%s is a name, or not yet anything", (text) => {
    expect(readCoordinates(text)).toBeNull();
  });

  test("beyond the poles is nowhere", () => {
    expect(readCoordinates("95, 10")).toBe("wrong");
    expect(readCoordinates("45, 190")).toBe("wrong");
  });
});

describe("sizes as people write them", () => {
  test.each([
    ["garden", "300", "metric", 300],
    ["garden", "20 m2", "metric", 20],
    ["garden", "3,5", "metric", 3.5],
    ["garden", "1000 ft2", "metric", 92.90304],
    ["garden", "1000", "us", 92.90304],
    ["tank", "10 kL", "metric", 10_000],
    ["tank", "500", "us", 1892.705892],
    ["roof", "0", "metric", 0],
    ["minutes", "2 h", "metric", 120],
  ] as const)("%s: %s in %s", (name, text, system, si) => {
    expect(readSize(name, text, system)).toEqual({ value: expect.closeTo(si, 6) });
  });

  test.each([
    ["garden", "0", /between 0\.1\sm² and 50,000\sm²\. You entered 0\./],
    ["garden", "wide", /No number could be read here/],
    ["months", "13", /between 1 and 12\. You entered 13\./],
    ["tank", "-1", /between 0 and/],
  ] as const)("%s: %s is told what is wanted", (name, text, wanted) => {
    expect(readSize(name, text, "metric")).toEqual({ wrong: expect.stringMatching(wanted) });
  });

  test("blank is not yet said", () => {
    expect(readSize("garden", " ", "metric")).toEqual({ value: undefined });
  });

  test("what was typed in one system keeps its unit in the other", () => {
    const typed = { garden: "300", "garden-in": "metric" };
    expect(shownText("garden", typed, "metric")).toBe("300");
    expect(readSize("garden", shownText("garden", typed, "us"), "us")).toEqual({ value: 300 });
  });
});

describe("the tape", () => {
  const row = (entry: TapeRow["entry"], made: TapeRow["made"], p90: number): TapeRow => ({
    entry,
    made,
    need_kL_m2: { p10: 0, p50: p90 / 2, p90 },
  });

  test("has a line for each entry that bears on the need", () => {
    let rows: TapeRow[] = [];
    rows = withRow(rows, row("place", ["place"], 9));
    rows = withRow(rows, row("thirst", ["place", "thirst"], 5));
    rows = withRow(rows, row("roof", ["place", "thirst", "roof"], 4.9));
    expect(rows.map(({ entry, need_kL_m2 }) => [entry, need_kL_m2.p90])).toEqual([
      ["place", 9],
      ["thirst", 4.9],
    ]);
  });

  test("another answer to the same entry takes the place of the one before", () => {
    let rows = withRow([], row("place", ["place"], 9));
    rows = withRow(rows, row("thirst", ["place", "thirst"], 5));
    rows = withRow(rows, row("thirst", ["place", "thirst"], 3));
    expect(rows.map(({ need_kL_m2 }) => need_kL_m2.p90)).toEqual([9, 3]);
  });

  test("an entry taken out takes its line with it", () => {
    let rows = withRow([], row("place", ["place"], 9));
    rows = withRow(rows, row("thirst", ["place", "thirst"], 5));
    rows = withRow(rows, row("place", ["place"], 9));
    expect(rows).toHaveLength(1);
  });
});
