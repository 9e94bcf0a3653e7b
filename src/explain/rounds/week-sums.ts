import { formatIso, parseIso } from "../../engine/weather/dates.ts";
import { litresOf } from "../../report/week-ask.ts";
import { roundSources, roundSteps, roundTitles } from "../../words/en/explain-rounds.ts";
import { roundAt } from "../../words/round-at.ts";
import type { Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import { measured, nameOf, needOf, opens, pageOf, type RoundBook } from "./book.ts";

const totalOf = (parts: readonly Part[]) => parts.reduce((sum, { value }) => sum + value, 0);

/** A bed's water of the week: its waterings. */
export function weekOfBed(book: RoundBook, id: string): Working | null {
  const bed = book.week?.beds.find((one) => one.id === id);
  if (!bed) return null;
  const { sheet, at } = pageOf(book, roundAt.week(id));
  const parts = bed.waterings.map(
    ({ day, litres }): Part => ({
      ...opens(litres, roundAt.run(id, formatIso(day), "litres")),
      name: book.say.date(day),
    }),
  );
  sheet.sum("week_L", roundSteps.waterings, parts, totalOf(parts));
  return sheet.done(at, roundTitles.week(nameOf(book, id)));
}

/** A bed's water of the week before, as the log has it. */
export function lastWeekOfBed(book: RoundBook, id: string): Working | null {
  const firstDay = book.week?.ask.firstDay ?? 0;
  const [from, to] = [formatIso(firstDay - 7), formatIso(firstDay)];
  const parts = loggedParts(book, id, (date) => date >= from && date < to);
  if (parts.length === 0) return null;
  const { sheet, at } = pageOf(book, roundAt.lastWeek(id));
  sheet.sum("week_L", roundSteps.logged, parts, totalOf(parts));
  return sheet.done(at, roundTitles.lastWeek(nameOf(book, id)));
}

/** A bed's water of a month, as the log has it. */
export function doneInMonth(book: RoundBook, id: string, month: string): Working | null {
  const parts = loggedParts(book, id, (date) => date.startsWith(`${month}-`));
  if (parts.length === 0) return null;
  const { sheet, at } = pageOf(book, roundAt.done(id, month));
  sheet.sum("week_L", roundSteps.logged, parts, totalOf(parts));
  return sheet.done(at, roundTitles.done(nameOf(book, id), month));
}

function loggedParts(book: RoundBook, id: string, isWanted: (date: string) => boolean): Part[] {
  const bed = needOf(book, id);
  if (!book.week || !bed) return [];
  return book.week.ask.log
    .filter((entry) => entry.kind === "watering" && entry.id === id && isWanted(entry.date))
    .map((entry, k): Part => {
      const date = book.say.date(parseIso(entry.date)!);
      return { ...measured(litresOf(entry, bed), roundSources.logFlow), name: roundSteps.entry(date, k + 1) };
    });
}

/** Water of the week, all beds together. */
export function allLitres(book: RoundBook): Working | null {
  if (!book.week) return null;
  const { sheet, at } = pageOf(book, roundAt.all("litres"));
  const parts = book.week.beds
    .filter(({ waterings }) => waterings.length > 0)
    .map(
      ({ id, waterings }): Part => ({
        ...opens(
          waterings.reduce((sum, { litres }) => sum + litres, 0),
          roundAt.week(id),
        ),
        name: nameOf(book, id),
      }),
    );
  sheet.sum("week_L", roundSteps.beds, parts, totalOf(parts));
  return sheet.done(at, roundTitles.all);
}

/** What of it the tanks give. */
export function allFromTanks(book: RoundBook): Working | null {
  if (!book.week) return null;
  const { sheet, at } = pageOf(book, roundAt.all("tank"));
  const parts = book.week.tanks.flatMap(({ id: tank, rationed }) =>
    (rationed?.rows ?? []).map(
      ({ id, fromTank_L }): Part => ({
        ...opens(fromTank_L, roundAt.ration(tank, id)),
        name: nameOf(book, id),
      }),
    ),
  );
  sheet.sum("week_L", roundSteps.beds, parts, totalOf(parts));
  return sheet.done(at, roundTitles.allTank);
}

/** Water of a month, all beds together. */
export function monthOfAll(book: RoundBook, month: number, isDry: boolean): Working | null {
  const { table, survey } = book.worked;
  const parts = table.beds.flatMap(({ id, middle, dry }, k): Part[] => {
    const row = isDry ? dry?.[month] : middle[month];
    if (!row || survey.beds[k]!.watering.supply === "none") return [];
    return [{ ...opens(row.month_L, roundAt.month(id, month, "month", isDry)), name: nameOf(book, id) }];
  });
  if (parts.length === 0) return null;
  const { sheet, at } = pageOf(book, roundAt.months(month, isDry));
  sheet.sum("month_L", roundSteps.beds, parts, totalOf(parts));
  return sheet.done(at, roundTitles.months(month, isDry));
}
