import * as z from "zod";
import type { Path } from "../path.ts";
import { units } from "../schema/parts.ts";
import { surveySchema } from "../schema/survey.ts";
import { schemaAt } from "../wanted.ts";
import { weekdays } from "../words.ts";
import type { NamedList } from "./ids.ts";
import { references } from "./references.ts";

/** What a field holds, as far as somebody who edits it needs to know. */
export type Sort =
  | { sort: "number"; unit: string; min: number; max: number; isWhole: boolean }
  | { sort: "word" | "words"; words: readonly string[] }
  | { sort: "entry" | "entries"; of: readonly NamedList[] }
  | { sort: "twelve"; unit: string; min: number; max: number }
  | { sort: "fields"; names: readonly string[] }
  | { sort: "text"; form: string }
  | { sort: "yes-no" | "days" | "months" | "numbers" | "point" | "points" | "dry-days" | "loose" | "rows" };

/** The path's pattern, as references are written: beds[].watering.tank. */
export function patternOf(path: Path): string {
  return path
    .map((step) => (typeof step === "number" ? "[]" : `.${step}`))
    .join("")
    .slice(1);
}

/** What stands at a path of a survey; null where no field has it. */
export function sortAt(path: Path): Sort | null {
  const schema = schemaAt(path);
  if (!schema) return null;
  const pattern = patternOf(path);
  const to = references.find(({ at }) => at === pattern || at === `${pattern}[]`)?.to;
  if (schema instanceof z.ZodArray) {
    if (to) return { sort: "entries", of: to };
    return sortOfList(schema, schemaAt([...path, 0]));
  }
  if (to) return { sort: "entry", of: to };
  if (schema instanceof z.ZodNumber)
    return { sort: "number", ...bounds(schema), isWhole: schema.format === "safeint" };
  if (schema instanceof z.ZodEnum) return { sort: "word", words: schema.options.map(String) };
  if (schema instanceof z.ZodBoolean) return { sort: "yes-no" };
  if (schema instanceof z.ZodTuple) return { sort: "point" };
  if (schema instanceof z.ZodUnion) return { sort: "loose" };
  if (schema instanceof z.ZodObject) return { sort: "fields", names: Object.keys(schema.shape) };
  if (schema instanceof z.ZodCustomStringFormat) return { sort: "text", form: schema.format ?? "text" };
  return null;
}

function sortOfList(list: z.ZodArray, element: z.core.$ZodType | undefined): Sort | null {
  if (element instanceof z.ZodObject) return { sort: "rows" };
  if (element instanceof z.ZodTuple) return { sort: "points" };
  if (element instanceof z.ZodCustomStringFormat) return { sort: "dry-days" };
  if (element instanceof z.ZodEnum) {
    const words = element.options.map(String);
    return words.join() === weekdays.join() ? { sort: "days" } : { sort: "words", words };
  }
  if (!(element instanceof z.ZodNumber)) return null;
  if (element.format === "safeint") return { sort: "months" };
  const isTwelve =
    z.safeParse(list, Array(12).fill(element.minValue)).success && !z.safeParse(list, []).success;
  return isTwelve ? { sort: "twelve", ...bounds(element) } : { sort: "numbers" };
}

function bounds(schema: z.ZodNumber): { unit: string; min: number; max: number } {
  const { minValue, maxValue } = schema;
  return {
    unit: units.get(schema)?.unit ?? "",
    min: minValue ?? Number.NEGATIVE_INFINITY,
    max: maxValue ?? Number.POSITIVE_INFINITY,
  };
}

/** Whether a field may be left out. */
export function isOptional(path: Path): boolean {
  const name = path[path.length - 1];
  const holder = schemaAt(path.slice(0, -1));
  return (
    holder instanceof z.ZodObject && typeof name === "string" && holder.shape[name] instanceof z.ZodOptional
  );
}

/** The pattern of every field of a survey that holds a value, not further fields or rows of them. */
export function fieldPatterns(): string[] {
  return patternsBelow([], Object.keys(surveySchema.shape));
}

function patternsBelow(path: Path, names: readonly string[]): string[] {
  return names.flatMap((name) => {
    const inner = [...path, name];
    const sort = sortAt(inner);
    if (sort?.sort === "fields") return patternsBelow(inner, sort.names);
    if (sort?.sort !== "rows") return [patternOf(inner)];
    const row = sortAt([...inner, 0]);
    return row?.sort === "fields" ? patternsBelow([...inner, 0], row.names) : [patternOf(inner)];
  });
}
