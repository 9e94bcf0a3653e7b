import table from "../../data/mulches.json" with { type: "json" };
import { citedRows, rowOf, type Table, type Value } from "./table.ts";

export interface MulchMaterial {
  material: string;
  /** Share of evaporation that a full cover at full depth takes away. */
  cut: Value;
  /** Depth from which the cut is whole; 0 where depth does not matter. */
  fullDepth_mm: Value;
}

export const mulchMaterials: readonly MulchMaterial[] = citedRows(table as Table<MulchMaterial>);

export function mulchMaterial(material: string): MulchMaterial {
  return rowOf(mulchMaterials, "material", material);
}
