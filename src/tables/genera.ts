import table from "../../data/genera.json" with { type: "json" };
import type { Thirst } from "./plants.ts";
import { citedRows, type Table } from "./table.ts";

export type GenusClimate = "dry-summer" | "rainy-summer" | "dry-warm" | "dry-cold" | "warm-wet" | "any";

export interface Genus {
  genus: string;
  /** Common names in English, and other names of the genus. */
  names: readonly string[];
  kind: string;
  /** Class of most of its garden plants; `from` and `to` where its species range. */
  thirst: { is: Thirst; from?: Thirst; to?: Thirst; source: string; memory?: boolean };
  /** Climate that the source speaks for. */
  climate: GenusClimate;
}

export const genera: readonly Genus[] = citedRows(table as Table<Genus>);
