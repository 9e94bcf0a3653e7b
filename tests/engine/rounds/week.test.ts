import { describe, expect, test } from "vitest";
import { lookBack_days } from "../../../src/engine/rounds/soil-now.ts";
import { parseIso } from "../../../src/engine/weather/dates.ts";
import { roundsDocument } from "../../../src/report/rounds.ts";
import { roundsSchema } from "../../../src/report/rounds-schema.ts";
import { type RoundsWorked, workOutRounds } from "../../../src/report/rounds-work.ts";
import { weekDocument } from "../../../src/report/week.ts";
import type { WeekAsk } from "../../../src/report/week-ask.ts";
import { workOutWeek } from "../../../src/report/week-work.ts";
import type { LogEntry } from "../../../src/survey/schema/log.ts";
import { roundsWords } from "../../../src/words/en/rounds.ts";
import { weekWordsIn } from "../../../src/words/rounds-said.ts";
import { demoRecord, demoSurvey, thirtyYears } from "../../helpers/demo-rounds.ts";

const worked = workOutRounds(demoSurvey(), thirtyYears());

const asked = (firstDay: string, change: Partial<WeekAsk> = {}): WeekAsk => ({
  firstDay: parseIso(firstDay)!,
  log: [],
  level_L: new Map(),
  lastRound: "none",
  heat: "usual",
  forecast: [],
  ...change,
});

const watered = (date: string, id: string, minutes: number): LogEntry => ({
  date,
  kind: "watering",
  id,
  minutes,
});

function bedOf(id: string, ask: WeekAsk, from: RoundsWorked = worked) {
  return workOutWeek(from, ask).beds.find((bed) => bed.id === id)!;
}

const weekOf = (bed: ReturnType<typeof bedOf>) => bed.waterings.reduce((sum, { litres }) => sum + litres, 0);

describe("the soil as the week begins", () => {
  test("has its width over the years", () => {
    const { depletion_mm, available_mm } = bedOf("oval", asked("2026-07-06"));
    expect(depletion_mm.low).toBeLessThan(depletion_mm.high);
    expect(depletion_mm.high).toBeLessThanOrEqual(available_mm);
  });

  test("is wetter after a watering that the log has, by what reached the roots", () => {
    const dry = bedOf("kitchen", asked("2026-07-06"));
    const wet = bedOf("kitchen", asked("2026-07-06", { log: [watered("2026-07-05", "kitchen", 120)] }));
    const net_mm = (120 * 7.5 * 0.9) / 48;
    expect(dry.depletion_mm.middle - wet.depletion_mm.middle).toBeGreaterThan(0.8 * net_mm);
    expect(dry.depletion_mm.middle - wet.depletion_mm.middle).toBeLessThan(1.2 * net_mm);
  });

  test("is wetter after rain in the gauge, read after several days", () => {
    const rain = (rain_mm: number): LogEntry => ({ date: "2026-07-05", kind: "rain", rain_mm, days: 5 });
    const dry = bedOf("oval", asked("2026-07-06", { log: [rain(0)] }));
    const wet = bedOf("oval", asked("2026-07-06", { log: [rain(18)] }));
    expect(wet.depletion_mm.middle).toBeLessThan(dry.depletion_mm.middle - 8);
  });

  test("is drier in a hotter week, wetter in a cooler one, and follows typed temperatures", () => {
    const week = (heat: WeekAsk["heat"]) => bedOf("oval", asked("2026-07-06", { heat })).depletion_mm.middle;
    expect(week("hotter")).toBeGreaterThan(week("usual"));
    expect(week("cooler")).toBeLessThan(week("usual"));
    expect(week({ tmin_c: 16, tmax_c: 34 })).toBeGreaterThan(week({ tmin_c: 11, tmax_c: 18 }));
  });
});

describe("a hot spell that is forecast", () => {
  const missingOn = (hotSpell: number | null) => {
    const { waterings } = bedOf("oval", asked("2026-07-06", { hotSpell, lastRound: "none" }));
    return waterings.at(-1)!.ofSoils_mm.reduce((sum, mm) => sum + mm, 0);
  };

  test("leaves the soil of the first morning as it is, and dries it after", () => {
    const now = (hotSpell: number | null) => bedOf("oval", asked("2026-07-06", { hotSpell })).depletion_mm;
    expect(now(1)).toEqual(now(null));
    expect(missingOn(1)).toBeGreaterThan(missingOn(null));
  });

  test("counts in as many of the years as its chance says", () => {
    const hot = (hotSpell: number) =>
      workOutWeek(worked, asked("2026-07-06", { hotSpell })).round.members.filter(
        ({ heat }) => heat[lookBack_days]! > 1,
      ).length;
    const { length } = workOutWeek(worked, asked("2026-07-06")).round.members;
    expect([hot(0), hot(0.5), hot(1)]).toEqual([0, Math.round(length / 2), length]);
  });
});

