import fc from "fast-check";
import { dayNumber } from "../../src/engine/weather/dates.ts";
import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import { readSurvey } from "../../src/survey/read.ts";
import type { Survey, SurveyBed, SurveyMeasure } from "../../src/survey/survey.ts";

/** Invented surveys with measures of every kind, and a record to run them on. */

/** Days with ET0 through the year and rain every few days, heavier in winter; the same each time. */
export function plainRecord(years: number, startYear = 2010): WeatherRecord {
  const firstDay = dayNumber(startYear, 1, 1);
  const days = dayNumber(startYear + years, 1, 1) - firstDay;
  const season = (i: number) => Math.cos((2 * Math.PI * (i + 9)) / 365.25);
  const wet = (i: number) => ((i * 7919) % 101) / 101;
  return {
    firstDay,
    days,
    columns: {
      et0_mm: Float64Array.from({ length: days }, (_, i) => 3.2 - 2.4 * season(i)),
      rain_mm: Float64Array.from({ length: days }, (_, i) =>
        wet(i) < 0.25 + 0.15 * season(i) ? Math.round(140 * wet(i + 3) ** 2) / 10 : 0,
      ),
    },
  };
}

const supplies = ["tank-then-mains", "tank-only", "mains-only"] as const;
const methods = ["drip", "spray", "hose"] as const;

const bed = (k: number, tank: string) =>
  fc
    .record({
      area_m2: fc.integer({ min: 10, max: 300 }),
      leafCover: fc.constantFrom(0.4, 0.7, 0.95),
      method: fc.constantFrom(...methods),
      supply: fc.constantFrom(...supplies),
      minutes: fc.option(fc.integer({ min: 0, max: 60 })),
      thirst: fc.constantFrom("low" as const, "moderate" as const, "high" as const),
    })
    .map(
      ({ area_m2, leafCover, method, supply, minutes, thirst }): SurveyBed => ({
        id: `bed${k}`,
        name: `Bed ${k}`,
        area_m2,
        plantings: [{ kind: "perennials", thirst, share: 1 }],
        leafCover,
        watering: {
          method,
          supply,
          ...(supply !== "mains-only" && { tank }),
          flow_L_min: 20,
          runBy: "timer",
          ...(minutes !== null && {
            habit: { minutes, days: ["mon", "thu"] as const, months: [4, 5, 6, 7, 8, 9] },
          }),
        },
      }),
    ) as fc.Arbitrary<SurveyBed>;

const cost = fc.record({
  cost: fc.integer({ min: 50, max: 5000 }),
  life_years: fc.integer({ min: 3, max: 25 }),
});
const capacity_L = fc.constantFrom(1000, 3000, 8000, 20_000);

/** One measure of each kind and more; no two set one field unless a group holds them apart. */
const measures: fc.Arbitrary<SurveyMeasure>[] = [
  fc.record({ cost, cover: fc.constantFrom(0.5, 1) }).map(({ cost: c, cover }) => ({
    id: "lay-mulch",
    name: "Mulch",
    ...c,
    mulch: { beds: ["bed0", "bed1"], material: "bark" as const, cover, depth_mm: 60 },
  })),
  cost.map((c) => ({
    id: "plant-less-thirsty",
    name: "Other plants",
    ...c,
    replant: { beds: ["bed1"], plantings: [{ kind: "shrubs" as const, thirst: "low" as const, share: 1 }] },
  })),
  cost.map((c) => ({
    id: "lay-drip",
    name: "Drip",
    ...c,
    changeWatering: { beds: ["bed0"], method: "drip" as const, flow_L_min: 6 },
  })),
  fc.record({ cost, capacity_L }).map(({ cost: c, capacity_L: size }) => ({
    id: "new-tank",
    name: "A tank more",
    ...c,
    oneOf: "tank",
    addTank: { id: "new", name: "New tank", capacity_L: size },
  })),
  fc.record({ cost, capacity_L }).map(({ cost: c, capacity_L: size }) => ({
    id: "new-tank-linked",
    name: "A tank more, joined to the old",
    ...c,
    oneOf: "tank",
    addTank: { id: "new", name: "New tank", capacity_L: size, linked: ["old"] },
  })),
  fc.record({ cost, capacity_L }).map(({ cost: c, capacity_L: size }) => ({
    id: "bigger",
    name: "The old tank bigger",
    ...c,
    resizeTank: { tank: "old", capacity_L: size + 500 },
  })),
  cost.map((c) => ({
    id: "open-valve",
    name: "The idle tank put to use",
    ...c,
    useTank: { tank: "idle", beds: ["bed2"] },
  })),
  cost.map((c) => ({
    id: "roof-to-new",
    name: "Shed roof to the new tank",
    ...c,
    connectRoof: { roof: "shed", tank: "new", share: 0.8 },
  })),
  cost.map((c) => ({
    id: "less-flush",
    name: "Less first flush",
    ...c,
    firstFlush: { roofs: ["hall"], firstFlush_mm: 0.2 },
  })),
  fc.record({ cost, litres: fc.integer({ min: 20, max: 400 }) }).map(({ cost: c, litres }) => ({
    id: "toilets",
    name: "Toilets from the new tank",
    ...c,
    addDraw: { id: "toilets", name: "Toilets", tank: "new", litresPerDay: litres },
  })),
  cost.map((c) => ({ id: "mend", name: "Mend the leak", ...c, mendLeak: { leaks: ["drip"] } })),
  cost.map((c) => ({
    id: "mulch-last",
    name: "Mulch on the last bed",
    ...c,
    mulch: { beds: ["bed2"], material: "wood-chip" as const, cover: 0.8, depth_mm: 75 },
  })),
];

