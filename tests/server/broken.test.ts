import { describe, expect, test } from "vitest";
import { demo, realApp } from "./real.ts";
import { post, problemOf } from "./stand-in.ts";

type Json = { [name: string]: Json } & { [index: number]: Json };

const stock = /\b(invalid|please|oops|expected|received|required)\b|undefined|\[object|NaN\b.*NaN/i;

/** Posts the demo with a change and gives back the faults, having looked at how they are said. */
async function faultsOf(survey: unknown, weather: unknown): Promise<{ path: string; sentence: string }[]> {
  const answer = await post(realApp, { survey, weather });
  expect(answer.status).toBe(422);
  const problem = await problemOf(answer);
  expect(problem.faults.length).toBeGreaterThan(0);
  for (const { sentence } of problem.faults) {
    expect(sentence).not.toMatch(stock);
    expect(sentence).not.toMatch(/\bat .*\.ts:/);
    expect(sentence).toMatch(/[.?]$/);
  }
  return problem.faults;
}

function changed(change: (survey: Json) => void): Json {
  const survey = structuredClone(demo.survey) as Json;
  change(survey);
  return survey;
}

const set = (target: Json | undefined, name: string | number, value: unknown) => {
  Object.assign(target ?? {}, { [name]: value });
};

describe("surveys that are refused, each at its path", () => {
  const broken: [string, (survey: Json) => void, string][] = [
    ["a wrong format", (s) => set(s, "format", "grounds-report"), "format"],
    ["a newer version", (s) => set(s, "version", 99), "version"],
    ["a version that is text", (s) => set(s, "version", "1"), "version"],
    ["a site that is missing", (s) => set(s, "site", undefined), "site"],
    ["a latitude beyond the pole", (s) => set(s.site, "latitude", 91), "site.latitude"],
    ["an area of −1 m²", (s) => set(s.beds?.[2], "area_m2", -1), "beds[2].area_m2"],
    ["an area that is text", (s) => set(s.beds?.[2], "area_m2", "20 m2"), "beds[2].area_m2"],
    ["an area of null", (s) => set(s.beds?.[0], "area_m2", null), "beds[0].area_m2"],
    ["a leaf cover of 1.2", (s) => set(s.beds?.[1], "leafCover", 1.2), "beds[1].leafCover"],
    ["an unknown field", (s) => set(s.beds?.[0], "area_ft2", 100), "beds[0].area_ft2"],
    ["an unknown kind", (s) => set(s.beds?.[0]?.plantings?.[0], "kind", "lawn"), "beds[0].plantings[0].kind"],
    ["shares that add to 0.9", (s) => set(s.beds?.[2]?.plantings?.[0], "share", 0.7), "beds[2].plantings"],
    ["no plantings", (s) => set(s.beds?.[0], "plantings", []), "beds[0].plantings"],
    [
      "eleven months",
      (s) => set(s.beds?.[0], "leafCoverMonthly", new Array(11).fill(1)),
      "beds[0].leafCoverMonthly",
    ],
    [
      "a bed's tank that is not there",
      (s) => set(s.beds?.[3]?.watering, "tank", "pond"),
      "beds[3].watering.tank",
    ],
    ["two beds of one id", (s) => set(s.beds?.[1], "id", "oval"), "beds[1].id"],
    ["an id that breaks a table", (s) => set(s.beds?.[1], "id", "a,b"), "beds[1].id"],
    ["a tank linked to itself", (s) => set(s.tanks?.[0], "linked", ["hall-tank"]), "tanks[0].linked"],
    [
      "a month 13",
      (s) => set(s.beds?.[0]?.watering?.habit, "months", [13]),
      "beds[0].watering.habit.months[0]",
    ],
    ["31 February", (s) => set(s.site?.absences?.[0], "to", "02-31"), "site.absences[0].to"],
    [
      "a leak to mend that is not there",
      (s) => set(s.measures?.[0]?.mendLeak, "leaks", ["drip"]),
      "measures[0].mendLeak.leaks[0]",
    ],
    [
      "a measure with two changes",
      (s) => set(s.measures?.[0], "resizeTank", { tank: "yard-tank", capacity_L: 9 }),
      "measures[0]",
    ],
    ["beds that are no list", (s) => set(s, "beds", { oval: {} }), "beds"],
    [
      "ten thousand obstructions",
      (s) => set(s.beds?.[0], "obstructions", new Array(10_000).fill({})),
      "beds[0].obstructions",
    ],
    ["a name that would move a terminal's cursor", (s) => set(s.site, "name", "\u001b[2J"), "site.name"],
  ];
  test.each(broken)("%s", async (_name, change, path) => {
    const paths = (await faultsOf(changed(change), demo.weather)).map((fault) => fault.path);
    expect(paths.some((found) => found.startsWith(path))).toBe(true);
  });

  test("1e400", async () => {
    const text = JSON.stringify({ survey: demo.survey, weather: demo.weather }).replace(
      '"area_m2":48',
      '"area_m2":1e400',
    );
    const answer = await post(realApp, text);
    expect(answer.status).toBe(422);
    expect((await problemOf(answer)).faults.map(({ path }) => path)).toEqual(["beds[2].area_m2"]);
  });

  test("a field named __proto__", async () => {
    const text = JSON.stringify({ survey: demo.survey, weather: demo.weather }).replace(
      '"area_m2":48',
      '"area_m2":48,"__proto__":{"a":1}',
    );
    expect((await post(realApp, text)).status).toBe(422);
  });

  test("ten thousand beds that are all wrong: the faults stay few, the answer small", async () => {
    const faults = await faultsOf(
      changed((s) => set(s, "beds", new Array(10_000).fill({ id: 1 }))),
      demo.weather,
    );
    expect(faults.length).toBeLessThanOrEqual(201);
  });

  test("every fault is listed, not the first", async () => {
    const survey = changed((s) => {
      set(s.site, "latitude", 200);
      set(s.beds?.[0], "area_m2", -4);
      set(s.roofs?.[0], "material", "thatch-and-mud");
    });
    const paths = (await faultsOf(survey, demo.weather)).map(({ path }) => path);
    expect(paths).toEqual(expect.arrayContaining(["site.latitude", "beds[0].area_m2", "roofs[0].material"]));
  });
});

describe("weather that is refused", () => {
  const lines = demo.weather.trim().split("\n");
  const withLine = (at: number, line: string) => lines.map((old, i) => (i === at ? line : old)).join("\n");
  const broken: [string, unknown][] = [
    ["no text", ""],
    ["text that is no table", "rain fell"],
    ["a header alone", `${lines[0]}\n`],
    ["a number as text", withLine(9, "2012-01-09,some,2.8,10.6,4.5")],
    ["rain below nothing", withLine(9, "2012-01-09,-1,2.8,10.6,4.5")],
    ["tmin above tmax", withLine(9, "2012-01-09,0,20,10.6,4.5")],
    ["a day twice", withLine(9, lines[8]!)],
    ["31 February", withLine(9, "2012-02-31,0,2.8,10.6,4.5")],
    ["columns swapped", demo.weather.replace("tmin_c,tmax_c", "tmax_c,tmin_c")],
    ["an unknown column", demo.weather.replace("wind_ms", "wind_kmh")],
    ["eight thousand years between two rows", "date,rain_mm,et0_mm\n1800-01-01,0,1\n9800-01-01,0,1\n"],
    ["too many rows", `date,rain_mm,et0_mm\n${"2012-01-01,0,1\n".repeat(75_001)}`],
    ["rows that are no objects", [1, null, "x", []]],
    ["rows without dates", [{ rain_mm: 0 }, { rain_mm: 1 }]],
    ["rows with an unknown column", [{ date: "2012-01-01", rain_mm: 0, et0_mm: 1, sleet: 2 }]],
    ["rain blank throughout", [{ date: "2012-01-01", rain_mm: null, et0_mm: 1 }]],
    ["no rows", []],
    ["an object", { date: "2012-01-01" }],
    ["a number", 12],
  ];
  test.each(broken)("%s", async (_name, weather) => {
    await faultsOf(demo.survey, weather);
  });

  test("a shaded bed on a record that says nothing of sun or warmth", async () => {
    const rows = ["date,rain_mm,et0_mm", ...lines.slice(1, 400).map((line) => `${line.slice(0, 10)},0,2`)];
    const faults = await faultsOf(demo.survey, rows.join("\n"));
    expect(faults[0]?.path).toMatch(/^beds\[\d\]\.obstructions$/);
  });

  test("faults of the survey and of the record come together", async () => {
    const faults = await faultsOf(
      changed((s) => set(s.beds?.[0], "area_m2", -4)),
      withLine(9, "2012-01-09,-1,2.8,10.6,4.5"),
    );
    expect(faults).toHaveLength(2);
  });
});
