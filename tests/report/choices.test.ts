import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decide, repriced } from "../../src/report/choices.ts";
import { choicesSchema } from "../../src/report/choices-schema.ts";
import { choicesTables } from "../../src/report/choices-tables.ts";
import { workOut } from "../../src/report/work-out.ts";
import { waterToNeed } from "../../src/survey/measures/chosen.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { decisionOf } from "../helpers/decision.ts";
import { asRead, plainRecord, siteWithMeasures } from "../helpers/sites.ts";
import { recordAt, surveyOf, textOf } from "../helpers/worked.ts";

const record = plainRecord(3);
const school = () => surveyOf(textOf("demo/school.survey.json"));
const seattle = () => recordAt("demo/seattle.csv");
const demo = decisionOf(school(), seattle(), { draws: 30 });

describe("the decision document", () => {
  test("keeps to its schema, on the demo and on random sites", () => {
    choicesSchema.parse(demo);
    fc.assert(
      fc.property(siteWithMeasures(6), (site) => {
        choicesSchema.parse(decisionOf(asRead(site), record));
      }),
      { numRuns: 8 },
    );
  });

  test("says the same each time it is asked", () => {
    expect(JSON.stringify(decisionOf(school(), seattle(), { draws: 30 }))).toBe(JSON.stringify(demo));
  });

  test("has nothing to weigh where nothing is quoted, and does not fail", () => {
    const { measures: _, tariff: _t, ...bare } = school();
    const choices = decisionOf(bare, seattle());
    choicesSchema.parse(choices);
    expect(choices.measures).toEqual([]);
    expect(choices.frontier.map(({ measures }) => measures)).toEqual([[waterToNeed]]);
    expect(choices.best.npv).toBeNull();
  });
});

describe("the frontier", () => {
  test("rises with cost from watering to need alone, and the best set keeps within the budget", () => {
    const { frontier, frontierByWorth } = demo;
    expect(frontier[0]!.measures).toEqual([waterToNeed]);
    for (const [k, step] of frontier.entries()) {
      if (k === 0) continue;
      expect(step.cost).toBeGreaterThan(frontier[k - 1]!.cost);
      expect(step.saved_kL_year).toBeGreaterThan(frontier[k - 1]!.saved_kL_year);
    }
    for (let k = 1; k < frontierByWorth.length; k++)
      expect(frontierByWorth[k]!.npv!).toBeGreaterThan(frontierByWorth[k - 1]!.npv!);
    const tight = decisionOf(school(), seattle(), { budget: 100 });
    expect(tight.best.measures).toEqual([waterToNeed]);
    expect(tight.budget).toBe(100);
  });

  test("never holds two measures of one group", () => {
    for (const { measures } of demo.frontier)
      expect(measures.includes("bigger-yard-tank") && measures.includes("big-yard-tank")).toBe(false);
  });

  test("leaves out, and names, what has no cost", () => {
    const survey = school();
    delete survey.measures![0]!.cost;
    const { leftOut, frontier } = decisionOf(survey, seattle());
    expect(leftOut).toEqual(["mend-cistern"]);
    expect(frontier.some(({ measures }) => measures.includes("mend-cistern"))).toBe(false);
  });
});

describe("its tables", () => {
  test("hold each figure of the document under its name, a row a line", () => {
    const tables = new Map(choicesTables(demo).map((table) => [table.name, table]));
    const sizes = tables.get("sizes")!;
    expect(sizes.rows).toHaveLength(demo.sizes.length);
    expect(sizes.rows.every((row) => row.length === sizes.header.length)).toBe(true);
    const column = sizes.header.indexOf("saved_kL_year.p50");
    expect(Number(sizes.rows[9]![column])).toBe(demo.sizes[9]!.saved_kL_year.p50);
    const frontier = tables.get("frontier")!;
    expect(frontier.rows[1]![frontier.header.indexOf("measures")]).toBe(demo.frontier[1]!.measures.join(" "));
    expect([...tables.keys()]).toContain("unknowns");
  });
});

