import { describe, expect, test } from "vitest";
import { bed, draw, record, roof, run, sum, tank } from "../helpers/plain-grounds.ts";

const dry = (days: number) => record(days, () => 0);

describe("a bed watered to need", () => {
  test("is refilled whole on the day it reaches p·TAW, by the table's p", () => {
    const { need } = run({ beds: [bed("b")] }, dry(60));
    const [b] = need.beds;
    const { rootDepletion_mm } = b!.days!;
    const trigger_mm = 0.5 * 1000 * 0.15 * 0.4;
    const net = Array.from(b!.suppliedByDay_L, (litres) => (litres / 10) * 0.8);
    net.forEach((net_mm, i) => {
      const before = i === 0 ? 0 : rootDepletion_mm[i - 1]!;
      expect(net_mm).toBeCloseTo(before >= trigger_mm ? before : 0, 9);
    });
    expect(net.some((net_mm) => net_mm > 0)).toBe(true);
  });

  test("waits for an allowed day, and gets no more than its method can give", () => {
    const mondays = [true, false, false, false, false, false, false];
    const { need } = run({ beds: [bed("b", { allowedWeekdays: mondays, maxMinutes: 5 })] }, dry(90));
    const given = need.beds[0]!.suppliedByDay_L;
    given.forEach((litres, i) => {
      // 1 January 2014 was a Wednesday
      if ((i + 2) % 7 !== 0) expect(litres).toBe(0);
      expect(litres).toBeLessThanOrEqual(5 * 10 + 1e-9);
    });
    expect(Math.max(...given)).toBeCloseTo(50, 9);
  });

  test("that is watered by hand stops when nobody is there, unless somebody is named for it", () => {
    const july = (hasCarer: boolean) => [{ from: "07-01", to: "07-31", hasCarer }];
    const inJuly = (byHand: boolean, hasCarer: boolean) => {
      const { need } = run({ beds: [bed("b", { byHand })], absences: july(hasCarer) }, dry(365));
      return sum(need.beds[0]!.suppliedByDay_L.slice(181, 212));
    };
    expect(inJuly(true, false)).toBe(0);
    expect(inJuly(true, true)).toBeGreaterThan(0);
    expect(inJuly(false, false)).toBeGreaterThan(0);
  });

  test("an absence may pass New Year, and one without a carer counts though another with one covers the day", () => {
    const absences = [
      { from: "12-20", to: "01-10", hasCarer: false },
      { from: "2014-01-01", to: "2014-12-31", hasCarer: true },
    ];
    const { ready } = run({ beds: [bed("b", { byHand: true })], absences }, dry(365));
    const open = ready.beds[0]!.open;
    expect([...open.slice(0, 10)]).toEqual(Array(10).fill(0));
    expect(open[10]).toBe(1);
    expect([...open.slice(352, 354)]).toEqual([1, 0]);
  });
});

describe("a bed that is not watered", () => {
  test("runs on rain; its need is from a run with water and counts in no total", () => {
    const { outcome, need } = run({ beds: [bed("b", { supply: "none" })] }, dry(365));
    const [b] = outcome.beds;
    expect(b!.supplied_L).toBe(0);
    expect(b!.need_mm).toBeGreaterThan(500);
    expect(b!.stressDays).toBeGreaterThan(300);
    expect(sum(need.mains_L)).toBe(0);
    expect(outcome.mains.todayUnknown).toEqual([]);
  });

  test("by habit of 0 minutes is known; no habit is not known, and need stands in", () => {
    const none = { minutes: 0, weekdays: Array(7).fill(true), months: Array(12).fill(true) };
    const { outcome } = run({ beds: [bed("known", { habit: none }), bed("unknown")] }, dry(365));
    expect(outcome.mains.todayUnknown).toEqual(["unknown"]);
    expect(outcome.mains.today_L).toBeCloseTo(outcome.beds[1]!.gross_L, 6);
    expect(outcome.mains.need_L).toBeCloseTo(outcome.beds[0]!.gross_L + outcome.beds[1]!.gross_L, 6);
  });

  test("by the mains has water of its own: watered to need, and never mains", () => {
    const { outcome } = run({ beds: [bed("bore", { supply: "other" })] }, dry(365));
    expect(outcome.beds[0]!.supplied_L).toBeGreaterThan(0);
    expect(outcome.mains).toMatchObject({ need_L: 0, today_L: 0, todayUnknown: [] });
  });
});

