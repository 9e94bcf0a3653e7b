/** Pixels of a picture that look like leaves. */
export interface GreenCount {
  green: number;
  pixels: number;
}

/** Excess green from which a pixel counts as a leaf: 2g − r − b of shares that add to 1. */
const leastExcess = 0.1;
/** Sum of the three channels, 0–765, below which a pixel is too dark to have a colour. */
const darkest = 45;

/**
 * Counts green pixels of RGBA data: a help beside a judgement, never truth. Grey, red and dry leaves are missed,
 * green litter and weeds are not; shade fools it.
 * @source excess green index: Woebbecke, Meyer, Von Bargen and Mortensen 1995, Transactions of the ASAE 38:259–269
 * (from memory); the limit is ours
 */
export function countGreen(rgba: Uint8ClampedArray): GreenCount {
  let green = 0;
  let pixels = 0;
  for (let i = 0; i + 3 < rgba.length; i += 4) {
    if (rgba[i + 3]! < 128) continue;
    pixels++;
    const sum = rgba[i]! + rgba[i + 1]! + rgba[i + 2]!;
    if (sum < darkest) continue;
    if ((3 * rgba[i + 1]! - sum) / sum > leastExcess) green++;
  }
  return { green, pixels };
}
