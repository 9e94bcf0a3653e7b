import type { Figure } from "./figure.ts";

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Sample standard deviation; 0 for a single value. */
export function deviation(values: readonly number[]): number {
  if (values.length < 2) return 0;
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1));
}

/**
 * The mean of repeated readings of one thing and its standard error s/√n. Readings that agree by luck are not
 * taken for surer than the instrument: s is at least the error of one reading.
 * @param readingError standard error of a single reading, in its unit
 * @source JCGM 100:2008 (GUM), 4.2.3 for repeats and 4.3 for the instrument
 */
export function meanOfReadings(readings: readonly number[], readingError = 0): Figure {
  const spread = Math.max(deviation(readings), readingError);
  return { figure: mean(readings), standardError: spread / Math.sqrt(readings.length) };
}
