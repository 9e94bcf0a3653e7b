import type { FaultCollector } from "../collector.ts";
import { namedLists } from "../edit/ids.ts";
import { pathText } from "../path.ts";
import { type Row, rowAt, rowsAt, textAt } from "./loose.ts";

/** An id is used once within its list; beds and tanks share the columns of one table, so theirs differ too. */
export function checkIds(survey: Row, faults: FaultCollector): void {
  const byList = new Map(namedLists.map((list) => [list, firstUses(rowsAt(survey, list), faults)]));
  const beds = byList.get("beds")!;
  const tanks = byList.get("tanks")!;
  for (const [id, tank] of tanks) {
    const bed = beds.get(id);
    if (bed) faults.add([...tank.path, "id"], "id-bed-and-tank", { id, first: pathText(bed.path) });
  }
  checkAdded(survey, "addTank", [beds, tanks], faults);
  checkAdded(survey, "addDraw", [byList.get("draws")!], faults);
}

function firstUses(rows: Row[], faults: FaultCollector): Map<string, Row> {
  const seen = new Map<string, Row>();
  for (const row of rows) {
    const id = textAt(row, "id");
    if (id === null) continue;
    const first = seen.get(id);
    if (first) faults.add([...row.path, "id"], "id-twice", { id, first: pathText(first.path) });
    else seen.set(id, row);
  }
  return seen;
}

/** What a measure adds has an id of its own; measures of one group may add the same, at most one is chosen. */
function checkAdded(survey: Row, change: string, taken: Map<string, Row>[], faults: FaultCollector): void {
  const added = new Map<string, { group: string | null; row: Row }>();
  for (const measure of rowsAt(survey, "measures")) {
    const row = rowAt(measure, change);
    const id = row && textAt(row, "id");
    if (!row || id === null) continue;
    const group = textAt(measure, "oneOf");
    const before = added.get(id);
    const clash = before && (group === null || group !== before.group) ? before.row : undefined;
    const first = taken.map((uses) => uses.get(id)).find((use) => use !== undefined) ?? clash;
    if (first) faults.add([...row.path, "id"], "id-twice", { id, first: pathText(first.path) });
    if (!before) added.set(id, { group, row });
  }
}
