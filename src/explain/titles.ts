import { figureName, titleWords } from "../words/en/explain.ts";
import { formatAddress, type When } from "./address.ts";
import { partName } from "./claims.ts";
import type { Figure } from "./figure.ts";
import type { Say } from "./say.ts";

/** The address of a figure and the title of its working. */
export function titleOf(figure: Figure): [at: string, title: string] {
  const { address, run, say } = figure;
  const name = figureName(address.subject, address.what);
  const subject = address.id === "" ? null : partName(run, address.subject, address.id);
  return [
    formatAddress(address),
    titleWords.title(name, subject, titleWords.run[address.run], whenText(address.when, say)),
  ];
}

/** A time in words; null of none. */
export function whenText(when: When, say: Say): string | null {
  switch (when.kind) {
    case "mean":
      return null;
    case "year":
      return String(when.year);
    case "month":
      return titleWords.month(say.month(when.month), String(when.year));
    case "day":
      return say.date(when.day);
    case "calendar-month":
      return titleWords.calendarMonth(say.month(when.month));
    case "week":
      return titleWords.week(say.month(when.month));
  }
}
