/**
 * Soil water from sand and clay.
 * @source Saxton and Rawls 2006, Soil Science Society of America Journal 70:1569–1578, Eq. 1–5 and 16,
 * normal density. Fitted on soils of up to 60 % clay.
 */

/** What the project's soils are taken to hold. */
export const organicMatter_pct = 2.5;

export interface TextureWater {
  /** θ at 1500 kPa, m³/m³. */
  wiltingPoint: number;
  /** θ at 33 kPa, m³/m³. */
  fieldCapacity: number;
  /** m³/m³ */
  saturation: number;
  saturatedConductivity_mm_h: number;
}

/** Sand and clay as shares by weight, organic matter in percent. */
export function textureWater(sand: number, clay: number, om_pct = organicMatter_pct): TextureWater {
  const wiltingPoint = theta1500(sand, clay, om_pct);
  const fieldCapacity = theta33(sand, clay, om_pct);
  const saturation = fieldCapacity + thetaS33(sand, clay, om_pct) - 0.097 * sand + 0.043; // Eq. 5
  const b = (Math.log(1500) - Math.log(33)) / (Math.log(fieldCapacity) - Math.log(wiltingPoint)); // Eq. 15
  const saturatedConductivity_mm_h = 1930 * (saturation - fieldCapacity) ** (3 - 1 / b); // Eq. 16
  return { wiltingPoint, fieldCapacity, saturation, saturatedConductivity_mm_h };
}

/** Eq. 1 */
function theta1500(s: number, c: number, om: number): number {
  const t = firstTheta1500(s, c, om);
  return t + 0.14 * t - 0.02;
}

/** First solution of Eq. 1. */
export function firstTheta1500(s: number, c: number, om: number): number {
  return -0.024 * s + 0.487 * c + 0.006 * om + 0.005 * s * om - 0.013 * c * om + 0.068 * s * c + 0.031;
}

/** Eq. 2 */
function theta33(s: number, c: number, om: number): number {
  const t = firstTheta33(s, c, om);
  return t + 1.283 * t * t - 0.374 * t - 0.015;
}

/** First solution of Eq. 2. */
export function firstTheta33(s: number, c: number, om: number): number {
  return -0.251 * s + 0.195 * c + 0.011 * om + 0.006 * s * om - 0.027 * c * om + 0.452 * s * c + 0.299;
}

/** Eq. 3 */
function thetaS33(s: number, c: number, om: number): number {
  const t = 0.278 * s + 0.034 * c + 0.022 * om - 0.018 * s * om - 0.027 * c * om - 0.584 * s * c + 0.078;
  return t + 0.636 * t - 0.107;
}

/** Depth of the surface layer that dries by evaporation. @source FAO-56, chapter 7: 0.10–0.15 m */
const evaporationDepth_m = 0.1;

/** Total evaporable water of the surface layer, mm. @source FAO-56 Eq. 73, Ze 0.10 m */
export function totalEvaporableWater(fieldCapacity: number, wiltingPoint: number): number {
  return 1000 * (fieldCapacity - 0.5 * wiltingPoint) * evaporationDepth_m;
}
