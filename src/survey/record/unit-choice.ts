import type { WeatherColumn } from "../../engine/weather/record.ts";
import { quoted } from "./date-guess.ts";
import type { Candidate, FieldGuess } from "./field-guess.ts";
import { unitTexts } from "./header-words.ts";
import type { Answer, FieldMapping, Given, Question } from "./mapping.ts";
import { quantityOf, type SourceUnit, unitNamed, unitsOf } from "./source-units.ts";
import { type Custom, type RankedUnit, rankTemperatureUnits, rankUnits } from "./unit-guess.ts";

/** Below this certainty a unit is asked for. */
const sureEnough = 0.8;
/** Units less likely than this are not offered. */
const worthOffering = 0.02;

interface Chosen {
  field: FieldGuess;
  candidate: Candidate;
  unit: SourceUnit | null;
  certainty: number;
}

/** Settles each field's unit: as given, as the header or the row of units says, else by its values. */
export function chooseUnits(
  fields: readonly FieldGuess[],
  candidates: readonly Candidate[],
  unitRow: readonly string[],
  given: Given,
): { mapped: Partial<Record<WeatherColumn, FieldMapping>>; questions: Question[] } {
  const chosen = fields.map((field): Chosen => {
    const candidate = candidates[field.at]!;
    const unit = said(field, candidate, unitRow, given);
    return { field, candidate, unit, certainty: unit ? 1 : 0 };
  });
  const questions: Question[] = [];
  const open = (each: Chosen) => each.unit === null && each.candidate.values !== null;
  const warmth = chosen.filter((each) => open(each) && quantityOf[each.field.column] === "temperature");
  if (warmth.length > 0) {
    const sibling = chosen.find(
      ({ field, unit }) => unit && quantityOf[field.column] === "temperature",
    )?.unit;
    const columns = warmth.map(({ field, candidate }) => ({
      column: field.column,
      values: candidate.values!,
    }));
    const ranked = sibling
      ? [{ unit: sibling, certainty: 0.97 }]
      : rankTemperatureUnits(columns, customOf(chosen));
    for (const each of warmth) settle(each, ranked);
    if (ranked[0]!.certainty < sureEnough) questions.push(askUnit(warmth, ranked));
  }
  for (const each of chosen.filter(open)) {
    const ranked = rankUnits(each.field.column, each.candidate.values!, customOf(chosen));
    settle(each, ranked);
    if (each.certainty < sureEnough) questions.push(askUnit([each], ranked));
  }
  const mapped: Partial<Record<WeatherColumn, FieldMapping>> = {};
  for (const { field, candidate, unit, certainty } of chosen) {
    const { header, at } = candidate;
    const id = (unit ?? unitsOf(field.column)[0]!).id;
    mapped[field.column] = { header, at, unit: id, certainty: field.certainty, unitCertainty: certainty };
  }
  return { mapped, questions };
}

function settle(each: Chosen, ranked: readonly RankedUnit[]): void {
  each.unit = ranked[0]!.unit;
  each.certainty = ranked[0]!.certainty;
}

function said(
  { column }: FieldGuess,
  candidate: Candidate,
  unitRow: readonly string[],
  given: Given,
): SourceUnit | null {
  const flag = given.units?.[column];
  if (flag !== undefined) return unitNamed(column, flag);
  if (candidate.header.toLowerCase() === column.toLowerCase()) return unitsOf(column)[0]!;
  for (const text of [unitRow[candidate.at] ?? "", ...unitTexts(candidate.header)]) {
    const unit = unitNamed(column, text.replace(/^[([#\s]+|[)\]\s]+$/g, ""));
    if (unit) return unit;
  }
  return null;
}

/** What the settled columns of the file say of its units; a system only where they agree. */
function customOf(chosen: readonly Chosen[]): Custom {
  const settled = chosen.flatMap(({ unit, certainty }) => (unit && certainty >= 0.9 ? [unit] : []));
  const systems = new Set(settled.flatMap(({ system }) => system ?? []));
  return { system: systems.size === 1 ? [...systems][0]! : null, tenths: settled.some(({ whole }) => whole) };
}

function askUnit(fields: readonly Chosen[], ranked: readonly RankedUnit[]): Question {
  const columns = fields.map(({ field }) => field.column);
  const answers = ranked
    .filter(({ certainty }, at) => at < 2 || certainty >= worthOffering)
    .map(({ unit, certainty }): Answer => {
      const units = Object.fromEntries(columns.map((column) => [column, unit.id]));
      const flag = columns.map((column) => `--unit ${quoted(`${column}=${unit.id}`)}`).join(" ");
      const { mean } = summary(fields[0]!, unit);
      return { given: { units }, flag, facts: { unit: unit.id, certainty, column: columns[0]!, mean } };
    });
  return {
    code: "import-unit",
    facts: { columns, headers: fields.map(({ candidate }) => candidate.header) },
    answers,
  };
}

function summary({ candidate }: Chosen, unit: SourceUnit): { mean: number } {
  const numbers = candidate.values?.numbers ?? [];
  const mean = numbers.reduce((sum, value) => sum + value, 0) / Math.max(1, numbers.length);
  return { mean: mean * unit.factor + unit.offset };
}
