/** A path as `found` writes it, in steps: `beds[2].area_m2` → beds, 2, area_m2. Null where it is no path. */
export function pathSteps(text: string): (string | number)[] | null {
  if (!/^[A-Za-z_$][\w$]*(?:\.[A-Za-z_$][\w$]*|\[\d{1,5}\])*$/.test(text)) return null;
  return [...text.matchAll(/([A-Za-z_$][\w$]*)|\[(\d+)\]/g)].map(([, name, place]) => name ?? Number(place));
}

type Holder = Record<string | number, unknown>;

const unsafe = new Set(["__proto__", "constructor", "prototype"]);

/** The value at a path; undefined where there is none. */
export function valueAt(document: unknown, steps: readonly (string | number)[]): unknown {
  return steps.reduce<unknown>(
    (part, step) =>
      part !== null && typeof part === "object" && Object.hasOwn(part, step)
        ? (part as Holder)[step]
        : undefined,
    document,
  );
}

/**
 * Sets the value at a path, in place, making groups of fields that are not there yet. Rows of a list must be there:
 * a reading never makes a bed. False where it could not be set.
 */
export function setAt(document: object, steps: readonly (string | number)[], value: unknown): boolean {
  let part = document as Holder;
  for (const [i, step] of steps.entries()) {
    if (typeof step === "string" && unsafe.has(step)) return false;
    if (i === steps.length - 1) break;
    const next = Object.hasOwn(part, step) ? part[step] : undefined;
    if (next !== null && typeof next === "object") {
      part = next as Holder;
      continue;
    }
    const madeHere = typeof step === "string" && typeof steps[i + 1] === "string";
    if (!madeHere || next !== undefined) return false;
    const made: Holder = {};
    part[step] = made;
    part = made;
  }
  const last = steps.at(-1)!;
  if (typeof last === "number" && !(Array.isArray(part) && last < part.length)) return false;
  part[last] = value;
  return true;
}
