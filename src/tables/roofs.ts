import table from "../../data/roofs.json" with { type: "json" };
import { citedRows, rowOf, type Table, type Value } from "./table.ts";

export interface RoofMaterial {
  material: string;
  /** Share of the rain on the roof's plan area that runs off. */
  runoff: Value;
  /** What stands in for a first flush not surveyed. */
  firstFlush_mm: Value;
}

export const roofMaterials: readonly RoofMaterial[] = citedRows(table as Table<RoofMaterial>);

export function roofMaterial(material: string): RoofMaterial {
  return rowOf(roofMaterials, "material", material);
}
