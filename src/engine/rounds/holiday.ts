import { freshState, runDays, slot } from "../bed-day.ts";
import type { Absence } from "../grounds.ts";
import { dayNumber, fromDay, parseIso } from "../weather/dates.ts";
import { sameDates } from "./members.ts";
import { openRun } from "./open-run.ts";
import { openHours } from "./rules.ts";
import { type RunTime, runTime } from "./run-time.ts";
import { type Range, rangeOf } from "./soil-now.ts";
import type { BedNeed, RoundsNeed } from "./table.ts";

/** An absence on the calendar, its first and last day. */
export interface AwayDays {
  fromDay: number;
  toDay: number;
}

/** The absence's next turn that ends on a day or after it; null where it is over. */
export function nextTurn({ from, to }: Pick<Absence, "from" | "to">, day: number): AwayDays | null {
  const first = parseIso(from);
  const last = parseIso(to);
  if (first !== null && last !== null) return last >= day ? { fromDay: first, toDay: last } : null;
  const { year } = fromDay(day);
  for (const start of [year - 1, year, year + 1]) {
    const fromDay_ = yearly(from, start);
    const toDay = yearly(to, from <= to ? start : start + 1);
    if (toDay >= day) return { fromDay: fromDay_, toDay };
  }
  return null;
}

/** MM-DD in a year; 29 February is 28 February where there is none. */
function yearly(monthDay: string, year: number): number {
  const [month, date] = monthDay.split("-").map(Number);
  return parseIso(`${String(year).padStart(4, "0")}-${monthDay}`) ?? dayNumber(year, month!, date! - 1);
}

export interface HolidayBed {
  id: string;
  /** Day of the last soak before; null where no day is open in the fortnight before. */
  soakDay: number | null;
  /** A refill from the point at which it is watered, as far as that day's hours and the method go; 0 minutes without a day. */
  soak: RunTime;
  /** Days from the first day away until the plants begin to suffer, over the years; farthest_days: not before. */
  lasts_days: Range;
  ofYears: readonly { year: number; days: number }[];
  /** By when somebody must come, on the cautious side; null where it lasts the absence. */
  visitByDay: number | null;
  movePots: boolean;
}

const farthest_days = 120;

/** What a bed that is watered by hand needs before and during an absence with nobody there. */
export function holidayBeds(need: RoundsNeed, away: AwayDays): HolidayBed[] {
  return need.beds
    .filter(({ ready: { grown } }) => grown.bed.watering.byHand && grown.bed.watering.supply !== "none")
    .map((bed) => holidayBed(need, bed, away));
}

function holidayBed(need: RoundsNeed, { ready, rounds, input }: BedNeed, away: AwayDays): HolidayBed {
  const { bed } = ready.grown;
  const { soakDay, soak } = lastSoak(need, { ready, rounds, input }, away.fromDay);
  const left_mm = Math.max(0, ready.grown.trigger_mm - soak.net_mm);
  const waited = soakDay === null ? 0 : away.fromDay - soakDay;
  const places = sameDates(need.ready.weather.calendar, away.fromDay - waited, 0, farthest_days);
  const { year } = need.ready.weather.calendar;
  const ofYears = places.map((at) => ({
    year: year[at]!,
    days: daysUntilDry(ready.grown, at, left_mm) - waited,
  }));
  const lasts_days = rangeOf(ofYears.map(({ days }) => days));
  const isYoung = rounds.youngUntilDay !== null && away.fromDay <= rounds.youngUntilDay;
  const cautious = away.fromDay + Math.max(0, Math.floor(isYoung ? lasts_days.low / 2 : lasts_days.low));
  return {
    id: bed.id,
    soakDay,
    soak,
    lasts_days,
    ofYears,
    visitByDay: cautious <= away.toDay ? cautious : null,
    movePots: rounds.inPots,
  };
}

/** The last open day of the fortnight before, and the refill that its hours leave. */
function lastSoak(
  need: RoundsNeed,
  { ready: { grown }, rounds }: BedNeed,
  before: number,
): { soakDay: number | null; soak: RunTime } {
  const { bed, trigger_mm } = grown;
  for (let day = before - 1; day >= before - 14; day--) {
    const { stretches } = openHours(need.site, need.ready.grounds.absences, rounds, bed, day);
    const soak = openRun(grown, rounds, trigger_mm, bed.watering.flow_L_min, stretches);
    if (soak) return { soakDay: day, soak };
  }
  return { soakDay: null, soak: runTime(bed, rounds, 0) };
}

/** Days until what is missing goes beyond what the roots may lose, under one year's weather. */
function daysUntilDry(bed: BedNeed["ready"]["grown"], at: number, missing_mm: number): number {
  const state = freshState();
  state[slot.rootDepletion] = missing_mm;
  const none = new Float64Array(at + farthest_days);
  for (let d = 0; d < farthest_days; d++) {
    runDays(bed, state, none, null, at + d, at + d + 1, null);
    if (state[slot.rootDepletion]! > bed.trigger_mm) return d;
  }
  return farthest_days;
}
