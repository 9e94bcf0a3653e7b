import { fromDay, weekday } from "../weather/dates.ts";
import { fallsOn } from "./pattern.ts";
import type { ClosedBy } from "./rules.ts";
import { bedMember, lookBack_days, type Member, membersOf, rangeOf, soilSince } from "./soil-now.ts";
import type { BedMonth, BedNeed, RoundsNeed } from "./table.ts";
import {
  type Given,
  type LeaveReason,
  type WeekBed,
  type WeekFacts,
  type WeekRound,
  week_days,
} from "./week-facts.ts";
import { type Plan, planBed } from "./week-plan.ts";

/** The round of a week: each bed's soil now, and what to water on which day. */
export function weekRound(
  need: RoundsNeed,
  table: ReadonlyMap<string, readonly BedMonth[]>,
  facts: WeekFacts,
): WeekRound {
  const members = membersOf(need.ready.weather, facts);
  return {
    firstDay: facts.firstDay,
    members,
    beds: need.beds.map((bed) => weekBed(need, bed, table.get(bed.rounds.id) ?? [], facts, members)),
  };
}

function weekBed(
  need: RoundsNeed,
  { ready, rounds, input }: BedNeed,
  months: readonly BedMonth[],
  facts: WeekFacts,
  members: readonly Member[],
): WeekBed {
  const isYoung = rounds.youngUntilDay !== null && facts.firstDay <= rounds.youngUntilDay;
  const prepared = (isYoung && ready.establishing) || ready.grown;
  const given = facts.given.get(rounds.id) ?? [];
  const answers = answersFor(given, facts, months);
  const from = knownFrom(facts);
  const { year } = need.ready.weather.calendar;
  const soils = members.flatMap((member) =>
    answers.map((waterings) => {
      const start_mm = input.need.depletion_mm[Math.max(0, member.at + from - 1)]!;
      const one = bedMember(prepared, member, start_mm);
      for (const { day, net_mm } of waterings) {
        const i = day - facts.firstDay + lookBack_days;
        if (i >= from && i < lookBack_days) one.net_mm[i]! += net_mm;
      }
      return { one, year: year[member.at + lookBack_days]!, soil: soilSince(one, from) };
    }),
  );
  const states = soils.map(({ one }) => one);
  const depletion_mm = rangeOf(soils.map(({ soil }) => soil.depletion_mm));
  const base = {
    id: rounds.id,
    isYoung,
    depletion_mm,
    since: {
      days: lookBack_days - from,
      soils: soils.map(({ year: ofYear, soil }) => ({ year: ofYear, ...soil })),
    },
    available_mm: prepared.available_mm,
    trigger_mm: prepared.trigger_mm,
  };
  if (prepared.bed.watering.supply === "none")
    return { ...base, waterings: [], stressDays: 0, leave: { code: "nobody-waters" } };
  const plan = planBed(need, { prepared, rounds }, states, facts, answers.length > 1);
  const { waterings, stressDays } = plan;
  return {
    ...base,
    waterings,
    stressDays,
    leave: plan.waterings.length > 0 ? null : leaveReason(plan, given, facts, members),
  };
}

/**
 * Day of the look back from which something is known: the log's first entry, a week back at least. Before it the
 * soil stands as if watered to need, since nothing says otherwise.
 */
function knownFrom({ firstDay, given, gauge }: WeekFacts): number {
  const days = [...[...given.values()].flat(), ...gauge].map(({ day }) => firstDay - day);
  return lookBack_days - Math.min(lookBack_days, Math.max(week_days, ...days));
}

/**
 * What may have been given since the last look: the log's waterings; where it is silent over the last week, the
 * answer to what was done, and both where that is not known.
 */
function answersFor(
  given: readonly Given[],
  facts: WeekFacts,
  months: readonly BedMonth[],
): (readonly Given[])[] {
  const { firstDay, lastRound } = facts;
  const recent = given.some(({ day }) => day >= firstDay - week_days && day < firstDay);
  const usual = months.length > 0 ? lastTabled(months, firstDay) : null;
  if (recent || usual === null || lastRound === "none") return [given];
  const done = [...given, usual];
  return lastRound === "all" ? [done] : [given, done];
}

/** The table's last watering in the week before. */
function lastTabled(months: readonly BedMonth[], firstDay: number): Given | null {
  for (let day = firstDay - 1; day >= firstDay - week_days; day--) {
    const { month, day: date } = fromDay(day);
    const row = months[month - 1]!;
    if (row.minutes > 0 && fallsOn(row.pattern, weekday(day), date)) return { day, net_mm: row.net_mm };
  }
  return null;
}

/** Rain of the last week that counts as having spared a watering, mm. Ours. */
const sparing_mm = 5;

function leaveReason(
  { closedWhenDue, waitedFor }: Plan,
  given: readonly Given[],
  { firstDay }: WeekFacts,
  members: readonly Member[],
): LeaveReason {
  if (waitedFor) return { code: "rain-likely", ...waitedFor };
  if (closedWhenDue.length > 0) return { code: "closed", closedBy: distinct(closedWhenDue) };
  const rain_mm = rangeOf(
    members.map(({ rain_mm: days }) =>
      days.slice(lookBack_days - week_days, lookBack_days).reduce((a, b) => a + b, 0),
    ),
  ).middle;
  const last = given.filter(({ day }) => day >= firstDay - week_days && day < firstDay).at(-1);
  if (last) return { code: "watered-lately", day: last.day };
  return rain_mm >= sparing_mm ? { code: "enough-after-rain", rain_mm } : { code: "enough" };
}

function distinct(closedBy: readonly ClosedBy[]): ClosedBy[] {
  const seen = new Map(closedBy.map((one) => [JSON.stringify(one), one]));
  return [...seen.values()];
}
