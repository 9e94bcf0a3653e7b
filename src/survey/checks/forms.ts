import type { FaultCollector } from "../collector.ts";
import { wantedAt } from "../wanted.ts";
import { has, type Row } from "./loose.ts";

/**
 * A row written in exactly one of several forms, each a list of fields. A form is begun by a field that only it
 * has; then its other fields are wanted, and those of no other form.
 */
export function checkForms(
  row: Row,
  forms: readonly (readonly string[])[],
  code: string,
  faults: FaultCollector,
) {
  const fields = [...new Set(forms.flat())].filter((name) => has(row, name));
  const begun = forms.filter((form) =>
    form.some((name) => has(row, name) && forms.every((other) => other === form || !other.includes(name))),
  );
  const [form] = begun;
  if (!form) return faults.add(row.path, `${code}-none`);
  if (fields.some((name) => !form.includes(name))) return faults.add(row.path, `${code}-many`, { fields });
  for (const name of form) {
    const path = [...row.path, name];
    if (!has(row, name)) faults.add(path, "missing", { ...wantedAt(path), foundSort: "nothing" });
  }
}