describe("a quote changed", () => {
  test("gives the table that the whole would give, without a run", () => {
    const decision = decide(workOut(school(), seattle()), { budget: null });
    const survey = school();
    survey.measures![5]!.cost = 500;
    survey.tariff!.steps![1]!.perKL = 4;
    survey.money!.discountShare = 0.05;
    const whole = decisionOf(survey, seattle());
    const quick = repriced(decision, survey, null);
    for (const [name, rows] of Object.entries(quick))
      expect(rows, name).toEqual(whole[name as keyof typeof whole]);
    expect(whole.best.measures).toContain("quad-meadow");
  });
});

describe("sizes", () => {
  const of = (tank: string) => demo.sizes.filter((row) => row.tank === tank);

  test("begin at nothing, rise in the mean, and mark today's and each quoted size", () => {
    const yard = of("yard-tank");
    expect(yard[0]).toMatchObject({ capacity_L: 0, mean_kL_year: 0 });
    expect(yard.filter(({ mark }) => mark === "today").map(({ capacity_L }) => capacity_L)).toEqual([5000]);
    expect(yard.filter(({ mark }) => mark === "quoted").map(({ capacity_L }) => capacity_L)).toEqual([
      10_000, 20_000,
    ]);
    const hall = of("hall-tank");
    for (let k = 1; k < hall.length; k++)
      expect(hall[k]!.mean_kL_year).toBeGreaterThanOrEqual(hall[k - 1]!.mean_kL_year - 1e-9);
    expect(hall.at(-1)!.marginal_kL).toBeNull();
  });

  test("a tank's row says what holds it back, with runs of more roof and more demand beside it", () => {
    const hall = demo.tanks.find(({ tank }) => tank === "hall-tank")!;
    expect(hall.limit).toBe("demand");
    expect(hall.moreDemand_kL_year).toBeGreaterThan(hall.moreRoof_kL_year);
    expect(hall.saved_kL_year).toBeLessThanOrEqual(hall.most_kL_year);
    expect(hall.byRoof.find(({ times }) => times === 1)!.saved_kL_year).toBeCloseTo(hall.saved_kL_year, 9);
  });

  test("under a ban a larger tank never leaves a bed drier for longer", () => {
    for (const { ban } of demo.tanks)
      for (const [k, { beds }] of ban.entries())
        if (k > 0)
          beds.forEach(({ bed, longestDry_days }, i) => {
            expect(longestDry_days, bed).toBeLessThanOrEqual(ban[k - 1]!.beds[i]!.longestDry_days);
          });
  });
});

describe("gardens that get less than they need", () => {
  test("have two plans side by side: to need, and one in which no bed gets more than today", () => {
    const { plans } = demo;
    expect(plans.underWatered.map(({ bed }) => bed)).toContain("quad");
    expect(plans.overWatered.map(({ bed }) => bed)).toContain("oval");
    expect(plans.noMoreThanToday!.plan_kL_year).toBeLessThan(plans.toNeed.plan_kL_year);
  });

  test("have one plan where none does", () => {
    const survey = school();
    survey.beds = survey.beds.filter(({ id }) => id === "oval");
    delete survey.measures;
    expect(decisionOf(survey, seattle()).plans.noMoreThanToday).toBeNull();
  });
});

describe("where today's watering is not known", () => {
  test("a measure there is said to be against need, and no share goes to watering to need", () => {
    const row = demo.measures.find(({ id }) => id === "hedge-drip")!;
    expect(row.againstNeed).toEqual(["hedge"]);
    const survey = school();
    for (const bed of survey.beds) delete bed.watering.habit;
    const { shares } = decisionOf(survey, seattle());
    expect(shares.find(({ id }) => id === waterToNeed)!.share_kL_year).toBeCloseTo(0, 9);
  });
});

