import { readHow } from "../../src/survey/measuring/how.ts";
import { wayOf } from "../../src/survey/measuring/ways.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { type Entry, entryFor } from "./entry.ts";
import type { Stop } from "./stops.ts";

const numbers = new Intl.NumberFormat("en", { maximumSignificantDigits: 12, useGrouping: false });

/**
 * A fresh entry for a way. For the water in a tank whose size was taped before, its measures stand in it already
 * and only the depth is blank; on a plan, the known length of the shape traced last.
 */
export function entryBefore(survey: Survey, stop: Stop, way: string): Entry {
  const fresh = entryFor(way);
  if (way === "plan") return withKnown(fresh, survey);
  if (stop.kind !== "level" && stop.kind !== "outlet") return fresh;
  const row = (survey.found ?? [])
    .filter(({ at, how }) => at.startsWith(`tanks[${stop.index}].`) && readHow(how)?.terms[0]?.way === way)
    .at(-1);
  const counts = row && readHow(row.how)?.terms[0]?.counts;
  const slots = wayOf(way)?.slots ?? [];
  if (!row || counts || row.readings.length !== slots.length) return fresh;
  const texts = slots.map(({ name }, s) => [
    name === "depth" ? "" : `${numbers.format(row.readings[s]!)} ${slots[s]!.unit}`,
  ]);
  return { paced: null, terms: [{ sign: 1, way, texts }] };
}

function withKnown(fresh: Entry, { found = [] }: Survey): Entry {
  const known_m = found.filter(({ how }) => how === "plan").at(-1)?.readings[0];
  const [term] = fresh.terms;
  if (known_m === undefined || !term) return fresh;
  return {
    ...fresh,
    terms: [{ ...term, texts: [[`${numbers.format(known_m)} m`], ...term.texts.slice(1)] }],
  };
}
