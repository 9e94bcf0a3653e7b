import { generateRecord } from "../../engine/weather/generator.ts";
import type { WeatherRecord } from "../../engine/weather/record.ts";
import { generatorFactors } from "../../tables/weather-generator.ts";
import type { Fault } from "../faults.ts";
import type { Assumed } from "../resolve-assumed.ts";
import type { Survey, SurveyNormals } from "../survey.ts";
import type { Climate } from "./climate.ts";
import { farthest_km, movedBy, normalsAt, type PlaceNormals, wetDay_mm } from "./normals-at.ts";

export const defaultYears = 50;
export const defaultSeed = 1;

/** What to bear in mind of normals that are not the site's own; the sentences are in words. */
export type NormalsCaution =
  | { code: "normals-of-cell"; distance_km: number }
  | { code: "normals-cooler" }
  | { code: "normals-rough-country"; relief_m: number; coastal: boolean }
  | { code: "normals-moved"; heightDifference_m: number };

export interface WeatherNotes {
  generated: { years: number; seed: number; source: string };
  /** What stands in for what the survey leaves out. */
  assumed: Assumed[];
  cautions: NormalsCaution[];
  /** Good guesses for the site where the survey does not say; null where its own normals served. */
  guesses: { elevation_m: number; coastal: boolean } | null;
}

export interface SurveyWeather {
  record: WeatherRecord;
  normals: SurveyNormals;
  notes: WeatherNotes;
}

const cruSource =
  "CRU CL 1.0, monthly means 1961-1990 (New, Hulme and Jones 1999, Journal of Climate 12:829-856; Climatic Research Unit, University of East Anglia)";
const heightSource = "mean height of the half-degree cell: ETOPO5 (NOAA), with CRU CL 1.0";

/** Height differences from which a reader should know of them. */
const notable_m = 100;
const rough_m = 300;

/**
 * Generated years for a survey without a weather record: from its own normals, else from those of its place.
 * The same survey, climate, years and seed give the same record.
 * @param climate the world's normals; null where there is none at hand
 * @returns faults where neither can serve
 */
export function weatherForSurvey(
  survey: Pick<Survey, "site">,
  climate: Climate | null,
  { years = defaultYears, seed = defaultSeed }: { years?: number; seed?: number } = {},
): SurveyWeather | { faults: Fault[] } {
  const found = survey.site.normals ? ownNormals(survey.site) : placeNormals(survey.site, climate);
  if ("faults" in found) return found;
  const { normals, ...notes } = found;
  const record = generateRecord({ normals, years, seed, factors: generatorFactors });
  return { record, normals, notes: { generated: { years, seed, source: normals.source }, ...notes } };
}

type Found = { normals: SurveyNormals } & Omit<WeatherNotes, "generated">;

/** The survey's normals, their temperatures moved to the site's height where both heights are said. */
function ownNormals(site: Survey["site"]): Found {
  const normals = site.normals!;
  const heightDifference_m =
    site.elevation_m === undefined || normals.elevation_m === undefined
      ? 0
      : site.elevation_m - normals.elevation_m;
  const { tmin_c, tmax_c } = normals;
  if (heightDifference_m === 0 || tmin_c === undefined || tmax_c === undefined)
    return { normals, assumed: [], cautions: [], guesses: null };
  return {
    normals: {
      ...normals,
      elevation_m: site.elevation_m,
      tmin_c: movedBy(heightDifference_m, tmin_c),
      tmax_c: movedBy(heightDifference_m, tmax_c),
    },
    assumed: [],
    cautions: movedCaution(heightDifference_m),
    guesses: null,
  };
}

function placeNormals(site: Survey["site"], climate: Climate | null): Found | { faults: Fault[] } {
  const { latitude, longitude, elevation_m } = site;
  if (climate === null) return { faults: [{ path: "site.normals", code: "normals-wanted", facts: {} }] };
  const found = normalsAt(climate, latitude, longitude, elevation_m);
  if (found === null) return { faults: [seaFault(latitude, longitude)] };
  const place = { ...found, coastal: site.coastal ?? found.coastal };
  const assumed: Assumed[] = [{ where: "site.normals", value: cellName(place), source: cruSource }];
  if (elevation_m === undefined)
    assumed.push({ where: "site.elevation_m", value: place.elevation_m, source: heightSource });
  return {
    normals: asSurveyNormals(place),
    assumed,
    cautions: placeCautions(place),
    guesses: { elevation_m: place.cell.height_m, coastal: place.coastal },
  };
}

/** The fault of a place with no land near. */
export function seaFault(latitude: number, longitude: number): Fault {
  return { path: "site.latitude", code: "normals-at-sea", facts: { latitude, longitude, farthest_km } };
}

/** A place's normals in the form that a survey keeps them in. */
export function asSurveyNormals(place: PlaceNormals): SurveyNormals {
  const { rain_mm, rainDays, tmin_c, tmax_c, elevation_m } = place;
  const source = `${cruSource}, cell ${cellName(place)}`;
  return { source, elevation_m, wetDay_mm, rain_mm, rainDays, tmin_c, tmax_c };
}

/** What to bear in mind of a place's normals. */
export function placeCautions(place: PlaceNormals): NormalsCaution[] {
  const { cell, relief_m, coastal, heightDifference_m } = place;
  const cautions: NormalsCaution[] = [
    { code: "normals-of-cell", distance_km: cell.distance_km },
    { code: "normals-cooler" },
  ];
  if (coastal || relief_m >= rough_m) cautions.push({ code: "normals-rough-country", relief_m, coastal });
  return [...cautions, ...movedCaution(heightDifference_m)];
}

function movedCaution(heightDifference_m: number): NormalsCaution[] {
  if (Math.abs(heightDifference_m) < notable_m) return [];
  return [{ code: "normals-moved", heightDifference_m: Math.round(heightDifference_m) }];
}

/** The middle of a cell as a place is written: 47.75° N 122.25° W. */
function cellName({ cell: { latitude, longitude } }: PlaceNormals): string {
  const northward = `${Math.abs(latitude)}° ${latitude < 0 ? "S" : "N"}`;
  return `${northward} ${Math.abs(longitude)}° ${longitude < 0 ? "W" : "E"}`;
}
