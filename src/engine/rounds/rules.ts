import type { Absence, Bed } from "../grounds.ts";
import { fromDay, parseIso, weekday } from "../weather/dates.ts";
import { type Ban, minutesOfDay, type RoundsBed, type RoundsSite } from "./site.ts";
import { common, joined, minutesIn, type Stretch, wholeDay, without } from "./stretches.ts";

/** On the day before a bed must be dry, watering ends by noon. Common practice. */
export const eveEndsAt_min = 720;

/** Why a bed may not be watered on a day; a restriction gives its id. */
export type ClosedBy =
  | { code: "no-supply" }
  | { code: "not-an-allowed-day" }
  | { code: "must-be-dry" }
  | { code: "nobody-there" }
  | { code: "restriction"; id: string };

/** Whether a rule with dates holds on a day. Rules with ISO dates hold in their own year alone. */
export function withinRule(from: string | null, to: string | null, day: number): boolean {
  const isDate = (end: string | null) => end === null || parseIso(end) !== null;
  if (isDate(from) && isDate(to))
    return (from === null || day >= parseIso(from)!) && (to === null || day <= parseIso(to)!);
  const start = from ?? "01-01";
  const end = to ?? "12-31";
  const { month, day: dayOfMonth } = fromDay(day);
  const now = `${String(month).padStart(2, "0")}-${String(dayOfMonth).padStart(2, "0")}`;
  return start <= end ? now >= start && now <= end : now >= start || now <= end;
}

/** Whether a restriction speaks of a bed at all. */
export function speaksOf(ban: Ban, rounds: RoundsBed, bed: Bed): boolean {
  return (
    !ban.exempt.includes(bed.id) &&
    (ban.methods === null || ban.methods.includes(rounds.method)) &&
    (ban.supplies === null || ban.supplies.includes(bed.watering.supply))
  );
}

/** Whether a restriction holds on a day, whatever the hour. */
export function holdsOn(ban: Ban, day: number): boolean {
  if (!ban.weekdays[weekday(day)] || !withinRule(ban.from, ban.to, day)) return false;
  if (ban.parity === null) return true;
  return (fromDay(day).day % 2 === 1) === (ban.parity === "odd");
}

/** The hours of a day that a restriction takes, the tail of the day before's included. */
export function takenBy(ban: Ban, day: number): Stretch[] {
  const { minutes } = ban;
  const today = holdsOn(ban, day);
  if (minutes === null) return today ? [...wholeDay] : [];
  const { from, to } = minutes;
  if (from < to) return today ? [{ from, to }] : [];
  return joined([
    ...(today ? [{ from, to: minutesOfDay }] : []),
    ...(holdsOn(ban, day - 1) ? [{ from: 0, to }] : []),
  ]);
}

function isDryDay({ dryDays, dryWeekdays }: RoundsBed, day: number): boolean {
  return dryWeekdays[weekday(day)]! || dryDays.includes(day);
}

/** Whether nobody is there to water by hand on a day; an absence without a carer counts though another covers it. */
export function nobodyThere(absences: readonly Absence[], day: number): boolean {
  return absences.some(({ from, to, hasCarer }) => !hasCarer && withinRule(from, to, day));
}

/** When a bed may be watered on a day, and what closes it where it may not. */
export interface OpenHours {
  stretches: Stretch[];
  closedBy: ClosedBy[];
}

/**
 * The hours of one day in which a bed may be watered: its allowed days, restrictions, days when it must be dry,
 * and for a bed run by hand the site's hours and absences. A timer runs at any hour that is allowed.
 */
export function openHours(
  site: RoundsSite,
  absences: readonly Absence[],
  rounds: RoundsBed,
  bed: Bed,
  day: number,
): OpenHours {
  const { watering } = bed;
  const closedBy: ClosedBy[] = [];
  if (watering.supply === "none") closedBy.push({ code: "no-supply" });
  if (!watering.allowedWeekdays[weekday(day)]) closedBy.push({ code: "not-an-allowed-day" });
  if (isDryDay(rounds, day)) closedBy.push({ code: "must-be-dry" });
  if (watering.byHand && nobodyThere(absences, day)) closedBy.push({ code: "nobody-there" });
  let stretches = watering.byHand ? handHours(site, day) : [...wholeDay];
  if (watering.byHand && stretches.length === 0) closedBy.push({ code: "nobody-there" });
  if (isDryDay(rounds, day + 1)) stretches = common(stretches, [{ from: 0, to: eveEndsAt_min }]);
  for (const ban of site.bans) {
    if (!speaksOf(ban, rounds, bed)) continue;
    const before_min = minutesIn(stretches);
    stretches = without(stretches, takenBy(ban, day));
    if (before_min > 0 && stretches.length === 0) closedBy.push({ code: "restriction", id: ban.id });
  }
  return { stretches: closedBy.length > 0 ? [] : stretches, closedBy };
}

/** When somebody waters on a day; the whole day where the survey gives no hours at all. */
export function handHours({ hours }: RoundsSite, day: number): Stretch[] {
  if (hours.length === 0) return [...wholeDay];
  const today = hours
    .filter(({ weekdays }) => weekdays[weekday(day)])
    .map(({ fromMinute, toMinute }) => ({
      from: fromMinute,
      to: toMinute > fromMinute ? toMinute : minutesOfDay,
    }));
  const tail = hours
    .filter(({ weekdays, fromMinute, toMinute }) => toMinute < fromMinute && weekdays[weekday(day - 1)])
    .map(({ toMinute }) => ({ from: 0, to: toMinute }));
  return joined([...today, ...tail]);
}
