import { minutesFor } from "../../engine/rounds/run-time.ts";
import { roundSources, roundSteps, roundTitles } from "../../words/en/explain-rounds.ts";
import { roundAt } from "../../words/round-at.ts";
import type { Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import {
  methodInputs,
  nameOf,
  needOf,
  pageOf,
  pointSteps,
  type RoundBook,
  triggerInput,
  workedOut,
} from "./book.ts";

/** The last soak before an absence, and how long a bed lasts in it. */
export function awayFigure(
  book: RoundBook,
  place: number,
  id: string,
  what: "soak" | "lasts",
): Working | null {
  const holiday = book.week?.holidays[place];
  const away = holiday?.beds.find((bed) => bed.id === id);
  const bed = needOf(book, id);
  if (!holiday || !away || !bed) return null;
  const page = pageOf(book, roundAt.away(place, id, what));
  const { sheet, at } = page;
  if (what === "soak") {
    const { grown } = bed.ready;
    const minutesExact = sheet.step(
      "minutesForDose",
      { trigger: triggerInput(bed), ...methodInputs(bed) },
      minutesFor(grown.bed, grown.trigger_mm),
    );
    const exact_min = minutesFor(grown.bed, grown.trigger_mm);
    const allowed = away.soak.minutes < Math.floor(exact_min) ? away.soak.minutes : Math.ceil(exact_min);
    sheet.step(
      "runMinutes",
      { allowedMinutes: workedOut(allowed, roundSources.shortened), minutesExact },
      away.soak.minutes,
    );
    return sheet.done(at, roundTitles.soak(nameOf(book, id), holiday.name));
  }
  if (away.ofYears.length === 0) return null;
  const parts = away.ofYears.map(
    ({ year, days }): Part => ({ ...workedOut(days, roundSources.dryDown), name: roundSteps.year(year) }),
  );
  pointSteps(page, "lastingDays", "days", parts, [
    { share: 0.9, words: roundSteps.high },
    { share: 0.5, words: roundSteps.middle },
    { share: 0.1, words: roundSteps.low },
  ]);
  return sheet.done(at, roundTitles.lasts(nameOf(book, id), holiday.name));
}
