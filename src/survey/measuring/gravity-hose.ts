/** One timing of a hose from a tank: the water's surface above the hose's end, and what came. */
export interface HeadAndFlow {
  head_m: number;
  flow_L_min: number;
}

/**
 * Flow at 1 m of head, least squares of q = k √h through the origin (common practice: flow falls with the square
 * root of the head while the hose stays as it is).
 */
export function flowAtOneMetre_L_min(readings: readonly HeadAndFlow[]): number {
  const over = readings.reduce((sum, { head_m, flow_L_min }) => sum + flow_L_min * Math.sqrt(head_m), 0);
  return over / readings.reduce((sum, { head_m }) => sum + head_m, 0);
}

/** Flow of the hose at another head. */
export function gravityFlow_L_min(atOneMetre_L_min: number, head_m: number): number {
  return atOneMetre_L_min * Math.sqrt(Math.max(0, head_m));
}

/** The largest miss of the square-root rule on readings, as a share of the reading. */
export function largestMiss(readings: readonly HeadAndFlow[]): number {
  const k = flowAtOneMetre_L_min(readings);
  return Math.max(
    ...readings.map(({ head_m, flow_L_min }) => Math.abs(gravityFlow_L_min(k, head_m) / flow_L_min - 1)),
  );
}
