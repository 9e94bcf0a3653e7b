import type { FaultCollector } from "../collector.ts";
import { waterToNeed } from "../measures/chosen.ts";
import { type Path, pathText } from "../path.ts";
import { type Change, changes } from "../words.ts";
import { checkShares, checkSupply } from "./beds.ts";
import { has, type Row, rowAt, rowsAt, textAt, textsAt } from "./loose.ts";

export function checkMeasures(survey: Row, faults: FaultCollector): void {
  const measures = rowsAt(survey, "measures");
  for (const measure of measures) {
    checkOneChange(measure, faults);
    if (textAt(measure, "id") === waterToNeed)
      faults.add([...measure.path, "id"], "id-kept", { id: waterToNeed });
    const replant = rowAt(measure, "replant");
    if (replant) checkShares(replant, faults);
    const changed = rowAt(measure, "changeWatering");
    if (changed) checkChangedWatering(changed, survey, faults);
  }
  const chosen = measures.filter((measure) => measure.fields.chosen !== false);
  checkGroups(chosen, faults);
  checkClashes(chosen, faults);
}

function checkOneChange(measure: Row, faults: FaultCollector): void {
  const found = changes.filter((change) => has(measure, change));
  if (found.length === 0) faults.add(measure.path, "change-none", { changes });
  if (found.length > 1) faults.add(measure.path, "change-many", { found });
}

/** The bed's watering with the change put in must stand as a watering of its own would. */
function checkChangedWatering(changed: Row, survey: Row, faults: FaultCollector): void {
  if (Object.keys(changed.fields).every((name) => name === "beds"))
    faults.add(changed.path, "watering-unchanged");
  const served = new Set(
    rowsAt(survey, "measures").flatMap((measure) => {
      const use = rowAt(measure, "useTank");
      return use ? textsAt(use, "beds").map(({ text }) => text) : [];
    }),
  );
  const named = new Set(textsAt(changed, "beds").map(({ text }) => text));
  if (!has(changed, "method") && !has(changed, "supply")) return;
  for (const bed of rowsAt(survey, "beds")) {
    const id = textAt(bed, "id");
    const watering = rowAt(bed, "watering");
    if (id === null || !named.has(id) || !watering) continue;
    const before = faults.count;
    const merged = { path: changed.path, fields: { ...watering.fields, ...changed.fields } };
    checkSupply(merged, faults, served.has(id));
    if (faults.count > before) return;
  }
}

/** At most one measure of a group is chosen. */
function checkGroups(chosen: Row[], faults: FaultCollector): void {
  const first = new Map<string, Row>();
  for (const measure of chosen) {
    const group = textAt(measure, "oneOf");
    if (group === null) continue;
    const before = first.get(group);
    if (before)
      faults.add([...measure.path, "chosen"], "group-twice", {
        group,
        first: pathText(before.path),
      });
    else first.set(group, measure);
  }
}

/** Two chosen measures never set one field, unless one group holds them apart. */
function checkClashes(chosen: Row[], faults: FaultCollector): void {
  const setBy = new Map<string, Row>();
  for (const measure of chosen) {
    for (const { key, path } of changes.flatMap((change) => fieldsSet(measure, change))) {
      const before = setBy.get(key);
      if (!before) setBy.set(key, measure);
      else if (before !== measure && !sameGroup(before, measure))
        faults.add(path, "measures-clash", { first: pathText(before.path) });
    }
  }
}

/** Keys of the fields that a measure sets, whichever its change. */
export function fieldsSetBy(measure: Row): string[] {
  return changes.flatMap((change) => fieldsSet(measure, change)).map(({ key }) => key);
}

function sameGroup(a: Row, b: Row): boolean {
  const group = textAt(a, "oneOf");
  return group !== null && group === textAt(b, "oneOf");
}

/** The fields that a change sets: a key that is the same wherever the field is, and where the change says so. */
function fieldsSet(measure: Row, change: Change): { key: string; path: Path }[] {
  const row = rowAt(measure, change);
  if (!row) return [];
  const each = (list: string, ...fields: string[]) =>
    textsAt(row, list).flatMap(({ text, path }) =>
      fields.map((field) => ({ key: `${list} ${text} ${field}`, path })),
    );
  const one = (of: string, ...fields: string[]) => {
    const id = textAt(row, of);
    return id === null
      ? []
      : fields.map((field) => ({ key: `${of} ${id} ${field}`, path: [...row.path, of] }));
  };
  switch (change) {
    case "mulch":
      return each("beds", "mulch");
    case "replant":
      return each("beds", "plantings", ...(has(row, "leafCover") ? ["leafCover"] : []));
    case "changeWatering":
      return each("beds", ...Object.keys(row.fields).filter((field) => field !== "beds"));
    case "useTank":
      return each("beds", "tank");
    case "resizeTank":
      return one("tank", "capacity_L");
    case "connectRoof":
      return one("roof", "tank", ...(has(row, "share") ? ["share"] : []));
    case "firstFlush":
      return each("roofs", "firstFlush_mm");
    case "mendLeak":
      return each("leaks", "mended");
    case "addTank":
    case "addDraw":
      return [];
  }
}
