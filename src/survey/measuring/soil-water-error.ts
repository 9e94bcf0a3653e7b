import { textureWater } from "../../engine/soil-texture.ts";
import { type Figure, propagate } from "./figure.ts";

/**
 * Standard errors of the equations themselves, m³/m³: another soil of the same sand and clay holds that much more
 * or less.
 * @source Saxton and Rawls 2006, Soil Science Society of America Journal 70:1569–1578, Table 1, Eq. 1 and 2
 * (from memory)
 */
export const equationError = { wiltingPoint: 0.02, fieldCapacity: 0.05 } as const;

/** Water held by a soil of so much sand and clay, with the error of both readings and equations. */
export function soilWaterWithError(
  sand_pct: Figure,
  clay_pct: Figure,
): {
  fieldCapacity: Figure;
  wiltingPoint: Figure;
} {
  const held = (which: "fieldCapacity" | "wiltingPoint") => {
    const read = propagate(
      ([sand, clay]) => textureWater(sand! / 100, clay! / 100)[which],
      [sand_pct, clay_pct],
    );
    return { ...read, standardError: Math.hypot(read.standardError, equationError[which]) };
  };
  return { fieldCapacity: held("fieldCapacity"), wiltingPoint: held("wiltingPoint") };
}
