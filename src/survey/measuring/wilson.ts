/** 97.5 % point of the standard normal distribution: an interval of 95 %. */
export const z95 = 1.959963984540054;

export interface ShareInterval {
  /** Hits over points. */
  share: number;
  low: number;
  high: number;
  /** Half the interval over its normal width: never 0, unlike √(p(1 − p)/n) where all or none hit. */
  standardError: number;
}

/**
 * Score interval of a share counted at points.
 * @source Wilson 1927, Journal of the American Statistical Association 22:209–212
 */
export function wilson(hits: number, points: number, z = z95): ShareInterval {
  const share = hits / points;
  const z2 = z * z;
  const middle = (share + z2 / (2 * points)) / (1 + z2 / points);
  const half =
    (z / (1 + z2 / points)) * Math.sqrt((share * (1 - share)) / points + z2 / (4 * points * points));
  const low = hits === 0 ? 0 : Math.max(0, middle - half);
  const high = hits === points ? 1 : Math.min(1, middle + half);
  return { share, low, high, standardError: (high - low) / (2 * z) };
}
