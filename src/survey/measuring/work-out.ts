import { propagate } from "./figure.ts";
import { type How, readHow, type Term } from "./how.ts";
import { pace_m, paceSlots } from "./pacing.ts";
import { countsOf, dealt } from "./read-slots.ts";
import { impossible, type Outcome, type Way, type Worked } from "./way.ts";
import { wayOf } from "./ways.ts";

/**
 * What readings come to, as `found` keeps them. Null where `how` names no way of ours: the figure then stands
 * as it was entered.
 */
export function workOut(how: string, readings: readonly number[]): Outcome | null {
  const read = readHow(how);
  if (!read || read.terms.some(({ way }) => !wayOf(way))) return null;
  return finite(read.paced ? paced(read, readings) : combined(read.terms, readings, false));
}

/** A blank of 0 where something divides by it gives no figure: that is said, never kept as one. */
function finite(outcome: Outcome): Outcome {
  if ("impossible" in outcome) return outcome;
  const figures = Object.values(outcome.figures);
  const sound = figures.every(({ figure, standardError }) => Number.isFinite(figure + standardError));
  return sound ? outcome : impossible("nothing-comes-of-it");
}

/** Shapes added and taken away; one alone keeps all that it gives. */
function combined(terms: readonly Term[], readings: readonly number[], inPaces: boolean): Outcome {
  const parts: { sign: number; worked: Worked }[] = [];
  let rest = readings;
  for (const [i, { sign, way: code, counts }] of terms.entries()) {
    const way = wayOf(code)!;
    const last = i === terms.length - 1;
    const ofTerm = countsOf(way.slots, last ? rest.length : way.slots.length, counts);
    if (!ofTerm) return impossible("readings-do-not-fit", { way: code, found: rest.length });
    const taken = ofTerm.reduce((sum, count) => sum + count, 0);
    const outcome = one(way, ofTerm, rest.slice(0, taken), inPaces);
    if ("impossible" in outcome) return outcome;
    parts.push({ sign, worked: outcome });
    rest = rest.slice(taken);
  }
  if (rest.length > 0) return impossible("readings-left-over", { found: rest.length });
  return parts.length === 1 && parts[0]!.sign === 1 ? parts[0]!.worked : added(parts);
}

function one(way: Way, counts: readonly number[], readings: readonly number[], inPaces: boolean): Outcome {
  const read = dealt(way.slots, counts, readings, inPaces ? "paces" : null);
  return "impossible" in read ? read : way.work(read);
}

function added(parts: readonly { sign: number; worked: Worked }[]): Outcome {
  const areas = parts.map(({ worked }) => worked.figures.area_m2);
  if (areas.some((area) => area === undefined)) return impossible("only-areas-add");
  const area = propagate(
    (values) => values.reduce((sum, value, i) => sum + parts[i]!.sign * value, 0),
    areas.map((area) => area!),
  );
  if (area.figure <= 0) return impossible("nothing-left", { area_m2: area.figure });
  return { figures: { area_m2: area }, notes: parts.flatMap(({ worked }) => worked.notes) };
}

/** Lengths in paces: the area in square paces times the pace squared, whose error all lengths share. */
function paced({ terms }: How, readings: readonly number[]): Outcome {
  const calibration = dealt(paceSlots, [1, 1], readings.slice(0, 2));
  if ("impossible" in calibration) return calibration;
  const pace = pace_m(calibration);
  const outcome = combined(terms, readings.slice(2), true);
  if ("impossible" in outcome) return outcome;
  const { area_m2: squarePaces } = outcome.figures;
  if (!squarePaces || Object.keys(outcome.figures).length > 1) return impossible("only-areas-are-paced");
  const area_m2 = propagate(([square, length]) => square! * length! ** 2, [squarePaces, pace]);
  return { ...outcome, figures: { area_m2 } };
}
