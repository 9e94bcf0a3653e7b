import type { SoilWater } from "../engine/grounds.ts";
import { textureWater, totalEvaporableWater } from "../engine/soil-texture.ts";
import { textureClass } from "../engine/texture-class.ts";
import { defaultChoice } from "../tables/defaults.ts";
import { soil as soilRow } from "../tables/soils.ts";
import type { Stands } from "./resolve-assumed.ts";
import type { SurveySoil } from "./survey.ts";

/** The equations leave nothing between field capacity and wilting point in nearly pure clay, which they were not fitted on. */
const leastAvailable = 0.01;

/** Soil water from the survey's own figures, from sand and clay, or from the texture's row. REW is never above TEW. */
export function resolveSoil(soil: SurveySoil | undefined, where: string, stands: Stands): SoilWater {
  const water = ownFigures(soil) ?? fromSandAndClay(soil) ?? fromTexture(soil?.texture, where, stands);
  return { ...water, rew_mm: Math.min(water.rew_mm, water.tew_mm) };
}

function ownFigures(soil: SurveySoil | undefined): SoilWater | null {
  if (!soil) return null;
  const { fieldCapacity, wiltingPoint, tew_mm, rew_mm } = soil;
  if (fieldCapacity === undefined || wiltingPoint === undefined) return null;
  if (tew_mm === undefined || rew_mm === undefined) return null;
  return { fieldCapacity, wiltingPoint, tew_mm, rew_mm };
}

/** Saxton and Rawls 2006; REW of the texture that they fall in. */
function fromSandAndClay(soil: SurveySoil | undefined): SoilWater | null {
  if (soil?.sand_pct === undefined || soil.clay_pct === undefined) return null;
  const { fieldCapacity, wiltingPoint: theta1500 } = textureWater(soil.sand_pct / 100, soil.clay_pct / 100);
  const wiltingPoint = Math.min(theta1500, fieldCapacity - leastAvailable);
  const tew_mm = totalEvaporableWater(fieldCapacity, wiltingPoint);
  const { rew_mm } = soilRow(textureClass(soil.sand_pct, soil.clay_pct));
  return { fieldCapacity, wiltingPoint, tew_mm, rew_mm: rew_mm.middle };
}

function fromTexture(own: string | undefined, where: string, stands: Stands): SoilWater {
  const texture = stands.choice(own, where, defaultChoice("bed.soil.texture"));
  const { fieldCapacity, wiltingPoint, tew_mm, rew_mm } = soilRow(texture);
  return {
    fieldCapacity: fieldCapacity.middle,
    wiltingPoint: wiltingPoint.middle,
    tew_mm: tew_mm.middle,
    rew_mm: rew_mm.middle,
  };
}