describe("what was done of the last round", () => {
  test("is never taken as done where nobody says so", () => {
    const unknown = bedOf("kitchen", asked("2026-07-06", { lastRound: "unknown" }));
    const none = bedOf("kitchen", asked("2026-07-06", { lastRound: "none" }));
    const all = bedOf("kitchen", asked("2026-07-06", { lastRound: "all" }));
    expect(all.depletion_mm.middle).toBeLessThan(none.depletion_mm.middle);
    expect(unknown.depletion_mm.high).toBeGreaterThan(all.depletion_mm.high);
    expect(unknown.depletion_mm.high).toBeLessThanOrEqual(none.depletion_mm.high);
    expect(unknown.depletion_mm.low).toBeLessThanOrEqual(none.depletion_mm.low);
  });

  test("and where it is not known, the keeper digs a finger deep first", () => {
    const { waterings } = bedOf("front", asked("2026-07-06", { lastRound: "unknown" }));
    expect(waterings[0]!.reason.code).toBe("check-first");
  });
});

describe("the week’s waterings", () => {
  test("never give more than is missing, and come on open days alone", () => {
    for (const bed of workOutWeek(worked, asked("2026-07-06")).beds)
      for (const { net_mm, missing_mm, stretches } of bed.waterings) {
        expect(net_mm).toBeLessThanOrEqual(missing_mm.middle + 1e-9);
        expect(stretches.length).toBeGreaterThan(0);
      }
    const days = bedOf("oval", asked("2026-07-06")).waterings.map(({ day }) => (day + 3) % 7);
    for (const day of days) expect([0, 2, 4, 5]).toContain(day);
  });

  test("come before their time where the next open day would be too late", () => {
    const survey = demoSurvey((demo) => {
      const oval = demo.beds.find(({ id }) => id === "oval")!;
      oval.watering.allowedDays = ["mon"];
      oval.dryOn = undefined;
    });
    const once = workOutRounds(survey, thirtyYears());
    const log = [watered("2026-07-05", "oval", 480)];
    const bed = bedOf("oval", asked("2026-07-06", { log }), once);
    expect(bed.depletion_mm.middle).toBeLessThan(bed.trigger_mm);
    expect(bed.waterings).toHaveLength(1);
    expect(bed.waterings[0]!.reason).toEqual({
      code: "before-closed-days",
      nextOpenDay: parseIso("2026-07-13"),
    });
  });

  test("wait for rain that is likely while the plants bear it, and not for rain that is not", () => {
    const log = [watered("2026-07-04", "kitchen", 60)];
    const first = bedOf("kitchen", asked("2026-07-06", { log })).waterings[0]!.day;
    const forecast = (chance: number) => [{ day: first + 1, rain_mm: 40, chance }];
    const likely = bedOf("kitchen", asked("2026-07-06", { log, forecast: forecast(0.9) }));
    const unlikely = bedOf("kitchen", asked("2026-07-06", { log, forecast: forecast(0.1) }));
    expect(weekOf(likely)).toBeLessThan(weekOf(unlikely));
    expect(likely.leave?.code).toBe("rain-likely");
    expect(unlikely.waterings[0]!.day).toBe(first);
  });

  test("are few in January, where the reason says so", () => {
    const { beds } = workOutWeek(worked, asked("2027-01-04"));
    expect(beds.filter(({ waterings }) => waterings.length > 0)).toEqual([]);
    expect(beds.find(({ id }) => id === "bank")!.leave).toEqual({ code: "nobody-waters" });
  });

  test("take more where plants are establishing", () => {
    const { isYoung } = bedOf("cloister", asked("2026-07-06"));
    expect(isYoung).toBe(true);
    expect(bedOf("cloister", asked("2028-07-03")).isYoung).toBe(false);
  });
});

