import { total_L } from "../../engine/tally.ts";
import { perYear } from "../../engine/years.ts";
import type { ChoicesContext } from "../../report/choices-context.ts";
import { beside, onlyBringing, planRows, with_ } from "../../report/choices-measures.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import type { Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import {
  type Asked,
  address,
  namesOfSet,
  opening,
  type SetOf,
  setAddress,
  setAt,
  setKey,
  sheetOf,
} from "./book.ts";

/** What a set is called in a title. */
export function setName(of: SetOf): string {
  return titles.done(namesOfSet(of), of.by === "habit");
}

export function saved_kL({ context: { valuer }, set, by }: SetOf): number {
  return valuer.saved_kL_year(set, by);
}

/** `choices/set/KEY/saved`: what a set gives up. */
export function setWorking(asked: Asked): Working | null {
  const [key, what, by] = asked.rest;
  const of = setAt(asked.book, key, by);
  return of && what === "saved" ? savedBySet(asked, of) : null;
}

function savedBySet(asked: Asked, of: SetOf): Working {
  const { context, set, by } = of;
  const { valuer, worked } = context;
  const { days } = worked.weather.calendar;
  const kL = (litres: number) => perYear(litres, days) / 1000;
  const sheet = sheetOf(asked);
  const none = new Uint8Array(set.length);
  const today = opening(kL(total_L(valuer.today)), mainsAddress({ context, set: none, by: "habit" }));
  const then = opening(kL(total_L(valuer.evaluator.mains(set, by))), mainsAddress(of));
  sheet.step("setSaved", { asToday: today, withSet: then }, saved_kL(of));
  return sheet.done(asked.at, titles.saved(setName(of)));
}

/** Where the mains water of a set opens, down to a day. */
export function mainsAddress({ context, set, by }: SetOf, ...when: string[]): string {
  const key = setKey(context, set);
  return address("with", [key, "mains", by === "habit" ? "today" : "need", ...when]);
}

/** The sets that a measure is told by: with it and without it, by itself or after the others. */
export function setsOf(
  context: ChoicesContext,
  id: string,
  isAlone: boolean,
): { with: SetOf; without: SetOf } | null {
  const place = context.measures.findIndex((measure) => measure.id === id);
  if (place < 0) return null;
  const others = beside(context, place);
  const base = isAlone ? onlyBringing(context, others, place) : others;
  return {
    with: { context, set: with_(base, place), by: "need" },
    without: { context, set: base, by: "need" },
  };
}

/** `choices/measure/ID/alone` and `/after`: what a measure adds. */
export function measureWorking(asked: Asked): Working | null {
  const [id, what] = asked.rest;
  const isAlone = what === "alone";
  if (id === undefined || !(isAlone || what === "after")) return null;
  const context = contextOf(asked, id);
  const sets = context && setsOf(context, id, isAlone);
  if (!sets) return null;
  const { name } = context.measures.find((measure) => measure.id === id)!;
  return addsWorking(asked, sets.with, sets.without, (isAlone ? titles.alone : titles.after)(name));
}

/** The context that a measure stands in: the survey's, else that of what is proposed. */
export function contextOf({ book }: Asked, id: string): ChoicesContext | null {
  const has = ({ measures }: ChoicesContext) => measures.some((measure) => measure.id === id);
  if (has(book.context)) return book.context;
  return has(book.proposed()) ? book.proposed() : null;
}

export function addsWorking(asked: Asked, more: SetOf, less: SetOf, title: string): Working {
  const sheet = sheetOf(asked);
  const [savedWith, savedWithout] = [saved_kL(more), saved_kL(less)];
  sheet.step(
    "adds",
    {
      savedWith: opening(savedWith, setAddress("set", more, "saved"), setName(more)),
      savedWithout: opening(savedWithout, setAddress("set", less, "saved"), setName(less)),
    },
    savedWith - savedWithout,
  );
  return sheet.done(asked.at, title);
}

/** `choices/short`: what beds that get too little today are short of. */
export function shortWorking(asked: Asked): Working | null {
  const { context } = asked.book;
  const { underWatered } = planRows(context);
  if (underWatered.length === 0 || asked.rest.length > 0) return null;
  const sheet = sheetOf(asked);
  const beds = underWatered.map(({ bed, need_kL_year, habit_kL_year }): Part => {
    const name = context.worked.survey.beds.find(({ id }) => id === bed)!.name;
    return { ...opening((need_kL_year - habit_kL_year) * 1000, `bed/${bed}/short`), name };
  });
  const all_L = beds.reduce((sum, { value }) => sum + value, 0);
  const lacking = sheet.sum("lacking", parts.shortBeds, beds, all_L);
  sheet.step("shortKL", { lacking }, all_L / 1000);
  return sheet.done(asked.at, titles.short);
}
