import {
  clearSky_MJ_m2,
  declination_rad,
  inverseDistance,
  netLongwave_MJ_m2,
  netShortwave_MJ_m2,
  relativeShortwave,
  temperatureRangeFactor,
} from "../engine/radiation.ts";
import { diffuseShare } from "../engine/shade.ts";
import { sunYear } from "../engine/weather/sun.ts";
import { vapourOf } from "./air.ts";
import { type Chapters, type Figure, fromSurvey, ofWeather, sheetFor } from "./figure.ts";
import { recorded } from "./origins.ts";
import type { Sheet } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** Radiation of a day, from the latitude up to what grass keeps of it. */
export const radiation: Chapters = {
  ra: { day: aboveTheAir },
  daylight: { day: daylight },
  rs: { day: solar },
  rso: { day: clearSky },
  rnl: { day: longwaveOfDay },
  rn: { day: net },
  diffuse: { day: diffuse },
};

/** The sky of day i, from the engine's own series. */
export interface SkyDay {
  dayOfYear: number;
  ra: number;
  daylight_h: number;
  sunset_rad: number;
  /** NaN where the record has neither sun nor temperatures. */
  rs: number;
}

export function skyDay({ book, run }: Figure, i: number): SkyDay {
  const { weather } = run.ready;
  const dayOfYear = weather.calendar.dayOfYear[i]!;
  const sun = weather.sky?.sun ?? book.once("sun", () => sunYear(weather.place.latitude_deg));
  return {
    dayOfYear,
    ra: sun.ra_MJ_m2[dayOfYear]!,
    daylight_h: sun.daylight_h[dayOfYear]!,
    sunset_rad: sun.sunset_rad[dayOfYear]!,
    rs: weather.sky?.solar_MJ_m2[i] ?? Number.NaN,
  };
}

function sunset(figure: Figure, i: number, sheet: Sheet) {
  const { dayOfYear, sunset_rad } = skyDay(figure, i);
  const { latitude_deg } = figure.run.ready.grounds.place;
  const latitude = fromSurvey(figure, "site.latitude", latitude_deg);
  const day = {
    value: dayOfYear,
    origin: { provenance: "measured" as const, source: dateSource(figure, i) },
  };
  const phi = sheet.step("phi", { latitude }, (latitude_deg * Math.PI) / 180);
  const declination = sheet.step("declination", { dayOfYear: day }, declination_rad(dayOfYear));
  return { day, phi, declination, sunset: sheet.step("sunset", { phi, declination }, sunset_rad) };
}

function dateSource({ say, run }: Figure, i: number): string {
  return say.date(run.ready.weather.calendar.firstDay + i);
}

function aboveTheAir(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const { dayOfYear, ra } = skyDay(figure, i);
  const angles = sunset(figure, i, sheet);
  const distance = sheet.step("distance", { dayOfYear: angles.day }, inverseDistance(dayOfYear));
  const { phi, declination } = angles;
  sheet.step("ra", { distance, sunset: angles.sunset, phi, declination }, ra);
  return sheet.done(...titleOf(figure));
}

function daylight(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  sheet.step("daylight", { sunset: sunset(figure, i, sheet).sunset }, skyDay(figure, i).daylight_h);
  return sheet.done(...titleOf(figure));
}

function solar(figure: Figure, i: number): Working | null {
  const { solar_MJ_m2, sun_h } = figure.book.worked.filled.columns;
  const { ra, rs, daylight_h } = skyDay(figure, i);
  if (Number.isNaN(rs)) return null;
  const sheet = sheetFor(figure);
  const above = ofWeather(figure, "ra", ra, i);
  if (solar_MJ_m2) sheet.step("rsGiven", { rs: recorded(figure.book, "solar_MJ_m2", i) }, rs);
  else if (sun_h && daylight_h <= 0) sheet.step("rsNoDay", {}, rs);
  else if (sun_h) {
    const sun = recorded(figure.book, "sun_h", i);
    sheet.step("rsSun", { sun, daylight: ofWeather(figure, "daylight", daylight_h, i), ra: above }, rs);
  } else {
    const { coastal } = figure.run.ready.grounds.place;
    const factor = coastal ? temperatureRangeFactor.coastal : temperatureRangeFactor.inland;
    const kRs = fromSurvey(figure, "site.coastal", factor);
    const tmin = recorded(figure.book, "tmin_c", i);
    const tmax = recorded(figure.book, "tmax_c", i);
    sheet.step("rsTemperature", { kRs, tmax, tmin, ra: above }, rs);
  }
  return sheet.done(...titleOf(figure));
}

