import { describe, expect, test } from "vitest";
import { type Change, without } from "../../src/report/without.ts";
import { workOut } from "../../src/report/work-out.ts";
import { recordAt, surveyOf, textOf } from "../helpers/worked.ts";

const record = recordAt("demo/seattle.csv");
const survey = surveyOf(textOf("demo/school.survey.json"));
const worked = workOut(survey, record);
const of = (id: string) =>
  without(
    worked,
    survey.beds.findIndex((bed) => bed.id === id),
  );
const more = (id: string, kind: Change["kind"]) =>
  of(id).find(({ change }) => change.kind === kind)?.more_L_year;

describe("the same bed without it", () => {
  test("takes more without shade and without mulch", () => {
    expect(more("quad", "no-shade")).toBeGreaterThan(0);
    expect(more("front", "no-shade")).toBeGreaterThan(0);
    expect(more("kitchen", "no-mulch")).toBeGreaterThan(0);
    expect(more("orchard", "no-mulch")).toBeGreaterThan(0);
  });

  test("is not offered what the bed has not got", () => {
    expect(more("oval", "no-shade")).toBeUndefined();
    expect(more("oval", "no-mulch")).toBeUndefined();
    expect(more("quad", "soil")).toBeUndefined();
    expect(of("oval").some(({ change }) => change.kind === "thirst" && change.thirst === "moderate")).toBe(
      false,
    );
  });

  test("takes the more the thirstier its plants", () => {
    const litres = of("hedge").flatMap(({ change, more_L_year }) =>
      change.kind === "thirst" ? [more_L_year] : [],
    );
    expect(litres).toEqual([...litres].sort((a, b) => a - b));
    expect(litres.at(-1)).toBeGreaterThan(0);
    expect(litres[0]).toBeLessThan(0);
  });

  test("is what a survey of that bed would give", () => {
    const beds = survey.beds.map(({ mulch, ...bed }) => (bed.id === "kitchen" ? bed : { ...bed, mulch }));
    const bare = workOut({ ...survey, beds }, record);
    const k = survey.beds.findIndex(({ id }) => id === "kitchen");
    const { outcome } = worked;
    const year = (total: number) => (total / outcome.days) * 365.25;
    const [mulch] = of("kitchen").filter(({ change }) => change.kind === "no-mulch");
    expect(mulch!.need_L_year).toBeCloseTo(year(bare.outcome.beds[k]!.gross_L), 6);
    expect(mulch!.more_L_year).toBeCloseTo(year(bare.outcome.beds[k]!.gross_L - outcome.beds[k]!.gross_L), 6);
  });
});
