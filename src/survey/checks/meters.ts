import type { FaultCollector } from "../collector.ts";
import { checkForms } from "./forms.ts";
import { numberAt, type Row, rowsAt, textAt } from "./loose.ts";

const readingForms = [
  ["meter", "at", "value"],
  ["meter", "from", "to", "kL"],
  ["tank", "date", "level_L"],
] as const;

export function checkMeters(survey: Row, faults: FaultCollector): void {
  checkParents(rowsAt(survey, "meters"), faults);
  const capacities = new Map(
    rowsAt(survey, "tanks").map((tank) => [textAt(tank, "id"), numberAt(tank, "capacity_L")]),
  );
  for (const reading of rowsAt(survey, "readings")) {
    checkForms(reading, readingForms, "reading", faults);
    const level = numberAt(reading, "level_L");
    const capacity = capacities.get(textAt(reading, "tank")) ?? null;
    if (level !== null && capacity !== null && level > capacity)
      faults.add([...reading.path, "level_L"], "above-capacity", { found: level, capacity });
  }
}

/** Going from a meter to the one it is behind, and on, never comes back. */
function checkParents(meters: Row[], faults: FaultCollector): void {
  const parents = new Map(meters.map((meter) => [textAt(meter, "id"), textAt(meter, "parent")]));
  for (const meter of meters) {
    const id = textAt(meter, "id");
    if (id === null) continue;
    let above = parents.get(id) ?? null;
    for (let steps = 0; above !== null && above !== id && steps < meters.length; steps++)
      above = parents.get(above) ?? null;
    if (above === id) faults.add([...meter.path, "parent"], "meter-circle", { id });
  }
}
