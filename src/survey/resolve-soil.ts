import type { SoilWater } from "../engine/grounds.ts";
import { textureWater, totalEvaporableWater } from "../engine/soil-texture.ts";
import { textureClass } from "../engine/texture-class.ts";
import { defaultChoice } from "../tables/defaults.ts";
import { soil as soilRow } from "../tables/soils.ts";
import type { Range, Stands } from "./resolve-assumed.ts";
import type { SurveySoil } from "./survey.ts";

/** The equations leave nothing between field capacity and wilting point in nearly pure clay, which they were not fitted on. */
const leastAvailable = 0.01;

/** The textures of FAO-56 Table 19 from the lightest to the heaviest. */
const mineral = [
  "sand",
  "loamy-sand",
  "sandy-loam",
  "loam",
  "silt-loam",
  "silt",
  "silty-clay-loam",
  "silty-clay",
  "clay",
];

/** Soil water from the survey's own figures, from sand and clay, or from the texture's row. REW is never above TEW. */
export function resolveSoil(soil: SurveySoil | undefined, where: string, stands: Stands): SoilWater {
  const water =
    ownFigures(soil) ?? fromSandAndClay(soil, stands) ?? fromTexture(soil?.texture, where, stands);
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
function fromSandAndClay(soil: SurveySoil | undefined, { pick }: Stands): SoilWater | null {
  if (soil?.sand_pct === undefined || soil.clay_pct === undefined) return null;
  const { fieldCapacity, wiltingPoint: theta1500 } = textureWater(soil.sand_pct / 100, soil.clay_pct / 100);
  const wiltingPoint = Math.min(theta1500, fieldCapacity - leastAvailable);
  const tew_mm = totalEvaporableWater(fieldCapacity, wiltingPoint);
  const texture = textureClass(soil.sand_pct, soil.clay_pct);
  const rew_mm = pick(`soils.${texture}`, soilRow(texture).rew_mm);
  return { fieldCapacity, wiltingPoint, tew_mm, rew_mm };
}

function fromTexture(own: string | undefined, where: string, stands: Stands): SoilWater {
  const texture = own ?? standInTexture(where, stands);
  const { fieldCapacity, available, wiltingPoint, tew_mm, rew_mm } = soilRow(texture);
  const pick = (range: Range) => stands.pick(`soils.${texture}`, range);
  const held = pick(fieldCapacity);
  const drawn = pick(available);
  return {
    fieldCapacity: held,
    wiltingPoint: drawn === available.middle ? wiltingPoint.middle : Math.max(0, held - drawn),
    tew_mm: pick(tew_mm),
    rew_mm: pick(rew_mm),
  };
}

/** A soil that nobody felt may be any of these; one draw for the whole site, whose beds lie on the same ground. */
function standInTexture(where: string, stands: Stands): string {
  const { is, source } = defaultChoice("bed.soil.texture");
  const middle = mineral.indexOf(String(is));
  const at = stands.pick("site.soil", { low: -0.5, middle, high: mineral.length - 0.5 });
  const texture = mineral[Math.min(mineral.length - 1, Math.max(0, Math.round(at)))]!;
  return stands.list(where, texture, source);
}
