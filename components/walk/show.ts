import type { Unit } from "../../src/quantities.ts";
import { fromSI, shownUnit, type UnitSystem } from "../../src/units.ts";
import type { Show } from "../../src/words/en/walk-show.ts";
import { rough } from "../../src/words/format.ts";

const NBSP = "\u00A0";

/** Writes figures in SI as people read them: three figures, in the units chosen. */
export function showIn(system: UnitSystem, locale?: string): Show {
  const numbers = new Intl.NumberFormat(locale, { maximumSignificantDigits: 3 });
  const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
  const percent = new Intl.NumberFormat(locale, { style: "percent", maximumFractionDigits: 0 });
  const fine = new Intl.NumberFormat(locale, { style: "percent", maximumSignificantDigits: 3 });
  const plain = (value: number) => (Math.abs(value) >= 100 ? whole : numbers).format(value);
  return (value, si) => {
    if (si === "share") return percent.format(value);
    if (si === "%") return fine.format(value / 100);
    const unit = shownUnit(si, system);
    return `${plain(fromSI(value, si, unit) ?? value)}${NBSP}${unit}${si === "L a day" && unit !== si ? " a day" : ""}`;
  };
}

/** Writes what was worked out and is no surer than two figures, rounded in the unit shown. */
export function aboutIn(system: UnitSystem, locale?: string): Show {
  const show = showIn(system, locale);
  return (value, si) => {
    const unit = shownUnit(si, system);
    const shown = fromSI(value, si, unit);
    return show(shown ? (value * rough(shown)) / shown : 0, si);
  };
}

/** A figure and how far it may be off, to the same place: "22,000 L", "300 L"; no doubt where there is none. */
export type ShowFigure = (
  figure: { figure: number; standardError: number },
  si: Unit,
) => { text: string; doubt: string | null };

/** A figure to the place that its doubt reaches: one digit of doubt, two where the first is a 1. */
export function figureIn(system: UnitSystem, locale?: string): ShowFigure {
  const show = showIn(system, locale);
  return ({ figure, standardError }, si) => {
    if (!(standardError > 0)) return { text: show(figure, si), doubt: null };
    const shares = si === "share" || si === "%";
    const unit = shares ? null : shownUnit(si, system);
    const of = (value: number) =>
      si === "share" ? 100 * value : unit === null ? value : scaled(value, si, unit);
    const digits = placeOf(of(standardError));
    const said = (value: number) =>
      unit === null
        ? percentTo(of(value), digits, locale)
        : `${toPlace(of(value), digits, locale)}${NBSP}${unit}${si === "L a day" && unit !== si ? " a day" : ""}`;
    return { text: said(figure), doubt: said(standardError) };
  };
}

function scaled(value: number, si: Unit, unit: string): number {
  return fromSI(value, si, unit) ?? value;
}

/** Decimal places, below 0 for tens and hundreds, of a doubt with one digit, or two where the first is a 1. */
function placeOf(doubt: number): number {
  const power = Math.floor(Math.log10(doubt));
  return doubt / 10 ** power < 1.95 ? 1 - power : -power;
}

function toPlace(value: number, digits: number, locale: string | undefined): string {
  const step = 10 ** -digits;
  const places = Math.min(12, Math.max(0, digits));
  return new Intl.NumberFormat(locale, {
    minimumFractionDigits: places,
    maximumFractionDigits: places,
  }).format(Math.round(value / step) * step);
}

function percentTo(value_pct: number, digits: number, locale: string | undefined): string {
  const step = 10 ** -digits;
  const places = Math.min(12, Math.max(0, digits));
  return new Intl.NumberFormat(locale, {
    style: "percent",
    minimumFractionDigits: places,
    maximumFractionDigits: places,
  }).format((Math.round(value_pct / step) * step) / 100);
}
