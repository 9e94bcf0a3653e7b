/** The rule that applies to offsets at even steps along a base line. */
export type OffsetRule = "trapezoid" | "simpson";

/**
 * Simpson's rule wants an odd number of offsets, three at least, and an edge that curves smoothly; with an
 * even number the trapezoid rule stands, which is also the one for an edge of straight pieces.
 */
export function offsetRule(count: number, curved: boolean): OffsetRule {
  return curved && count >= 3 && count % 2 === 1 ? "simpson" : "trapezoid";
}

/** Weight of each offset, times the step. @source Simpson's composite 1/3 rule; composite trapezoid rule */
export function offsetWeights(count: number, rule: OffsetRule): number[] {
  return Array.from({ length: count }, (_, i) => {
    const end = i === 0 || i === count - 1;
    if (rule === "trapezoid") return end ? 1 / 2 : 1;
    return end ? 1 / 3 : i % 2 === 1 ? 4 / 3 : 2 / 3;
  });
}

/** Area between the base line and the edge, offsets at even steps from one end to the other. */
export function offsets_m2(step: number, offsets: readonly number[], rule: OffsetRule): number {
  const weights = offsetWeights(offsets.length, rule);
  return step * offsets.reduce((sum, offset, i) => sum + offset * weights[i]!, 0);
}

/** Offsets at uneven places along the base line: trapezoids between neighbours. */
export function unevenOffsets_m2(along: readonly number[], offsets: readonly number[]): number {
  return offsets
    .slice(1)
    .reduce((sum, offset, i) => sum + ((offset + offsets[i]!) / 2) * (along[i + 1]! - along[i]!), 0);
}
