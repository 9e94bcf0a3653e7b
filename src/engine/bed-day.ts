import { everyDay } from "./every-day.ts";
import type { Bed } from "./grounds.ts";
import { bedRoots, heldCover, kcbByMonth, kcMax, kcMaxHeightTerm } from "./plants.ts";
import { type ShadedEt0, shadedEt0 } from "./shade.ts";
import {
  adjustedFraction,
  evaporationCoefficient,
  evaporationReduction,
  exposedWetted,
  mulchCut,
  stress,
  totalAvailable_mm,
} from "./soil-water.ts";
import { mostNet_mm } from "./watering.ts";
import type { WeatherSeries } from "./weather/series.ts";

/** Rain that wets the whole surface. @source method of this project, after FAO-56 Table 20 */
export const wettingRain_mm = 3;

/** A bed made ready for a record: weather as it reaches the bed, and all that does not change by the day. */
export interface PreparedBed {
  bed: Bed;
  month: Uint8Array;
  /** Rain that reaches the bed. */
  rain_mm: Float64Array;
  /** The bed's reference ET0, shade taken off. */
  et0_mm: Float64Array;
  kcMaxClimate: Float64Array;
  kcbClimate: Float64Array;
  /** Kcb of a month = base + slope × climate; see plants.ts. */
  kcbBase: Float64Array;
  kcbSlope: Float64Array;
  /** (h/3)^0.3 of Eq. 72 for the bed's mean height. */
  kcMaxHeight: number;
  /** few by month: 0–11 after a wetting of the whole surface, 12–23 after the method's. */
  exposed: Float64Array;
  wettedShare: number;
  mulchCut: number;
  available_mm: number;
  fraction: number;
  tew_mm: number;
  rew_mm: number;
  /** Refill when the roots are this far down: p·TAW with the table's p. */
  trigger_mm: number;
  mostNet_mm: number;
  /** Shade's factor is R itself: the record has sun but no temperatures. */
  shadeByRadiationAlone: boolean;
}

/** A bed's ET0 under what takes sun and sky from it; null for an open one. @throws ShadeNeedsSky */
export type ShadeOf = (bed: Bed) => ShadedEt0 | null;

/** Works a bed's shade out anew. */
export function shadeIn(weather: WeatherSeries): ShadeOf {
  return ({ id, obstructions }) => (obstructions.length > 0 ? shadedEt0(id, obstructions, weather) : null);
}

/** @throws ShadeNeedsSky */
export function prepareBed(
  bed: Bed,
  weather: WeatherSeries,
  establishing = false,
  shadeOf: ShadeOf = shadeIn(weather),
): PreparedBed {
  const { rootDepth_m, depletionFraction, height_m } = bedRoots(bed);
  const { base, slope } = kcbByMonth(bed, establishing);
  const cut = bed.mulch ? mulchCut(bed.mulch) : 0;
  const available_mm = totalAvailable_mm(bed.soil.fieldCapacity, bed.soil.wiltingPoint, rootDepth_m);
  const tew_mm = bed.soil.tew_mm * (1 - cut);
  const shade = shadeOf(bed);
  return {
    bed,
    month: weather.calendar.month,
    rain_mm: rainOn(bed, weather),
    et0_mm: shade ? shade.et0_mm : weather.et0_mm,
    kcMaxClimate: weather.kcMaxClimate,
    kcbClimate: weather.kcbClimate ?? weather.kcMaxClimate,
    kcbBase: base,
    kcbSlope: weather.kcbClimate ? slope : new Float64Array(12),
    kcMaxHeight: kcMaxHeightTerm(height_m),
    exposed: exposedByMonth(bed),
    wettedShare: bed.watering.wettedShare,
    mulchCut: cut,
    available_mm,
    fraction: depletionFraction,
    tew_mm,
    rew_mm: Math.min(tew_mm, bed.soil.rew_mm * (1 - cut)),
    trigger_mm: depletionFraction * available_mm,
    mostNet_mm: mostNet_mm(bed.watering, bed.area_m2),
    shadeByRadiationAlone: shade?.byRadiationAlone ?? false,
  };
}

/** The day's rain × the share of it that reaches the bed. */
function rainOn({ rainShare }: Bed, { rain_mm }: WeatherSeries): Float64Array {
  return rainShare === 1 ? rain_mm : everyDay(rain_mm.length, (i) => rain_mm[i]! * rainShare);
}

function exposedByMonth({ leafCover, watering: { wettedShare, drip } }: Bed): Float64Array {
  return Float64Array.from({ length: 24 }, (_, k) =>
    exposedWetted(heldCover(leafCover[k % 12]!), k < 12 ? 1 : wettedShare, drip),
  );
}

/** Slots of a bed's state: what carries over to the next day, then sums since they were last cleared. mm. */
export const slot = {
  rootDepletion: 0,
  surfaceDepletion: 1,
  /** 0: the last wetting wetted the whole surface (or there was none); 12: the method's share of it. */
  wetting: 2,
  rain: 3,
  drainage: 4,
  stressDays: 5,
} as const;

export type BedState = Float64Array;

/** Soil at field capacity, surface wet, nothing summed. */
export function freshState(): BedState {
  return new Float64Array(6);
}

