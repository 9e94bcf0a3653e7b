import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { sprinklerFaults } from "../../src/survey/measuring/sprinkler-checks.ts";
import { walkParts } from "../../src/survey/measuring/way.ts";
import { ways } from "../../src/survey/measuring/ways.ts";
import { genera } from "../../src/tables/genera.ts";
import { type KeyRow, soilFeelKey, thirstKey } from "../../src/tables/keys.ts";
import { walkCautions } from "../../src/words/en/walk-cautions.ts";
import { climateWords, reasonWords, soilQuestions, thirstQuestions } from "../../src/words/en/walk-keys.ts";
import { noteCodes } from "../../src/words/en/walk-notes.ts";
import { labelledSlots, slotLabel } from "../../src/words/en/walk-slots.ts";
import { sprinklerWords } from "../../src/words/en/walk-sprinklers.ts";
import { wayWords } from "../../src/words/en/walk-ways.ts";

const folder = new URL("../../src/survey/measuring/", import.meta.url);
const code = readdirSync(folder)
  .filter((file) => file !== "unlikely.ts" && file !== "completeness.ts")
  .map((file) => readFileSync(new URL(file, folder), "utf8"))
  .join("\n");

describe("the walk has words for", () => {
  test("every way of measuring, and for none that is not there", () => {
    expect(Object.keys(wayWords).sort()).toEqual(ways.map((way) => way.code).sort());
  });

  test("every blank", () => {
    for (const way of ways)
      for (const { name } of way.slots) expect(labelledSlots, `${way.code}/${name}`).toContain(name);
    expect(slotLabel("mulch-depth", "depth")).not.toBe(slotLabel("tank-box", "depth"));
  });

  test("every note and refusal that the code makes", () => {
    const ofWays = new Set(ways.map((way) => way.code));
    const made = [...code.matchAll(/(?:impossible\(\s*|\bcode: )"([a-z-]+)"/g)].map((match) => match[1]!);
    const notes = made.filter((name) => !ofWays.has(name) || noteCodes.includes(name));
    expect(notes.length).toBeGreaterThan(40);
    expect(notes.filter((name) => !noteCodes.includes(name))).toEqual([]);
  });

  test.each<[string, readonly KeyRow[], typeof thirstQuestions]>([
    ["thirst key", thirstKey, thirstQuestions],
    ["soil by feel", soilFeelKey, soilQuestions],
  ])("every question, answer and reason of the %s", (_, key, words) => {
    expect(Object.keys(words).sort()).toEqual(key.map(({ question }) => question).sort());
    for (const { question, answers } of key) {
      expect(Object.keys(words[question]!.answers).sort()).toEqual(
        answers.map(({ answer }) => answer).sort(),
      );
      for (const { ends } of answers) if (ends) expect(reasonWords[ends.reason], ends.reason).toBeDefined();
    }
  });

  test("every fault of a sprinkler, every climate, and cautions for every part", () => {
    expect(Object.keys(sprinklerWords).sort()).toEqual([...sprinklerFaults].sort());
    for (const { climate } of genera) expect(climateWords[climate]).toBeDefined();
    for (const part of walkParts) expect(walkCautions[part]?.length, part).toBeGreaterThan(0);
  });
});

test("the cautions name what can hurt", () => {
  const all = Object.values(walkCautions).flat().join(" ");
  for (const danger of [
    "roof",
    "ladder",
    "enter a tank",
    "drinking",
    "Gloves",
    "sun",
    "traffic",
    "Tools|tools",
    "adult",
    "electrician",
    "plumber",
    "legionella",
  ])
    expect(all).toMatch(new RegExp(danger));
});
