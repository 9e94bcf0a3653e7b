import { type BedYear, bedYear } from "./bed-year.ts";
import type { WateredAs } from "./need-days.ts";
import { type TankLimit, tankLimit } from "./tank-limit.ts";
import { type Trial, trialBench, tryTank } from "./tank-trial.ts";
import { type Without, without } from "./without.ts";
import type { WorkedOut } from "./work-out.ts";

/** What a screen asks of a site that is worked out, once somebody looks at it; plain data, answered beside the page. */
export type Question =
  | { kind: "bed-year"; bed: string; year: number; as: WateredAs }
  | { kind: "without"; bed: string }
  | { kind: "tank-limit"; tank: string }
  | { kind: "tank-trial"; tank: string; capacity_L: number; roof_m2: number; year: number | null };

export type Reply =
  | { kind: "bed-year"; of: BedYear | null }
  | { kind: "without"; bed: string; of: Without[] }
  | { kind: "tank-limit"; of: TankLimit | null }
  | { kind: "tank-trial"; of: Trial | null };

/** Pure, but that a site keeps what its answers share. */
export function answerTo(worked: WorkedOut, question: Question): Reply {
  const { kind } = question;
  if (kind === "tank-trial") {
    const bench = trialBench(worked, question.tank);
    const { capacity_L, roof_m2, year } = question;
    return { kind, of: bench && tryTank(bench, capacity_L, roof_m2, year) };
  }
  if (kind === "tank-limit") {
    const bench = trialBench(worked, question.tank);
    return { kind, of: bench && tankLimit(bench) };
  }
  const k = worked.survey.beds.findIndex(({ id }) => id === question.bed);
  if (kind === "without") return { kind, bed: question.bed, of: k < 0 ? [] : without(worked, k) };
  return { kind, of: k < 0 ? null : bedYear(worked, k, question.year, question.as) };
}
