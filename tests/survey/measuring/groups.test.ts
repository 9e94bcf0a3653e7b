import { describe, expect, test } from "vitest";
import { applyFound } from "../../../src/survey/measuring/apply-found.ts";
import { combineFigures, combineWords } from "../../../src/survey/measuring/combine.ts";
import { pathSteps, setAt, valueAt } from "../../../src/survey/measuring/field-path.ts";
import { findingOf } from "../../../src/survey/measuring/finding.ts";
import type { SurveyFinding } from "../../../src/survey/survey.ts";

const figures = (...found: number[]) => found.map((figure) => ({ figure, standardError: 0.02 }));

describe("several groups' figures", () => {
  test("the middle one stands, one wild group moves it little", () => {
    expect(combineFigures(figures(0.6, 0.7, 0.65)).figure).toBe(0.65);
    expect(combineFigures(figures(0.6, 0.7, 0.65, 6)).figure).toBeCloseTo(0.675, 12);
  });

  // s of 0.5, 0.7, 0.9 is 0.2; times √(π/2) over √3
  test("their spread widens it", () => {
    const found = combineFigures(figures(0.5, 0.7, 0.9));
    expect(found.standardError).toBeCloseTo((0.2 * Math.sqrt(Math.PI / 2)) / Math.sqrt(3), 12);
    expect(found).toMatchObject({ lowest: 0.5, highest: 0.9, groups: 3 });
  });

  test("groups that agree are no surer than one's own error", () => {
    expect(combineFigures(figures(0.7, 0.7, 0.7)).standardError).toBe(0.02);
    expect(combineFigures(figures(0.7))).toMatchObject({ figure: 0.7, standardError: 0.02 });
  });
});

describe("several groups' words", () => {
  test("the middle class stands, the thirstier of two as near", () => {
    expect(combineWords(["low", "high", "moderate"])).toMatchObject({ word: "moderate", groups: 3 });
    expect(combineWords(["low", "moderate"]).word).toBe("moderate");
    expect(combineWords(["loam", "clay", "loam"]).word).toBe("loam");
  });

  test("words without an order: the one said most often", () => {
    expect(combineWords(["bark", "straw", "straw"]).word).toBe("straw");
  });
});

function finding(
  at: string,
  how: string,
  readings: number[],
  more: Partial<SurveyFinding> = {},
): SurveyFinding {
  const made = findingOf({ id: "f", at, how, readings, when: "2026-03-02", ...more });
  if (!("finding" in made)) throw new Error(JSON.stringify(made));
  return { ...made.finding, ...more };
}

const bed = () => ({ beds: [{ area_m2: 1, soil: { texture: "loam" } }] });

describe("what was found in the survey's fields", () => {
  test("used findings stand, others and guesses do not", () => {
    const at = "beds[0].area_m2";
    const found = [
      finding(at, "rectangle", [4, 5]),
      finding(at, "rectangle", [4, 6]),
      finding(at, "rectangle", [40, 50], { used: false }),
      finding(at, "rectangle", [9, 9], { guess: true }),
    ];
    const { survey, stands } = applyFound({ ...bed(), found });
    expect(survey.beds[0]!.area_m2).toBe(22);
    expect(stands.get(at)).toMatchObject({ figure: { figure: 22, groups: 2 } });
  });

  test("a figure typed with a way of nobody's stands as it is", () => {
    const found: SurveyFinding[] = [
      {
        id: "f",
        at: "beds[0].area_m2",
        how: "from the council's plan",
        readings: [],
        figure: 37,
        when: "2026-03-02",
      },
    ];
    expect(applyFound({ ...bed(), found }).survey.beds[0]!.area_m2).toBe(37);
  });

  test("readings are worked out again: a figure that was tampered with does not stand", () => {
    const found = [{ ...finding("beds[0].area_m2", "rectangle", [4, 5]), figure: 2000 }];
    expect(applyFound({ ...bed(), found }).survey.beds[0]!.area_m2).toBe(20);
  });

  test("sand and clay take the texture's place", () => {
    const jar = [40, 40, 20];
    const found = ["sand_pct", "clay_pct"].map((field) => finding(`beds[0].soil.${field}`, "soil-jar", jar));
    expect(applyFound({ ...bed(), found }).survey.beds[0]!.soil).toEqual({ sand_pct: 40, clay_pct: 20 });
  });

  test("a path to nowhere is listed, and changes nothing", () => {
    const found = [finding("beds[7].area_m2", "rectangle", [4, 5])];
    const { survey, unplaced } = applyFound({ ...bed(), found });
    expect(unplaced).toEqual(["beds[7].area_m2"]);
    expect(survey.beds).toEqual(bed().beds);
  });

  test("readings that cannot be make no finding", () => {
    const asked = { id: "f", at: "beds[0].area_m2", when: "2026-03-02" };
    expect(findingOf({ ...asked, how: "triangle", readings: [1, 2, 9] })).toMatchObject({
      refused: { impossible: { code: "side-too-long" } },
    });
    expect(findingOf({ ...asked, how: "jug", readings: [1, 15] })).toEqual({ refused: null });
  });
});

describe("paths", () => {
  test("are read as found writes them", () => {
    expect(pathSteps("beds[2].plantings[0].share")).toEqual(["beds", 2, "plantings", 0, "share"]);
    for (const text of ["", "beds[", "beds[-1]", "beds..a", "a b", "[0]"]) expect(pathSteps(text)).toBeNull();
  });

  test("never reach what is not the document's own", () => {
    const document = {};
    expect(setAt(document, ["__proto__", "polluted"], 1)).toBe(false);
    expect(setAt(document, ["constructor", "prototype", "polluted"], 1)).toBe(false);
    expect(valueAt(document, ["toString"])).toBeUndefined();
    expect("polluted" in {}).toBe(false);
  });

  test("make groups of fields, never rows of a list", () => {
    const document: Record<string, unknown> = { beds: [{}] };
    expect(setAt(document, ["beds", 0, "soil", "slope_pct"], 5)).toBe(true);
    expect(document).toEqual({ beds: [{ soil: { slope_pct: 5 } }] });
    expect(setAt(document, ["beds", 1], {})).toBe(false);
    expect(setAt(document, ["beds", 0, "plantings", 0, "share"], 1)).toBe(false);
  });
});