function clearSkyOf(figure: Figure, i: number): number {
  return clearSky_MJ_m2(figure.run.ready.grounds.place.elevation_m, skyDay(figure, i).ra);
}

function clearSky(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const elevation = fromSurvey(figure, "site.elevation_m", figure.run.ready.grounds.place.elevation_m);
  sheet.step(
    "rso",
    { elevation, ra: ofWeather(figure, "ra", skyDay(figure, i).ra, i) },
    clearSkyOf(figure, i),
  );
  return sheet.done(...titleOf(figure));
}

/** Radiation kept, lost and net of day i with a share of its short-wave. */
export function netRadiation(
  figure: Figure,
  i: number,
  received: number,
): { rns: number; rnl: number; rn: number } {
  const { rs } = skyDay(figure, i);
  const { tmin_c, tmax_c } = figure.book.worked.filled.columns;
  const rnl = netLongwave_MJ_m2(
    tmin_c![i]!,
    tmax_c![i]!,
    vapourOf(figure, i),
    relativeShortwave(rs, clearSkyOf(figure, i)),
  );
  const rns = netShortwave_MJ_m2(received * rs);
  return { rns, rnl, rn: rns - rnl };
}

function hasTemperatures({ book }: Figure): boolean {
  const { tmin_c, tmax_c } = book.worked.filled.columns;
  return Boolean(tmin_c && tmax_c);
}

function longwaveOfDay(figure: Figure, i: number): Working | null {
  if (!hasTemperatures(figure)) return null;
  const sheet = sheetFor(figure);
  const clear = clearSkyOf(figure, i);
  const { rs } = skyDay(figure, i);
  const share = relativeShortwave(rs, clear);
  const rel =
    clear > 0
      ? sheet.step(
          "rel",
          { rs: ofWeather(figure, "rs", rs, i), rso: ofWeather(figure, "rso", clear, i) },
          share,
        )
      : sheet.step("relNoSun", {}, share);
  const tmin = recorded(figure.book, "tmin_c", i);
  const tmax = recorded(figure.book, "tmax_c", i);
  const ea = ofWeather(figure, "ea", vapourOf(figure, i), i);
  sheet.step("rnl", { tmax, tmin, ea, rel }, netRadiation(figure, i, 1).rnl);
  return sheet.done(...titleOf(figure));
}

function net(figure: Figure, i: number): Working | null {
  if (!hasTemperatures(figure)) return null;
  const sheet = sheetFor(figure);
  const { rns, rnl, rn } = netRadiation(figure, i, 1);
  const kept = sheet.step("rns", { rs: ofWeather(figure, "rs", skyDay(figure, i).rs, i) }, rns);
  sheet.step("rn", { rns: kept, rnl: ofWeather(figure, "rnl", rnl, i) }, rn);
  return sheet.done(...titleOf(figure));
}

/** Clearness, sunset's angle and the diffuse share of day i, as shade takes them. */
export function diffuseOf(figure: Figure, i: number): number {
  const { ra, rs, sunset_rad } = skyDay(figure, i);
  return diffuseShare(ra > 0 ? rs / ra : 0, sunset_rad);
}

function diffuse(figure: Figure, i: number): Working | null {
  const { ra, rs, sunset_rad } = skyDay(figure, i);
  if (Number.isNaN(rs)) return null;
  const sheet = sheetFor(figure);
  const clear = ra > 0 ? rs / ra : 0;
  const clearness =
    ra > 0
      ? sheet.step(
          "clearness",
          { rs: ofWeather(figure, "rs", rs, i), ra: ofWeather(figure, "ra", ra, i) },
          clear,
        )
      : sheet.step("clearnessNoSun", {}, clear);
  const degrees = (sunset_rad * 180) / Math.PI;
  sheet.step("sunsetDeg", { sunset: sunset(figure, i, sheet).sunset }, degrees);
  const low = degrees < 81.4;
  const isClear = clear >= (low ? 0.715 : 0.722);
  const key = low
    ? isClear
      ? "diffuseLowClear"
      : "diffuseLow"
    : isClear
      ? "diffuseHighClear"
      : "diffuseHigh";
  sheet.step(key, isClear ? {} : { clearness }, diffuseOf(figure, i));
  return sheet.done(...titleOf(figure));
}
