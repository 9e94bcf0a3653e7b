import table from "../../data/plants.json" with { type: "json" };
import { citedRows, rowOf, type Table, type Value } from "./table.ts";

/** From the least thirsty to the most. */
export const thirstClasses = ["very-low", "low", "moderate", "high"] as const;
export type Thirst = (typeof thirstClasses)[number];

/** Full-cover basal coefficient; Eq. 70 applies to `basal` (FAO-56) and not to a landscape plant factor. */
export interface Kcb extends Value {
  basis: "plant-factor" | "basal";
}

export interface PlantKind {
  kind: string;
  rootDepth_m: Value;
  depletionFraction: Value;
  height_m: Value;
  /** Cover of the stand that the coefficients describe. */
  fcStandard: Value;
  kcbFull: Record<Thirst, Kcb | null>;
  note?: string;
}

export interface PlantRow {
  plant: PlantKind;
  /** The class whose figure is used. */
  thirst: Thirst;
  kcb: Kcb;
  /** True where the kind has no row for the class asked for, and its nearest stands in. */
  stoodIn: boolean;
}

export const plantKinds: readonly PlantKind[] = citedRows(table as Table<PlantKind>);

/** What a kind of plant brings whatever its thirst. */
export function plantKind(kind: string): PlantKind {
  return rowOf(plantKinds, "kind", kind);
}

/** The row of a kind and thirst class; the nearest class where there is none, the thirstier of two as near. */
export function plantRow(kind: string, thirst: Thirst): PlantRow {
  const plant = plantKind(kind);
  const wanted = thirstClasses.indexOf(thirst);
  const nearest = thirstClasses
    .map((name, place) => ({ name, kcb: plant.kcbFull[name], away: Math.abs(place - wanted), place }))
    .filter((row) => row.kcb !== null)
    .sort((a, b) => a.away - b.away || b.place - a.place)[0];
  if (!nearest?.kcb) throw new RangeError(`The plants table has no coefficient for ${kind}.`);
  return { plant, thirst: nearest.name, kcb: nearest.kcb, stoodIn: nearest.name !== thirst };
}
