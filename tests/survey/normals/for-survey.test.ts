import { describe, expect, it } from "vitest";
import { readClimate } from "../../../src/server/climate-file.ts";
import type { Climate } from "../../../src/survey/normals/climate.ts";
import { type SurveyWeather, weatherForSurvey } from "../../../src/survey/normals/for-survey.ts";
import { normals as normalsSchema } from "../../../src/survey/schema/site.ts";
import type { SurveySite } from "../../../src/survey/survey.ts";
import { normalsCaution, normalsFaultWords } from "../../../src/words/en/normals.ts";

const climate = readClimate();
const site = (own: Partial<SurveySite>) => ({
  site: { name: "An invented place", latitude: 47.61, longitude: -122.33, ...own },
});

function weather(own: Partial<SurveySite>, from: Climate | null = climate, options = {}): SurveyWeather {
  const found = weatherForSurvey(site(own), from, options);
  if ("faults" in found) throw new Error(found.faults.map((fault) => fault.code).join());
  return found;
}

const ownNormals = {
  source: "A station nearby, invented",
  elevation_m: 50,
  rain_mm: new Array<number>(12).fill(60),
  rainDays: new Array<number>(12).fill(10),
  tmin_c: new Array<number>(12).fill(8),
  tmax_c: new Array<number>(12).fill(18),
};

describe("weather for a survey without a record", () => {
  it("is fifty years from seed 1 unless asked otherwise", () => {
    const { record, notes } = weather({});
    expect(notes.generated).toMatchObject({ years: 50, seed: 1 });
    expect(record.days).toBe(50 * 365 + 12);
    expect(weather({}, climate, { years: 3, seed: 9 }).record.days).toBe(3 * 365);
  });

  it("comes from the place's cell, which is said under assumed with its source", () => {
    const { normals, notes } = weather({});
    expect(normalsSchema.safeParse(normals).success).toBe(true);
    expect(notes.assumed).toEqual([
      { where: "site.normals", value: "47.75° N 122.25° W", source: expect.stringContaining("CRU CL 1.0") },
      { where: "site.elevation_m", value: 130, source: expect.stringContaining("ETOPO5") },
    ]);
    // The Sound is narrower than a cell: no cell there counts as sea.
    expect(notes.guesses).toEqual({ elevation_m: 130, coastal: false });
  });

  it("does not assume a height that the survey gives, and moves the temperatures to it", () => {
    const low = weather({});
    const high = weather({ elevation_m: 1130 });
    expect(high.notes.assumed.map(({ where }) => where)).toEqual(["site.normals"]);
    expect(high.normals.tmax_c![6]).toBeCloseTo(low.normals.tmax_c![6]! - 6.5, 2);
    expect(high.notes.cautions).toContainEqual({ code: "normals-moved", heightDifference_m: 1000 });
  });

  it("comes from the survey's own normals first, place or no place", () => {
    for (const from of [climate, null]) {
      const { normals, notes } = weather({ normals: ownNormals }, from);
      expect(normals).toEqual(ownNormals);
      expect(notes.assumed).toEqual([]);
      expect(notes.cautions).toEqual([]);
      expect(notes.generated.source).toBe(ownNormals.source);
    }
  });

  it("moves own normals to the site's height where both heights are said", () => {
    const { normals, notes } = weather({ normals: ownNormals, elevation_m: 450 });
    expect(normals.tmin_c![0]).toBeCloseTo(8 - 2.6, 6);
    expect(notes.cautions).toEqual([{ code: "normals-moved", heightDifference_m: 400 }]);
  });

  it("is the same again from the same survey and seed", () => {
    expect(weather({}).record).toEqual(weather({}).record);
  });

  it("is refused at sea and where there is nothing to go by, in words that say what to do", () => {
    const sea = weatherForSurvey(site({ latitude: -45, longitude: -120 }), climate);
    expect(sea).toEqual({
      faults: [
        {
          path: "site.latitude",
          code: "normals-at-sea",
          facts: { latitude: -45, longitude: -120, farthest_km: 80 },
        },
      ],
    });
    const none = weatherForSurvey(site({}), null);
    expect("faults" in none && none.faults.map(({ path, code }) => [path, code])).toEqual([
      ["site.normals", "normals-wanted"],
    ]);
    expect(normalsFaultWords["normals-at-sea"]!({ latitude: -45, longitude: -120, farthest_km: 80 })).toMatch(
      /No land lies within 80 km.*south and west are negative/,
    );
  });

  it("says the limits of such normals: width, warming, steep or coastal rain", () => {
    const words = weather({}).notes.cautions.map(normalsCaution).join("\n");
    expect(words).toMatch(/about 50 km wide/);
    expect(words).toMatch(/University of East Anglia/);
    expect(words).toMatch(/1961–1990: today is 0\.5–1\.2 °C warmer/);
    expect(words).toMatch(/30–50% off/);
    // Open plains far from any sea.
    const plain = weather({ latitude: 49.9, longitude: -97.1 }).notes.cautions.map(({ code }) => code);
    expect(plain).toEqual(["normals-of-cell", "normals-cooler"]);
  });
});
