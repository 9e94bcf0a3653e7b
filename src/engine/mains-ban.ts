import type { BedDays } from "./bed-day.ts";
import { blankDays, runBed } from "./bed-run.ts";
import type { BedVariant } from "./bed-variant.ts";
import { resized } from "./size-curve.ts";
import type { TankInputs } from "./tank-inputs.ts";
import { type Claimant, runTank, thirstyBed } from "./tank-run.ts";
import { tankSeries } from "./tanks.ts";

/** A bed while no mains water may be put on any: by rain, and by its tank where it has one. */
export interface BanBed {
  id: string;
  stressDays: number;
  /** The most days in a row with next to nothing left in the root zone. */
  longestDry_days: number;
}

/** Next to nothing: this share of what roots can take is gone. Ours: wilting is at 1. */
const driedShare = 0.95;

/** Beds of a tank under a ban, at a size of it: each gets what the tank has left, in the survey's order. */
export function banOnTank(inputs: TankInputs, tankId: string, capacity_L: number): BanBed[] {
  const days = inputs.inflow_L.length;
  const kept = new Map<string, BedDays>(inputs.beds.map(({ bed }) => [bed.id, blankDays(days)]));
  const group = resized(inputs.group, tankId, capacity_L);
  const byBed = new Map(inputs.beds.map((variant) => [variant.bed.id, variant]));
  const draws = inputs.draws();
  const claimants: Claimant[] = [
    ...draws.before,
    ...[...byBed.values()].map(({ prepared, open, bed }) => thirstyBed(prepared, open, kept.get(bed.id)!)),
    ...draws.after,
  ];
  runTank(group, claimants, tankSeries(inputs.inflow_L), new Float64Array(days));
  return inputs.beds.map((variant) => banBed(variant, kept.get(variant.bed.id)!));
}

/** A bed that lives on rain alone. */
export function banByRain(variant: BedVariant): BanBed {
  const days = variant.open.length;
  const keep = blankDays(days);
  runBed(variant.prepared, null, new Float64Array(days), keep);
  return banBed(variant, keep);
}

function banBed({ bed, prepared }: BedVariant, { ks, rootDepletion_mm }: BedDays): BanBed {
  const dried_mm = driedShare * prepared.available_mm;
  let stressDays = 0;
  let run = 0;
  let longestDry_days = 0;
  for (let i = 0; i < ks.length; i++) {
    if (ks[i]! < 1) stressDays++;
    run = rootDepletion_mm[i]! >= dried_mm ? run + 1 : 0;
    longestDry_days = Math.max(longestDry_days, run);
  }
  return { id: bed.id, stressDays, longestDry_days };
}
