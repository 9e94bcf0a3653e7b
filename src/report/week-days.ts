import { proposedHours } from "../engine/rounds/cool-hours.ts";
import type { FlowLimit, Job } from "../engine/rounds/packing.ts";
import { type PackedDay, packDay } from "../engine/rounds/packing-day.ts";
import type { Ranked } from "../engine/rounds/ration.ts";
import { cycleMinutes, elapsed_min, type RunTime } from "../engine/rounds/run-time.ts";
import type { WeekBed, WeekWatering } from "../engine/rounds/week-facts.ts";
import { week_days } from "../engine/rounds/week-facts.ts";
import type { RoundsWorked } from "./rounds-work.ts";
import { sunMinutes } from "./sun-minutes.ts";
import { lineFlows_L_min, tapFlow_L_min } from "./week-ask.ts";

/** One day of the week's round with its times. */
export interface WeekDay {
  day: number;
  sun: ReturnType<typeof sunMinutes>;
  packed: PackedDay;
}

/** Gives every watering of the week its time: the cool hours first, all open hours where those are too short. */
export function weekDays(
  worked: RoundsWorked,
  firstDay: number,
  beds: readonly WeekBed[],
  order: readonly Ranked[],
  levels: ReadonlyMap<string, number | null>,
): WeekDay[] {
  const limits = flowLimits(worked, levels);
  const rank = new Map(order.map(({ id }, place) => [id, place]));
  return Array.from({ length: week_days }, (_, d) => {
    const day = firstDay + d;
    const sun = sunMinutes(day, worked.survey.site);
    const today = beds
      .flatMap((bed) => bed.waterings.filter((one) => one.day === day).map((watering) => ({ bed, watering })))
      .sort((a, b) => rank.get(a.bed.id)! - rank.get(b.bed.id)!);
    const jobs = today.map(({ bed, watering }) => jobOf(worked, bed.id, watering, limits));
    const cool = jobs.map((job, k) => {
      const { watering } = today[k]!;
      const isPreferred = !job.byHand || worked.need.site.hours.length === 0;
      const stretches = isPreferred
        ? proposedHours(job.stretches, sun, elapsed_min(watering))
        : job.stretches;
      return { ...job, stretches };
    });
    const inCool = packDay(cool, limits);
    return { day, sun, packed: inCool.left.length === 0 ? inCool : packDay(jobs, limits) };
  });
}

/** Taps, then lines, as places among the supplies. A tap with no flow measured limits nothing. */
export function flowLimits({ need }: RoundsWorked, levels: ReadonlyMap<string, number | null>): FlowLimit[] {
  const taps = need.site.taps.map((tap) => ({ id: tap.id, flow_L_min: tapFlow_L_min(need, tap, levels) }));
  const lines = [...lineFlows_L_min(need, levels)].map(([id, flow_L_min]) => ({
    id: lineId(id),
    flow_L_min,
  }));
  return [...taps, ...lines].filter(({ flow_L_min }) => Number.isFinite(flow_L_min));
}

function lineId(line: string): string {
  return `line ${line}`;
}

/** A bed's watering as a job of the day. */
export function jobOf(
  worked: RoundsWorked,
  id: string,
  watering: RunTime & Pick<WeekWatering, "stretches">,
  limits: readonly FlowLimit[],
): Job {
  const { need } = worked;
  const { ready, rounds } = need.beds.find((bed) => bed.rounds.id === id)!;
  const { byHand } = ready.grown.bed.watering;
  const tap = need.site.taps.find((one) => one.id === rounds.tap);
  const uses = [tap?.id, tap?.line ? lineId(tap.line) : undefined]
    .map((supply) => limits.findIndex((limit) => limit.id === supply))
    .filter((use) => use >= 0);
  const isMoved = byHand && (rounds.method === "hose" || rounds.method === "sprinkler");
  const tapAt = limits.findIndex((limit) => limit.id === tap?.id);
  return {
    id,
    runs_min: cycleMinutes(watering),
    soak_min: watering.soak_min,
    flow_L_min: watering.litres / watering.minutes,
    uses,
    byHand,
    hoseOf: isMoved && tapAt >= 0 ? tapAt : null,
    at_m: rounds.at_m ?? tap?.at_m ?? null,
    stretches: watering.stretches,
  };
}
