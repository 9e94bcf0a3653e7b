import { describe, expect, test } from "vitest";
import { fieldSheets } from "../../src/report/field-sheets.ts";
import { walkParts } from "../../src/survey/measuring/way.ts";
import { waysOf } from "../../src/survey/measuring/ways.ts";
import { walkCautions } from "../../src/words/en/walk-cautions.ts";
import { sheetWords } from "../../src/words/en/walk-sheets.ts";
import { wayWords } from "../../src/words/en/walk-ways.ts";

const html = fieldSheets(sheetWords);

/** The names of a way's blanks in the order that they stand on paper. */
function blanksOf(name: string, page: string): string[] {
  const from = page.indexOf(`<h3>${name}</h3>`);
  const block = page.slice(from, page.indexOf("</section>", from));
  return [...block.matchAll(/data-slot="([^"]+)"/g)].map((match) => match[1]!);
}

describe("blank field sheets", () => {
  test("there is one for every part, each with its cautions", () => {
    expect(html.match(/class="sheet"/g)).toHaveLength(walkParts.length);
    for (const part of walkParts)
      for (const caution of walkCautions[part]!)
        expect(fieldSheets(sheetWords, [part])).toContain(caution.replaceAll("'", "&#39;"));
  });

  test.each(walkParts)("%s: blanks stand in the order that they are typed in", (part) => {
    const page = fieldSheets(sheetWords, [part]);
    for (const { code, slots } of waysOf(part)) {
      if (code === "plan" || code === "leaf-photograph") continue;
      expect(blanksOf(wayWords[code]!.name, page), code).toEqual(slots.map(({ name }) => name));
    }
  });

  test("every length, volume and time on paper says its unit", () => {
    expect(fieldSheets(sheetWords, ["water"])).toContain(
      "Water in the tank (L), height above the hose’s end (m), water caught (L), time (s)",
    );
    expect(fieldSheets(sheetWords, ["areas"])).toContain("Length (m)");
    expect(fieldSheets(sheetWords, ["shade"])).toContain("Left end (°), right end (°), fists up");
  });

  test("what is seen or told and not measured has its lines too", () => {
    const water = fieldSheets(sheetWords, ["water"]);
    for (const question of ["How is it watered now?", "In which months?", "One that leans over"])
      expect(water).toContain(question);
    const tanks = fieldSheets(sheetWords, ["tanks"]);
    for (const question of ["Who switches it over, and when last?", "What is the roof made of?"])
      expect(tanks).toContain(question);
    expect(fieldSheets(sheetWords, ["cover"])).toContain("wood chip / bark");
  });

  test("asks for a nickname, the guess first, and nothing from elsewhere", () => {
    expect(html).toContain("no real names");
    expect(html).toContain(sheetWords.guess);
    expect(html).not.toMatch(/https?:|<script|<img|<link|undefined/);
  });

  test("keys lead on by number and end in a word", () => {
    expect(fieldSheets(sheetWords, ["soil"])).toMatch(/go to 2.*done: sandy clay loam/s);
  });
});
