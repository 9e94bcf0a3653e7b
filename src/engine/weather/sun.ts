import { everyDay } from "../every-day.ts";
import type { Place } from "../grounds.ts";
import {
  daylight_h,
  extraterrestrial_MJ_m2,
  solarFromSunshine_MJ_m2,
  solarFromTemperature_MJ_m2,
  sunsetAngle_rad,
  temperatureRangeFactor,
} from "../radiation.ts";
import type { WeatherColumn } from "./record.ts";

/** What the sun gives on a day of the year at one latitude; index 1–366. */
export interface SunYear {
  ra_MJ_m2: Float64Array;
  daylight_h: Float64Array;
  sunset_rad: Float64Array;
}

/** Tabulates the astronomy of a latitude once, for all years of a record. */
export function sunYear(latitude_deg: number): SunYear {
  const year = {
    ra_MJ_m2: new Float64Array(367),
    daylight_h: new Float64Array(367),
    sunset_rad: new Float64Array(367),
  };
  for (let day = 1; day <= 366; day++) {
    year.ra_MJ_m2[day] = extraterrestrial_MJ_m2(latitude_deg, day);
    year.daylight_h[day] = daylight_h(latitude_deg, day);
    year.sunset_rad[day] = sunsetAngle_rad(latitude_deg, day);
  }
  return year;
}

/**
 * Solar radiation Rs of each day: as recorded, from sunshine (Eq. 35), else from temperatures
 * (Eq. 50); null where the record has none of them.
 */
export function solarOfRecord(
  columns: Partial<Record<WeatherColumn, Float64Array>>,
  dayOfYear: Uint16Array,
  sun: SunYear,
  place: Place,
): Float64Array | null {
  const { solar_MJ_m2, sun_h, tmin_c, tmax_c } = columns;
  if (solar_MJ_m2) return solar_MJ_m2;
  const kRs = place.coastal ? temperatureRangeFactor.coastal : temperatureRangeFactor.inland;
  if (!sun_h && !(tmin_c && tmax_c)) return null;
  return everyDay(dayOfYear.length, (i) => {
    const doy = dayOfYear[i]!;
    const ra = sun.ra_MJ_m2[doy]!;
    return sun_h
      ? solarFromSunshine_MJ_m2(sun_h[i]!, sun.daylight_h[doy]!, ra)
      : solarFromTemperature_MJ_m2(tmin_c![i]!, tmax_c![i]!, ra, kRs);
  });
}
