import type { Bed } from "../grounds.ts";
import { applicationRate_mm_h, cyclesAndSoaks, grossFromNet_L, netFromGross_mm } from "../watering.ts";
import type { RoundsBed } from "./site.ts";

/** A watering in whole minutes. */
export interface RunTime {
  minutes: number;
  litres: number;
  net_mm: number;
  cycles: number;
  /** Rest between two cycles; 0 where there is one. */
  soak_min: number;
}

/** Minutes to give a net depth over a bed by its flow, unrounded. */
export function minutesFor(bed: Bed, net_mm: number, flow_L_min = bed.watering.flow_L_min): number {
  return grossFromNet_L(net_mm, bed.area_m2, bed.watering.efficiency) / flow_L_min;
}

/** Net depth over a bed of a number of minutes. */
export function netOf_mm(bed: Bed, minutes: number, flow_L_min = bed.watering.flow_L_min): number {
  return netFromGross_mm(minutes * flow_L_min, bed.area_m2, bed.watering.efficiency);
}

/**
 * Depth an hour where a bed's water falls. What a dripper gives faster than the soil takes it spreads sideways,
 * over the whole bed at most (common practice).
 */
export function rateWhereItFalls_mm_h(
  { area_m2, watering }: Bed,
  intake_mm_h: number,
  flow_L_min: number,
): number {
  const wetted_m2 = area_m2 * watering.wettedShare;
  const rate_mm_h = applicationRate_mm_h(flow_L_min, wetted_m2);
  if (!watering.drip || rate_mm_h <= intake_mm_h) return rate_mm_h;
  return Math.max(intake_mm_h, applicationRate_mm_h(flow_L_min, area_m2));
}

/**
 * A watering of whole minutes with its litres, and its cycles and soaks where water comes faster than the soil
 * takes it. The soak lasts until what stands has gone in.
 * @source cycle-and-soak arithmetic, common practice; soak: surface storage ÷ intake
 */
export function runTime(
  bed: Bed,
  rounds: Pick<RoundsBed, "intake_mm_h" | "surfaceStorage_mm">,
  minutes: number,
  flow_L_min = bed.watering.flow_L_min,
): RunTime {
  const rate_mm_h = rateWhereItFalls_mm_h(bed, rounds.intake_mm_h, flow_L_min);
  const depth_mm = (minutes * rate_mm_h) / 60;
  const { cycles } = cyclesAndSoaks(depth_mm, rate_mm_h, rounds.intake_mm_h, rounds.surfaceStorage_mm);
  const possible = Math.max(1, Math.min(cycles, minutes));
  return {
    minutes,
    litres: minutes * flow_L_min,
    net_mm: netOf_mm(bed, minutes, flow_L_min),
    cycles: minutes > 0 ? possible : 0,
    soak_min: possible > 1 ? Math.ceil((60 * rounds.surfaceStorage_mm) / rounds.intake_mm_h) : 0,
  };
}

/** The minutes of each cycle: whole, the longer ones first, together the watering's. */
export function cycleMinutes({ minutes, cycles }: Pick<RunTime, "minutes" | "cycles">): number[] {
  return Array.from({ length: cycles }, (_, k) => Math.floor((minutes + cycles - 1 - k) / cycles));
}

/** Minutes from the first drop to the last, soaks included. */
export function elapsed_min({ minutes, cycles, soak_min }: RunTime): number {
  return minutes + Math.max(0, cycles - 1) * soak_min;
}

/**
 * How deep a watering wets the roots' soil: from the top down, each layer as dry as the whole root zone.
 */
export function wettedDepth_m(net_mm: number, depletion_mm: number, rootDepth_m: number): number {
  return depletion_mm > net_mm ? (rootDepth_m * net_mm) / depletion_mm : rootDepth_m;
}

/** Minutes of one watering that stay within so many cycles; Infinity where the soil takes it as it comes. */
export function minutesWithin(
  bed: Bed,
  rounds: Pick<RoundsBed, "intake_mm_h" | "surfaceStorage_mm">,
  cycles: number,
  flow_L_min = bed.watering.flow_L_min,
): number {
  const rate_mm_h = rateWhereItFalls_mm_h(bed, rounds.intake_mm_h, flow_L_min);
  const { longestCycle_min } = cyclesAndSoaks(1, rate_mm_h, rounds.intake_mm_h, rounds.surfaceStorage_mm);
  return cycles * longestCycle_min;
}
