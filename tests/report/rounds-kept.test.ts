import fc from "fast-check";
import { expect, test } from "vitest";
import { dayNumber, fromDay, parseIso, weekday } from "../../src/engine/weather/dates.ts";
import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { monthDays } from "../../src/report/month-days.ts";
import { type RoundsWorked, workOutRounds } from "../../src/report/rounds-work.ts";
import { workOutWeek } from "../../src/report/week-work.ts";
import type { Survey, SurveyRestriction } from "../../src/survey/survey.ts";
import { weekdays } from "../../src/survey/words.ts";
import { demoRecord, demoSurvey } from "../helpers/demo-rounds.ts";

/** Thousands of sites with rules of every sort: nothing that is proposed breaks one, no tap runs beyond its flow. */

const days = fc.uniqueArray(fc.constantFrom(...weekdays), { maxLength: 5 });
const clock = fc.integer({ min: 0, max: 23 }).map((hour) => `${String(hour).padStart(2, "0")}:00`);
const monthDay = fc
  .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }))
  .map((parts) => parts.map((part) => String(part).padStart(2, "0")).join("-"));

const restriction = fc
  .record(
    {
      span: fc.oneof(fc.tuple(monthDay, monthDay), fc.constant(["2026-07-06", "2026-07-20"] as const)),
      days,
      hours: fc.tuple(clock, clock).filter(([from, to]) => from !== to),
      methods: fc.uniqueArray(fc.constantFrom("drip", "spray", "hose", "sprinkler"), { maxLength: 3 }),
      supplies: fc.uniqueArray(fc.constantFrom("mains-only", "tank-then-mains"), { maxLength: 2 }),
      parity: fc.constantFrom("odd", "even"),
      exempt: fc.constant(["bed-1"]),
    },
    { requiredKeys: [] },
  )
  .map(({ span, hours, ...rest }) => ({
    ...rest,
    ...(span && { from: span[0], to: span[1] }),
    ...(hours && { fromTime: hours[0], toTime: hours[1] }),
  }));

const bed = fc.record({
  method: fc.constantFrom("drip", "spray", "hose", "sprinkler"),
  supply: fc.constantFrom("mains-only", "tank-then-mains"),
  area_m2: fc.integer({ min: 5, max: 80 }),
  flow_L_min: fc.integer({ min: 4, max: 25 }),
  byHand: fc.boolean(),
  tap: fc.constantFrom("north", "south", undefined),
  allowedDays: fc.option(
    days.filter((list) => list.length > 0),
    { nil: undefined },
  ),
  dryOn: fc.option(fc.constantFrom(["sat"], ["2026-07-10", "2026-07-14"]), { nil: undefined }),
  texture: fc.constantFrom("sandy-loam", "clay-loam"),
  thirst: fc.constantFrom("moderate", "high"),
});

const site = fc.record({
  beds: fc.array(bed, { minLength: 1, maxLength: 4 }),
  restrictions: fc.array(restriction, { maxLength: 3 }),
  hours: fc.option(fc.tuple(days, clock, clock), { nil: undefined }),
  isAway: fc.boolean(),
  northFlow_L_min: fc.integer({ min: 6, max: 30 }),
  isOneLine: fc.boolean(),
});

type Site = typeof site extends fc.Arbitrary<infer T> ? T : never;

function surveyOf({ beds, restrictions, hours, isAway, northFlow_L_min, isOneLine }: Site): Survey {
  return demoSurvey((survey) => {
    survey.site.hours =
      hours && hours[1] !== hours[2] ? [{ days: hours[0], fromTime: hours[1], toTime: hours[2] }] : undefined;
    survey.site.absences = isAway ? [{ name: "Away", from: "07-08", to: "07-12" }] : undefined;
    survey.restrictions = restrictions.map(
      (one, k) => ({ id: `rule-${k}`, name: "A rule", ...one }) as SurveyRestriction,
    );
    const line = isOneLine ? "ring main" : undefined;
    survey.taps = [
      { id: "north", name: "North", source: "mains", flow_L_min: northFlow_L_min, line },
      { id: "south", name: "South", source: "hall-tank", flow_L_min: 12, line },
    ];
    survey.draws = [];
    survey.beds = beds.map(
      ({ method, supply, flow_L_min, byHand, tap, allowedDays, texture, thirst, ...rest }, k) => ({
        ...rest,
        id: `bed-${k}`,
        name: `Bed ${k}`,
        plantings: [{ kind: "perennials", thirst, share: 1 }],
        soil: { texture },
        watering: {
          method,
          supply,
          tank: supply === "tank-then-mains" ? "hall-tank" : undefined,
          flow_L_min,
          runBy: byHand ? "hand" : "timer",
          tap,
          allowedDays,
        },
      }),
    ) as Survey["beds"];
  });
}

/** One dry summer's year is enough to have something to water. */
const year: WeatherRecord = (() => {
  const { firstDay, columns } = demoRecord();
  const at = dayNumber(2015, 1, 1) - firstDay;
  const cut = Object.entries(columns).map(([name, values]) => [name, values.slice(at, at + 365)]);
  return { firstDay: dayNumber(2015, 1, 1), days: 365, columns: Object.fromEntries(cut) };
})();