describe("a low tank", () => {
  const low = workOutWeek(worked, asked("2026-07-06", { level_L: new Map([["yard-tank", 900]]) }));
  const tank = low.tanks.find(({ id }) => id === "yard-tank")!;

  test("lasts fewer days, the lower it is, and longer in a wet year than in a dry one", () => {
    const full = workOutWeek(worked, asked("2026-07-06", { level_L: new Map([["yard-tank", 5000]]) }));
    const fullTank = full.tanks.find(({ id }) => id === "yard-tank")!;
    expect(tank.daysLeft!.days.low).toBeLessThanOrEqual(tank.daysLeft!.days.high);
    expect(tank.daysLeft!.days.middle).toBeLessThan(fullTank.daysLeft!.days.middle);
  });

  test("is shared out in the order, and the mains that would keep all are said", () => {
    const { rows, mainsToKeepAll_L } = tank.rationed!;
    const given = rows.reduce((sum, { fromTank_L }) => sum + fromTank_L, 0);
    expect(given).toBeLessThanOrEqual(900 - 250 + tank.inflow_L + 1e-9);
    expect(mainsToKeepAll_L).toBeCloseTo(
      rows.reduce((sum, { asks_L, fromTank_L }) => sum + asks_L - fromTank_L, 0),
      6,
    );
    const ranks = rows.map(({ id }) => low.order.findIndex((one) => one.id === id));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    for (const { asks_L, fromTank_L, fromMains_L, short_L } of rows)
      expect(fromTank_L + fromMains_L + short_L).toBeCloseTo(asks_L, 6);
  });

  test("cuts what only it waters to what it can give", () => {
    const orchard = low.beds.find(({ id }) => id === "orchard")!;
    const row = tank.rationed!.rows.find(({ id }) => id === "orchard")!;
    expect(weekOf(orchard)).toBeLessThanOrEqual(row.fromTank_L + 1e-9);
    expect(low.short_L.get("orchard")).toBeGreaterThan(0);
  });

  test("makes a gravity hose run longer", () => {
    const minutesA_L = (level_L: number) => {
      const bed = bedOf("senses", asked("2026-07-06", { level_L: new Map([["yard-tank", level_L]]) }));
      return bed.waterings[0]!.minutes / bed.waterings[0]!.litres;
    };
    expect(minutesA_L(1500)).toBeGreaterThan(1.3 * minutesA_L(4500));
  });
});

test("a holiday by hand has its last soak, its visit, and the day back", () => {
  const { holidays } = workOutWeek(worked, asked("2026-07-20"));
  const away = holidays.find(({ name }) => name === "Summer holidays, second half")!;
  expect(away.fromDay).toBe(parseIso("2026-07-26"));
  const quad = away.beds.find(({ id }) => id === "quad")!;
  expect(quad.soakDay).toBe(parseIso("2026-07-24"));
  expect(quad.visitByDay).toBeGreaterThanOrEqual(away.fromDay);
  expect(quad.visitByDay).toBeLessThan(away.toDay);
  // somebody is there from 7 to 10
  expect(quad.soak.minutes).toBeLessThanOrEqual(180);
  expect(away.beds.map(({ id }) => id)).not.toContain("oval");
});

describe("weeks at the edges of the calendar", () => {
  test.each([
    ["over 29 February", "2028-02-28", "2028-03-05"],
    ["from 29 February", "2028-02-29", "2028-03-06"],
    ["over New Year", "2026-12-28", "2027-01-03"],
    ["over the change to summer time", "2026-03-08", "2026-03-14"],
  ])("%s", (_name, from, to) => {
    const week = weekDocument(worked, workOutWeek(worked, asked(from)), weekWordsIn("metric"));
    expect(week.from).toBe(from);
    expect(week.to).toBe(to);
    expect(new Set(week.days.map(({ date }) => date)).size).toBe(7);
  });
});

test("the document with a week keeps to its schema", () => {
  const short = workOutRounds(demoSurvey(), demoRecord());
  const ask = asked("2026-07-06", {
    log: [watered("2026-07-01", "oval", 200)],
    level_L: new Map([["yard-tank", 700]]),
  });
  const week = weekDocument(short, workOutWeek(short, ask), weekWordsIn("metric"));
  const document = roundsDocument(short, roundsWords, { month: 7, madeOn: "2026-07-06", week });
  expect(roundsSchema.parse(document)).toEqual(document);
  expect(week.done.find(({ id }) => id === "oval")).toMatchObject({ month: "2026-07", done_L: 30000 });
});
