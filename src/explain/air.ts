import {
  leastHumidity_pct,
  meanSaturation_kPa,
  saturation_kPa,
  vapourFromMean_kPa,
  vapourFromRange_kPa,
  windAt2m_ms,
} from "../engine/air.ts";
import type { WeatherColumn } from "../engine/weather/record.ts";
import { type Chapters, type Figure, fromSurvey, ofWeather, sheetFor } from "./figure.ts";
import { recorded } from "./origins.ts";
import type { Input, Sheet } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** Vapour, humidity and wind of a day, by what the record has of them. */
export const airChapters: Chapters = {
  ea: { day: vapour },
  wind: { day: wind },
  rhmin: { day: leastHumidity },
};

function columnsOf({ book }: Figure) {
  return book.worked.filled.columns;
}

/** Vapour pressure by the first humidity that the record has; the dew point is Tmin where it has none. */
export function vapourOf(figure: Figure, i: number): number {
  return vapourSteps(figure, i, sheetFor(figure)).value;
}

function vapour(figure: Figure, i: number): Working | null {
  if (!hasVapour(figure)) return null;
  const sheet = sheetFor(figure);
  vapourSteps(figure, i, sheet);
  return sheet.done(...titleOf(figure));
}

function hasVapour(figure: Figure): boolean {
  const { tdew_c, vp_kpa, tmin_c, tmax_c } = columnsOf(figure);
  return Boolean(tdew_c || vp_kpa || (tmin_c && tmax_c));
}

function vapourSteps(figure: Figure, i: number, sheet: Sheet): Input {
  const columns = columnsOf(figure);
  const take = (column: WeatherColumn) => recorded(figure.book, column, i);
  if (columns.tdew_c) {
    const tdew = take("tdew_c");
    return sheet.step("eaDew", { tdew }, saturation_kPa(tdew.value));
  }
  if (columns.vp_kpa) {
    const vp = take("vp_kpa");
    return sheet.step("eaGiven", { vp }, vp.value);
  }
  const tmin = take("tmin_c");
  const tmax = take("tmax_c");
  const ends = () => ({
    esMin: sheet.step("esMin", { tmin }, saturation_kPa(tmin.value)),
    esMax: sheet.step("esMax", { tmax }, saturation_kPa(tmax.value)),
  });
  if (columns.rhmin_pct && columns.rhmax_pct) {
    const rhmin = take("rhmin_pct");
    const rhmax = take("rhmax_pct");
    const value = vapourFromRange_kPa(tmin.value, tmax.value, rhmin.value, rhmax.value);
    return sheet.step("eaRange", { ...ends(), rhmin, rhmax }, value);
  }
  if (columns.rhmean_pct) {
    const rhmean = take("rhmean_pct");
    const es = sheet.step("es", ends(), meanSaturation_kPa(tmin.value, tmax.value));
    return sheet.step("eaMean", { rhmean, es }, vapourFromMean_kPa(tmin.value, tmax.value, rhmean.value));
  }
  return sheet.step("eaTmin", { tmin }, saturation_kPa(tmin.value));
}

function wind(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  windOf(figure, i, sheet);
  return sheet.done(...titleOf(figure));
}

/** Where no wind is recorded the series take this. */
const usualWind_ms = 2;
const usualLeastHumidity_pct = 45;

export function windOf(figure: Figure, i: number, sheet = sheetFor(figure)): Input {
  if (!columnsOf(figure).wind_ms) return sheet.step("windUsual", {}, usualWind_ms);
  const { windHeight_m } = figure.run.ready.grounds.place;
  const wind = recorded(figure.book, "wind_ms", i);
  const windHeight = fromSurvey(figure, "site.windHeight_m", windHeight_m);
  return sheet.step("wind2", { wind, windHeight }, windAt2m_ms(wind.value, windHeight_m));
}

function leastHumidity(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  leastHumidityOf(figure, i, sheet);
  return sheet.done(...titleOf(figure));
}

/** Least humidity as recorded, from vapour where humidity is recorded otherwise, else the standard's. */
export function leastHumidityOf(figure: Figure, i: number, sheet = sheetFor(figure)): Input {
  const columns = columnsOf(figure);
  if (columns.rhmin_pct) {
    const rhmin = recorded(figure.book, "rhmin_pct", i);
    return sheet.step("rhminGiven", { rhmin }, rhmin.value);
  }
  const { tdew_c, vp_kpa, rhmean_pct } = columns;
  if (!columns.tmax_c || !(tdew_c || vp_kpa || (rhmean_pct && columns.tmin_c)))
    return sheet.step("rhminUsual", {}, usualLeastHumidity_pct);
  const tmax = recorded(figure.book, "tmax_c", i);
  const ea = ofWeather(figure, "ea", vapourOf(figure, i), i);
  const esMax = sheet.step("esMax", { tmax }, saturation_kPa(tmax.value));
  return sheet.step("rhminFromEa", { ea, esMax }, leastHumidity_pct(ea.value, tmax.value));
}
