import type { Unit } from "../../../src/quantities.ts";
import { fromSI, shownUnit, toSI, type UnitSystem, unitsFor } from "../../../src/units.ts";
import { readNumber, showNumber } from "./number.ts";
import { unitMeant } from "./unit-names.ts";
import { blank, isBlank, type Reading, type Writing } from "./writing.ts";

/** The units of the survey's fields that the tables of units know by another name. */
const asKnown: Readonly<Record<string, Unit>> = {
  "money a kL": "money/kL",
  "mm a day": "mm",
  "kL a year": "kL",
};

/** What is said after the unit: litres a day. */
const after: Readonly<Record<string, string>> = {
  "mm a day": " a day",
  "kL a year": " a year",
  "L a day": " a day",
};

export interface QuantityField {
  /** Unit of the survey's field. */
  unit: string;
  /** A share, shown as percent. */
  isShare?: boolean;
  system: UnitSystem;
  locale?: string;
  /** The currency, where the unit is money. */
  currency?: string;
}

/** A field's unit as units.ts knows it, and the one it is shown in. */
export interface FieldUnits {
  si: Unit;
  shown: string;
}

export function unitsOf({ unit, isShare, system }: QuantityField): FieldUnits {
  const si = isShare ? "share" : (asKnown[unit] ?? (unit as Unit));
  return { si, shown: isShare ? "%" : shownUnit(si, system) };
}

/** A number with its unit: 20 m², 20 ft2, 2 gal/min, or bare in the unit shown. */
export function quantityWriting(field: QuantityField): Writing {
  const { si, shown } = unitsOf(field);
  const { locale, unit } = field;
  return {
    read: (text) => readQuantity(text, field),
    show: (value) => {
      if (typeof value !== "number") return value === undefined ? "" : String(value);
      const digits = shown === si || shown === "%" ? 12 : 5;
      return showNumber(fromSI(value, si, shown) ?? value, digits, locale);
    },
    unit: `${unitWords(shown, field.currency)}${after[unit] ?? ""}`,
    inputMode: "decimal",
    width: 9,
  };
}

function unitWords(shown: string, currency = ""): string {
  if (shown === "money") return currency;
  return shown.replace(/^money\//, `${currency || "money"} a `).replace("°C", "°C");
}

export function readQuantity(text: string, field: QuantityField): Reading {
  if (isBlank(text)) return blank;
  const { si, shown } = unitsOf(field);
  const { locale, currency } = field;
  // a unit may begin with a digit: 100 ft³, 1000 gal
  const [, number = "", rest = ""] =
    /^\s*([-+−–\u061C\u200E\u200F]*[\d.,\s'’\u00A0\u202F٠-٩۰-۹०-९٫٬]+)(.*)$/su.exec(text) ?? [];
  const value = readNumber(number, locale);
  if (value === null) return { wrong: "unreadable" };
  const typed = rest.trim().replace(/\s+(a|per)\s+(day|year|kl)$/i, "");
  if (typed === "" || typed === currency || typed.toLowerCase() === unitWords(shown, currency).toLowerCase())
    return { value: toSI(value, shown, si) ?? value };
  const unit = unitMeant(typed, unitsFor(si));
  return unit === null ? { wrong: "unit", unit: typed } : { value: tidy(toSI(value, unit, si) ?? value) };
}

/** Without the last binary places of a conversion. */
function tidy(value: number): number {
  return Number(value.toPrecision(14));
}
