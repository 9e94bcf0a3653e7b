import intakeTable from "../../data/intake.json" with { type: "json" };
import slopeTable from "../../data/slopes.json" with { type: "json" };
import { citedRows, rowOf, type Table, type Value } from "./table.ts";

export interface Intake {
  texture: string;
  /** Basic intake rate on the level. */
  intake_mm_h: Value;
}

export interface Slope {
  fromSlope_pct: number;
  /** Share of the level's intake rate. */
  intakeShare: Value;
  /** Water that may stand before it runs off. */
  surfaceStorage_mm: Value;
  /** Share of the rain that a bed may shed. */
  rainShed: Value;
}

export const intakes: readonly Intake[] = citedRows(intakeTable as Table<Intake>);

/** From the flattest to the steepest. */
export const slopes: readonly Slope[] = citedRows(slopeTable as Table<Slope>);

export function intake(texture: string): Intake {
  return rowOf(intakes, "texture", texture);
}

/** The band that a slope falls in. */
export function slope(slope_pct: number): Slope {
  return slopes.findLast((band) => band.fromSlope_pct <= slope_pct) ?? slopes[0]!;
}

/** Middle intake rate of a texture on a slope, mm/h. */
export function intakeRate_mm_h(texture: string, slope_pct: number): number {
  return intake(texture).intake_mm_h.middle * slope(slope_pct).intakeShare.middle;
}
