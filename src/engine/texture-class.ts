export const textureClasses = [
  "sand",
  "loamy-sand",
  "sandy-loam",
  "loam",
  "silt-loam",
  "silt",
  "sandy-clay-loam",
  "clay-loam",
  "silty-clay-loam",
  "sandy-clay",
  "silty-clay",
  "clay",
] as const;

export type TextureClass = (typeof textureClasses)[number];

/**
 * The class of a soil in the USDA triangle, from percent by weight of sand and clay; silt is the rest.
 * @source USDA, Soil Survey Manual, chapter 3, texture classes (limits from memory)
 */
export function textureClass(sand_pct: number, clay_pct: number): TextureClass {
  const silt_pct = 100 - sand_pct - clay_pct;
  if (silt_pct + 1.5 * clay_pct < 15) return "sand";
  if (silt_pct + 2 * clay_pct < 30) return "loamy-sand";
  if (clay_pct >= 40) return clayey(sand_pct, silt_pct);
  if (clay_pct >= 35 && sand_pct > 45) return "sandy-clay";
  if (clay_pct >= 27 && sand_pct <= 45) return sand_pct > 20 ? "clay-loam" : "silty-clay-loam";
  if (clay_pct >= 20 && silt_pct < 28) return "sandy-clay-loam";
  if (silt_pct >= 50) return silt_pct >= 80 && clay_pct < 12 ? "silt" : "silt-loam";
  return clay_pct < 7 || sand_pct > 52 ? "sandy-loam" : "loam";
}

/** Of 40 % clay or more. */
function clayey(sand_pct: number, silt_pct: number): TextureClass {
  if (silt_pct >= 40) return "silty-clay";
  return sand_pct > 45 ? "sandy-clay" : "clay";
}
