import { beforeAll, describe, expect, test } from "vitest";
import { formatIso, parseIso } from "../../src/engine/weather/dates.ts";
import { explain } from "../../src/explain/explain.ts";
import { headlines, monthFigures } from "../../src/explain/headlines.ts";
import { plainSay } from "../../src/explain/say.ts";
import { dailyTable } from "../../src/report/daily.ts";
import { report, workFiles } from "../helpers/worked.ts";
import { expectClean, isSame, type Walk, walk } from "./walk.ts";

const worked = workFiles("demo/school.survey.json", "demo/seattle.csv", { keepDays: true });
const say = plainSay("metric", "en");
const value = (address: string) => explain(worked, address, say)?.value;

/** First day, a wet one, a leap day, dry ones, the last; and of each bed, where it has them, a watered and a stressed day. */
const fixed = [
  "2012-01-01",
  "2012-01-02",
  "2012-02-29",
  "2012-11-19",
  "2014-08-12",
  "2015-07-14",
  "2015-07-15",
  "2015-12-31",
];
const { firstDay } = worked.weather.calendar;
const of2015 = parseIso("2015-01-01")! - firstDay;
const chosen = worked.need.beds.flatMap(({ days, suppliedByDay_L }) => [
  suppliedByDay_L.findIndex((litres, i) => i > of2015 && litres > 0),
  days!.ks.findIndex((ks, i) => i > of2015 && ks < 1),
]);
const days = new Set([
  ...fixed.map((date) => parseIso(date)!),
  ...chosen.filter((i) => i >= 0).flatMap((i) => [firstDay + i - 1, firstDay + i]),
]);
const dates = [...days].map(formatIso);