/** Days written down, one array a column of the day-by-day table. */
export interface BedDays {
  kcb: Float64Array;
  ke: Float64Array;
  ks: Float64Array;
  etc_mm: Float64Array;
  drainage_mm: Float64Array;
  rootDepletion_mm: Float64Array;
  surfaceDepletion_mm: Float64Array;
  /** The state that the record's first day began with: its first three slots. */
  start: BedState;
}

/** What the bed asks for before a day, net mm: its depletion once that reaches the trigger, no more than the method gives. */
export function wanted_mm(depletion_mm: number, trigger_mm: number, most_mm: number): number {
  if (depletion_mm < trigger_mm) return 0;
  return depletion_mm < most_mm ? depletion_mm : most_mm;
}

/**
 * A bed's water from day `from` up to day `to`, each day in the order of this project's method. Totals, the
 * day-by-day table and beds that hang on a tank all run on this loop; a tank's beds one day at a time. Numbers
 * stay in local variables and arrays, since a call a day would box them.
 * @param open days on which it may be watered to need, which fills `net_mm`; null: `net_mm` is given
 * @param net_mm irrigation at the start of each day
 * @closes rain + irrigation − ETc − drainage = change of root depletion, to 1e-9 mm
 * @source FAO-56 Eq. 71–77 and 80–88
 */
export function runDays(
  bed: PreparedBed,
  state: BedState,
  net_mm: Float64Array,
  open: Uint8Array | null,
  from: number,
  to: number,
  keep: BedDays | null,
): void {
  const {
    month,
    rain_mm: rainByDay_mm,
    et0_mm: et0ByDay_mm,
    kcMaxClimate,
    kcbClimate,
    kcbBase,
    kcbSlope,
    kcMaxHeight,
    exposed,
  } = bed;
  const { wettedShare, mulchCut: cut, available_mm, fraction, tew_mm, rew_mm, trigger_mm, mostNet_mm } = bed;
  let root_mm = state[slot.rootDepletion]!;
  let surface_mm = state[slot.surfaceDepletion]!;
  let wetting = state[slot.wetting]!;
  let rainSum_mm = state[slot.rain]!;
  let drainageSum_mm = state[slot.drainage]!;
  let stressDays = state[slot.stressDays]!;
  if (keep && from === 0) keep.start.set(state.subarray(0, slot.rain));

  for (let i = from; i < to; i++) {
    const m = month[i]!;
    const rain_mm = rainByDay_mm[i]!;
    const et0_mm = et0ByDay_mm[i]!;
    let irrigation_mm = 0;
    if (!open) irrigation_mm = net_mm[i]!;
    else if (open[i]) irrigation_mm = wanted_mm(root_mm, trigger_mm, mostNet_mm);
    net_mm[i] = irrigation_mm;
    const water_mm = rain_mm + irrigation_mm;

    if (rain_mm >= wettingRain_mm) wetting = 0;
    else if (irrigation_mm > 0) wetting = 12;
    const few = exposed[m + wetting]!;

    const kcb = kcbBase[m]! + kcbSlope[m]! * kcbClimate[i]!;
    const kcMaxOfDay = kcMax(kcMaxClimate[i]!, kcMaxHeight, kcb);
    const onWetted_mm = wetting === 0 ? irrigation_mm : irrigation_mm / wettedShare;
    const leftDry_mm = surface_mm - rain_mm - onWetted_mm;
    const wetted_mm = leftDry_mm > 0 ? leftDry_mm : 0;
    const kr = evaporationReduction(wetted_mm, tew_mm, rew_mm);
    const ke = evaporationCoefficient(cut, kr, kcMaxOfDay, kcb, few);

    const p = adjustedFraction(fraction, (kcb + ke) * et0_mm);
    const afterWater_mm = root_mm - water_mm;
    const ks = stress(afterWater_mm > 0 ? afterWater_mm : 0, p, available_mm);
    const asked_mm = (ks * kcb + ke) * et0_mm;
    const held_mm = available_mm - afterWater_mm;
    const r = asked_mm > held_mm ? held_mm / asked_mm : 1;
    const etc_mm = r * asked_mm;

    const balance_mm = afterWater_mm + etc_mm;
    const drainage_mm = balance_mm < 0 ? -balance_mm : 0;
    if (balance_mm < 0) root_mm = 0;
    else root_mm = balance_mm < available_mm ? balance_mm : available_mm;
    if (few > 0) {
      const dried_mm = wetted_mm + (r * ke * et0_mm) / few;
      surface_mm = dried_mm < tew_mm ? dried_mm : tew_mm;
    } else surface_mm = wetted_mm;

    rainSum_mm += rain_mm;
    drainageSum_mm += drainage_mm;
    if (ks < 1) stressDays++;
    if (keep) {
      keep.kcb[i] = kcb;
      keep.ke[i] = ke;
      keep.ks[i] = ks;
      keep.etc_mm[i] = etc_mm;
      keep.drainage_mm[i] = drainage_mm;
      keep.rootDepletion_mm[i] = root_mm;
      keep.surfaceDepletion_mm[i] = surface_mm;
    }
  }
  state[slot.rootDepletion] = root_mm;
  state[slot.surfaceDepletion] = surface_mm;
  state[slot.wetting] = wetting;
  state[slot.rain] = rainSum_mm;
  state[slot.drainage] = drainageSum_mm;
  state[slot.stressDays] = stressDays;
}
