/**
 * What the engine is given: a survey with every blank filled, in SI, and nothing else.
 * Shares run 0–1; a month index runs 0–11, a weekday index 0–6 from Monday.
 */

export type Supply = "tank-then-mains" | "tank-only" | "mains-only" | "other" | "none";

export interface Planting {
  /** Share of the bed's planted area; a bed's shares add to 1. */
  share: number;
  /** Basal coefficient at full cover, before Eq. 70. */
  kcbFull: number;
  /** Whether Eq. 70 applies: FAO-56 rows and a survey's own figure, not landscape plant factors. */
  climateAdjusted: boolean;
  height_m: number;
  rootDepth_m: number;
  depletionFraction: number;
  /** Twelve multipliers of Kcb, applied last. */
  monthly: readonly number[];
  /** The figure while the planting establishes; null where the planting carries no such date. */
  establishing: { kcbFull: number; climateAdjusted: boolean } | null;
}

export interface SoilWater {
  /** m³/m³ */
  fieldCapacity: number;
  /** m³/m³ */
  wiltingPoint: number;
  /** Total evaporable water of the top 0.10 m. */
  tew_mm: number;
  /** The part of it that evaporates without hindrance. */
  rew_mm: number;
}

export interface Mulch {
  /** Share of evaporation that a full cover takes away at full depth. */
  cut: number;
  /** Depth at which the cut is whole; 0 where depth does not matter (sheet). */
  fullDepth_mm: number;
  cover: number;
  depth_mm: number;
}

/** Angles in degrees, azimuths clockwise from true north; a sector may pass through north. */
export interface Obstruction {
  fromAzimuth_deg: number;
  toAzimuth_deg: number;
  elevation_deg: number;
}

export interface Habit {
  minutes: number;
  weekdays: readonly boolean[];
  months: readonly boolean[];
}

export interface Watering {
  /** Water comes in under the leaves: Eq. 75 with FAO-56's drip correction. */
  drip: boolean;
  /** Net over gross. */
  efficiency: number;
  /** Share of the surface that a watering wets. */
  wettedShare: number;
  flow_L_min: number;
  /** Infinity: no limit. */
  maxMinutes: number;
  supply: Supply;
  /** Id of the tank that serves the bed; null for none. */
  tank: string | null;
  byHand: boolean;
  allowedWeekdays: readonly boolean[];
  /** null: not known. 0 minutes: not watered. */
  habit: Habit | null;
}

export interface Bed {
  id: string;
  area_m2: number;
  plantings: readonly Planting[];
  /** Leaf cover by month as surveyed; the plants' equations hold it within 0.01–0.99. */
  leafCover: readonly number[];
  /** The bed's own, in place of the mean of its plantings'. */
  rootDepth_m: number | null;
  depletionFraction: number | null;
  mulch: Mulch | null;
  soil: SoilWater;
  obstructions: readonly Obstruction[];
  /** Share of the rain that reaches the bed. */
  rainShare: number;
  watering: Watering;
  initial: { rootDepletion_mm: number; surfaceDepletion_mm: number } | null;
  /** What a thin cover takes, where it is not the estimate's own: drawn to say how sure a figure is. */
  stand?: Stand;
}

/** Constants of the density coefficient. */
export interface Stand {
  /** ML of Kd: 1.5, up to 2. */
  thin: number;
  /** Kc_min of the bare ground between the plants: 0, up to 0.15. */
  kcMin: number;
}

export interface Roof {
  id: string;
  area_m2: number;
  runoff: number;
  firstFlush_mm: number;
  share: number;
  tank: string | null;
}

export interface Tank {
  id: string;
  capacity_L: number;
  /** null: not surveyed. */
  level_L: number | null;
  unusable_L: number;
  inUse: boolean;
  rule: "after-spillage" | "before-spillage";
  topUp: { belowShare: number; toShare: number } | null;
  linked: readonly string[];
}

export interface Draw {
  id: string;
  tank: string;
  litresPerDay: number;
  weekdays: readonly boolean[];
  months: readonly boolean[];
  order: "before-beds" | "after-beds";
  pausesWhenAbsent: boolean;
}

/** Both ends included; both MM-DD (each year, may pass New Year) or both ISO dates. */
export interface Absence {
  from: string;
  to: string;
  hasCarer: boolean;
}

export interface Place {
  latitude_deg: number;
  longitude_deg: number;
  elevation_m: number;
  coastal: boolean;
  windHeight_m: number;
}

export interface Grounds {
  place: Place;
  beds: readonly Bed[];
  roofs: readonly Roof[];
  tanks: readonly Tank[];
  draws: readonly Draw[];
  leaks_L_day: number;
  /** Uses that a chosen measure moves on to a tank; mains water, all of it, until that is done. */
  mainsDraws?: readonly Draw[];
  absences: readonly Absence[];
}
