import type { FaultCollector } from "../collector.ts";
import type { Path } from "../path.ts";
import { mostEntries } from "./loose.ts";

/** Lists in which naming one thing twice is a slip of the pen. */
const lists = new Set(
  "days months allowedDays dryOn methods supplies exempt feeds linked beds roofs leaks".split(" "),
);

/** Sections that have no such list, and may be long. */
const without = new Set(["readings", "found"]);

export function checkRepeats(value: object, path: Path, faults: FaultCollector): void {
  const inward = (inner: unknown, step: string | number) => {
    if (typeof inner === "object" && inner !== null) checkRepeats(inner, [...path, step], faults);
  };
  if (Array.isArray(value)) {
    const list: unknown[] = value.slice(0, mostEntries);
    const name = path[path.length - 1];
    if (typeof name === "string" && lists.has(name)) checkList(list, path, faults);
    list.forEach(inward);
  } else for (const [name, inner] of Object.entries(value)) if (!without.has(name)) inward(inner, name);
}

function checkList(list: unknown[], path: Path, faults: FaultCollector): void {
  const seen = new Set<unknown>();
  list.forEach((entry, at) => {
    if (typeof entry !== "string" && typeof entry !== "number") return;
    if (seen.has(entry)) faults.add([...path, at], "listed-twice", { entry: String(entry) });
    seen.add(entry);
  });
}
