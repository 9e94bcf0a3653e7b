import { valueIn } from "../../../src/survey/edit/document.ts";

/** The number in a field, or below it; null where there is none. */
export function numberIn(value: unknown, ...names: readonly string[]): number | null {
  const found = valueIn(value, names);
  return typeof found === "number" && Number.isFinite(found) ? found : null;
}
