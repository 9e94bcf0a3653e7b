/**
 * Flow from a tank by gravity. Flow goes with the square root of the head (common practice), so its square is
 * linear in the level of a tank with upright walls; between dips at which it was measured it is read off that line.
 */
export interface GravityTap {
  flowAt: readonly { level_L: number; flow_L_min: number }[];
  /** Water below the outlet, where the flow ends when it was measured at one level alone. */
  unusable_L: number;
}

interface Segment {
  fromLevel_L: number;
  /** Square of the flow: slope × level + offset. */
  slope: number;
  offset: number;
}

/** Flow at a level, L/min; 0 where none is left. */
export function flowAtLevel_L_min(tap: GravityTap, level_L: number): number {
  const { slope, offset } = segmentAt(segments(tap), level_L);
  return level_L <= tap.unusable_L ? 0 : Math.sqrt(Math.max(0, slope * level_L + offset));
}

/**
 * Minutes to draw so many litres, the flow falling as the tank does; Infinity where the tap runs dry before.
 * @source Torricelli: with q² = a·L + b, t = 2 (q0 − q1) / a
 */
export function minutesToDraw(tap: GravityTap, level_L: number, litres: number): number {
  const lines = segments(tap);
  const end_L = level_L - litres;
  let minutes = 0;
  let from_L = level_L;
  while (from_L > end_L) {
    const { fromLevel_L, slope, offset } = segmentAt(lines, from_L - 1e-9);
    const to_L = Math.max(end_L, Math.min(fromLevel_L, from_L));
    const next_L = to_L < from_L ? to_L : end_L;
    const q0 = Math.sqrt(Math.max(0, slope * from_L + offset));
    const q1 = Math.sqrt(Math.max(0, slope * next_L + offset));
    if (next_L < tap.unusable_L - 1e-9 || q0 === 0 || slope * next_L + offset < -1e-9)
      return Number.POSITIVE_INFINITY;
    minutes += slope > 1e-12 ? (2 * (q0 - q1)) / slope : (from_L - next_L) / q0;
    from_L = next_L;
  }
  return minutes;
}

/** Straight pieces of the squared flow, from the lowest level up; the outer ones reach on. */
function segments({ flowAt, unusable_L }: GravityTap): Segment[] {
  const points = [...flowAt].sort((a, b) => a.level_L - b.level_L);
  const known =
    points.length === 1 && points[0]!.level_L > unusable_L
      ? [{ level_L: unusable_L, flow_L_min: 0 }, points[0]!]
      : points;
  if (known.length === 1)
    return [{ fromLevel_L: Number.NEGATIVE_INFINITY, slope: 0, offset: known[0]!.flow_L_min ** 2 }];
  return known.slice(1).map((upper, k) => {
    const lower = known[k]!;
    const slope = Math.max(
      0,
      (upper.flow_L_min ** 2 - lower.flow_L_min ** 2) / (upper.level_L - lower.level_L),
    );
    const fromLevel_L = k === 0 ? Number.NEGATIVE_INFINITY : lower.level_L;
    return { fromLevel_L, slope, offset: upper.flow_L_min ** 2 - slope * upper.level_L };
  });
}

function segmentAt(lines: readonly Segment[], level_L: number): Segment {
  return lines.findLast(({ fromLevel_L }) => fromLevel_L <= level_L) ?? lines[0]!;
}
