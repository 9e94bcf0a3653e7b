import type { Calendar } from "../engine/weather/series.ts";
import { type Address, formatAddress, mean, type Run, type When } from "./address.ts";
import type { Book, RunBook } from "./book.ts";
import { originOf } from "./origins.ts";
import type { Say } from "./say.ts";
import { type Input, Sheet } from "./sheet.ts";
import type { Working } from "./working.ts";

/** A figure asked for: where it stands, and what its working is read from. */
export interface Figure {
  book: Book;
  run: RunBook;
  say: Say;
  address: Address;
  /** Place of its bed or tank group among those made ready; −1 of others. */
  k: number;
}

/** How a figure is explained: on a day, as something that does not change by the day, or by months. */
export interface Chapter {
  /** On one day of the record, by index. */
  day?: (figure: Figure, i: number) => Working | null;
  /** As it stands whatever the day. */
  fixed?: (figure: Figure) => Working | null;
  /** In one month of the year, 0–11. */
  month?: (figure: Figure, month: number) => Working | null;
  /** In one year, where it is no sum of its days. */
  year?: (figure: Figure, year: number) => Working | null;
  /** Days that add up to months, years and a mean year. */
  flow?: Flow;
}

export interface Flow {
  term:
    | "rain"
    | "et0"
    | "bedRain"
    | "bedEt0"
    | "net"
    | "etc"
    | "drainage"
    | "rainUsed"
    | "stressDay"
    | "gross"
    | "habit"
    | "asks"
    | "gets"
    | "mains"
    | "inflow"
    | "roofInflow"
    | "draw"
    | "yield"
    | "spill"
    | "topUp"
    | "short"
    | "newDraw"
    | "drawDay";
  /** Each day; null where there is no such thing. */
  series: (figure: Figure) => Float64Array | null;
  /** What a reader of a stretch of it should know, that is no number of the sum. */
  notes?: (figure: Figure, sheet: Sheet) => void;
  /** Years are told in kL. */
  inKL?: boolean;
  /** What a stretch is made of besides its days; null: nothing to tell. */
  parts?: (
    figure: Figure,
  ) => { name: string; byDay_L: Float64Array; address: Pick<Address, "run" | "subject" | "id" | "what"> }[];
}

export type Chapters = Readonly<Record<string, Chapter>>;

export function calendarOf({ run }: Figure): Calendar {
  return run.ready.weather.calendar;
}

export function sheetFor({ say }: Figure): Sheet {
  return new Sheet(say);
}

/** A number that this same working gave. */
export function here(value: number): Input {
  return { value, origin: null };
}

/** The run whose beds and tanks a figure that no day changes belongs to. */
export function lasting(run: Run): Run {
  return run === "plan" || run === "plan-with-water" ? "plan" : "need";
}

/** A figure of the same thing that has a working of its own. */
export function linked(figure: Figure, what: string, value: number, when: When = mean): Input {
  const run = when.kind === "day" || when.kind === "mean" ? figure.address.run : lasting(figure.address.run);
  return elsewhere(value, { ...figure.address, run, what, when });
}

/** What no day changes, of the same thing. */
export function constant(figure: Figure, what: string, value: number, when: When = mean): Input {
  return elsewhere(value, { ...figure.address, run: lasting(figure.address.run), what, when });
}

/** A figure of the weather on day i. */
export function ofWeather(figure: Figure, what: string, value: number, i: number): Input {
  return elsewhere(value, { run: "need", subject: "weather", id: "", what, when: dayAt(figure, i) });
}

/** A figure that has a working of its own. */
export function elsewhere(value: number, address: Address, name?: string): Input {
  const origin = { provenance: "worked-out" as const, at: formatAddress(address) };
  return { value, origin, ...(name !== undefined && { name }) };
}

/** A figure by a rule of the method, which no survey or table has. */
export function byRule(value: number, source: string): Input {
  return { value, origin: { provenance: "assumed", source } };
}

/** A figure of the survey at a path, under its letter's own name. */
export function fromSurvey({ book, run, say }: Figure, path: string, value: number, table?: string): Input {
  return { value, origin: originOf(book, run, say, path, table) };
}

export function dayAt(figure: Figure, i: number): When {
  return { kind: "day", day: calendarOf(figure).firstDay + i };
}
