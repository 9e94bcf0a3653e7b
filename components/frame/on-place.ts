import type { Survey } from "../../src/survey/survey.ts";
import type { SiteWeather } from "./site-weather.ts";

/** A survey with what it is worked out on: a record's CSV text, or normals within it. */
export interface OnPlace {
  survey: Survey;
  record: string | null;
}

/**
 * The site's survey as a screen with a worker of its own takes it: where made-up years stand in, with the place's
 * means, height and coast put in.
 */
export function onPlace(survey: Survey, weather: SiteWeather | null): OnPlace | null {
  if (!weather || weather.is === "none") return null;
  if (weather.of.is === "record") return { survey, record: weather.of.csv };
  const { place } = weather.of;
  if (!place) return { survey, record: null };
  const { elevation_m = place.guesses.elevation_m, coastal = place.guesses.coastal } = survey.site;
  return {
    survey: { ...survey, site: { ...survey.site, normals: place.normals, elevation_m, coastal } },
    record: null,
  };
}

/** A survey that such a screen changed, with what only stood in taken out again. */
export function offPlace(changed: Survey, before: Survey): Survey {
  const { normals: _, elevation_m: __, coastal: ___, ...site } = changed.site;
  const { normals, elevation_m, coastal } = before.site;
  return {
    ...changed,
    site: {
      ...site,
      ...(normals !== undefined && { normals }),
      ...(elevation_m !== undefined && { elevation_m }),
      ...(coastal !== undefined && { coastal }),
    },
  };
}
