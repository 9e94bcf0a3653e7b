/** Of every how many days a level is kept for the small pictures of all years. */
const step_days = 7;

/** A level every seventh day, and on the last. */
export function everySeventh(level_L: Float64Array, from: number, to: number): Float32Array {
  const count = Math.ceil((to - from) / step_days);
  return Float32Array.from({ length: count + 1 }, (_, w) => level_L[Math.min(to - 1, from + w * step_days)]!);
}
