import type { FaultCollector } from "../collector.ts";
import { nearest } from "../near.ts";
import type { Path } from "../path.ts";
import { type Row, rowAt, rowsAt, textAt, textsAt } from "./loose.ts";

/** Ids named in the sentence that says which there are. */
const mostNamed = 8;

/** Every id that points somewhere points at something that is there. */
export function checkReferences(survey: Row, faults: FaultCollector): void {
  const known = (list: string) => new Set(rowsAt(survey, list).flatMap((row) => textAt(row, "id") ?? []));
  const measures = rowsAt(survey, "measures");
  const beds = known("beds");
  const roofs = known("roofs");
  const tanks = known("tanks");
  const taps = known("taps");
  const leaks = known("leaks");
  const meters = known("meters");
  const groups = known("groups");
  const tanksPlanned = new Set(tanks);
  for (const measure of measures) {
    const added = rowAt(measure, "addTank");
    const id = added && textAt(added, "id");
    if (id !== null) tanksPlanned.add(id);
  }
  const fed = new Set([...beds, ...taps, ...tanks, ...known("draws"), ...leaks]);

  const check = (path: Path, id: string, of: string, ids: ReadonlySet<string>) => {
    if (ids.has(id)) return;
    if (faults.full) {
      faults.addUncounted(1);
      return;
    }
    const near = nearest(id, [...ids].slice(0, 1_000));
    const facts = { found: id, of, known: [...ids].slice(0, mostNamed), count: ids.size };
    faults.add(path, "unknown-id", near === null ? facts : { ...facts, near });
  };
  const one = (row: Row | null, name: string, of: string, ids: ReadonlySet<string>) => {
    const id = row && textAt(row, name);
    if (row && id !== null) check([...row.path, name], id, of, ids);
  };
  const each = (row: Row | null, name: string, of: string, ids: ReadonlySet<string>) => {
    for (const { text, path } of row ? textsAt(row, name) : []) check(path, text, of, ids);
  };

  for (const bed of rowsAt(survey, "beds")) {
    one(rowAt(bed, "watering"), "tank", "tank", tanks);
    one(rowAt(bed, "watering"), "tap", "tap", taps);
  }
  for (const roof of rowsAt(survey, "roofs")) one(roof, "tank", "tank", tanks);
  for (const tank of rowsAt(survey, "tanks")) each(tank, "linked", "tank", tanks);
  for (const tap of rowsAt(survey, "taps"))
    one(tap, "source", "source", new Set(["mains", "other", ...tanks]));
  for (const draw of rowsAt(survey, "draws")) one(draw, "tank", "tank", tanks);
  for (const restriction of rowsAt(survey, "restrictions")) each(restriction, "exempt", "bed", beds);
  for (const measure of measures) {
    for (const change of ["mulch", "replant", "changeWatering", "useTank"])
      each(rowAt(measure, change), "beds", "bed", beds);
    for (const change of ["changeWatering", "resizeTank", "useTank", "connectRoof", "addDraw"])
      one(rowAt(measure, change), "tank", "tank", tanksPlanned);
    one(rowAt(measure, "changeWatering"), "tap", "tap", taps);
    each(rowAt(measure, "addTank"), "linked", "tank", tanksPlanned);
    one(rowAt(measure, "connectRoof"), "roof", "roof", roofs);
    each(rowAt(measure, "firstFlush"), "roofs", "roof", roofs);
    each(rowAt(measure, "mendLeak"), "leaks", "leak", leaks);
  }
  for (const meter of rowsAt(survey, "meters")) {
    each(meter, "feeds", "fed", fed);
    one(meter, "parent", "meter", meters);
  }
  for (const reading of rowsAt(survey, "readings")) {
    one(reading, "meter", "meter", meters);
    one(reading, "tank", "tank", tanks);
  }
  for (const finding of rowsAt(survey, "found")) one(finding, "group", "group", groups);
}
