import type { Rng } from "./rng.ts";

/**
 * Draws from the standard normal distribution.
 * @source Marsaglia and Bray (1964), SIAM Review 6:260-264, polar method; the second of each pair is kept for the next call
 */
export function normals(rng: Rng): () => number {
  let spare: number | null = null;
  return () => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const u = 2 * rng.uniform() - 1;
      const v = 2 * rng.uniform() - 1;
      const s = u * u + v * v;
      if (s >= 1 || s === 0) continue;
      const factor = Math.sqrt((-2 * Math.log(s)) / s);
      spare = v * factor;
      return u * factor;
    }
  };
}

/**
 * Draws from gamma distributions of scale 1, so that mean and variance are the shape.
 * @source Marsaglia and Tsang (2000), A simple method for generating gamma variables, ACM Transactions on
 * Mathematical Software 26:363-372; shapes below 1 by their section 6, G(a) = G(a + 1) U^(1/a)
 */
export function gammas(rng: Rng): (shape: number) => number {
  const normal = normals(rng);
  const atLeastOne = (shape: number): number => {
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = normal();
      const v = (1 + c * x) ** 3;
      if (v <= 0) continue;
      if (Math.log(rng.uniform()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
    }
  };
  return (shape) => (shape >= 1 ? atLeastOne(shape) : atLeastOne(shape + 1) * rng.uniform() ** (1 / shape));
}

/**
 * A log-normal factor of mean 1 from a standard normal draw.
 * @param spread standard deviation of the factor
 */
export function logNormal(spread: number, normal: number): number {
  const variance = Math.log(1 + spread * spread);
  return Math.exp(Math.sqrt(variance) * normal - variance / 2);
}