/** @param most how many measures at most */
export function siteWithMeasures(most = measures.length): fc.Arbitrary<Survey> {
  return fc
    .record({
      beds: fc.tuple(bed(0, "old"), bed(1, "old"), bed(2, "idle")),
      hall_m2: fc.integer({ min: 30, max: 300 }),
      shed_m2: fc.integer({ min: 30, max: 300 }),
      old_L: capacity_L,
      rule: fc.constantFrom("after-spillage" as const, "before-spillage" as const),
      topUp: fc.option(fc.constant({ belowShare: 0.1, toShare: 0.3 })),
      measures: fc.tuple(...measures),
      kept: fc.shuffledSubarray([...measures.keys()], { minLength: 1, maxLength: most }),
      perKL: fc.integer({ min: 1, max: 8 }),
    })
    .map(({ beds, hall_m2, shed_m2, old_L, rule, topUp, measures: all, kept, perKL }) => ({
      format: "grounds-survey" as const,
      version: 1 as const,
      site: { name: "Invented place", latitude: -34, longitude: 151 },
      beds,
      roofs: [
        {
          id: "hall",
          name: "Hall",
          area_m2: hall_m2,
          material: "metal" as const,
          firstFlush_mm: 1,
          tank: "old",
        },
        { id: "shed", name: "Shed", area_m2: shed_m2, material: "tile" as const },
      ],
      tanks: [
        { id: "old", name: "Old", capacity_L: old_L, unusable_L: 50, rule, ...(topUp && { topUp }) },
        { id: "idle", name: "Idle", capacity_L: 4000, inUse: false },
      ],
      draws: [{ id: "wash", name: "Washing", tank: "old", litresPerDay: 30, order: "after-beds" as const }],
      leaks: [{ id: "drip", name: "Dripping tap", litresPerDay: 25 }],
      tariff: { currency: "AUD", perKL, otherUse_kL_year: 100 },
      measures: kept
        .sort((a, b) => a - b)
        .map((k) => all[k]!)
        .filter(({ connectRoof, addDraw }, _, list) =>
          (connectRoof ?? addDraw)?.tank === "new" ? list.some(({ addTank }) => addTank) : true,
        )
        .map((measure, k, list) =>
          list.slice(0, k).some(({ oneOf }) => oneOf !== undefined && oneOf === measure.oneOf)
            ? { ...measure, chosen: false }
            : measure,
        ),
    }))
    .filter(({ measures: kept }) => kept.length > 0);
}

/** A survey as the program would read it; a fault in one of these is a fault of the test. */
export function asRead(survey: Survey): Survey {
  const outcome = readSurvey(structuredClone(survey));
  if ("faults" in outcome) throw new Error(JSON.stringify(outcome.faults, null, 1));
  return outcome.survey;
}
