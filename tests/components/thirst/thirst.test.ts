import { expect, test } from "vitest";
import {
  balanceFinding,
  leaning,
  monthRuns,
  prepareBalance,
} from "../../../components/thirst/balance/prepare.ts";
import { changesFinding, moreText, prepareChanges } from "../../../components/thirst/changes/prepare.ts";
import { mostGuessed, moved, resultOf, toGuess } from "../../../components/thirst/guess/prepare.ts";
import { monthsOf } from "../../../components/thirst/months.ts";
import { inOrder, orderFinding, orderTable, prepareOrder } from "../../../components/thirst/order/prepare.ts";
import { thirstWorkings } from "../../../components/thirst/workings.ts";
import {
  dayReading,
  driestDay,
  prepareYear,
  yearFinding,
  yearTable,
} from "../../../components/thirst/year/prepare.ts";
import { isAddress } from "../../../src/explain/address.ts";
import { bedYear } from "../../../src/report/bed-year.ts";
import type { ThirstBed } from "../../../src/report/thirst-view.ts";
import { without } from "../../../src/report/without.ts";
import { formatter } from "../../../src/words/format.ts";
import { speakBed, speakThirst } from "../../../src/words/thirst-spoken.ts";
import { waterSurveys } from "../water/sites.ts";
import { watersOf } from "../water/views.ts";

const say = formatter("metric", "en");
const us = formatter("us", "en");
const { worked, thirst: view } = watersOf(waterSurveys.school);
const bedOf = (id: string) => view.beds.find((bed) => bed.id === id)!;
const placeOf = (id: string) => worked.survey.beds.findIndex((bed) => bed.id === id);
const plain = (text: string) => text.replaceAll("\u00A0", " ");
const textOf = (parts: readonly (string | { text: string })[]) =>
  plain(parts.map((part) => (typeof part === "string" ? part : part.text)).join(""));

test("what lacks is said first, then rain and watering; the largest use is named", () => {
  const { first, headline, after } = speakThirst(view, say);
  expect(textOf(first!)).toMatch(/^Quad lawn under the maples, Orchard and 2 other beds get less/);
  expect(textOf(headline)).toMatch(
    /^Rain gives the gardens \d+ kL a year.* Watering has to bring 1,480 kL more\.$/,
  );
  expect(after.map(textOf).join("")).toContain("About nine tenths of it goes on Oval.");
});

test("every figure said opens somewhere, but those of today's soil", () => {
  const workings = thirstWorkings(view, say);
  const spoken = speakThirst(view, say);
  const all = [spoken.headline, ...spoken.after, ...view.beds.flatMap((bed) => speakBed(bed, say))].flat();
  const slots = all.filter((part) => typeof part !== "string");
  expect(slots.length).toBeGreaterThan(30);
  const closed = slots.filter(({ at }) => !workings.has(at) && !isAddress(at));
  expect(closed.every(({ at, text }) => at === "" && /days?$/.test(text))).toBe(true);
});

test("a sum's working lists parts that add up to it", () => {
  const need = thirstWorkings(view, say).get("all/need")!;
  const number = (text: string) => Number(text.replace(/[^\d.]/g, ""));
  const parts = need.given.reduce((sum, { text }) => sum + number(text), 0);
  expect(Math.abs(parts - number(need.steps[0]!.result))).toBeLessThanOrEqual(need.given.length);
});

test("a bed whose habit is not known is told so, one on rain alone is not said to be watered", () => {
  const hedge = speakBed(bedOf("hedge"), say).map(textOf).join("");
  expect(hedge).toContain("How Street hedge is watered today is not known");
  const bank = speakBed(bedOf("bank"), say).map(textOf).join("");
  expect(bank).toMatch(/^It is never watered\./);
});

test("beds stand by the square metre or in all; those never watered come last", () => {
  expect(inOrder(view.beds, "area").at(-1)!.id).toBe("bank");
  const all = inOrder(view.beds, "all").filter(({ supply }) => supply !== "none");
  expect(all.map((bed) => bed.gross_L_year)).toEqual(
    all.map((bed) => bed.gross_L_year).sort((a, b) => b - a),
  );
  expect(orderFinding(prepareOrder(view, "area", 99))).toMatch(/^Thirstiest by the square metre/);
  expect(prepareOrder(view, "area", 4)).toMatchObject({ hidden: 5 });
  expect(prepareOrder(view, "area", 4).rows).toHaveLength(4);
});

test("the table of the order has every bed, in the units shown", () => {
  const metric = orderTable(view, "area", say).rows[0]!;
  const shown = orderTable(view, "area", us).rows[0]!;
  expect(orderTable(view, "area", say).rows).toHaveLength(9);
  expect((shown[1] as number) / (metric[1] as number)).toBeCloseTo(10.7639, 3);
  // what covers an area stays the volume over it
  expect((shown[1] as number) * (shown[2] as number)).toBeCloseTo(shown[4] as number, 3);
});

test("months of all beds split into parts that never exceed the need", () => {
  const months = monthsOf(view, null);
  months.need_L_week.forEach((need, m) => {
    const parts = months.parts.reduce((sum, { L_week }) => sum + L_week[m]!, 0);
    expect(parts).toBeLessThanOrEqual(need + 1e-6);
    expect(months.rainUsed_mm_week![m]!).toBeLessThanOrEqual(months.rain_mm_week[m]!);
  });
});