describe("a roof under which a bed stands", () => {
  test("keeps the rain off", () => {
    const rainy = record(365, () => 5);
    const { outcome } = run({ beds: [bed("b", {}, { rainShare: 0 })] }, rainy);
    expect(outcome.beds[0]!.rainUsed_mm).toBe(0);
    expect(outcome.beds[0]!.need_mm).toBeGreaterThan(500);
  });
});

describe("a tank", () => {
  test("that is short: draws before the beds, beds in order, draws after them; the rest from the mains", () => {
    const beds = [
      bed("one", { supply: "tank-then-mains", tank: "t" }),
      bed("two", { supply: "tank-then-mains", tank: "t" }),
    ];
    const draws = [draw("late", "t", 30, { order: "after-beds" }), draw("early", "t", 20)];
    const site = { beds, draws, tanks: [tank("t", { capacity_L: 5000, level_L: 300 })] };
    const { need, outcome } = run(site, dry(30));
    const { series } = need.tanks[0]!;
    // the tank gives all it has, 300 L, and no more
    expect(sum(series.yield_L)).toBeCloseTo(300, 9);
    const asked = outcome.beds[0]!.gross_L + outcome.beds[1]!.gross_L + 30 * 50;
    expect(sum(need.mains_L)).toBeCloseTo(asked - 300, 6);
    expect(outcome.tanks[0]!.draw_L).toBeCloseTo(asked, 6);
  });

  test("starts half full on a short record, spun up on a long one, as surveyed where it was", () => {
    const first = (days: number, level_L: number | null) =>
      run({ tanks: [tank("t", { level_L })], draws: [draw("d", "t", 1)] }, dry(days)).need.tanks[0]!.series
        .level_L[0];
    expect(first(30, null)).toBe(499);
    expect(first(400, null)).toBe(500 - 365 - 1);
    expect(first(400, 800)).toBe(799);
  });

  test("never gives the water below its outlet, and its levels include it", () => {
    const site = { tanks: [tank("t", { unusable_L: 200, level_L: 230 })], draws: [draw("d", "t", 25)] };
    const { series } = run(site, dry(3)).need.tanks[0]!;
    expect([...series.yield_L]).toEqual([25, 5, 0]);
    expect([...series.level_L]).toEqual([205, 200, 200]);
  });

  test("surveyed below its outlet counts as at it", () => {
    const site = { tanks: [tank("t", { unusable_L: 200, level_L: 50 })], draws: [draw("d", "t", 25)] };
    expect([...run(site, dry(2)).need.tanks[0]!.series.level_L]).toEqual([200, 200]);
  });

  test("out of use takes and gives nothing; what is asked of it comes from the mains, its level stands", () => {
    const site = {
      tanks: [tank("t", { inUse: false, level_L: 700, topUp: { belowShare: 0.9, toShare: 1 } })],
      roofs: [roof("t")],
      draws: [draw("d", "t", 25)],
    };
    const { need, outcome } = run(
      site,
      record(10, () => 10),
    );
    expect(outcome.tanks[0]).toMatchObject({
      inflow_L: 0,
      yield_L: 0,
      spill_L: 0,
      topUp_L: 0,
      draw_L: 250,
      shortDays: 10,
    });
    expect([...need.tanks[0]!.series.level_L]).toEqual(Array(10).fill(700));
    expect(sum(need.mains_L)).toBe(250);
  });

  test("is topped up at the end of a day below the trigger, by shares of its whole capacity, from the mains", () => {
    const topUp = { belowShare: 0.2, toShare: 0.5 };
    const site = {
      tanks: [tank("t", { unusable_L: 100, level_L: 210, topUp })],
      draws: [draw("d", "t", 20)],
    };
    const { need } = run(site, dry(3));
    expect([...need.tanks[0]!.series.topUp_L]).toEqual([310, 0, 0]);
    expect([...need.tanks[0]!.series.level_L]).toEqual([500, 480, 460]);
    expect(sum(need.mains_L)).toBe(310);
  });

  test("linked to others is one of the joint capacity, under the first's id; members out of use stand alone", () => {
    const tanks = [
      tank("a", { level_L: 100 }),
      tank("b", { linked: ["a"], unusable_L: 50 }),
      tank("c", { linked: ["a"], inUse: false }),
    ];
    const { ready, need } = run({ tanks, draws: [draw("d", "b", 10)] }, dry(2));
    expect(ready.tanks.map(({ group }) => [group.id, group.capacity_L, group.unusable_L])).toEqual([
      ["a", 2000, 50],
      ["c", 1000, 0],
    ]);
    // a as surveyed, b half full
    expect([...need.tanks[0]!.series.level_L]).toEqual([590, 580]);
  });

  test("takes roof water less the first flush after a day with under 1 mm; day 1 counts as after one", () => {
    const rain = [5, 5, 0.9, 5, 1, 5];
    const site = {
      tanks: [tank("t", { capacity_L: 1e6 })],
      roofs: [roof("t", { firstFlush_mm: 2, share: 0.5 })],
    };
    const { series } = run(
      site,
      record(6, (i) => rain[i]!),
    ).need.tanks[0]!;
    const per_mm = 50 * 0.9 * 0.5;
    [3, 5, 0.9, 3, 1, 5].forEach((mm, i) => {
      expect(series.inflow_L[i]).toBeCloseTo(mm * per_mm, 9);
    });
  });

  test("a draw that pauses does so in every absence, carer or not", () => {
    const absences = [{ from: "01-02", to: "01-03", hasCarer: true }];
    const pausing = draw("d", "t", 10, { pausesWhenAbsent: true });
    const site = { tanks: [tank("t", { level_L: 500 })], draws: [pausing], absences };
    expect([...run(site, dry(4)).need.tanks[0]!.series.draw_L]).toEqual([10, 0, 0, 10]);
  });
});

