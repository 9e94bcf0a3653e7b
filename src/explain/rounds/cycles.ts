import { minutesWithin, type RunTime, rateWhereItFalls_mm_h } from "../../engine/rounds/run-time.ts";
import type { BedNeed } from "../../engine/rounds/table.ts";
import { applicationRate_mm_h } from "../../engine/watering.ts";
import { roundSources } from "../../words/en/explain-rounds.ts";
import type { Input, Sheet } from "../sheet.ts";
import { assumed, measured, opens, type RoundBook, workedOut } from "./book.ts";

/** What the soil takes and bears on its surface. */
function soilInputs({ worked }: RoundBook, { rounds }: BedNeed) {
  const soil = worked.survey.beds.find(({ id }) => id === rounds.id)!.soil;
  const intake =
    soil?.intake_mm_h === undefined
      ? assumed(rounds.intake_mm_h, roundSources.intakeTable)
      : measured(rounds.intake_mm_h, roundSources.intakeSurveyed);
  return { intake, storage: assumed(rounds.surfaceStorage_mm, roundSources.storage) };
}

/** Steps to the runs of a watering: how fast water comes, how fast the soil takes it. */
export function cycleSteps(
  book: RoundBook,
  sheet: Sheet,
  bed: BedNeed,
  run: RunTime,
  plannedMinutes: Input,
  flow_L_min: number,
): void {
  const { rounds, ready } = bed;
  const { id, area_m2, watering } = ready.grown.bed;
  const { intake, storage } = soilInputs(book, bed);
  const rate_mm_h = rateWhereItFalls_mm_h(ready.grown.bed, rounds.intake_mm_h, flow_L_min);
  const isUsualFlow = flow_L_min === watering.flow_L_min;
  const flow = isUsualFlow
    ? opens(flow_L_min, `bed/${id}/flow`)
    : workedOut(flow_L_min, roundSources.tapToday);
  const wetted_m2 = area_m2 * watering.wettedShare;
  const falls_mm_h = applicationRate_mm_h(flow_L_min, wetted_m2);
  const area = opens(area_m2, `bed/${id}/area`);
  const rate = isUsualFlow
    ? opens(falls_mm_h, `bed/${id}/rate`)
    : sheet.step(
        "rate",
        { flow, area, wettedShare: opens(watering.wettedShare, `bed/${id}/wetted-share`) },
        falls_mm_h,
      );
  const rateHere =
    rate_mm_h === falls_mm_h
      ? sheet.step("rateFalls", { rate }, rate_mm_h)
      : sheet.step("rateSpread", { intake, flow, area }, rate_mm_h);
  const longest_min = minutesWithin(ready.grown.bed, rounds, 1, flow_L_min);
  if (!Number.isFinite(longest_min)) {
    sheet.list([{ ...intake, name: roundSources.intakeName }], "mm/h");
    sheet.step("cyclesOne", {}, run.cycles);
    return;
  }
  const longestRun = sheet.step("longestRun", { storage, rateHere, intake }, longest_min);
  if (run.cycles === run.minutes && run.minutes < Math.ceil(run.minutes / longest_min - 1e-9))
    sheet.step("cyclesMinute", { plannedMinutes }, run.cycles);
  else sheet.step("cyclesSplit", { plannedMinutes, longestRun }, run.cycles);
}

/** The step to the rest between two runs. */
export function soakSteps(book: RoundBook, sheet: Sheet, bed: BedNeed, run: RunTime): void {
  if (run.cycles > 1) sheet.step("soak", soilInputs(book, bed), run.soak_min);
  else sheet.step("soakNone", {}, run.soak_min);
}
