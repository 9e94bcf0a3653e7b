import type { Place } from "../engine/grounds.ts";
import { defaultChoice, defaultNumber } from "../tables/defaults.ts";
import type { Stands } from "./resolve-assumed.ts";
import type { Survey } from "./survey.ts";

/** What the engine needs of the site; `has` says which columns the weather record has. */
export function resolvePlace(survey: Survey, has: (column: string) => boolean, stands: Stands): Place {
  const { latitude, longitude, elevation_m, coastal, windHeight_m } = survey.site;
  const matters = placeMatters(survey, has);
  return {
    latitude_deg: latitude,
    longitude_deg: longitude,
    elevation_m: matters.elevation
      ? stands.number(elevation_m, "site.elevation_m", defaultNumber("site.elevation_m"))
      : (elevation_m ?? defaultNumber("site.elevation_m").middle),
    coastal: matters.coastal
      ? stands.choice(coastal, "site.coastal", defaultChoice("site.coastal"))
      : (coastal ?? defaultChoice("site.coastal").is === true),
    windHeight_m: matters.windHeight
      ? stands.number(windHeight_m, "site.windHeight_m", defaultNumber("site.windHeight_m"))
      : (windHeight_m ?? defaultNumber("site.windHeight_m").middle),
  };
}

/**
 * Height and coast count where Penman–Monteith is worked out, for ET0 or for shade; the coast only without
 * measured sun; the wind's height wherever there is wind.
 */
function placeMatters(survey: Survey, has: (column: string) => boolean) {
  const humidity = ["tdew_c", "vp_kpa", "rhmin_pct", "rhmax_pct", "rhmean_pct"].some(has);
  const temperatures = has("tmin_c") && has("tmax_c");
  const sun = has("solar_MJ_m2") || has("sun_h");
  const forEt0 = !has("et0_mm") && (humidity || has("wind_ms") || sun);
  const forShade = survey.beds.some(({ obstructions }) => obstructions && obstructions.length > 0);
  const penmanMonteith = temperatures && (forEt0 || forShade);
  return { elevation: penmanMonteith, coastal: penmanMonteith && !sun, windHeight: has("wind_ms") };
}
