import { capital, joinOutlays, type Outlay, type Outlook } from "../../engine/money.ts";
import { type ChoicesContext, npvOfSet } from "../../report/choices-context.ts";
import { outlookOf, planMembers } from "../../report/choices-measures.ts";
import { memberOutlay } from "../../report/measures.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import type { Input, Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import { billSaved } from "./bills.ts";
import {
  type Asked,
  address,
  byOurs,
  opening,
  type SetOf,
  setAddress,
  setAt,
  setKey,
  sheetOf,
} from "./book.ts";
import { contextOf, saved_kL, setName, setsOf } from "./sets.ts";
import { surveyedMoney } from "./surveyed.ts";

/** What is paid for something and what it saves: a member of the plan by its share, a set, or a measure by itself. */
export interface Purse {
  /** `share/ID`, `set/KEY` or `offer/ID`. */
  key: [kind: string, of: string];
  name: string;
  /** Those whose quotes it pays for. */
  context: ChoicesContext;
  set: Uint8Array;
  outlay: Outlay;
  outlook: Outlook;
  /** Off the bill in the first year; null without a price. */
  saved: Input | null;
  saved_kL: Input | null;
}

export function purseAt(asked: Asked, kind: string | undefined, of: string | undefined): Purse | null {
  if (of === undefined) return null;
  if (kind === "share") return sharePurse(asked, of);
  if (kind === "set") return setPurse(asked, of);
  return kind === "offer" ? offerPurse(asked, of) : null;
}

export function memberName(id: string, { measures }: ChoicesContext): string {
  const measure = measures.find((one) => one.id === id);
  return measure ? parts.named(measure.name) : parts.waterToNeed;
}

function sharePurse({ book: { context } }: Asked, id: string): Purse | null {
  const member = planMembers(context).find((one) => one.id === id);
  const outlay = member && memberOutlay(member, context.money);
  if (!outlay) return null;
  const saved = member.money_year?.share ?? null;
  return {
    key: ["share", id],
    name: memberName(id, context),
    context,
    set: Uint8Array.from(context.measures, (measure) => (measure.id === id ? 1 : 0)),
    outlay,
    outlook: outlookOf(context, outlay),
    saved: saved === null ? null : opening(saved, address("share", [id, "money"])),
    saved_kL: opening(member.water_kL_year.share, address("share", [id, "water"])),
  };
}

function setPurse(asked: Asked, key: string): Purse | null {
  const of = setAt(asked.book, key, undefined);
  if (!of) return null;
  const { context, set } = of;
  const outlay = joinOutlays(context.outlays.flatMap((one, k) => (set[k] === 1 && one ? one : [])));
  const saved = billSaved(of);
  return {
    key: ["set", key],
    name: setName(of),
    context,
    set,
    outlay,
    outlook: context.outlook,
    saved: saved === null ? null : opening(saved, setAddress("saving", of)),
    saved_kL: opening(saved_kL(of), setAddress("set", of, "saved")),
  };
}

/** A measure after the others, over the years that sets are looked at. */
function offerPurse(asked: Asked, id: string): Purse | null {
  const context = contextOf(asked, id);
  return context && { key: ["offer", id], name: memberName(id, context), context, ...offerOf(context, id) };
}

function offerOf(context: ChoicesContext, id: string): Omit<Purse, "key" | "name" | "context"> {
  const place = context.measures.findIndex((measure) => measure.id === id);
  const outlay = context.outlays[place];
  const worth = worthAfter(context, id);
  return {
    set: Uint8Array.from(context.measures, (_, k) => (k === place ? 1 : 0)),
    outlay: outlay ?? joinOutlays([]),
    outlook: context.outlook,
    saved: worth.money === null ? null : opening(worth.money, address("measure-saving", [id])),
    saved_kL: opening(worth.kL, address("measure", [id, "after"])),
  };
}

function worthAfter(context: ChoicesContext, id: string): { kL: number; money: number | null } {
  const sets = setsOf(context, id, false)!;
  const [more, less] = [billSaved(sets.with), billSaved(sets.without)];
  return {
    kL: saved_kL(sets.with) - saved_kL(sets.without),
    money: more === null || less === null ? null : more - less,
  };
}

/** Where a figure of a purse opens. */
export function purseAddress({ key }: Purse, what: string, ...rest: string[]): string {
  return address("purse", [...key, what, ...rest]);
}

/** A line of a quote, with its price and its life as the survey has them. */
export interface Line {
  what: string;
  cost: Input;
  life: Input;
}

