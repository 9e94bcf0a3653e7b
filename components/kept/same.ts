/** Whether two JSON values say the same, in whatever order their fields stand. */
export function isSameData(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const one = fieldsOf(a);
  const other = new Map(fieldsOf(b));
  return (
    one.length === other.size &&
    one.every(([name, value]) => other.has(name) && isSameData(value, other.get(name)))
  );
}

/** A field that is undefined is not there, as in JSON. */
function fieldsOf(value: object): [string, unknown][] {
  return Object.entries(value).filter(([, inner]) => inner !== undefined);
}