test("months in a row are named as a run, past New Year too", () => {
  const isIn =
    (...months: number[]) =>
    (m: number) =>
      months.includes(m);
  expect(monthRuns(isIn(5, 6, 7), say)).toBe("June to August");
  expect(monthRuns(isIn(10, 11, 0, 1), say)).toBe("November to February");
  expect(monthRuns(isIn(4, 5, 8), say)).toBe("May and June and September");
  expect(monthRuns(() => true, say)).toBe("every month");
  expect(monthRuns(() => false, say)).toBe("");
});

test("over and under are told apart, in litres and in minutes", () => {
  const balance = prepareBalance(bedOf("oval"))!;
  balance.more_L_week.forEach((more, m) => {
    expect(more).toBeCloseTo(balance.today_L_week[m]! - balance.need_L_week[m]!, 9);
    expect(balance.more_min_week![m]! * 150).toBeCloseTo(more, 6);
  });
  expect(leaning(balance, 8)).toBe(1);
  expect(leaning(balance, 3)).toBe(-1);
  expect(leaning(balance, 0)).toBe(0);
  expect(plain(balanceFinding(balance, say))).toMatch(
    /^Oval: too much in September, [\d,]+ litres a week or \d+ minutes; too little in/,
  );
  expect(prepareBalance(bedOf("hedge"))).toBeNull();
  expect(prepareBalance(bedOf("bank"))).toBeNull();
});

test("what changes a bed is named: its shade, or plants that would", () => {
  const finding = (id: string) =>
    plain(changesFinding(prepareChanges(bedOf(id), without(worked, placeOf(id))), say));
  expect(finding("front")).toMatch(/^Its shade saves Front beds [\d,]+ litres a year$/);
  expect(finding("oval")).toMatch(
    /^Oval with plants watered now and then once grown would take [\d,]+ litres a year less$/,
  );
});

test("a change too small to tell is called none", () => {
  expect(moreText(1, 1000, say)).toBe("no change");
  expect(moreText(50, 1000, say)).toBe("+50");
  expect(moreText(-50, 1000, say)).toBe("−50");
});

test("a year's picture says waterings and thirst, and each day what happened", () => {
  const picture = prepareYear(bedYear(worked, placeOf("front"), 2015, "today")!, bedOf("front"));
  expect(yearFinding(picture, say)).toMatch(
    /^Front beds in 2015, as today: watered \d+ times; thirsty on \d+ days$/,
  );
  const watered = picture.watered_mm.findIndex((mm, i) => mm > 0 && picture.fromTank_mm[i] === mm);
  expect(dayReading(picture, watered, say)).toMatch(
    /2015: [\d.]+ of [\d.]+\smm within reach.*watered 550\sL from the tank/,
  );
  expect(picture.stored_mm[driestDay(picture)]).toBe(Math.min(...picture.stored_mm));
  expect(yearTable(picture, say).rows).toHaveLength(365);
  expect(yearTable(picture, say).rows[0]![0]).toBe("2015-01-01");
});

test("a bed by rain alone is never watered", () => {
  const picture = prepareYear(bedYear(worked, placeOf("bank"), 2014, "rain")!, bedOf("bank"));
  expect(yearFinding(picture, say)).toMatch(/^Native bank in 2014, never watered; /);
});

test("the guess starts by name, holds what is moved, and is counted", () => {
  const asked = toGuess(view.beds);
  expect(asked.map(({ name }) => name)).toEqual(asked.map(({ name }) => name).sort());
  expect(asked.some(({ id }) => id === "bank")).toBe(false);
  expect(moved(["a", "b", "c"], 0, 2)).toEqual(["b", "c", "a"]);
  expect(moved(["a", "b", "c"], 2, -5)).toEqual(["c", "a", "b"]);
  const right = inOrder(asked, "area").map(({ id }) => id);
  expect(resultOf(asked, right)).toMatchObject({ right: asked.length, farthest: null });
  const result = resultOf(asked, moved(right, 0, 3));
  expect(result.farthest!.bed.id).toBe(right[0]);
  expect(result.right).toBe(asked.length - 4);
  expect(result.near).toBe(asked.length - 1);
});

test("of many beds the largest are asked for", () => {
  const many = Array.from(
    { length: 40 },
    (_, k): ThirstBed => ({ ...bedOf("oval"), id: `b${k}`, area_m2: k + 1 }),
  );
  const asked = toGuess(many);
  expect(asked).toHaveLength(mostGuessed);
  expect(Math.min(...asked.map(({ area_m2 }) => area_m2))).toBe(29);
});

test("a site without beds, and one without need, say so and claim nothing", () => {
  const empty = watersOf(waterSurveys["no-beds"]).thirst;
  expect(textOf(speakThirst(empty, say).headline)).toContain("no beds");
  expect(empty.all).toBeNull();
  const none = { ...view, all: { ...view.all!, gross_L_year: 0 } };
  expect(textOf(speakThirst(none, say).headline)).toContain("rain is enough");
});
