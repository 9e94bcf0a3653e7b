import { type QuantityName, quantities, type Unit } from "../../quantities.ts";
import { shown, type UnitSystem } from "../../units.ts";
import { answerWords, plainAnswers } from "./editor-choices.ts";
import { labelOf } from "./editor-labels.ts";
import { kindWords } from "./page.ts";

const number = new Intl.NumberFormat("en", { maximumSignificantDigits: 3 });
const percent = new Intl.NumberFormat("en", { maximumFractionDigits: 0 });

/** Shares that people think of in hundredths. */
const inHundredths = /(leafCover|rainShare|wettedShare|efficiency|distributionUniformity|cover|share)$/;

/**
 * What stands in for a field that was left out: its label and the value, as "Soil texture: loam".
 * @param kind of the planting that it is of, where its bed has several
 */
export function assumedWords(
  where: string,
  value: string | number | boolean,
  kind: string | null,
  units: UnitSystem,
): string {
  const path = where.endsWith(".soil") ? `${where}.texture` : where;
  const of = kind === null ? "" : ` (${kindWords[kind] ?? kind})`;
  return `${labelOf(path)}${of}: ${valueWords(path, value, units)}`;
}

function isQuantity(field: string): field is QuantityName {
  return Object.hasOwn(quantities, field);
}

function valueWords(path: string, value: string | number | boolean, units: UnitSystem): string {
  if (typeof value === "boolean") return (value ? plainAnswers.yes : plainAnswers.no).toLowerCase();
  if (typeof value === "string") return answerWords(path, value).words.toLowerCase();
  if (inHundredths.test(path)) return `${percent.format(100 * value)}%`;
  const field = path.slice(path.lastIndexOf(".") + 1);
  const unit: Unit = isQuantity(field) ? quantities[field].unit : "share";
  if (unit === "share") return number.format(value);
  const there = shown(value, unit, units);
  return `${number.format(there.value)} ${there.unit}`;
}
