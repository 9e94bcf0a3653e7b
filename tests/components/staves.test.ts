import { expect, test } from "vitest";
import {
  prepareStaves,
  staveReadings,
  stavesFinding,
  stavesTable,
} from "../../components/charts/staves/prepare.ts";
import { formatter } from "../../src/words/format.ts";
import { bed, demoSurvey, viewOf } from "./views.ts";

const say = formatter("metric", "en");
const demo = viewOf(demoSurvey());

test("the thirstiest square metre comes first", () => {
  const perM2 = demo.beds.map((b) => b.gross_L_year / b.area_m2);
  expect(perM2).toEqual([...perM2].sort((a, b) => b - a));
});

test("squares are to scale: a quarter of the area, half the side", () => {
  const view = { ...demo, beds: [bed({ area_m2: 400 }), bed({ area_m2: 100 })] };
  expect(prepareStaves(view).staves.map((s) => s.side)).toEqual([1, 0.5]);
});

test("a bed whose watering is not known says so, and one that lives on rain does not", () => {
  const view = { ...demo, beds: [bed({}), bed({ supply: "none" })] };
  const [unknown, rain] = prepareStaves(view).staves;
  expect(unknown!.about).toContain("today not known");
  expect(rain!.about).not.toContain("not known");
});

test("a bed that needs nothing has no month of most need", () => {
  expect(prepareStaves({ ...demo, beds: [bed({})] }).staves[0]!.peak).toBeNull();
});

test("no beds, one bed and many each have a finding", () => {
  const finding = (names: string[]) =>
    stavesFinding(prepareStaves({ ...demo, beds: names.map((name) => bed({ name })) }));
  expect(finding([])).toBe("No beds yet");
  expect(finding(["Oval"])).toBe("Oval through the year");
  expect(finding(["Oval", "Bank"])).toBe("Bed by bed, from thirsty to frugal: Oval first, Bank last");
});

test("forty beds are not all read out in one breath, but all stand in the table", () => {
  const beds = Array.from({ length: 40 }, (_, i) => bed({ id: `b${i}`, name: `Bed ${i}` }));
  const view = { ...demo, beds };
  expect(staveReadings(prepareStaves(view), say)[6]!.match(/Bed \d+/g)).toHaveLength(6);
  expect(stavesTable(view, say).rows).toHaveLength(40);
});

test("the months of a bed add up to its year", () => {
  const [, ...months] = stavesTable(demo, say).rows[0]!;
  const year = months.pop() as number;
  const days = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const sum = (months as number[]).reduce((total, week, m) => total + (week / 7) * days[m]!, 0);
  expect(Math.abs(sum / year - 1)).toBeLessThan(0.001);
});

test("a heading is not swallowed by long names; the table has them whole", () => {
  const name = `${"Long ".repeat(16)}bed`;
  const view = { ...demo, beds: [bed({ name }), bed({ name: "Bank" })] };
  expect(stavesFinding(prepareStaves(view)).length).toBeLessThan(110);
  expect(stavesTable(view, say).rows[0]![0]).toBe(name);
});