describe("a bed that only a tank waters", () => {
  const thirsty = bed("b", { supply: "tank-only", tank: "t" });

  test("goes short when the tank is empty, takes no mains water, and its soil feels it", () => {
    const { outcome, need } = run({ beds: [thirsty], tanks: [tank("t", { level_L: 100 })] }, dry(120));
    const [b] = outcome.beds;
    expect(b!.supplied_L).toBeCloseTo(100, 9);
    expect(b!.gross_L).toBeGreaterThan(1000);
    expect(b!.stressDays).toBeGreaterThan(50);
    expect(sum(need.mains_L)).toBe(0);
  });

  test("asks for each litre once: a request that stands is no new draw until met or rained away", () => {
    const { need, outcome } = run({ beds: [thirsty], tanks: [tank("t", { level_L: 0 })] }, dry(60));
    const { series } = need.tanks[0]!;
    expect(sum(series.draw_L)).toBeGreaterThan(outcome.tanks[0]!.draw_L * 3);
    // with nothing ever given and no rain, all it asked for is what refilling would take in the end
    expect(outcome.tanks[0]!.draw_L).toBeLessThanOrEqual((0.15 * 0.4 * 1000 * 10) / 0.8 + 1e-6);
  });

  test("with a tank that never runs dry fares as one with water always there", () => {
    const site = { beds: [thirsty], tanks: [tank("t", { capacity_L: 1e7, level_L: 1e7 })] };
    const [b] = run(site, dry(200)).outcome.beds;
    expect(b!.supplied_L).toBeCloseTo(b!.gross_L, 6);
    expect(b!.stressDays).toBe(0);
  });
});

describe("today", () => {
  const daily = (minutes: number) => ({
    minutes,
    weekdays: Array(7).fill(true),
    months: Array(12).fill(true),
  });

  test("is minutes × litres a minute less what the tank yields to it; need is the same bed to need", () => {
    const watering = { supply: "tank-then-mains" as const, tank: "t", habit: daily(30) };
    const { outcome } = run(
      { beds: [bed("b", watering)], tanks: [tank("t", { level_L: 400 })], leaks_L_day: 7 },
      dry(100),
    );
    expect(outcome.beds[0]!.habit_L).toBe(100 * 300);
    expect(outcome.mains.today_L).toBeCloseTo(100 * 300 - 400 + 700, 6);
    expect(outcome.mains.need_L).toBeCloseTo(outcome.beds[0]!.gross_L - 400 + 700, 6);
  });

  test("a bed that only a tank waters takes no mains water by habit either", () => {
    const watering = { supply: "tank-only" as const, tank: "t", habit: daily(30) };
    const { outcome } = run({ beds: [bed("b", watering)], tanks: [tank("t")] }, dry(100));
    expect(outcome.mains.today_L).toBe(0);
  });
});
