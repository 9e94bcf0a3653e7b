import { describe, expect, test } from "vitest";
import { parseIso } from "../../src/engine/weather/dates.ts";
import { classSheet } from "../../src/explain/class-sheet.ts";
import { plainSay } from "../../src/explain/say.ts";
import { workOut } from "../../src/report/work-out.ts";
import { classSheetWords } from "../../src/words/en/class-sheet.ts";
import { recordAt, surveyOf, textOf, workFiles } from "../helpers/worked.ts";

const worked = workFiles("demo/school.survey.json", "demo/seattle.csv");
const say = plainSay("metric", "en");
const sheets = (bed: string, from: string | null = null) =>
  classSheet(worked, { bed, from: from === null ? null : parseIso(from)! }, classSheetWords, say);

/** Cells of a sheet's table, row by row, as printed. */
function cells(html: string, sheet: 0 | 1): string[][] {
  const body = html.match(/<tbody>[\s\S]*?<\/tbody>/g)![sheet]!;
  return body
    .match(/<tr>.*?<\/tr>/g)!
    .map((row) => [...row.matchAll(/<t[dh][^>]*>(.*?)<\/t[dh]>/g)].map(([, cell]) => cell!));
}

const number = (text: string) => Number(text.replace("−", "-").replace(",", ""));
const printed = (html: string, name: string) =>
  number(new RegExp(`<dt>[^<]*\\(?${name}\\)?[^<]*</dt><dd>([\\d.,]+)`).exec(html)![1]!);

/** Works the first sheet out by its own rules, with the rounded numbers that stand on it. */
function solved(html: string): number[][] {
  const taw = printed(html, "TAW");
  const trigger = printed(html, "trigger");
  let dr = printed(html, "Dr");
  return cells(html, 0).map((row) => {
    const [et0, p, kcb, ke, fraction] = row.slice(2, 7).map(number) as [
      number,
      number,
      number,
      number,
      number,
    ];
    const i = row[1] === "yes" && dr >= trigger ? dr : 0;
    const wetted = Math.max(0, dr - p - i);
    const ks = wetted <= fraction * taw ? 1 : (taw - wetted) / ((1 - fraction) * taw);
    const etc = Math.min((ks * kcb + ke) * et0, taw - dr + p + i);
    const dp = Math.max(0, p + i - etc - dr);
    dr = dr - p - i + etc + dp;
    return [i, wetted, ks, etc, dp, dr];
  });
}

describe("the worked example for a class", () => {
  test.each(["oval", "kitchen", "hedge", "cloister"])(
    "%s: a class that follows the sheet gets the answers, within 0.1",
    (bed) => {
      const html = sheets(bed)!;
      const answers = cells(html, 1);
      solved(html).forEach((row, day) => {
        row.forEach((value, place) => {
          const wanted = number(answers[day]!.at(place - 6)!);
          expect(
            Math.abs(value - wanted),
            `day ${day}, column ${place}: ${value} beside ${wanted}`,
          ).toBeLessThan(0.1);
        });
      });
    },
  );

  test("has blanks on the first sheet, and none on the second", () => {
    const html = sheets("oval")!;
    for (const row of cells(html, 0)) expect(row.slice(-6)).toEqual(["", "", "", "", "", ""]);
    for (const row of cells(html, 1)) for (const cell of row) expect(cell).not.toBe("");
    expect(html.match(/<section/g)).toHaveLength(2);
  });

  test("picks a week with a watering and rain where there is one, and says what happened", () => {
    const html = sheets("kitchen")!;
    expect(html).toMatch(/It was watered: [\d.]+\u00A0mm to the roots/);
    expect(html).toMatch(/of rain/);
    expect(html).toMatch(/The water closes/);
  });

  test("gives the water of a bed that does not decide for itself", () => {
    const html = sheets("orchard", "2015-07-06")!;
    expect(html).toContain("Watering I is given");
    for (const row of cells(html, 0)) expect(row.filter((cell) => cell === "")).toHaveLength(5);
  });

  test("takes the week that is asked for, and no other", () => {
    expect(sheets("oval", "2015-07-06")).toContain("July 6, 2015 to July 12, 2015");
    expect(sheets("oval", "2015-12-30")).toBeNull();
    expect(sheets("oval", "2011-12-30")).toBeNull();
    expect(sheets("nobody")).toBeNull();
  });

  test("lets nothing in a name act as markup, and asks for nothing from outside", () => {
    const survey = surveyOf(textOf("demo/school.survey.json"));
    const beds = survey.beds.map((bed) => ({ ...bed, name: "<script>alert(1)</script>" }));
    const html = classSheet(
      workOut({ ...survey, beds }, recordAt("demo/seattle.csv")),
      { bed: "oval", from: null },
      classSheetWords,
      say,
    )!;
    expect(html).not.toMatch(/<script/);
    expect(html).not.toMatch(/https?:|src=|url\(/);
  });
});
