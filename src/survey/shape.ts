import * as z from "zod";
import type { FaultCollector } from "./collector.ts";
import { nearest } from "./near.ts";
import { oneLine, type Path } from "./path.ts";
import { fieldsAt, foundFacts, schemaAt, valueAt, wantedAt } from "./wanted.ts";

/** Unknown fields named one by one at any one place. */
const mostUnknownNamed = 200;

/** Checks shape, words and bounds; every departure becomes a fault with a code of ours. */
export function checkShape<Schema extends z.ZodObject>(
  schema: Schema,
  document: unknown,
  faults: FaultCollector,
): z.output<Schema> | null {
  const result = schema.safeParse(document);
  if (result.success) return result.data;
  for (const issue of result.error.issues) addIssue(schema, issue, document, faults);
  return null;
}

function addIssue(
  schema: z.ZodObject,
  issue: z.core.$ZodIssue,
  document: unknown,
  faults: FaultCollector,
): void {
  const path = issue.path as Path;
  if (faults.full) {
    faults.addUncounted(issue.code === "unrecognized_keys" ? issue.keys.length : 1);
    return;
  }
  if (issue.code === "unrecognized_keys") {
    const known = fieldsAt(path, schema);
    for (const key of issue.keys.slice(0, mostUnknownNamed)) {
      const near = nearest(key, known);
      faults.add(
        [...path, key],
        "unknown-field",
        near === null ? { field: oneLine(key, 60) } : { field: key, near },
      );
    }
    faults.addUncounted(Math.max(0, issue.keys.length - mostUnknownNamed));
    return;
  }
  const found = valueAt(document, path);
  const wanted = wantedAt(path, schema);
  const near =
    typeof found === "string" && "words" in wanted ? nearest(found, wanted.words as string[]) : null;
  const facts = { ...wanted, ...foundFacts(found), ...sizes(issue, found) };
  faults.add(path, codeOf(schema, issue, found), near === null ? facts : { ...facts, near });
}

function codeOf(schema: z.ZodObject, issue: z.core.$ZodIssue, found: unknown): string {
  switch (issue.code) {
    case "invalid_type":
      if (found === undefined) return "missing";
      if (issue.expected === "int" && Number.isFinite(found)) return "not-whole";
      if (issue.expected === "int" || issue.expected === "number") return "not-number";
      return "wrong-sort";
    case "too_small":
    case "too_big":
      if (issue.origin === "string") return "text-too-long";
      if (issue.origin === "array") return countCode(schema, issue);
      return "out-of-range";
    case "invalid_format":
      return "form";
    case "invalid_value":
      return found === undefined ? "missing" : "not-a-word";
    case "invalid_union":
      return found === undefined ? "missing" : "wrong-sort";
    default:
      return "wrong-sort";
  }
}

function countCode(schema: z.ZodObject, issue: z.core.$ZodIssueTooBig | z.core.$ZodIssueTooSmall): string {
  if (issue.exact || schemaAt(issue.path as Path, schema) instanceof z.ZodTuple) return "wrong-count";
  return issue.code === "too_big" ? "too-many" : "too-few";
}

/** Lengths, where what is wrong is a length. */
function sizes(issue: z.core.$ZodIssue, found: unknown): Record<string, number> {
  if (issue.code !== "too_small" && issue.code !== "too_big") return {};
  if (typeof found !== "string" && !Array.isArray(found)) return {};
  const { length } = found;
  const bound = issue.code === "too_big" ? Number(issue.maximum) : Number(issue.minimum);
  return { length, bound };
}
