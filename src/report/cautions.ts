import type { CautionCode } from "../survey/cautions.ts";
import type { NormalsCaution } from "../survey/normals/for-survey.ts";
import type { WorkedOut } from "./work-out.ts";

/** More of a record filled than this is said beside the result. @source method of this project */
const muchFilled = 0.1;
const shortRecord_days = 365;

/** What a reader should bear in mind: from the survey, or from the record; the sentences are in words. */
export type Caution =
  | { code: CautionCode }
  | NormalsCaution
  | { code: "record-short"; days: number }
  | { code: "record-filled"; filled: number; days: number }
  | { code: "record-generated"; years: number; seed: number; source: string }
  | { code: "no-whole-year" }
  | { code: "shade-by-radiation"; beds: string[] }
  | { code: "today-unknown"; beds: string[] }
  | { code: "own-water"; beds: string[] };

/** What bears on this result: what the record lacks first, then what the survey calls for. */
export function cautionsFor({ resolved, filled, notes, ready, outcome, survey }: WorkedOut): Caution[] {
  const names = new Map(survey.beds.map((bed) => [bed.id, bed.name]));
  const named = (ids: string[]) => ids.map((id) => names.get(id) ?? id);
  const byRadiation = ready.beds.filter(({ grown }) => grown.shadeByRadiationAlone);
  const ownWater = ready.beds.filter(({ grown }) => grown.bed.watering.supply === "other");
  const cautions: Caution[] = [];
  if (filled.days < shortRecord_days) cautions.push({ code: "record-short", days: filled.days });
  if (filled.shareFilled > muchFilled)
    cautions.push({ code: "record-filled", filled: filled.filledDays, days: filled.days });
  if (notes) cautions.push({ code: "record-generated", ...notes.generated }, ...notes.cautions);
  if (outcome.mains.byYear.length === 0) cautions.push({ code: "no-whole-year" });
  if (outcome.mains.todayUnknown.length > 0)
    cautions.push({ code: "today-unknown", beds: named(outcome.mains.todayUnknown) });
  if (ownWater.length > 0)
    cautions.push({ code: "own-water", beds: named(ownWater.map(({ grown }) => grown.bed.id)) });
  if (byRadiation.length > 0)
    cautions.push({ code: "shade-by-radiation", beds: named(byRadiation.map(({ grown }) => grown.bed.id)) });
  return [...cautions, ...resolved.cautions.map((code) => ({ code }))];
}
