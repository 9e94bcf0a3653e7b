/** A stepped line over twelve months of equal width. */
export function steps(values: readonly number[], x: (m: number) => number, y: (v: number) => number): string {
  return values.map((v, m) => `${m === 0 ? "M" : "L"}${x(m)},${y(v)}L${x(m + 1)},${y(v)}`).join("");
}

/** The area between two stepped lines where the upper is above the lower. */
export function between(
  upper: readonly number[],
  lower: readonly number[],
  x: (m: number) => number,
  y: (v: number) => number,
): string {
  return upper
    .map((u, m) => {
      const l = lower[m]!;
      return u > l ? `M${x(m)},${y(u)}H${x(m + 1)}V${y(l)}H${x(m)}Z` : "";
    })
    .join("");
}