/** The lines of a purse, in the order of its outlay. */
export function linesOf(asked: Asked, { context, set }: Pick<Purse, "context" | "set">): Line[] {
  return context.measures.flatMap((_, place) =>
    set[place] === 1 ? measureLines(asked, context, place) : [],
  );
}

function measureLines(asked: Asked, context: ChoicesContext, place: number): Line[] {
  const measure = context.measures[place]!;
  const { quote } = measure;
  return (context.outlays[place]?.lines ?? []).map(({ cost, life_years }, k): Line => {
    const line = quote?.lines[k];
    const at = `measures[${place}]`;
    const what = line?.what ?? measure.name;
    const lifePath =
      line?.life_years === undefined ? `${at}.life_years` : `${at}.quote.lines[${k}].life_years`;
    const isSaid = line?.life_years !== undefined || measure.life_years !== undefined;
    return {
      what,
      cost: surveyedMoney(asked, quote ? `${at}.quote.lines[${k}].cost` : `${at}.cost`, cost, what),
      life: surveyedMoney(
        asked,
        isSaid ? lifePath : "money.horizon_years",
        life_years,
        parts.ofLine(what, parts.lasts),
      ),
    };
  });
}

/** `choices/cost/ID` and `choices/cost/set/KEY`: what is paid on day one. */
export function costWorking(asked: Asked): Working | null {
  const [first, key] = asked.rest;
  return first === "set" ? costOfSet(asked, key) : costOfMeasure(asked, first);
}

function costOfMeasure(asked: Asked, id: string | undefined): Working | null {
  const context = id === undefined ? null : contextOf(asked, id);
  const place = context?.measures.findIndex((measure) => measure.id === id) ?? -1;
  const outlay = context?.outlays[place];
  if (!context || !outlay) return null;
  const sheet = sheetOf(asked);
  const set = Uint8Array.from(context.measures, (_, k) => (k === place ? 1 : 0));
  const lines = linesOf(asked, { context, set }).map(({ what, cost }): Part => ({ ...cost, name: what }));
  const sum = lines.reduce((all, { value }) => all + value, 0);
  const quoted = sheet.sum("quoted", parts.linesSum, lines, sum);
  const grant = surveyedMoney(asked, `measures[${place}].quote.grant`, outlay.grant);
  sheet.step("capital", { quoted, grant }, capital(outlay));
  return sheet.done(asked.at, titles.cost(memberName(id!, context)));
}

function costOfSet(asked: Asked, key: string | undefined): Working | null {
  const of = setAt(asked.book, key, undefined);
  if (!of) return null;
  const { context, set } = of;
  const sheet = sheetOf(asked);
  const costs = context.measures.flatMap(({ id, name }, place): Part[] => {
    const outlay = context.outlays[place];
    return set[place] === 1 && outlay ? [{ ...opening(capital(outlay), address("cost", [id])), name }] : [];
  });
  const all = costs.reduce((sum, { value }) => sum + value, 0);
  sheet.sum("capital", parts.measuresSum, costs, all);
  return sheet.done(asked.at, titles.cost(setName(of)));
}

/** What is paid on day one, with where it opens. */
export function capitalOf({ key: [kind, of], outlay }: Purse): Input {
  if (kind !== "set" && outlay.lines.length === 0) return byOurs(0, parts.nothingBought);
  return opening(capital(outlay), kind === "set" ? address("cost", ["set", of]) : address("cost", [of]));
}

/** `choices/worth/ID`: what a measure adds to the present value of the others. */
export function offerWorth(asked: Asked): Working | null {
  const [id] = asked.rest;
  const context = id === undefined ? null : contextOf(asked, id);
  const sets = context && setsOf(context, id!, false);
  if (!sets) return null;
  const [npvWith, npvWithout] = [npvOfSet(context, sets.with.set), npvOfSet(context, sets.without.set)];
  if (npvWith === null || npvWithout === null) return null;
  const sheet = sheetOf(asked);
  const input = (of: SetOf, value: number) =>
    opening(value, address("purse", ["set", setKey(context, of.set), "npv"]), setName(of));
  sheet.step(
    "npvAdds",
    { npvWith: input(sets.with, npvWith), npvWithout: input(sets.without, npvWithout) },
    npvWith - npvWithout,
  );
  const { name } = context.measures.find((measure) => measure.id === id)!;
  return sheet.done(asked.at, titles.afterWorth(name));
}
