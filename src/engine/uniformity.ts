/**
 * Low-quarter distribution uniformity of a catch-can test, 0–1: mean of the lowest quarter of the cans over
 * the mean of all. A can that straddles the quarter counts in part. NaN where no can caught anything.
 *
 * @example distributionUniformity([4, 8, 8, 12]) // 0.5
 */
export function distributionUniformity(cans_mL: readonly number[]): number {
  const sorted = [...cans_mL].sort((a, b) => a - b);
  const quarter = sorted.length / 4;
  const lowest = sorted.reduce((sum, can, i) => sum + can * Math.min(1, Math.max(0, quarter - i)), 0);
  const all = sorted.reduce((sum, can) => sum + can, 0);
  return lowest / quarter / (all / sorted.length);
}

/**
 * Efficiency from distribution uniformity: the inverse of the run-time multiplier of turf sprinklers.
 * @source common practice (irrigation scheduling texts, from memory)
 */
export function efficiencyFromUniformity(du: number): number {
  return 0.4 + 0.6 * du;
}
