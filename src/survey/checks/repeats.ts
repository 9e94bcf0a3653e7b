import type { FaultCollector } from "../collector.ts";
import type { Path } from "../path.ts";

/** Lists in which naming one thing twice is a slip of the pen. */
const lists = new Set(
  "days months allowedDays dryOn methods supplies exempt feeds linked beds roofs leaks".split(" "),
);

export function checkRepeats(value: unknown, path: Path, faults: FaultCollector): void {
  if (typeof value !== "object" || value === null) return;
  if (Array.isArray(value)) {
    const name = path[path.length - 1];
    if (typeof name === "string" && lists.has(name)) checkList(value, path, faults);
    value.forEach((inner: unknown, at) => {
      checkRepeats(inner, [...path, at], faults);
    });
    return;
  }
  for (const [name, inner] of Object.entries(value))
    if (typeof inner === "object") checkRepeats(inner, [...path, name], faults);
}

function checkList(list: unknown[], path: Path, faults: FaultCollector): void {
  const seen = new Set<unknown>();
  list.forEach((entry, at) => {
    if (typeof entry !== "string" && typeof entry !== "number") return;
    if (seen.has(entry)) faults.add([...path, at], "listed-twice", { entry: String(entry) });
    seen.add(entry);
  });
}
