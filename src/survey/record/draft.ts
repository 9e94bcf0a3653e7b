import { formatIso, parseIso } from "../../engine/weather/dates.ts";
import { type WeatherColumn, type WeatherRecord, weatherColumns } from "../../engine/weather/record.ts";
import { type Fault, mostFaults } from "../faults.ts";
import { acceptedRanges, orderedPairs, recordLimits } from "./ranges.ts";

export type RecordOutcome = { record: WeatherRecord } | { faults: Fault[] };

export interface DraftForm {
  columns: readonly WeatherColumn[];
  /** A cell as a number, NaN for a blank one, null for anything else. */
  read(cell: unknown): number | null;
  /** How a cell is quoted back; as it is where left out. */
  shown?(cell: unknown): string;
  /** How its dates are written, where not as ISO dates. */
  dateOrder?: string;
  /** How a row, or a cell of it, is named to people. */
  path(row: number, column?: string): string;
}

/** Pairs compared before columns that cross are called swapped. */
const fewestCompared = 10;

/** A record being read row by row: it keeps what is right and lists what is wrong. */
export class RecordDraft {
  readonly #form: DraftForm;
  readonly #values: number[][];
  readonly #days: number[] = [];
  readonly #rowOfDay = new Map<number, number>();
  readonly #pairs: {
    low: WeatherColumn;
    high: WeatherColumn;
    at: [number, number];
    compared: number;
    crossed: number;
  }[];
  readonly #faults: Fault[] = [];
  #faultCount = 0;

  constructor(form: DraftForm) {
    const { columns } = form;
    this.#form = form;
    this.#values = columns.map(() => []);
    this.#pairs = orderedPairs
      .filter((pair) => pair.every((column) => columns.includes(column)))
      .map(([low, high]) => {
        return { low, high, at: [columns.indexOf(low), columns.indexOf(high)], compared: 0, crossed: 0 };
      });
    this.#has((column) => columns.includes(column));
  }

  fault(path: string, code: string, facts: Fault["facts"] = {}): void {
    this.#faultCount += 1;
    if (this.#faults.length < mostFaults) this.#faults.push({ path, code, facts });
  }

  /** Takes one row: its number, its ISO date, and its cells in the order of the columns. */
  add(row: number, date: unknown, cells: readonly unknown[]): void {
    const day = typeof date === "string" ? parseIso(date.trim()) : null;
    this.addDay(row, day, date, cells);
  }

  /** Takes a row whose date was read already: its day number, null for none, beside what was read. */
  addDay(row: number, day: number | null, date: unknown, cells: readonly unknown[]): void {
    const { columns, path } = this.#form;
    const isNew = this.#isNewDay(row, day, date);
    const values = columns.map((column, at) => this.#value(row, column, cells[at]));
    for (const pair of this.#pairs) {
      const lowValue = values[pair.at[0]]!;
      const highValue = values[pair.at[1]]!;
      if (!Number.isNaN(lowValue) && !Number.isNaN(highValue)) pair.compared += 1;
      if (!(lowValue > highValue)) continue;
      pair.crossed += 1;
      const facts = { low: pair.low, lowValue, high: pair.high, highValue };
      this.fault(path(row, pair.low), "record-crossed", facts);
    }
    if (day === null || !isNew) return;
    this.#days.push(day);
    for (let at = 0; at < values.length; at++) this.#values[at]!.push(values[at]!);
  }

  finish(): RecordOutcome {
    if (this.#days.length === 0 && this.#faultCount === 0) this.fault("record", "record-no-rows");
    const record = this.#faultCount === 0 ? this.#settle() : null;
    return record ? { record } : { faults: this.#listed() };
  }

  #isNewDay(row: number, day: number | null, date: unknown): boolean {
    const { path } = this.#form;
    if (day === null) {
      const { dateOrder } = this.#form;
      const facts = { found: shown(date), ...(dateOrder ? { order: dateOrder } : {}) };
      this.fault(path(row, "date"), "record-date", facts);
      return false;
    }
    const first = this.#rowOfDay.get(day);
    if (first !== undefined) {
      this.fault(path(row, "date"), "record-date-twice", { date: formatIso(day), first: path(first) });
      return false;
    }
    this.#rowOfDay.set(day, row);
    return true;
  }

  #value(row: number, column: WeatherColumn, cell: unknown): number {
    const value = this.#form.read(cell);
    if (value === null) {
      this.fault(this.#form.path(row, column), "record-not-number", { column, found: this.#shown(cell) });
      return Number.NaN;
    }
    const [low, high] = acceptedRanges[column];
    if (value < low || value > high) {
      const facts = { column, found: this.#shown(cell), low, high };
      this.fault(this.#form.path(row, column), "record-out-of-range", facts);
    }
    return value;
  }

  #shown(cell: unknown): string {
    return this.#form.shown ? this.#form.shown(cell) : shown(cell);
  }

  /** Whether rain is there, and what evaporation can be had from; each lack is a fault. */
  #has(there: (column: WeatherColumn) => boolean): boolean {
    const rain = there("rain_mm");
    const evaporation = there("et0_mm") || (there("tmin_c") && there("tmax_c"));
    if (!rain) this.fault("rain_mm", "record-no-rain");
    if (!evaporation) this.fault("et0_mm", "record-no-evaporation");
    return rain && evaporation;
  }

  /** Puts the rows in their days' slots; absent dates stay NaN, a column blank throughout falls away. */
  #settle(): WeatherRecord | null {
    const [first, last] = ends(this.#days);
    const days = last - first + 1;
    if (days > recordLimits.years * 365.25) {
      const facts = { from: formatIso(first), to: formatIso(last), years: recordLimits.years };
      this.fault("record", "record-too-long", facts);
      return null;
    }
    const columns: Partial<WeatherRecord["columns"]> = {};
    for (const column of weatherColumns) {
      const values = this.#values[this.#form.columns.indexOf(column)];
      if (!values || values.every(Number.isNaN)) continue;
      const slots = new Float64Array(days).fill(Number.NaN);
      for (let at = 0; at < values.length; at++) slots[this.#days[at]! - first] = values[at]!;
      columns[column] = slots;
    }
    const { rain_mm } = columns;
    if (!this.#has((column) => columns[column] !== undefined) || !rain_mm) return null;
    return { firstDay: first, days, columns: { ...columns, rain_mm } };
  }

  /** Faults as kept, columns that look swapped first, and at the end how many more there were. */
  #listed(): Fault[] {
    const swapped = this.#pairs
      .filter((pair) => pair.compared >= fewestCompared && pair.crossed > pair.compared / 2)
      .map(({ low, high, crossed, compared }) => {
        return { path: low, code: "record-swapped", facts: { low, high, crossed, compared } };
      });
    const all = [...swapped, ...this.#faults];
    const total = this.#faultCount + swapped.length;
    if (total <= mostFaults) return all;
    const kept = all.slice(0, mostFaults - 1);
    return [...kept, { path: "record", code: "record-more-faults", facts: { count: total - kept.length } }];
  }
}

/** A cell as it is quoted back, kept short. */
export function shown(cell: unknown): string {
  const text =
    typeof cell === "string" ? cell : cell === undefined ? "" : (JSON.stringify(cell) ?? String(cell));
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}

function ends(days: readonly number[]): [first: number, last: number] {
  let first = days[0]!;
  let last = first;
  for (const day of days) {
    if (day < first) first = day;
    if (day > last) last = day;
  }
  return [first, last];
}
