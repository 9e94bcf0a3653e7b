import { type MonthFigure, monthFigures, type RunFigure, runFigures } from "../../words/round-at.ts";
import type { Working } from "../working.ts";
import { awayFigure } from "./away.ts";
import type { RoundBook } from "./book.ts";
import { cycles, interval, leaveAfter, soak, wetted } from "./month-days.ts";
import { type MonthRow, monthRow } from "./month-row.ts";
import { askedDepth, litres, minutes, monthLitres, net } from "./month-water.ts";
import { conflict, rounding } from "./rounding.ts";
import { runFigure } from "./run.ts";
import { soilNow, soilOfYear, soilOnDay } from "./soil.ts";
import { daysOfWater, givesThisWeek, keepsAll, rationOf } from "./tank.ts";
import { percentOf, timerOf } from "./timer.ts";
import { finish, runTimes } from "./times.ts";
import { allFromTanks, allLitres, doneInMonth, lastWeekOfBed, monthOfAll, weekOfBed } from "./week-sums.ts";

const ofMonth: Readonly<Record<MonthFigure, (book: RoundBook, row: MonthRow) => Working | null>> = {
  asked: askedDepth,
  minutes,
  net,
  interval,
  cycles,
  soak,
  litres,
  month: monthLitres,
  wetted,
  rain: leaveAfter,
};

/**
 * The working of a figure of the rounds, by an address of `roundAt`.
 * @returns null where the address leads nowhere, or the figure is not there: no watering in that month
 */
export function explainRound(book: RoundBook, address: string): Working | null {
  const [round, kind, ...parts] = address.split("/");
  const open =
    round === "round" && kind !== undefined && Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
  return open ? open(book, parts) : null;
}

type Open = (book: RoundBook, parts: readonly string[]) => Working | null;

const kinds: Readonly<Record<string, Open>> = {
  month: (book, [id = "", when = "", what = ""]) => {
    const read = monthOf(when);
    if (!read || !isOneOf(monthFigures, what)) return null;
    const row = monthRow(book, id, read.month, read.isDry, what);
    return row && ofMonth[what](book, row);
  },
  months: (book, [when = ""]) => {
    const read = monthOf(when);
    return read && monthOfAll(book, read.month, read.isDry);
  },
  rounding: (book, [id = "", what]) =>
    what === "water" || what === "stress" ? rounding(book, id, what) : null,
  conflict: (book, [id = "", when = ""]) => {
    const read = monthOf(when);
    return read && conflict(book, id, read.month);
  },
  percent: (book, [when = ""]) => {
    const read = monthOf(when);
    return read && percentOf(book, read.month);
  },
  timer: (book, [id = "", what]) =>
    what === "minutes" || what === "water" || what === "stress" ? timerOf(book, id, what) : null,
  soil: (book, [id = "", place]) =>
    place === undefined ? soilNow(book, id) : soilOfYear(book, id, Number(place)),
  run: (book, [id = "", date = "", what = ""]) => {
    if (!isOneOf(runFigures, what)) return null;
    return runOf(book, id, date, what);
  },
  week: (book, [id = ""]) => weekOfBed(book, id),
  "last-week": (book, [id = ""]) => lastWeekOfBed(book, id),
  done: (book, [id = "", month = ""]) => doneInMonth(book, id, month),
  all: (book, [what]) => (what === "tank" ? allFromTanks(book) : allLitres(book)),
  finish: (book, [date = ""]) => finish(book, date),
  tank: (book, [id = "", what]) => {
    if (what === "days") return daysOfWater(book, id);
    return what === "gives" ? givesThisWeek(book, id) : keepsAll(book, id);
  },
  ration: (book, [tank = "", bed = ""]) => rationOf(book, tank, bed),
  away: (book, [place, id = "", what]) =>
    what === "soak" || what === "lasts" ? awayFigure(book, Number(place), id, what) : null,
};

function runOf(book: RoundBook, id: string, date: string, what: RunFigure): Working | null {
  if (what === "times") return runTimes(book, id, date);
  return what === "missing" ? soilOnDay(book, id, date) : runFigure(book, id, date, what);
}

/** `07` or `07-dry`. */
function monthOf(text: string): { month: number; isDry: boolean } | null {
  const read = /^(0[1-9]|1[0-2])(-dry)?$/.exec(text);
  return read && { month: Number(read[1]) - 1, isDry: read[2] !== undefined };
}

function isOneOf<T extends string>(all: readonly T[], text: string): text is T {
  return (all as readonly string[]).includes(text);
}
