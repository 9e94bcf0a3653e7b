import type { Bed } from "../grounds.ts";
import type { Calendar } from "../weather/series.ts";
import { eveEndsAt_min, handHours, speaksOf } from "./rules.ts";
import type { Ban, RoundsBed, RoundsSite } from "./site.ts";
import { minutesOfDay } from "./site.ts";
import { common, minutesIn, type Stretch, wholeDay, without } from "./stretches.ts";

/** 1 on each day of a record on which a rule that comes back every year holds; dated rules belong to no record. */
function holdsByDay(ban: Ban, { days, month, dayOfMonth, weekday }: Calendar): Uint8Array {
  const start = monthDay(ban.from ?? "01-01");
  const end = monthDay(ban.to ?? "12-31");
  const odd = ban.parity === "odd" ? 1 : 0;
  return Uint8Array.from({ length: days }, (_, i) => {
    const now = 100 * (month[i]! + 1) + dayOfMonth[i]!;
    const within = start <= end ? now >= start && now <= end : now >= start || now <= end;
    if (!within || !ban.weekdays[weekday[i]!]) return 0;
    return ban.parity === null || dayOfMonth[i]! % 2 === odd ? 1 : 0;
  });
}

function monthDay(text: string): number {
  return 100 * Number(text.slice(0, 2)) + Number(text.slice(3, 5));
}

/** Whether a rule comes back every year (or has no dates), and so bears on a record of other years. */
export function isYearly({ from, to }: { from: string | null; to: string | null }): boolean {
  return (from ?? "").length < 10 && (to ?? "").length < 10;
}

/** The yearly restrictions of a site, made ready for a record. */
export interface RecordRules {
  site: RoundsSite;
  calendar: Calendar;
  bans: readonly { ban: Ban; holds: Uint8Array }[];
  /** Open minutes by day for beds that the same rules bind. */
  seen: Map<string, Uint16Array>;
}

export function recordRules(site: RoundsSite, calendar: Calendar): RecordRules {
  const bans = site.bans.filter(isYearly).map((ban) => ({ ban, holds: holdsByDay(ban, calendar) }));
  return { site, calendar, bans, seen: new Map() };
}

/** Minutes of each day of a record in which yearly rules, hours and dry weekdays let a bed be watered. */
export function openMinutesByDay(rules: RecordRules, rounds: RoundsBed, bed: Bed): Uint16Array {
  const mine = rules.bans.filter(({ ban }) => speaksOf(ban, rounds, bed));
  const { byHand, allowedWeekdays } = bed.watering;
  const key = JSON.stringify([byHand, allowedWeekdays, rounds.dryWeekdays, mine.map(({ ban }) => ban.id)]);
  const known = rules.seen.get(key);
  if (known) return known;
  const { calendar, site } = rules;
  const byKind = new Map<number, number>();
  const minutes = Uint16Array.from(calendar.weekday, (weekday, i) => {
    if (!allowedWeekdays[weekday] || rounds.dryWeekdays[weekday]) return 0;
    let kind = weekday;
    for (const { holds } of mine) kind = kind * 4 + (holds[i]! ? 1 : 0) + (i > 0 && holds[i - 1] ? 2 : 0);
    const seen = byKind.get(kind);
    if (seen !== undefined) return seen;
    const open = dayMinutes(site, rounds, byHand, weekday, mine, i);
    byKind.set(kind, open);
    return open;
  });
  rules.seen.set(key, minutes);
  return minutes;
}

/** Day number of a Monday; hours go by the weekday alone. */
const monday = 4;

function dayMinutes(
  site: RoundsSite,
  rounds: RoundsBed,
  byHand: boolean,
  weekday: number,
  bans: readonly { ban: Ban; holds: Uint8Array }[],
  i: number,
): number {
  let open: Stretch[] = byHand ? handHours(site, monday + weekday) : [...wholeDay];
  if (rounds.dryWeekdays[(weekday + 1) % 7]) open = common(open, [{ from: 0, to: eveEndsAt_min }]);
  for (const { ban, holds } of bans) {
    const today = holds[i] === 1;
    const yesterday = i > 0 && holds[i - 1] === 1;
    open = without(open, hoursTaken(ban, today, yesterday));
  }
  return minutesIn(open);
}

function hoursTaken({ minutes }: Ban, today: boolean, yesterday: boolean): Stretch[] {
  if (minutes === null) return today ? [...wholeDay] : [];
  const { from, to } = minutes;
  if (from < to) return today ? [{ from, to }] : [];
  return [...(today ? [{ from, to: minutesOfDay }] : []), ...(yesterday ? [{ from: 0, to }] : [])];
}
