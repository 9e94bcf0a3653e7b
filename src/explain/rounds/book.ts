import { quantile } from "../../engine/give-up.ts";
import type { BedNeed } from "../../engine/rounds/table.ts";
import type { RoundsWorked } from "../../report/rounds-work.ts";
import type { WeekWorked } from "../../report/week-work.ts";
import { roundNotes, roundSources } from "../../words/en/explain-rounds.ts";
import type { TermKey } from "../../words/en/explain-terms.ts";
import type { Say } from "../say.ts";
import { type Input, type Part, Sheet } from "../sheet.ts";

/** What workings of rounds are read from. */
export interface RoundBook {
  worked: RoundsWorked;
  /** null where no week was asked for. */
  week: WeekWorked | null;
  say: Say;
}

/** A working asked for, with the sheet that it is written on. */
export interface RoundPage extends RoundBook {
  at: string;
  sheet: Sheet;
}

export function pageOf(book: RoundBook, at: string): RoundPage {
  return { ...book, at, sheet: new Sheet(book.say) };
}

export function needOf({ worked }: RoundBook, id: string): BedNeed | null {
  return worked.need.beds.find(({ rounds }) => rounds.id === id) ?? null;
}

export function nameOf({ worked }: RoundBook, id: string): string {
  const { beds, tanks } = worked.survey;
  return [...beds, ...tanks].find((one) => one.id === id)?.name ?? id;
}

/** A figure that opens further, at the engine's address or a round's own. */
export function opens(value: number, at: string, name?: string): Input {
  return { value, origin: { provenance: "worked-out", at }, ...(name !== undefined && { name }) };
}

export function measured(value: number, source: string): Input {
  return { value, origin: { provenance: "measured", source } };
}

export function assumed(value: number, source: string): Input {
  return { value, origin: { provenance: "assumed", source } };
}

export function workedOut(value: number, source: string): Input {
  return { value, origin: { provenance: "worked-out", source } };
}

/** Area, efficiency and flow of a bed, each at the engine's address. */
export function methodInputs({ ready }: BedNeed) {
  const { id, area_m2, watering } = ready.grown.bed;
  return {
    area: opens(area_m2, `bed/${id}/area`),
    efficiency: opens(watering.efficiency, `bed/${id}/efficiency`),
    flow: opens(watering.flow_L_min, `bed/${id}/flow`),
  };
}

export function triggerInput({ ready: { grown } }: BedNeed): Input {
  return opens(grown.trigger_mm, `bed/${grown.bed.id}/trigger`);
}

/** Steps to points between figures in order, as the engine's own quantile has them; the last step is the figure. */
export function pointSteps(
  { sheet }: RoundPage,
  term: TermKey,
  unit: "mm" | "days" | "L",
  parts: readonly Part[],
  points: readonly { share: number; words: string }[],
): void {
  const sorted = parts.map(({ value }) => value).sort((a, b) => a - b);
  sheet.list(parts, unit);
  for (const { share, words } of points) {
    const place = share * (sorted.length - 1);
    const below = Math.floor(place);
    const above = Math.min(below + 1, sorted.length - 1);
    sheet.plain(
      term,
      "{below} + ({place} − {k}) × ({above} − {below})",
      words,
      {
        below: { value: sorted[below]!, unit },
        place: { value: place, unit: "share" },
        k: { value: below, unit: "share" },
        above: { value: sorted[above]!, unit },
      },
      quantile(sorted, share),
    );
  }
  sheet.note(roundNotes.figures, String(sorted.length), {
    provenance: "worked-out",
    source: roundSources.quantile,
  });
}
