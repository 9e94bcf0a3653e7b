import { openEntry } from "../../tables/first-answer.ts";
import type { PickFigure } from "../resolve-assumed.ts";
import type { Survey, SurveyBed, SurveyObstruction } from "../survey.ts";
import { thirsts } from "../words.ts";
import { type FirstNames, firstIds, saidMulch, surveyWith, withWater } from "./document.ts";
import type { FirstEntries, FirstPlace } from "./entries.ts";
import { habitOf } from "./habit.ts";
import { kindsOf } from "./kinds.ts";

/** The garden that figures are of while its size was not said: the answer is then for each hundred square metres. */
export const openGarden_m2 = 100;

/** Skylines all round, by five degrees: the same lists each time, so that shade is worked out once for each. */
const skylines: readonly SurveyObstruction[][] = Array.from({ length: 8 }, (_, step) =>
  step === 0
    ? []
    : [
        { fromAzimuth_deg: 0, toAzimuth_deg: 180, elevation_deg: step * 5 },
        { fromAzimuth_deg: 180, toAzimuth_deg: 360, elevation_deg: step * 5 },
      ],
);

/** Weather of a place that was not said, against that of the one that stands in. */
export interface PlaceFactors {
  rain: number;
  et0: number;
}

export interface FirstDraw {
  survey: Survey;
  /** null where the place was said. */
  place: PlaceFactors | null;
}

/**
 * One survey that the entries may mean: what was said as it was said, the rest drawn. Unknowns begin with `first.`
 * @param place said, or the one that stands in
 */
export function drawnSurvey(
  entries: FirstEntries,
  place: FirstPlace,
  names: FirstNames,
  pick: PickFigure,
): FirstDraw {
  const drawn = (unknown: string, entry = unknown) => pick(`first.${unknown}`, openEntry(entry));
  const { garden_m2 = openGarden_m2, today } = entries;
  const thirst = entries.thirst ?? thirsts[stepOf(drawn("thirst"), thirsts.length)]!;
  const kinds = kindsOf(thirst, entries.grass);
  const kind = kinds[Math.min(kinds.length - 1, Math.floor(drawn("kind") * kinds.length))]!;
  const mulched = entries.mulched ?? drawn("mulched") > 0.5;
  const factor = today?.is === "bills" ? drawn("bills", "bills.outdoors") : drawn("told");
  const bed: SurveyBed = {
    id: firstIds.garden,
    name: names.garden,
    area_m2: garden_m2,
    plantings: [{ kind, thirst, share: 1 }],
    ...(mulched && {
      mulch: saidMulch(drawn("mulchCover", "mulch.cover"), drawn("mulchDepth", "mulch.depth_mm")),
    }),
    obstructions: entries.place
      ? skylines[stepOf(drawn("sky", "skyline_deg") / 5 + 0.5, skylines.length)]!
      : [],
    watering: { method: "hose", supply: "mains-only", ...(today && habitOf(today, place.latitude, factor)) },
  };
  const site = { name: place.name, latitude: place.latitude, longitude: place.longitude, ...ownPlace(place) };
  const bare = surveyWith({ site, beds: [bed], roofs: [], tanks: [] });
  return {
    survey: withWater(bare, waterOf(entries, drawn), names),
    place: entries.place ? null : { rain: drawn("rain", "place.rain"), et0: drawn("et0", "place.et0") },
  };
}

function ownPlace({ elevation_m, coastal, timeZone }: FirstPlace) {
  return {
    ...(elevation_m !== undefined && { elevation_m }),
    ...(coastal !== undefined && { coastal }),
    ...(timeZone !== undefined && { timeZone }),
  };
}

/** Roof and tank are drawn only where one of the two was said: with neither, nothing is claimed from them. */
function waterOf(
  { roof_m2, tank }: FirstEntries,
  drawn: (unknown: string, entry?: string) => number,
): Pick<FirstEntries, "roof_m2" | "tank"> {
  if (roof_m2 === undefined && tank === undefined) return {};
  if (roof_m2 === 0 || tank?.capacity_L === 0) return { roof_m2: roof_m2 ?? 0, tank };
  return {
    roof_m2: roof_m2 ?? drawn("roof", "roof_m2"),
    tank: tank ?? { capacity_L: drawn("tank", "tank_L"), isThere: false },
  };
}

function stepOf(at: number, steps: number): number {
  return Math.min(steps - 1, Math.max(0, Math.floor(at)));
}