describe("what is proposed", () => {
  const bare: Survey = asRead({
    format: "grounds-survey",
    version: 1,
    site: { name: "Invented place", latitude: -34, longitude: 151 },
    beds: [
      {
        id: "roses",
        name: "Roses",
        area_m2: 80,
        plantings: [{ kind: "shrubs", thirst: "high", share: 1 }],
        leafCover: 0.6,
        watering: {
          method: "spray",
          supply: "mains-only",
          flow_L_min: 20,
          habit: { minutes: 240, days: ["mon", "wed", "fri"], months: [10, 11, 12, 1, 2, 3] },
        },
      },
    ],
    roofs: [
      { id: "hall", name: "Hall", area_m2: 600, material: "metal", tank: "shed", firstFlush_mm: 3 },
      { id: "barn", name: "Barn", area_m2: 150, material: "metal" },
      { id: "porch", name: "Porch", area_m2: 60, material: "metal", tank: "idle" },
    ],
    tanks: [
      { id: "idle", name: "Idle", capacity_L: 9000, inUse: false },
      { id: "shed", name: "Shed", capacity_L: 250 },
    ],
    draws: [{ id: "wash", name: "Washing", tank: "shed", litresPerDay: 400 }],
    leaks: [{ id: "drip", name: "Drip", litresPerDay: 30 }],
  });
  const { proposals } = decisionOf(bare, record);
  const codes = proposals.map(({ code }) => code);

  test("begins with what is there already: the idle tank, the leak, the habit over the need", () => {
    expect(codes.slice(0, 3)).toEqual(["tank-idle", "leak", "over-need"]);
  });

  test("then mulch, plants and drip, then first flush, roof and size, each with what it would save", () => {
    expect(codes.slice(3)).toEqual([
      "bare",
      "thirsty",
      "sprays",
      "first-flush",
      "roof-unconnected",
      "tank-small",
    ]);
    for (const { measure, alone_kL_year } of proposals) if (measure) expect(alone_kL_year).toBeGreaterThan(0);
  });

  test("says of a tank that is larger than it can be used that it is, and of one that spills what could draw on it", () => {
    const said = (capacity_L: number, draws: Survey["draws"]) => {
      const tanks = bare.tanks.map((tank) => (tank.id === "shed" ? { ...tank, capacity_L } : tank));
      return decisionOf(asRead({ ...bare, tanks, draws }), record).proposals.map(({ code }) => code);
    };
    expect(said(200_000, bare.draws)).toContain("tank-large");
    expect(said(250, [])).toContain("spills");
    expect(said(250, bare.draws)).not.toContain("spills");
  });

  test("says nothing that a measure does already", () => {
    const done = proposals.flatMap(({ measure }) => (measure ? [measure as never] : []));
    const again = decisionOf(asRead({ ...bare, measures: done }), record).proposals;
    expect(again.filter(({ measure }) => measure !== null && "mendLeak" in measure)).toEqual([]);
    expect(again.map(({ code }) => code)).not.toContain("tank-idle");
  });
});

describe("drier and warmer times", () => {
  test("stand beside the record, with the best set under each", () => {
    expect(demo.scenarios.map(({ code }) => code)).toEqual([
      "record",
      "driest-years",
      "less-rain",
      "warmer",
      "longer-dry-spells",
    ]);
    const [asIs, , lessRain, warmer] = demo.scenarios;
    expect(asIs!.plan_kL_year).toBeCloseTo(demo.mains.plan_kL_year, 9);
    expect(lessRain!.rain_mm_year).toBeCloseTo(0.8 * asIs!.rain_mm_year, 6);
    expect(lessRain!.need_kL_year).toBeGreaterThan(asIs!.need_kL_year);
    expect(warmer!.need_kL_year).toBeGreaterThan(asIs!.need_kL_year);
  });

  test("name the tank of the plan that falls most, and none where none falls", () => {
    const [asIs, ...others] = demo.scenarios;
    expect(asIs!.breaksFirst).toBeNull();
    for (const { breaksFirst, reliability } of others) {
      const falls = reliability.map(({ tank, reliability: then }) => ({
        tank,
        fall: asIs!.reliability.find((row) => row.tank === tank)!.reliability - then,
      }));
      const most = falls.reduce((a, b) => (b.fall > a.fall ? b : a));
      expect(breaksFirst).toBe(most.fall > 0.005 ? most.tank : null);
    }
    expect(others.map(({ breaksFirst }) => breaksFirst)).toContain("yard-tank");
  });

  test("a quote a fifth dearer and other weather are asked of the choice", () => {
    expect(demo.wouldChange.map(({ what, of }) => `${what} ${of}`)).toEqual([
      "quote-dearer mend-cistern",
      "weather driest-years",
      "weather less-rain",
      "weather warmer",
      "weather longer-dry-spells",
    ]);
  });
});
