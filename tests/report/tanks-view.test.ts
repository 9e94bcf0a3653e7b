import { expect, test } from "vitest";
import { answerTo } from "../../src/report/questions.ts";
import { tankLimit } from "../../src/report/tank-limit.ts";
import { trialBench, tryTank } from "../../src/report/tank-trial.ts";
import { toTanksView } from "../../src/report/tanks-view.ts";
import { cautionSentence } from "../../src/words/en/cautions.ts";
import { report, workFiles } from "../helpers/worked.ts";

const worked = workFiles("demo/school.survey.json", "demo/seattle.csv");
const reported = report(worked);
const view = toTanksView(worked, reported, cautionSentence);
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((all, each) => all + each, 0);

test("what falls on a roof goes to the tank, the first flush, elsewhere, or stays behind", () => {
  for (const roof of view.roofs) {
    const parts =
      roof.sends_L_year + roof.firstFlush_L_year + roof.elsewhere_L_year + roof.staysBehind_L_year;
    expect(parts).toBeCloseTo(roof.falls_L_year, 3);
  }
});

test("the roofs of a tank send what runs into it; the gym's is not connected and could", () => {
  for (const tank of view.tanks) {
    const sent = view.roofs.filter(({ tankId }) => tankId === tank.id).map((roof) => roof.sends_L_year);
    expect(sum(sent)).toBeCloseTo(tank.inflow_L_year, 3);
  }
  const gym = view.roofs.find(({ id }) => id === "gym-roof")!;
  expect(gym.tank).toBeNull();
  expect(gym.sends_L_year).toBeGreaterThan(100_000);
});

test("those who ask a tank get what it yields", () => {
  for (const tank of view.tanks)
    expect(sum(tank.claims.map(({ got_L_year }) => got_L_year))).toBeCloseTo(tank.yield_L_year, 3);
  expect(view.tanks[0]!.claims.map(({ name }) => name)).toEqual(["Hall toilets", "Kitchen garden"]);
});

test.each(["hall-tank", "yard-tank"])("%s tried at its own size is as it was worked out", (id) => {
  const bench = trialBench(worked, id)!;
  const tank = view.tanks.find((each) => each.id === id)!;
  const trial = tryTank(bench, tank.capacity_L, tank.roof_m2, 2014);
  expect(trial.yield_L_year).toBeCloseTo(tank.yield_L_year, 6);
  expect(trial.spill_L_year).toBeCloseTo(tank.spill_L_year, 6);
  expect(trial.shortDays_year).toBeCloseTo(tank.shortDays_year, 9);
  expect(trial.reliability).toBeCloseTo(tank.reliability, 9);
  expect(trial.volumetricReliability).toBeCloseTo(tank.volumetricReliability, 9);
  expect(trial.level_L).toHaveLength(365);
  trial.years.forEach(({ shortDays, spill_L }, y) => {
    expect(shortDays).toBe(tank.byYear[y]!.shortDays);
    expect(spill_L).toBeCloseTo(tank.byYear[y]!.spill_L, 6);
  });
});

test("a larger tank, or more roof, never gives less", () => {
  const bench = trialBench(worked, "yard-tank")!;
  const gives = (capacity_L: number, roof_m2: number) =>
    tryTank(bench, capacity_L, roof_m2, null).yield_L_year;
  expect(gives(0, 260)).toBe(0);
  expect(gives(5000, 0)).toBeLessThan(gives(5000, 260));
  const sizes = [1000, 2000, 5000, 10_000, 40_000].map((capacity_L) => gives(capacity_L, 260));
  expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
});

test("the limit is told by the runs: what a quarter more brings, and the size that is enough", () => {
  for (const { id } of view.tanks) {
    const bench = trialBench(worked, id)!;
    const limit = tankLimit(bench);
    const tank = view.tanks.find((each) => each.id === id)!;
    const more = tryTank(bench, tank.capacity_L * 1.25, tank.roof_m2, null).yield_L_year - tank.yield_L_year;
    expect(limit.moreTank_L_year).toBeCloseTo(more, 3);
    const enough = tryTank(bench, limit.enough_L, tank.roof_m2, null).yield_L_year;
    expect(enough).toBeGreaterThanOrEqual(0.95 * limit.most_L_year - 1e-6);
    const lessEnough = tryTank(bench, limit.enough_L - 100, tank.roof_m2, null).yield_L_year;
    expect(lessEnough).toBeLessThan(0.95 * limit.most_L_year);
  }
});

test("a tank large enough is held back by roof or demand, a smaller one by roof or itself", () => {
  for (const { id } of view.tanks) {
    const reply = answerTo(worked, { kind: "tank-limit", tank: id });
    const { of } = reply as Extract<typeof reply, { kind: "tank-limit" }>;
    const { by, gives_L_year, most_L_year, moreTank_L_year, moreRoof_L_year, moreDemand_L_year } = of!;
    const isEnough = gives_L_year >= 0.95 * most_L_year;
    const other = isEnough ? moreDemand_L_year : moreTank_L_year;
    expect(by).toBe(moreRoof_L_year >= other ? "roof" : isEnough ? "demand" : "tank");
  }
  expect(answerTo(worked, { kind: "tank-limit", tank: "no-such-tank" })).toEqual({
    kind: "tank-limit",
    of: null,
  });
});
