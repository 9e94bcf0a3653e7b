import { byPlace, mostExact, pairsFor } from "../../engine/shapley.ts";
import { planMembers } from "../../report/choices-measures.ts";
import type { Member } from "../../report/plan-worth.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import type { Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import { addsMoneyWorking, billSaved } from "./bills.ts";
import { type Asked, address, byOurs, ofRun, opening, type SetOf, setKey, sheetOf } from "./book.ts";
import { memberName } from "./purses.ts";
import { addsWorking, saved_kL, setName } from "./sets.ts";

/** A member of the plan, among the others. */
interface Found {
  members: readonly Member[];
  i: number;
  name: string;
}

/** `choices/share/ID/water|money[/PLACE]`, `/first`, `/last`, `/error`: the Shapley share of a member of the plan. */
export function shareWorking(asked: Asked): Working | null {
  const [id, what, place] = asked.rest;
  const { context } = asked.book;
  const members = planMembers(context);
  const i = members.findIndex((member) => member.id === id);
  if (i < 0 || id === undefined) return null;
  const found = { members, i, name: memberName(id, context) };
  const isMoney = what === "money";
  if (isMoney && !context.money.tariff) return null;
  if (isMoney || what === "water")
    return place === undefined
      ? wholeShare(asked, found, isMoney)
      : atPlace(asked, found, isMoney, Number(place));
  if (what === "first" || what === "last") return endAdds(asked, found, what);
  return what === "error" ? errorOf(asked, found) : null;
}

/** The set of measures, and the watering, that members marked stand for; the last member is watering to need. */
function setOfMembers({ book: { context } }: Asked, members: readonly Member[], marks: Uint8Array): SetOf {
  const ids = new Set(members.filter((_, k) => marks[k] === 1).map(({ id }) => id));
  const set = Uint8Array.from(context.measures, ({ id }) => (ids.has(id) ? 1 : 0));
  return { context, set, by: marks[members.length - 1] === 1 ? "need" : "habit" };
}

function placesOf(asked: Asked, { members, i }: Found, isMoney: boolean) {
  return byPlace(members.length, i, (marks) => {
    const of = setOfMembers(asked, members, marks);
    return isMoney ? billSaved(of)! : saved_kL(of);
  });
}

function wholeShare(asked: Asked, found: Found, isMoney: boolean): Working {
  const { members, i, name } = found;
  if (members.length > mostExact) return drawnShare(asked, found, isMoney);
  const sheet = sheetOf(asked);
  const { id, water_kL_year, money_year } = members[i]!;
  const unit = isMoney ? "money" : "water";
  const means = placesOf(asked, found, isMoney).map(({ before, mean }): Part => {
    const at = address("share", [id, unit, String(before)]);
    return { ...opening(mean, at), name: parts.before(asked.say.number(before)) };
  });
  const all = means.reduce((sum, { value }) => sum + value, 0);
  const sum = sheet.sum(isMoney ? "placeMoney" : "placeMean", parts.placesSum, means, all);
  const membersCount = byOurs(members.length, parts.membersCounted);
  if (isMoney) sheet.step("memberMoney", { placeMoney: sum, membersCount }, money_year!.share);
  else sheet.step("memberShare", { placeMean: sum, membersCount }, water_kL_year.share);
  return sheet.done(asked.at, (isMoney ? titles.shareMoney : titles.share)(name));
}

/** Beyond what can be counted out orders are drawn, each with its reverse. */
function drawnShare(asked: Asked, { members, i, name }: Found, isMoney: boolean): Working {
  const pairs = pairsFor(members.length);
  const member = members[i]!;
  const { share } = isMoney ? member.money_year! : member.water_kL_year;
  const sheet = sheetOf(asked);
  const source = parts.orders(asked.say.number(pairs));
  const sum = ofRun(share * 2 * pairs, source, parts.ordersSum);
  const orders = byOurs(2 * pairs, source);
  if (isMoney) sheet.step("drawnMoney", { addsMoney: sum, orders }, share);
  else sheet.step("drawnShare", { adds: sum, orders }, share);
  return sheet.done(asked.at, (isMoney ? titles.shareMoney : titles.share)(name));
}

function errorOf(asked: Asked, { members, i, name }: Found): Working | null {
  const { standardError } = members[i]!.water_kL_year;
  if (standardError === null) return null;
  const pairs = pairsFor(members.length);
  const sheet = sheetOf(asked);
  const deviation = ofRun(standardError * Math.sqrt(pairs), parts.deviation);
  sheet.step(
    "standardError",
    { deviation, orders: byOurs(pairs, parts.orders(asked.say.number(pairs))) },
    standardError,
  );
  return sheet.done(asked.at, titles.error(name));
}

/** The mean of what it adds to every set of so many others. */
function atPlace(asked: Asked, found: Found, isMoney: boolean, place: number): Working | null {
  const { members, i, name } = found;
  const there = members.length > mostExact ? undefined : placesOf(asked, found, isMoney)[place];
  if (!there) return null;
  const sheet = sheetOf(asked);
  const { id } = members[i]!;
  const added = there.sets.map(({ set, adds }): Part => {
    const of = setOfMembers(asked, members, set);
    const at = address("added", [id, isMoney ? "money" : "water", setKey(of.context, of.set)], of.by);
    return { ...opening(adds, at), name: parts.addedTo(setName(of)) };
  });
  const all = added.reduce((sum, { value }) => sum + value, 0);
  const setsCount = byOurs(there.sets.length, parts.setsCounted);
  const sum = sheet.sum(isMoney ? "addsMoney" : "adds", parts.setsSum, added, all);
  if (isMoney) sheet.step("placeMoney", { addsMoney: sum, setsCount }, there.mean);
  else sheet.step("placeMean", { adds: sum, setsCount }, there.mean);
  return sheet.done(asked.at, titles.place(name, asked.say.number(place)));
}

/** The marks of a set of members with one of them and without it. */
function withAndWithout(asked: Asked, { members, i }: Found, others: (k: number) => boolean) {
  const marks = (isIn: 0 | 1) => Uint8Array.from(members, (_, k) => (k === i ? isIn : others(k) ? 1 : 0));
  return {
    more: setOfMembers(asked, members, marks(1)),
    less: setOfMembers(asked, members, marks(0)),
  };
}

function endAdds(asked: Asked, found: Found, what: "first" | "last"): Working {
  const { more, less } = withAndWithout(asked, found, () => what === "last");
  return addsWorking(asked, more, less, titles[what](found.name));
}

/** `choices/added/ID/water|money/KEY[/habit]`: what a member adds to a set of the others. */
export function addedWorking(asked: Asked): Working | null {
  const [id, what, key = "", by] = asked.rest;
  const { context } = asked.book;
  const members = planMembers(context);
  const i = members.findIndex((member) => member.id === id);
  if (i < 0 || id === undefined || (by !== undefined && by !== "habit")) return null;
  const others = key === "none" ? [] : key.split("+");
  const isIn = (k: number) => (k === members.length - 1 ? by === undefined : others.includes(members[k]!.id));
  const found = { members, i, name: memberName(id, context) };
  const { more, less } = withAndWithout(asked, found, isIn);
  const title = titles.adds(found.name, setName(less));
  if (what === "water") return addsWorking(asked, more, less, title);
  return what === "money" ? addsMoneyWorking(asked, more, less, title) : null;
}
