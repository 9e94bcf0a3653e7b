import { toView } from "../../src/report/to-view.ts";
import type { AnswerView, BedView, TankView } from "../../src/report/view.ts";
import { workOut } from "../../src/report/work-out.ts";
import { cautionSentence } from "../../src/words/en/cautions.ts";
import { recordAt, report, surveyOf, textOf } from "../helpers/worked.ts";

/** The view of a survey worked out on the Seattle record. */
export function viewOf(survey: unknown, record = "demo/seattle.csv"): AnswerView {
  const worked = workOut(surveyOf(survey), recordAt(record));
  return toView(worked, report(worked), cautionSentence);
}

export function demoSurvey() {
  return JSON.parse(textOf("demo/school.survey.json"));
}

const none = new Array<number>(12).fill(0);

/** A bed made up for a test; 1 m², watered from the mains, nothing needed, today not known. */
export function bed(parts: Partial<BedView>): BedView {
  return {
    id: "bed",
    name: "A bed",
    area_m2: 1,
    kinds: ["shrubs"],
    thirst: "low",
    supply: "mains-only",
    gross_L_year: 0,
    habit_L_year: null,
    need_L_week: none,
    fromTank_L_week: none,
    today_L_week: null,
    short_L_year: 0,
    beyond_L_year: 0,
    lacks: false,
    stressDays_year: 0,
    establishing_L_year: null,
    index: 0,
    ...parts,
  };
}

/** A tank made up for a test: 1,000 L, five days from 31 December 2013. */
export function tank(parts: Partial<TankView>): TankView {
  return {
    id: "tank",
    name: "A tank",
    capacity_L: 1000,
    unusable_L: 0,
    inUse: true,
    inflow_L_year: 0,
    yield_L_year: 0,
    spill_L_year: 0,
    topUp_L_year: 0,
    shortDays_year: 0,
    reliability: 1,
    volumetricReliability: 1,
    firstDay: Date.UTC(2013, 11, 31) / 86_400_000,
    level_L: Float64Array.of(900, 700, 400, 0, 200),
    spill_L: Float64Array.of(10, 0, 0, 0, 0),
    short: Uint8Array.of(0, 0, 0, 1, 0),
    asked: true,
    serves: [],
    ...parts,
  };
}
