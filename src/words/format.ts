import { fromSI, type UnitSystem } from "../units.ts";

/** Numbers as people read them: rounded in sentences, whole in tables, in the units chosen. */

/** Holds a number and its unit on one line. */
export const NBSP = "\u00A0";

/** Two figures, three where the first is a 1: never falsely exact. */
export function rough(x: number): number {
  if (x === 0 || !Number.isFinite(x)) return 0;
  const size = 10 ** Math.floor(Math.log10(Math.abs(x)));
  const leading = Math.abs(x) / size;
  const step = size / (leading < 2 ? 100 : 10);
  return Number((Math.round(x / step) * step).toPrecision(12));
}

export interface Formatter {
  system: UnitSystem;
  /** A year's water in a sentence: "1,240 kL", "328,000 gallons". */
  yearly(x_kL: number): string;
  /** The same without its unit, for a figure that follows one with it. */
  yearlyBare(x_kL: number): string;
  /** Litres or gallons in a sentence, rounded. */
  litres(x_L: number): string;
  /** Litres or gallons to the whole one, for tables; no unit. */
  litresBare(x_L: number): string;
  /** A volume in the shown unit as a number, for axes and files. */
  volume(x_L: number): number;
  volumeUnit: string;
  volumeSymbol: string;
  depth(x_mm: number): string;
  depthBare(x_mm: number): string;
  depthValue(x_mm: number): number;
  depthUnit: string;
  depthSymbol: string;
  area(x_m2: number): string;
  /** An axis tick or any plain number. */
  number(x: number, digits?: number): string;
  share(x: number): string;
  month(index: number, form?: "long" | "short" | "narrow"): string;
  /** Day and month of a day number. */
  day(day: number): string;
  /** Day, month and year of a day number. */
  date(day: number): string;
  list(items: readonly string[]): string;
}

/** Intl in the given locale; the words around the numbers stay English. */
export function formatter(system: UnitSystem, locale: string | undefined): Formatter {
  const us = system === "us";
  const made: Intl.NumberFormat[] = [];
  /** Made once each: to make one takes longer than to write a hundred numbers. */
  const plain = (digits: number) =>
    (made[digits] ??= new Intl.NumberFormat(locale, { maximumFractionDigits: digits }));
  const whole = plain(0);
  const one = plain(1);
  const two = plain(2);
  const percent = new Intl.NumberFormat(locale, { style: "percent", maximumFractionDigits: 0 });
  const months = {
    long: new Intl.DateTimeFormat(locale, { month: "long", timeZone: "UTC" }),
    short: new Intl.DateTimeFormat(locale, { month: "short", timeZone: "UTC" }),
    narrow: new Intl.DateTimeFormat(locale, { month: "narrow", timeZone: "UTC" }),
  };
  const day = new Intl.DateTimeFormat(locale, { day: "numeric", month: "long", timeZone: "UTC" });
  const date = new Intl.DateTimeFormat(locale, {
    day: "numeric",
    month: "long",
    year: "numeric",
    timeZone: "UTC",
  });
  const list = new Intl.ListFormat(locale, { type: "conjunction" });

  const volume = (x_L: number) => (us ? fromSI(x_L, "L", "gal")! : x_L);
  const free = (x: number) => (Math.abs(x) < 10 ? two : Math.abs(x) < 100 ? one : whole).format(x);
  const volumeUnit = us ? "gallons" : "litres";
  const volumeSymbol = us ? "gal" : "L";
  const depthValue = (x_mm: number) => (us ? fromSI(x_mm, "mm", "in")! : x_mm);
  const depthBare = (x_mm: number) => (us ? two : one).format(depthValue(x_mm));
  const depthUnit = us ? "inches" : "mm";
  const depthSymbol = us ? "in" : "mm";
  const litres = (x_L: number) => `${free(rough(volume(x_L)))}${NBSP}${volumeUnit}`;
  const yearlyBare = (x_kL: number) => free(rough(us ? volume(x_kL * 1000) : x_kL));
  return {
    system,
    yearly: (x_kL) => (us ? litres(x_kL * 1000) : `${yearlyBare(x_kL)}${NBSP}kL`),
    yearlyBare,
    litres,
    litresBare: (x_L) => whole.format(volume(x_L)),
    volume,
    volumeUnit,
    volumeSymbol,
    depth: (x_mm) => `${depthBare(x_mm)}${NBSP}${depthUnit}`,
    depthBare,
    depthValue,
    depthUnit,
    depthSymbol,
    area: (x_m2) => (us ? `${free(rough(fromSI(x_m2, "m²", "ft²")!))}${NBSP}ft²` : `${free(x_m2)}${NBSP}m²`),
    number: (x, digits = 3) => plain(digits).format(x),
    share: (x) => percent.format(x),
    month: (index, form = "long") => months[form].format(Date.UTC(2021, index, 15)),
    day: (n) => day.format(n * 86_400_000),
    date: (n) => date.format(n * 86_400_000),
    list: (items) => list.format(items),
  };
}
