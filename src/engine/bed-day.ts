import type { Bed } from "./grounds.ts";
import { bedRoots, heldCover, kcbByMonth } from "./plants.ts";
import { shadedEt0 } from "./shade.ts";
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
const wettingRain_mm = 3;

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

/** @throws ShadeNeedsSky */
export function prepareBed(bed: Bed, weather: WeatherSeries, establishing = false): PreparedBed {
  const { rootDepth_m, depletionFraction, height_m } = bedRoots(bed);
  const { base, slope } = kcbByMonth(bed, establishing);
  const cut = bed.mulch ? mulchCut(bed.mulch) : 0;
  const available_mm = totalAvailable_mm(bed.soil.fieldCapacity, bed.soil.wiltingPoint, rootDepth_m);
  const tew_mm = bed.soil.tew_mm * (1 - cut);
  const shade = bed.obstructions.length > 0 ? shadedEt0(bed.id, bed.obstructions, weather) : null;
  return {
    bed,
    month: weather.calendar.month,
    rain_mm: bed.rainShare === 1 ? weather.rain_mm : weather.rain_mm.map((rain) => rain * bed.rainShare),
    et0_mm: shade ? shade.et0_mm : weather.et0_mm,
    kcMaxClimate: weather.kcMaxClimate,
    kcbClimate: weather.kcbClimate ?? weather.kcMaxClimate,
    kcbBase: base,
    kcbSlope: weather.kcbClimate ? slope : new Float64Array(12),
    kcMaxHeight: (height_m / 3) ** 0.3,
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

function exposedByMonth({ leafCover, watering: { wettedShare, drip } }: Bed): Float64Array {
  return Float64Array.from({ length: 24 }, (_, k) =>
    exposedWetted(heldCover(leafCover[k % 12]!), k < 12 ? 1 : wettedShare, drip),
  );
}

/** Slots of a bed's state: what carries over, then what the last step found. Depths in mm. */
export const slot = {
  rootDepletion: 0,
  surfaceDepletion: 1,
  /** 0: the last wetting wetted the whole surface (or there was none); 12: the method's share of it. */
  wetting: 2,
  kcb: 3,
  ke: 4,
  ks: 5,
  etc: 6,
  drainage: 7,
} as const;

export type BedState = Float64Array;

/** Soil at field capacity, surface wet. */
export function freshState(): BedState {
  return new Float64Array(8);
}

/** What the bed asks for before day i, net mm: its depletion once that reaches the trigger, no more than the method gives. */
export function wanted_mm(bed: PreparedBed, state: BedState): number {
  const depletion_mm = state[slot.rootDepletion]!;
  return depletion_mm >= bed.trigger_mm ? Math.min(depletion_mm, bed.mostNet_mm) : 0;
}

/**
 * Day i of a bed's water, `net_mm` of irrigation at its start. Totals and the day-by-day table both run
 * on this step.
 * @closes rain + irrigation − ETc − drainage = change of root depletion, to 1e-9 mm
 * @source FAO-56 Eq. 71–77 and 80–88, in the order of this project's method
 */
export function stepBed(bed: PreparedBed, state: BedState, i: number, net_mm: number): void {
  const month = bed.month[i]!;
  const rain_mm = bed.rain_mm[i]!;
  const et0_mm = bed.et0_mm[i]!;
  const water_mm = rain_mm + net_mm;
  const before_mm = state[slot.rootDepletion]!;

  let wetting = state[slot.wetting]!;
  if (rain_mm >= wettingRain_mm) wetting = 0;
  else if (net_mm > 0) wetting = 12;
  const exposed = bed.exposed[month + wetting]!;
  const netOnWetted_mm = wetting === 0 ? net_mm : net_mm / bed.wettedShare;

  const kcb = bed.kcbBase[month]! + bed.kcbSlope[month]! * bed.kcbClimate[i]!;
  // Eq. 72; plants.ts has it as a function, with the height's term taken anew each time.
  const kcMax = Math.max(1.2 + bed.kcMaxClimate[i]! * bed.kcMaxHeight, kcb + 0.05);
  const wetSurface_mm = Math.max(0, state[slot.surfaceDepletion]! - rain_mm - netOnWetted_mm);
  const reduction = evaporationReduction(wetSurface_mm, bed.tew_mm, bed.rew_mm);
  const ke = evaporationCoefficient(bed.mulchCut, reduction, kcMax, kcb, exposed);

  const fraction = adjustedFraction(bed.fraction, (kcb + ke) * et0_mm);
  const ks = stress(Math.max(0, before_mm - water_mm), fraction, bed.available_mm);
  const asked_mm = (ks * kcb + ke) * et0_mm;
  const held_mm = bed.available_mm - before_mm + water_mm;
  const etc_mm = asked_mm <= held_mm ? asked_mm : held_mm;
  const after_mm = before_mm - water_mm + etc_mm;

  const evaporated_mm = asked_mm <= held_mm ? ke * et0_mm : ke * et0_mm * (held_mm / asked_mm);
  state[slot.rootDepletion] = after_mm > 0 ? Math.min(after_mm, bed.available_mm) : 0;
  state[slot.surfaceDepletion] =
    exposed > 0 ? Math.min(bed.tew_mm, Math.max(0, wetSurface_mm + evaporated_mm / exposed)) : wetSurface_mm;
  state[slot.wetting] = wetting;
  state[slot.kcb] = kcb;
  state[slot.ke] = ke;
  state[slot.ks] = ks;
  state[slot.etc] = etc_mm;
  state[slot.drainage] = after_mm < 0 ? -after_mm : 0;
}
