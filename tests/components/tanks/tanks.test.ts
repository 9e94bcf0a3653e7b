import { expect, test } from "vitest";
import { claimsFinding, claimsTable } from "../../../components/tanks/claims/chart.ts";
import { enoughSentence, limitRows } from "../../../components/tanks/limit/chart.ts";
import { roofRange, sizeRange } from "../../../components/tanks/range.ts";
import { isTaken, roofsFinding, roofsInOrder, roofsTable } from "../../../components/tanks/roofs/prepare.ts";
import { levelOf, trialFinding, triedSentence } from "../../../components/tanks/trying.ts";
import { tanksWorkings } from "../../../components/tanks/workings.ts";
import { outlineOf, smallYears, yearsFinding, yearsTable } from "../../../components/tanks/years/prepare.ts";
import { isAddress } from "../../../src/explain/address.ts";
import { tankLimit } from "../../../src/report/tank-limit.ts";
import { trialBench, tryTank } from "../../../src/report/tank-trial.ts";
import { formatter } from "../../../src/words/format.ts";
import { daysText, speakTank, speakTanks } from "../../../src/words/tanks-spoken.ts";
import { waterSurveys } from "../water/sites.ts";
import { watersOf } from "../water/views.ts";

const say = formatter("metric", "en");
const { worked, tanks: view } = watersOf(waterSurveys.school);
const idle = watersOf(waterSurveys.idle).tanks;
const [hall, yard] = view.tanks;
const plain = (text: string) => text.replaceAll("\u00A0", " ");
const textOf = (parts: readonly (string | { text: string })[]) =>
  plain(parts.map((part) => (typeof part === "string" ? part : part.text)).join(""));

test("what comes in, is given and spills is said first; every figure opens", () => {
  const { headline, after } = speakTanks(view, say);
  expect(textOf(headline)).toBe(
    "In a mean year the roofs send 520 kL to the tanks. They give 160 kL of it; 360 kL spill over.",
  );
  expect(after.map(textOf).join("")).toContain("Not connected yet: the roof “Gym”");
  const workings = tanksWorkings(view, say);
  const slots = [headline, ...after, ...view.tanks.flatMap((tank) => speakTank(tank, say))]
    .flat()
    .filter((part) => typeof part !== "string");
  expect(slots.filter(({ at }) => !workings.has(at) && !isAddress(at))).toEqual([]);
});

test("how far a tank is to be relied on is said both ways, in words", () => {
  const said = speakTank(yard!, say).map(textOf).join("");
  expect(said).toMatch(
    /It runs short on 70 days a year\. Of 100 days on which water is asked of it, all is there on \d+; of 100 litres asked for, it gives 30\./,
  );
});

test("days are said as people do", () => {
  expect(["9.2", 1, 0.96, 70.4].map((days) => daysText(Number(days), say))).toEqual([
    "9.2 days",
    "one day",
    "one day",
    "70 days",
  ]);
});

test("a tank out of use, of no size, or asked for nothing is told as that", () => {
  const said = idle.tanks.map((tank) => speakTank(tank, say).map(textOf).join(""));
  expect(said[0]).toContain("holds nothing: its size is 0");
  expect(said[1]).toContain("not in use");
  expect(said[2]).toContain("Nothing is asked of New tank");
  expect(roofsFinding(idle.roofs, say)).toBe("No roof sends water to a tank that is in use");
});

test("without tanks the page says what the roofs could send", () => {
  const without = {
    ...view,
    tanks: [],
    roofs: view.roofs.map((roof) => ({ ...roof, tank: null, tankId: null })),
  };
  expect(textOf(speakTanks(without, say).headline)).toMatch(
    /^No tank in this survey yet\. Its roofs could send one [\d,]+ kL/,
  );
});

