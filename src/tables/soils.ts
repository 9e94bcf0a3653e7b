import table from "../../data/soils.json" with { type: "json" };
import { citedRows, rowOf, type Table, type Value } from "./table.ts";

/** Water held by a texture, m³/m³ and mm in the top 0.10 m. */
export interface Soil {
  texture: string;
  fieldCapacity: Value;
  /** Field capacity less wilting point. */
  available: Value;
  wiltingPoint: Value;
  tew_mm: Value;
  rew_mm: Value;
  /** The middle of the class, where the row is worked out from it. */
  sand_pct?: number;
  clay_pct?: number;
}

export const soils: readonly Soil[] = citedRows(table as Table<Soil>);

export function soil(texture: string): Soil {
  return rowOf(soils, "texture", texture);
}
