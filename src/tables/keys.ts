import soilFeelTable from "../../data/soil-feel.json" with { type: "json" };
import thirstTable from "../../data/thirst-key.json" with { type: "json" };
import { citedRows, type Table } from "./table.ts";

/** A question of a decision key; each answer leads on or ends. */
export interface KeyRow {
  question: string;
  answers: readonly {
    answer: string;
    /** The question asked next. */
    next?: string;
    ends?: { is: string; reason: string; certainty: number; source: string; note?: string };
  }[];
}

/** From what can be seen and felt on a plant to its thirst class. */
export const thirstKey: readonly KeyRow[] = citedRows(thirstTable as Table<KeyRow>);

/** From how moist soil feels to its texture class. */
export const soilFeelKey: readonly KeyRow[] = citedRows(soilFeelTable as Table<KeyRow>);