describe("every figure that the demo's answer opens to", () => {
  let found: Walk;
  let opened: string[];
  beforeAll(() => {
    found = walk(worked, say, [...headlines(worked), ...monthFigures(worked)], days);
    opened = [...found.opened.keys()];
  }, 120_000);
  const has = (pattern: RegExp) => opened.some((address) => pattern.test(address));

  test("opens, adds up to what the engine has, and says where each number came from", () => {
    expectClean(found);
  });

  test("reaches the equations, each with its published source", () => {
    expect(opened.length).toBeGreaterThan(5_000);
    for (const what of [
      "ks",
      "ke",
      "kcb",
      "kr",
      "few",
      "p",
      "etc",
      "depletion",
      "surface",
      "net",
      "drainage",
    ])
      expect(has(new RegExp(`^bed/front/${what}/2015-07-14$`)), what).toBe(true);
    for (const what of ["et0", "ra", "rs", "rn", "rnl", "rso", "ea", "wind", "diffuse", "climate"])
      expect(has(new RegExp(`^${what}/2015-07-14$`)), what).toBe(true);
    expect(
      has(/^bed\/quad\/shade\//) && has(/^bed\/quad\/sky-view$/) && has(/^bed\/quad\/blocked\/07$/),
    ).toBe(true);
    expect(has(/^today\/tank\/yard-tank\/level\//) && has(/^plan\/tank\/hall-tank\/yield\//)).toBe(true);
    expect(has(/^with-water\/bed\/orchard\/ks\//) && has(/^with-water\/bed\/bank\/depletion\//)).toBe(true);
    expect(has(/^plan\/bed\/front\/mulch$/)).toBe(true);
  });

  test("meets every bed, tank and roof that drains to one", () => {
    for (const { grown } of worked.ready.beds) expect(has(new RegExp(`^bed/${grown.bed.id}/ks/`))).toBe(true);
    for (const { group } of worked.ready.tanks)
      expect(has(new RegExp(`^tank/${group.id}/level/`))).toBe(true);
    for (const { id } of worked.ready.grounds.roofs) expect(has(new RegExp(`roof/${id}/inflow/`))).toBe(true);
  });
});

describe("the figures are those of the report", () => {
  const { mains, beds, tanks, weather } = report(worked);
  const rows: [string, number | null | undefined][] = [
    ["mains/give-up", mains.giveUp_kL_year.p50],
    ["mains/give-up-p10", mains.giveUp_kL_year.p10],
    ["mains/give-up-p90", mains.giveUp_kL_year.p90],
    ["mains/today", mains.today_kL_year],
    ["mains/need", mains.need_kL_year],
    ["mains/plan", mains.plan_kL_year],
    ["mains/tanks", tanks.reduce((sum, row) => sum + row.yield_L_year, 0)],
    ["mains/unknown", beds.find(({ id }) => id === "hedge")!.gross_L_year],
    ["mains/dry-year", mains.dryYear],
    ["mains/wet-year", mains.wetYear],
    ["rain", weather.rain_mm_year],
    ["et0", weather.et0_mm_year],
    ...mains.byYear.flatMap((row): [string, number][] => [
      [`mains/today/${row.year}`, row.today_kL],
      [`mains/need/${row.year}`, row.need_kL],
      [`mains/plan/${row.year}`, row.plan_kL],
    ]),
    ...beds.flatMap((row): [string, number | null][] => [
      [`bed/${row.id}/need`, row.gross_L_year],
      [`bed/${row.id}/supplied`, row.supplied_L_year],
      [`bed/${row.id}/rain-used`, row.rain_used_mm_year],
      [`bed/${row.id}/drainage`, row.drainage_mm_year],
      [`bed/${row.id}/stress`, row.stressDays_year],
      [`bed/${row.id}/need/07`, row.needByMonth_L[6]!],
      ...(row.habit_L_year === null ? [] : [[`bed/${row.id}/habit`, row.habit_L_year] as [string, number]]),
    ]),
    ...tanks.flatMap((row): [string, number][] => [
      [`tank/${row.id}/inflow`, row.inflow_L_year],
      [`tank/${row.id}/yield`, row.yield_L_year],
      [`tank/${row.id}/spill`, row.spill_L_year],
      [`tank/${row.id}/topup`, row.topUp_L_year],
      [`tank/${row.id}/new-draw`, row.draw_L_year],
      [`tank/${row.id}/short`, row.shortDays_year],
      [`tank/${row.id}/reliability`, row.reliability],
      [`tank/${row.id}/volumetric-reliability`, row.volumetricReliability],
    ]),
  ];
  test.each(rows)("%s", (address, wanted) => {
    expect(wanted).toBeTypeOf("number");
    const found = value(address)!;
    expect(isSame(found, wanted!), `${found} beside ${wanted}`).toBe(true);
  });
});

/** Where each column of the day-by-day table is opened. */
const columns: Readonly<Record<string, string>> = {
  et0_mm: "et0",
  kcb: "kcb",
  ke: "ke",
  ks: "ks",
  etc_mm: "etc",
  net_mm: "net",
  gross_L: "supplied",
  drainage_mm: "drainage",
  root_depletion_mm: "depletion",
  surface_depletion_mm: "surface",
  inflow_L: "inflow",
  draw_L: "draw",
  yield_L: "yield",
  spill_L: "spill",
  topup_L: "topup",
  level_L: "level",
};

test("every cell of the day-by-day table opens to the same figure", () => {
  const { header, rows } = dailyTable(worked);
  const tanks = new Set(worked.ready.tanks.map(({ group }) => group.id));
  const wrong: string[] = [];
  for (const row of rows.filter(([date]) => dates.includes(date!)))
    header.forEach((column, place) => {
      if (place === 0) return;
      const [id, name] = column.split(".");
      const address = name
        ? `${tanks.has(id!) ? "tank" : "bed"}/${id}/${columns[name]}/${row[0]}`
        : `${{ rain_mm: "rain", et0_mm: "et0", mains_L: "mains/need" }[id!]}/${row[0]}`;
      const found = value(address);
      if (found === undefined || !isSame(found, Number(row[place])))
        wrong.push(`${address}: ${found}, ${row[place]}`);
    });
  expect(wrong).toEqual([]);
});

test("the dates hold a wet day, watered ones, stressed ones and a leap day", () => {
  expect(value("rain/2012-11-19")).toBeGreaterThan(50);
  const count = (what: string) =>
    worked.ready.beds.filter(({ grown }) =>
      dates.some((date) => value(`bed/${grown.bed.id}/${what}/${date}`)! > 0),
    );
  expect(count("net").length).toBeGreaterThan(6);
  expect(count("stress").length).toBeGreaterThan(3);
  expect(value("et0/2012-02-29")).toBeGreaterThan(0);
  expect(value("et0/2013-02-29")).toBeUndefined();
});

test("the plan names its measures, and today the beds whose watering is not known", () => {
  const note = (address: string, name: string) =>
    explain(worked, address, say)!.given.find((given) => given.name === name)?.text;
  expect(note("mains/plan/2015", "measures chosen")).toContain("Bark on the front beds");
  expect(note("mains/today", "watering of today not known")).toBe("Street hedge");
  expect(note("mains/need", "measures chosen")).toBeUndefined();
});