test("roofs that send most come first, those without a tank last", () => {
  expect(roofsInOrder(view.roofs).map(({ id }) => id)).toEqual(["hall-roof", "class-roof", "gym-roof"]);
  expect(roofsInOrder(view.roofs).map(isTaken)).toEqual([true, true, false]);
  for (const row of roofsTable(view.roofs, say).rows) {
    const [, , , falls, ...parts] = row as (number | string)[];
    expect(parts.reduce((sum: number, part) => sum + (part as number), 0)).toBeCloseTo(falls as number, 3);
  }
});

test("who gets most of a tank is named", () => {
  expect(plain(claimsFinding(hall!.claims, say))).toBe(
    "Most of it goes to Hall toilets: 129,000 litres a year",
  );
  expect(claimsFinding([], say)).toBe("Nobody asks it for water");
  expect(claimsTable(hall!.claims, say).rows).toHaveLength(2);
});

test("a quarter more of each is a row, the limit in full ink", () => {
  const limit = tankLimit(trialBench(worked, "yard-tank")!);
  const rows = limitRows(limit, say);
  expect(rows.filter(({ isLimit }) => isLimit).map(({ what }) => what)).toEqual(["a quarter more roof"]);
  expect(plain(enoughSentence(limit, yard!, say))).toMatch(/^A tank of 39,000 litres would give within 5%/);
});

test("a ruler's steps meet where the tank stands now", () => {
  for (const tank of [...view.tanks, ...idle.tanks, { ...hall!, capacity_L: 22_713, roof_m2: 417.5 }]) {
    const { most, step } = sizeRange(tank);
    expect(most).toBeGreaterThanOrEqual(Math.max(10_000, 4 * tank.capacity_L));
    expect(tank.capacity_L % step).toBe(0);
    expect(most % step).toBe(0);
    expect(most / step).toBeGreaterThanOrEqual(100);
    expect(roofRange(tank, view.roofs).most).toBeGreaterThanOrEqual(1190);
  }
});

test("a trial is said beside the tank as it is", () => {
  const bench = trialBench(worked, "hall-tank")!;
  const larger = tryTank(bench, 88_000, 420, 2015);
  expect(plain(triedSentence(hall!, larger, say))).toMatch(
    /^88,000 litres under 420 m² of roof would give 154,000 litres a year, 8,\d00 litres more; never short instead of on 9 days\.$/,
  );
  expect(plain(trialFinding(larger, say))).toBe("At 88,000 litres: never short in 2015");
  const same = tryTank(bench, hall!.capacity_L, hall!.roof_m2, 2015);
  expect(triedSentence(hall!, same, say)).toContain(", as now; short on 9 days as now");
  expect([...same.level_L]).toEqual(levelOf(hall!, 2015));
});

test("all years stand beside each other, as they are and as tried", () => {
  const asIs = smallYears(hall!, null);
  expect(asIs.map(({ year }) => year)).toEqual(view.years);
  const tried = smallYears(
    hall!,
    tryTank(trialBench(worked, "hall-tank")!, hall!.capacity_L, hall!.roof_m2, 2015),
  );
  expect(tried.map(({ shortDays }) => shortDays)).toEqual(asIs.map(({ shortDays }) => shortDays));
  tried.forEach(({ level_L }, y) => {
    expect(level_L.length).toBe(asIs[y]!.level_L.length);
    expect(level_L[20]).toBeCloseTo(asIs[y]!.level_L[20]!, 0);
  });
  expect(yearsFinding(hall!, asIs, say)).toBe(
    "Tank behind the hall ran short in 3 of 4 years, longest in 2012: 20 days",
  );
  expect(yearsTable(hall!, say).rows).toHaveLength(4);
});

test("an outline stays in its frame, of a tank of no size too", () => {
  expect(outlineOf([0, 50, 100], 100, 10, 4)).toBe("M0,4L0.0,4.0L5.0,2.0L10.0,0.0L10,4Z");
  expect(outlineOf([0, 0], 0, 10, 4)).not.toContain("NaN");
});