/** Whether any rule forbids a bed at a minute of a day, each rule read by itself. */
function isForbidden({ survey }: RoundsWorked, id: string, day: number, minute: number): boolean {
  const own = survey.beds.find((one) => one.id === id)!;
  const { method, supply, allowedDays, runBy } = own.watering;
  const name = (of: number) => weekdays[weekday(of)]!;
  if (allowedDays && !allowedDays.includes(name(day))) return true;
  if (own.dryOn?.some((dry) => dry === name(day) || parseIso(dry) === day)) return true;
  if (runBy === "hand") {
    const away =
      survey.site.absences?.length &&
      [8, 9, 10, 11, 12].includes(fromDay(day).day) &&
      fromDay(day).month === 7;
    if (away) return true;
    const { hours } = survey.site;
    const staffed = (hours ?? []).some((one) => covers(one.days, one.fromTime, one.toTime, day, minute));
    if (hours && hours.length > 0 && !staffed) return true;
  }
  return (survey.restrictions ?? []).some((rule) => {
    if (rule.exempt?.includes(id)) return false;
    if (rule.methods && !rule.methods.includes(method)) return false;
    if (rule.supplies && !rule.supplies.includes(supply)) return false;
    return [day, day - 1].some((start) => {
      if (!holds(rule, start)) return false;
      if (rule.fromTime === undefined || rule.toTime === undefined) return start === day;
      return covers(undefined, rule.fromTime, rule.toTime, day, minute, start);
    });
  });
}

function holds({ from, to, days: named, parity }: SurveyRestriction, day: number): boolean {
  const { month, day: date } = fromDay(day);
  if (named && !named.includes(weekdays[weekday(day)]!)) return false;
  if (parity && (date % 2 === 1) !== (parity === "odd")) return false;
  if (from === undefined || to === undefined) return true;
  const first = parseIso(from);
  if (first !== null) return day >= first && day <= parseIso(to)!;
  const now = 100 * month + date;
  const [start, end] = [from, to].map((text) => Number(text.replace("-", "")));
  return start! <= end! ? now >= start! && now <= end! : now >= start! || now <= end!;
}

/** Whether hours that begin on a day, and may pass midnight, hold at a minute. */
function covers(
  named: readonly string[] | undefined,
  fromTime: string,
  toTime: string,
  day: number,
  minute: number,
  only?: number,
): boolean {
  const at = (time: string) => 60 * Number(time.slice(0, 2)) + Number(time.slice(3));
  const begins = (start: number) =>
    (only === undefined || only === start) && (!named || named.includes(weekdays[weekday(start)]!));
  const [from, to] = [at(fromTime), at(toTime)];
  if (from < to) return begins(day) && minute >= from && minute < to;
  return (begins(day) && minute >= from) || (begins(day - 1) && minute < to);
}

test("no watering of a month or a week breaks a rule, and no tap or line runs beyond its flow", () => {
  let waterings = 0;
  fc.assert(
    fc.property(site, fc.integer({ min: 0, max: 20 }), (drawn, later) => {
      const worked = workOutRounds(surveyOf(drawn), year);
      for (const { day, turns } of monthDays(worked, 2026, 7))
        for (const { id, from_min, to_min } of turns)
          if (from_min !== null && to_min !== null) {
            waterings++;
            expect(isForbidden(worked, id, day, from_min)).toBe(false);
            expect(isForbidden(worked, id, day, to_min - 1)).toBe(false);
          }
      const week = workOutWeek(worked, {
        firstDay: parseIso("2026-07-01")! + later,
        log: [],
        level_L: new Map(),
        lastRound: "none",
        heat: "usual",
        forecast: [],
      });
      for (const { day, packed } of week.days)
        for (const { job, from_min, to_min } of packed.packing.runs) {
          waterings++;
          const { id } = packed.jobs[job]!;
          for (const minute of [from_min, Math.floor((from_min + to_min) / 2), to_min - 1])
            expect(isForbidden(worked, id, day, minute), `${id} ${day} ${minute}`).toBe(false);
          const running = packed.packing.runs
            .filter((run) => run.from_min <= from_min && from_min < run.to_min)
            .map((run) => packed.jobs[run.job]!);
          const flowOf = (tap: string) =>
            running
              .filter((one) => drawn.beds[Number(one.id.slice(4))]!.tap === tap)
              .reduce((sum, { flow_L_min }) => sum + flow_L_min, 0);
          expect(flowOf("north")).toBeLessThanOrEqual(drawn.northFlow_L_min + 1e-6);
          expect(flowOf("south")).toBeLessThanOrEqual(12 + 1e-6);
          if (drawn.isOneLine)
            expect(flowOf("north") + flowOf("south")).toBeLessThanOrEqual(
              Math.max(12, drawn.northFlow_L_min) + 1e-6,
            );
        }
    }),
    { numRuns: 2000 },
  );
  expect(waterings).toBeGreaterThan(10_000);
}, 600_000);
