import type { WorkedOut } from "../report/work-out.ts";
import { type Address, parseAddress, type Subject } from "./address.ts";
import { dayChapters } from "./bed-day.ts";
import { methodChapters } from "./bed-method.ts";
import { plantChapters } from "./bed-plants.ts";
import { shadeChapters } from "./bed-shade.ts";
import { soilChapters } from "./bed-soil.ts";
import { waterChapters } from "./bed-water.ts";
import { type Book, bookOf } from "./book.ts";
import { drawChapters } from "./draws.ts";
import type { Chapter, Chapters, Figure } from "./figure.ts";
import { leakChapters, mainsChapters } from "./mains.ts";
import { roofChapters } from "./roofs.ts";
import type { Say } from "./say.ts";
import { explainFlow } from "./sums.ts";
import { tankChapters } from "./tanks.ts";
import { weatherChapters } from "./weather.ts";
import type { Working } from "./working.ts";

/** Every figure that can be opened, by subject. */
export const chapters: Readonly<Record<Subject, Chapters>> = {
  mains: mainsChapters,
  bed: {
    ...dayChapters,
    ...plantChapters,
    ...shadeChapters,
    ...soilChapters,
    ...waterChapters,
    ...methodChapters,
  },
  tank: tankChapters,
  roof: roofChapters,
  draw: drawChapters,
  leaks: leakChapters,
  weather: weatherChapters,
};

/**
 * The working of a figure: formula in words and symbols, the numbers put in and where each came from, the steps.
 * Each number comes from the engine's series and equations; those with an address open further.
 * @returns null where the address leads nowhere: no such bed, no such day, no habit known
 */
export function explain(worked: WorkedOut, address: string, say: Say): Working | null {
  const read = parseAddress(address);
  const chapter = read && chapterOf(read);
  if (!read || !chapter) return null;
  const figure = figureAt(bookOf(worked), read, say);
  return figure && open(figure, chapter);
}

function chapterOf({ subject, what }: Address): Chapter | null {
  const all = chapters[subject];
  return Object.hasOwn(all, what) ? all[what]! : null;
}

function figureAt(book: Book, address: Address, say: Say): Figure | null {
  const named = address.subject === "mains" ? siteRun(address) : address.run;
  const run = book.run(named);
  const k =
    address.subject === "bed"
      ? run.ready.beds.findIndex(({ grown }) => grown.bed.id === address.id)
      : address.subject === "tank"
        ? run.ready.tanks.findIndex(({ group }) => group.id === address.id)
        : -1;
  if (k < 0 && (address.subject === "bed" || address.subject === "tank")) return null;
  return { book, run, say, address, k };
}

/** `mains/today` is of today's run: its quantity names it. */
function siteRun({ what }: Address): Address["run"] {
  return what === "today" || what === "plan" ? what : "need";
}

function open(figure: Figure, chapter: Chapter): Working | null {
  const { when } = figure.address;
  const { days, firstDay } = figure.run.ready.weather.calendar;
  if (when.kind === "day") {
    const i = when.day - firstDay;
    return i >= 0 && i < days ? (chapter.day?.(figure, i) ?? null) : null;
  }
  if (when.kind === "mean" && chapter.fixed) return chapter.fixed(figure);
  if (when.kind === "calendar-month" && chapter.month) return chapter.month(figure, when.month);
  if (when.kind === "year" && chapter.year) return chapter.year(figure, when.year);
  return chapter.flow ? explainFlow(figure, chapter.flow) : null;
}
