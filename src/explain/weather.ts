import {
  meanSaturation_kPa,
  pressure_kPa,
  psychrometric_kPa_C,
  saturation_kPa,
  saturationSlope_kPa_C,
} from "../engine/air.ts";
import { hargreaves_mm, leastWind_ms, penmanMonteith_mm } from "../engine/et0.ts";
import { climateTerm } from "../engine/weather/series.ts";
import { airChapters, leastHumidityOf, vapourOf, windOf } from "./air.ts";
import { type Chapters, type Figure, fromSurvey, here, ofWeather, sheetFor } from "./figure.ts";
import { recorded } from "./origins.ts";
import { netRadiation, radiation, skyDay } from "./radiation.ts";
import type { Input, Sheet } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** ET0, rain and what ET0 is worked out from, by the way that the record took. */
export const weatherChapters: Chapters = {
  rain: { flow: { term: "rain", series: ({ run }) => run.ready.weather.rain_mm }, day: rainOfDay },
  et0: { flow: { term: "et0", series: ({ run }) => run.ready.weather.et0_mm }, day: et0OfDay },
  "et0-open": { day: openSky },
  ...airChapters,
  climate: { day: (figure, i) => climate(figure, i, "climate") },
  "climate-limited": { day: (figure, i) => climate(figure, i, "climateLimited") },
  ...radiation,
};

function columnsOf({ book }: Figure) {
  return book.worked.filled.columns;
}

function rainOfDay(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const rain = recorded(figure.book, "rain_mm", i);
  sheet.step("rainGiven", { rain }, rain.value);
  return sheet.done(...titleOf(figure), rain.origin!.provenance);
}

function et0OfDay(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const { et0Method, et0_mm } = figure.run.ready.weather;
  if (et0Method === "given") {
    const pm = recorded(figure.book, "et0_mm", i);
    sheet.step("et0Given", { pm }, et0_mm[i]!);
    return sheet.done(...titleOf(figure), pm.origin!.provenance);
  }
  const raw = et0Method === "hargreaves" ? hargreaves(figure, i, sheet) : penmanMonteith(figure, i, sheet);
  if (raw < 0) sheet.step("et0Held", { pm: here(raw) }, et0_mm[i]!);
  return sheet.done(...titleOf(figure));
}

function openSky(figure: Figure, i: number): Working | null {
  if (!columnsOf(figure).tmin_c || !figure.run.ready.weather.sky?.penmanMonteith_mm) return null;
  const sheet = sheetFor(figure);
  penmanMonteith(figure, i, sheet);
  return sheet.done(...titleOf(figure));
}

function hargreaves(figure: Figure, i: number, sheet: Sheet): number {
  const { book } = figure;
  const tmin = recorded(book, "tmin_c", i);
  const tmax = recorded(book, "tmax_c", i);
  const ra = skyDay(figure, i).ra;
  const tmean = sheet.step("tmean", { tmin, tmax }, (tmin.value + tmax.value) / 2);
  const value = hargreaves_mm(tmin.value, tmax.value, ra);
  return sheet.step("hargreaves", { tmean, tmin, tmax, ra: ofWeather(figure, "ra", ra, i) }, value).value;
}

function penmanMonteith(figure: Figure, i: number, sheet: Sheet): number {
  const { rn } = netRadiation(figure, i, 1);
  return equation6(figure, i, sheet, ofWeather(figure, "rn", rn, i));
}

/** The steps of Eq. 6 with a net radiation. */
export function equation6(figure: Figure, i: number, sheet: Sheet, rn: Input): number {
  const { book, run } = figure;
  const { elevation_m } = run.ready.grounds.place;
  const tmin = recorded(book, "tmin_c", i);
  const tmax = recorded(book, "tmax_c", i);
  const mean_c = (tmin.value + tmax.value) / 2;
  const elevation = fromSurvey(figure, "site.elevation_m", elevation_m);
  const pa = pressure_kPa(elevation_m);
  const wind_ms = windOf(figure, i).value;
  const ea = ofWeather(figure, "ea", vapourOf(figure, i), i);

  const tmean = sheet.step("tmean", { tmin, tmax }, mean_c);
  const eMean = sheet.step("eMean", { tmean }, saturation_kPa(mean_c));
  const slope = sheet.step("slope", { eMean, tmean }, saturationSlope_kPa_C(mean_c));
  const pressure = sheet.step("pressure", { elevation }, pa);
  const gamma = sheet.step("gamma", { pressure }, psychrometric_kPa_C(pa));
  const esMax = sheet.step("esMax", { tmax }, saturation_kPa(tmax.value));
  const esMin = sheet.step("esMin", { tmin }, saturation_kPa(tmin.value));
  const es = sheet.step("es", { esMax, esMin }, meanSaturation_kPa(tmin.value, tmax.value));
  const windHeld = sheet.step(
    "windHeld",
    { wind2: ofWeather(figure, "wind", wind_ms, i) },
    Math.max(leastWind_ms, wind_ms),
  );
  const soilHeat = sheet.step("soilHeat", {}, 0);
  const value = penmanMonteith_mm({
    tmin_c: tmin.value,
    tmax_c: tmax.value,
    vapour_kPa: ea.value,
    wind_ms,
    net_MJ_m2: rn.value,
    soilHeat_MJ_m2: 0,
    elevation_m,
  });
  return sheet.step("penmanMonteith", { slope, rn, soilHeat, gamma, tmean, windHeld, es, ea }, value).value;
}

function climate(figure: Figure, i: number, key: "climate" | "climateLimited"): Working | null {
  const { kcMaxClimate, kcbClimate } = figure.run.ready.weather;
  const series = key === "climate" ? kcMaxClimate : kcbClimate;
  if (!series) return null;
  const sheet = sheetFor(figure);
  const wind2 = ofWeather(figure, "wind", windOf(figure, i).value, i);
  const rhmin = ofWeather(figure, "rhmin", leastHumidityOf(figure, i).value, i);
  const limited = climateTerm(Math.min(6, Math.max(1, wind2.value)), Math.min(80, Math.max(20, rhmin.value)));
  const value = key === "climate" ? climateTerm(wind2.value, rhmin.value) : limited;
  sheet.step(key, { wind2, rhmin }, value);
  return sheet.done(...titleOf(figure));
}
