import { type PreparedBed, slot } from "../bed-day.ts";
import { openRun } from "./open-run.ts";
import { type ClosedBy, openHours } from "./rules.ts";
import type { RoundsBed } from "./site.ts";
import {
  type BedMember,
  type Forecast,
  lookAhead_days,
  lookBack_days,
  rangeOf,
  rootDepletion,
  runMember,
} from "./soil-now.ts";
import type { Stretch } from "./stretches.ts";
import type { RoundsNeed } from "./table.ts";
import { type WeekFacts, type WeekWatering, week_days } from "./week-facts.ts";

export interface Plan {
  waterings: WeekWatering[];
  stressDays: number;
  /** What stood in the way on each day on which the bed was due. */
  closedWhenDue: readonly ClosedBy[];
  waitedFor: Forecast | null;
}

/**
 * Goes through the week day by day, in the weather of every year at once: waters what is due, or what the next open
 * day would come too late for, unless likely rain is worth waiting for.
 */
export function planBed(
  need: RoundsNeed,
  { prepared, rounds }: { prepared: PreparedBed; rounds: RoundsBed },
  states: readonly BedMember[],
  facts: WeekFacts,
  isDoubtful: boolean,
): Plan {
  const { bed } = prepared;
  const flow_L_min = facts.flow_L_min.get(bed.id) ?? bed.watering.flow_L_min;
  const hours = Array.from({ length: lookAhead_days }, (_, d) =>
    openHours(need.site, need.ready.grounds.absences, rounds, bed, facts.firstDay + d),
  );
  const waterings: WeekWatering[] = [];
  const closedWhenDue: ClosedBy[] = [];
  let waitedFor: Forecast | null = null;
  let stressDays = 0;
  for (let d = 0; d < week_days; d++) {
    const ofSoils_mm = states.map(rootDepletion);
    const missing_mm = rangeOf(ofSoils_mm);
    const now_mm = missing_mm.middle;
    const isDue = now_mm >= prepared.trigger_mm;
    const { stretches, closedBy } = hours[d]!;
    if (isDue && stretches.length === 0) closedWhenDue.push(...closedBy);
    if (stretches.length > 0 && now_mm > 0) {
      const next = hours.findIndex((later, k) => k > d && later.stretches.length > 0);
      const tooLate = !isDue && sufferBefore(states, prepared, d, next < 0 ? lookAhead_days : next);
      const rain = isDue ? rainWorthWaiting(states, prepared, facts, d, hours) : null;
      if (rain) waitedFor = rain;
      else if (isDue || tooLate) {
        const run = openRun(prepared, rounds, now_mm, flow_L_min, stretches);
        if (run !== null) {
          for (const one of states) one.net_mm[lookBack_days + d] = run.net_mm;
          const nextOpenDay = facts.firstDay + (next < 0 ? lookAhead_days : next);
          waterings.push({
            ...run,
            day: facts.firstDay + d,
            missing_mm,
            ofSoils_mm,
            stretches,
            reason: tooLate
              ? { code: "before-closed-days", nextOpenDay }
              : { code: isDoubtful && waterings.length === 0 ? "check-first" : "due" },
          });
        }
      }
    }
    const before = states.map(({ state }) => state[slot.stressDays]!);
    for (const one of states) runMember(one, lookBack_days + d, lookBack_days + d + 1);
    const stressed = states.filter(({ state }, k) => state[slot.stressDays]! > before[k]!).length;
    if (stressed > states.length / 2) stressDays++;
  }
  return { waterings, stressDays, closedWhenDue, waitedFor };
}

/** A copy of each member run on without water, and the middle of what is then missing. */
function middleAfter_mm(states: readonly BedMember[], from: number, to: number): number {
  const ends = states.map((one) => {
    const copy = { ...one, state: one.state.slice() };
    runMember(copy, lookBack_days + from, lookBack_days + to);
    return rootDepletion(copy);
  });
  return rangeOf(ends).middle;
}

/** A whole day past due is what waiting for the next open day may cost. Ours. */
function sufferBefore(
  states: readonly BedMember[],
  prepared: PreparedBed,
  day: number,
  nextOpen: number,
): boolean {
  if (nextOpen <= day + 1) return false;
  return middleAfter_mm(states, day, nextOpen - 1) >= prepared.trigger_mm;
}

/** Days that a due watering may wait for rain. Ours. */
const longestWait_days = 3;
/** Chance from which rain is worth waiting for. Ours. */
const likely = 0.5;

/**
 * Rain that is likely, that would stand in for a good part of the watering, and that comes while the plants still
 * bear the wait: what the roots lose until the day after must stay within a quarter beyond the trigger.
 */
function rainWorthWaiting(
  states: readonly BedMember[],
  prepared: PreparedBed,
  { forecast, firstDay }: WeekFacts,
  day: number,
  hours: readonly { stretches: readonly Stretch[] }[],
): Forecast | null {
  const rain = forecast.find(
    (one) =>
      one.chance >= likely &&
      one.day >= firstDay + day &&
      one.day <= firstDay + day + longestWait_days &&
      one.rain_mm * prepared.bed.rainShare >= prepared.trigger_mm / 2,
  );
  if (!rain) return null;
  const after = rain.day - firstDay + 1;
  if (after >= lookAhead_days || hours[after]!.stretches.length === 0) return null;
  const dry = states.map((one) => {
    const rain_mm = one.bed.rain_mm.slice();
    rain_mm[lookBack_days + after - 1] = 0;
    return { ...one, bed: { ...one.bed, rain_mm } };
  });
  return middleAfter_mm(dry, day, after) <= 1.25 * prepared.trigger_mm ? rain : null;
}
