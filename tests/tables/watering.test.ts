import { expect, test } from "vitest";
import { defaultChoice, defaultNumber } from "../../src/tables/defaults.ts";
import { intakeRate_mm_h, slope } from "../../src/tables/intake.ts";
import { method, standInFlow } from "../../src/tables/methods.ts";

test("the need of method none takes the hose's row", () => {
  const { method: _, note: __, ...none } = method("none");
  const { method: ___, ...hose } = method("hose");
  expect(none).toEqual(hose);
});

test("a drip line's flow is its rate over the bed: 12 mm/h on 30 m² is 6 L/min", () => {
  expect(standInFlow("drip", 30)).toMatchObject({ low: 3, middle: 6, high: 12.5 });
});

test("a hose brings the same whatever it waters", () => {
  expect(standInFlow("hose", 2)).toEqual(standInFlow("hose", 900));
});

test("run by a timer unless said: drip, subsurface-drip, spray, rotor", () => {
  const timers = ["drip", "subsurface-drip", "spray", "rotor"];
  const hands = ["sprinkler", "hose", "can", "none"];
  expect([...timers, ...hands].map((name) => method(name).byHand)).toEqual([
    ...timers.map(() => false),
    ...hands.map(() => true),
  ]);
  expect(timers.map((name) => method(name).drip)).toEqual([true, true, false, false]);
});

test("wetted share by FAO-56 Table 20: sprinkler 1.0, drip 0.3–0.4", () => {
  expect(method("sprinkler").wettedShare.middle).toBe(1);
  expect(method("drip").wettedShare).toMatchObject({ low: 0.3, high: 0.4 });
});

test("a slope takes from the intake rate, band by band", () => {
  expect([0, 4.9, 5, 8, 12, 60].map((s) => slope(s).fromSlope_pct)).toEqual([0, 0, 5, 8, 12, 12]);
  expect(intakeRate_mm_h("loam", 0)).toBe(15);
  expect(intakeRate_mm_h("loam", 6)).toBeCloseTo(12, 12);
});

test("a default is a number or a choice, and says when the other is asked for", () => {
  expect(defaultNumber("site.windHeight_m").middle).toBe(2);
  expect(defaultChoice("tank.rule").is).toBe("after-spillage");
  expect(() => defaultNumber("tank.rule")).toThrow(/tank\.rule/);
  expect(() => defaultChoice("site.windHeight_m")).toThrow(/windHeight/);
});
