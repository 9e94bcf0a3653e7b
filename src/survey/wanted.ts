import * as z from "zod";
import type { Facts } from "./faults.ts";
import { oneLine, type Path } from "./path.ts";
import { units } from "./schema/parts.ts";
import { surveySchema } from "./schema/survey.ts";

/** The schema of the field at a path of a document; undefined where the document has no such field. */
export function schemaAt(path: Path, document: z.ZodObject = surveySchema): z.core.$ZodType | undefined {
  let schema: z.core.$ZodType | undefined = document;
  for (const step of path) {
    schema = bare(schema);
    if (schema instanceof z.ZodObject && typeof step === "string" && Object.hasOwn(schema.shape, step))
      schema = schema.shape[step] as z.core.$ZodType;
    else if (schema instanceof z.ZodArray && typeof step === "number") schema = schema.element;
    else if (schema instanceof z.ZodTuple && typeof step === "number") schema = schema.def.items[step];
    else return undefined;
    if (!schema) return undefined;
  }
  return bare(schema);
}

function bare(schema: z.core.$ZodType): z.core.$ZodType {
  return schema instanceof z.ZodOptional || schema instanceof z.ZodNullable ? bare(schema.unwrap()) : schema;
}

/** What a field wants, as facts: `wanted` names the sort, the rest its bounds, unit, words or form. */
export function wantedAt(path: Path, document: z.ZodObject = surveySchema): Facts {
  const schema = schemaAt(path, document);
  if (schema instanceof z.ZodNumber) {
    const { minValue: min, maxValue: max, format } = schema;
    const unit = units.get(schema)?.unit ?? "";
    if (min === null || max === null || !Number.isFinite(min)) return { wanted: "number", unit };
    return { wanted: format === "safeint" ? "whole" : "number", min, max, unit };
  }
  if (schema instanceof z.ZodEnum) return { wanted: "word", words: schema.options.map(String) };
  if (schema instanceof z.ZodLiteral) return { wanted: "word", words: [...schema.values].map(String) };
  if (schema instanceof z.ZodCustomStringFormat) return { wanted: schema.format ?? "text" };
  if (schema instanceof z.ZodBoolean) return { wanted: "yes-no" };
  if (schema instanceof z.ZodArray || schema instanceof z.ZodTuple) return { wanted: "list" };
  if (schema instanceof z.ZodObject) return { wanted: "fields" };
  if (schema instanceof z.ZodUnion) return { wanted: "number-or-text" };
  return { wanted: "text" };
}

/** The names of the fields that may stand at a path. */
export function fieldsAt(path: Path, document: z.ZodObject = surveySchema): string[] {
  const schema = schemaAt(path, document);
  return schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
}

/** What was found, as facts: short, and fit for JSON, which has no endless number and no −0. */
export function foundFacts(found: unknown): Facts {
  if (typeof found === "number")
    return Number.isFinite(found) ? { found: found + 0 } : { foundSort: "endless" };
  if (typeof found === "string") return { found: oneLine(found, 60) };
  if (typeof found === "boolean" || found === null) return { found };
  if (found === undefined) return { foundSort: "nothing" };
  return { foundSort: Array.isArray(found) ? "list" : "fields" };
}

/** The value at a path of any JSON. */
export function valueAt(document: unknown, path: Path): unknown {
  let value = document;
  for (const step of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}
