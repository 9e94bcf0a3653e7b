import { openEntry } from "../../tables/first-answer.ts";
import { surveyFormat, surveyVersion } from "../format.ts";
import type { Survey, SurveyBed, SurveyFinding, SurveyMeasure, SurveyMulch } from "../survey.ts";
import type { Thirst } from "../words.ts";
import type { FirstEntries } from "./entries.ts";
import { habitOf } from "./habit.ts";
import { kindsOf } from "./kinds.ts";

/** What the parts of a first survey are called; sentences are in words. */
export interface FirstNames {
  garden: string;
  roof: string;
  tank: string;
  /** Measures that a tank one thinks of is made of. */
  addTank: string;
  connectRoof: string;
  useTank: string;
}

export const firstIds = { garden: "garden", roof: "roof", tank: "tank" } as const;

/** Bark or chips as they are laid, where somebody says "mulched" and no more. */
export function saidMulch(cover: number, depth_mm: number): SurveyMulch {
  return { material: "wood-chip", cover, depth_mm };
}

export interface FirstDocument {
  /** Everything that is complete: a survey in order. */
  survey: Survey;
  /** The same with what still lacks something; the survey itself where nothing does. */
  typed: object;
}

/**
 * The survey document of a first answer's entries, blanks left blank. What was not said is not made up: a garden
 * without its size or thirst is kept as it is typed, and counts once both are there.
 * @param name of the site
 * @param on date of the entries, ISO
 * @returns null without a place: a survey cannot do without one
 */
export function firstDocument(
  entries: FirstEntries,
  { name, names, on }: { name: string; names: FirstNames; on: string },
): FirstDocument | null {
  const { place, thirst, garden_m2 } = entries;
  if (!place) return null;
  const site = {
    name,
    latitude: place.latitude,
    longitude: place.longitude,
    ...(place.elevation_m !== undefined && { elevation_m: place.elevation_m }),
    ...(place.timeZone !== undefined && { timeZone: place.timeZone }),
    ...(place.coastal !== undefined && { coastal: place.coastal }),
  };
  const empty = surveyWith({ site, beds: [], roofs: [], tanks: [] });
  const water = withWater(empty, entries, names);
  if (garden_m2 === undefined && thirst === undefined) return { survey: water, typed: water };
  const bed = gardenOf(entries, names);
  if (garden_m2 === undefined || thirst === undefined)
    return { survey: water, typed: { ...water, beds: [bed] } };
  const whole = withWater({ ...empty, beds: [bed as SurveyBed], ...found(entries, on) }, entries, names);
  return { survey: whole, typed: whole };
}

export function surveyWith(parts: Pick<Survey, "site" | "beds" | "roofs" | "tanks">): Survey {
  return { format: surveyFormat, version: surveyVersion, ...parts };
}

/** The garden as a bed; without an area or a thirst where that was not said. */
function gardenOf(entries: FirstEntries, names: FirstNames): object {
  const { garden_m2, thirst, grass, mulched, today, place } = entries;
  const habit = today && habitOf(today, place?.latitude ?? 0);
  return {
    id: firstIds.garden,
    name: names.garden,
    ...(garden_m2 !== undefined && { area_m2: garden_m2 }),
    plantings: [planting(thirst, grass)],
    ...(mulched && {
      mulch: saidMulch(openEntry("mulch.cover").middle, openEntry("mulch.depth_mm").middle),
    }),
    watering: { method: "hose", supply: "mains-only", ...habit },
  };
}

function planting(thirst: Thirst | undefined, grass: boolean | undefined): object {
  const [kind] = kindsOf(thirst ?? "moderate", grass);
  return { kind, ...(thirst !== undefined && { thirst }), share: 1 };
}

/**
 * The survey with its roof and tank: one that stands there serves the garden; one that is thought of comes as
 * measures that add it, lead the roof to it and put it to use.
 */
export function withWater(
  survey: Survey,
  { roof_m2 = 0, tank }: Pick<FirstEntries, "roof_m2" | "tank">,
  names: FirstNames,
): Survey {
  const { garden, roof, tank: tankId } = firstIds;
  const roofs: Survey["roofs"] =
    roof_m2 > 0 ? [{ id: roof, name: names.roof, area_m2: roof_m2, material: "metal" }] : [];
  if (!tank || tank.capacity_L <= 0) return { ...survey, roofs };
  const row = { id: tankId, name: names.tank, capacity_L: tank.capacity_L };
  if (tank.isThere)
    return {
      ...survey,
      beds: survey.beds.map((bed) => ({
        ...bed,
        watering: { ...bed.watering, supply: "tank-then-mains" as const, tank: tankId },
      })),
      roofs: roofs.map((one) => ({ ...one, tank: tankId })),
      tanks: [row],
    };
  const measures: SurveyMeasure[] = [{ id: "add-tank", name: names.addTank, addTank: row }];
  if (roofs.length > 0)
    measures.push({ id: "connect-roof", name: names.connectRoof, connectRoof: { roof, tank: tankId } });
  if (survey.beds.length > 0)
    measures.push({ id: "use-tank", name: names.useTank, useTank: { tank: tankId, beds: [garden] } });
  return { ...survey, roofs, measures };
}

/** What bills come to is kept with the bills, as the guess it is. */
function found({ today, place }: FirstEntries, on: string): { found?: SurveyFinding[] } {
  if (today?.is !== "bills" || !place) return {};
  const flow_L_min = habitOf(today, place.latitude)?.flow_L_min;
  if (flow_L_min === undefined) return {};
  const { low, middle, high } = openEntry("bills.outdoors");
  // spread of a triangular distribution, in the proportion of its middle
  const spread = Math.sqrt(
    (low ** 2 + middle ** 2 + high ** 2 - low * middle - low * high - middle * high) / 18,
  );
  return {
    found: [
      {
        id: "today-by-bills",
        at: "beds[0].watering.flow_L_min",
        how: "two-bills",
        readings: [today.summer_kL, today.winter_kL, today.months],
        figure: flow_L_min,
        standardError: (flow_L_min * spread) / middle,
        when: on,
        guess: true,
      },
    ],
  };
}
