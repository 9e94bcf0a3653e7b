import { slot, wettingRain_mm } from "../engine/bed-day.ts";
import { kcMax } from "../engine/plants.ts";
import { adjustedFraction, evaporationReduction } from "../engine/soil-water.ts";
import { netFromGross_mm } from "../engine/watering.ts";
import { originWords } from "../words/en/explain.ts";
import { bedOf } from "./bed.ts";
import type { History } from "./book.ts";
import { calendarOf, dayAt, type Figure, fromSurvey, linked } from "./figure.ts";
import type { Input } from "./sheet.ts";

/** The numbers of a bed's day i, from the run's series and by the engine's equations. */
export interface BedDay {
  i: number;
  history: History;
  rain_mm: number;
  et0_mm: number;
  net_mm: number;
  rootBefore_mm: number;
  surfaceBefore_mm: number;
  /** The day's wetting, or the last before it: rain or start wets all, a watering the method's share. */
  wetting: { wholeSurface: boolean; atStart: boolean };
  wettedShare: number;
  few: number;
  kcb: number;
  kcMax: number;
  surfaceWetted_mm: number;
  kr: number;
  ke: number;
  fraction: number;
  rootWetted_mm: number;
  ks: number;
  asked_mm: number;
  held_mm: number;
  limit: number;
}

/** Day i of the figure's bed in its run; null where its soil is not followed there. */
export function bedDay(figure: Figure, i: number): BedDay | null {
  const history = figure.book.history(figure.address.run, figure.k);
  if (!history) return null;
  const { grown } = figure.run.ready.beds[figure.k]!;
  const { days, got_L } = history;
  const { area_m2, watering } = grown.bed;
  const rain_mm = grown.rain_mm[i]!;
  const et0_mm = grown.et0_mm[i]!;
  const net_mm = netFromGross_mm(got_L[i]!, area_m2, watering.efficiency);
  const rootBefore_mm = i > 0 ? days.rootDepletion_mm[i - 1]! : days.start[slot.rootDepletion]!;
  const surfaceBefore_mm = i > 0 ? days.surfaceDepletion_mm[i - 1]! : days.start[slot.surfaceDepletion]!;
  const wetting = lastWetting(figure, history, i);
  const wettedShare = wetting.wholeSurface ? 1 : grown.wettedShare;
  const kcb = days.kcb[i]!;
  const ke = days.ke[i]!;
  const ks = days.ks[i]!;
  const surfaceWetted_mm = Math.max(0, surfaceBefore_mm - rain_mm - net_mm / wettedShare);
  const asked_mm = (ks * kcb + ke) * et0_mm;
  const held_mm = grown.available_mm - rootBefore_mm + rain_mm + net_mm;
  return {
    i,
    history,
    rain_mm,
    et0_mm,
    net_mm,
    rootBefore_mm,
    surfaceBefore_mm,
    wetting,
    wettedShare,
    few: grown.exposed[calendarOf(figure).month[i]! + (wetting.wholeSurface ? 0 : 12)]!,
    kcb,
    kcMax: kcMax(grown.kcMaxClimate[i]!, grown.kcMaxHeight, kcb),
    surfaceWetted_mm,
    kr: evaporationReduction(surfaceWetted_mm, grown.tew_mm, grown.rew_mm),
    ke,
    fraction: adjustedFraction(grown.fraction, (kcb + ke) * et0_mm),
    rootWetted_mm: Math.max(0, rootBefore_mm - rain_mm - net_mm),
    ks,
    asked_mm,
    held_mm,
    limit: asked_mm > held_mm ? held_mm / asked_mm : 1,
  };
}

/** The last day that wetted the surface, day i itself included; the start of the record where none did. */
function lastWetting(figure: Figure, { days, got_L }: History, i: number): BedDay["wetting"] {
  const { rain_mm } = figure.run.ready.beds[figure.k]!.grown;
  for (let j = i; j >= 0; j--) {
    if (rain_mm[j]! >= wettingRain_mm) return { wholeSurface: true, atStart: false };
    if (got_L[j]! > 0) return { wholeSurface: false, atStart: false };
  }
  return { wholeSurface: days.start[slot.wetting] === 0, atStart: true };
}

/** A series of the bed on the evening before day i, or the state that day 1 began with. */
export function before(figure: Figure, day: BedDay, what: "depletion" | "surface"): Input {
  const value = what === "depletion" ? day.rootBefore_mm : day.surfaceBefore_mm;
  if (day.i > 0) return linked(figure, what, value, dayAt(figure, day.i - 1));
  const { initial } = bedOf(figure);
  const field = what === "depletion" ? "rootDepletion_mm" : "surfaceDepletion_mm";
  if (initial) return fromSurvey(figure, `beds[${figure.k}].initial.${field}`, value);
  const spunUp = calendarOf(figure).days >= 365;
  return {
    value,
    origin: { provenance: "assumed", source: spunUp ? originWords.spunUp : originWords.fieldCapacity },
  };
}
