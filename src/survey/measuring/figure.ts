/** A figure worked out from readings, with its standard error in the figure's unit. */
export interface Figure {
  figure: number;
  standardError: number;
}

/** A figure without error: a count, or what is so by definition. */
export function exactly(figure: number): Figure {
  return { figure, standardError: 0 };
}

/** A step this far within a standard error stays where a smooth function is straight. */
const stepShare = 1e-3;

/**
 * Carries independent errors through a function, first order: s² = Σ (∂f/∂x · s_x)², each slope by the central
 * difference a thousandth of a standard error to either side.
 * @source JCGM 100:2008 (GUM), 5.1.2, Eq. 10
 * @example propagate(([a, b]) => a * b, [length, width])
 */
export function propagate(f: (values: number[]) => number, inputs: readonly Figure[]): Figure {
  const values = inputs.map(({ figure }) => figure);
  const variance = inputs.reduce((sum, { standardError }, i) => {
    if (standardError === 0) return sum;
    const step = stepShare * standardError;
    const at = (value: number) => f(values.with(i, value));
    const change = (at(values[i]! + step) - at(values[i]! - step)) / (2 * stepShare);
    return sum + change ** 2;
  }, 0);
  return { figure: f(values), standardError: Math.sqrt(variance) };
}
