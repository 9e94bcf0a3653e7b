import { enoughSize, limitOf, type SizePoint, savedByYear_kL, sizeCurve } from "../../engine/size-curve.ts";
import { byYear_L, total_L } from "../../engine/tally.ts";
import { perYear } from "../../engine/years.ts";
import { type Looked, lookedAt } from "../../report/choices-sizes.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import { amount } from "../say.ts";
import type { Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import { type Asked, address, byOurs, ofRun, opening, sheetOf } from "./book.ts";
import { isPoint, pointSteps } from "./points.ts";

/** A tank at a size: its run, the run without it, and how sizes are said. */
interface Sized {
  tank: Looked;
  point: SizePoint;
  without: SizePoint;
  size: string;
  days: number;
  years: readonly number[];
}

function sizedAt(asked: Asked, id: string | undefined, capacity: string | undefined): Sized | null {
  const { context } = asked.book;
  const tank = lookedAt(context).find((one) => one.tank === id);
  const capacity_L = Number(capacity);
  if (!tank || !(capacity_L >= 0)) return null;
  const { frame } = context.worked.ready;
  const [without, point] = sizeCurve(tank.inputs, tank.tank, [0, capacity_L], frame);
  return {
    tank,
    point: point!,
    without: without!,
    size: amount(capacity_L, "L", asked.say),
    days: frame.weather.calendar.days,
    years: frame.years,
  };
}

/** `choices/size/TANK/LITRES/WHAT`: a point of the size curve. */
export function sizeWorking(asked: Asked): Working | null {
  const [id, capacity, what, next] = asked.rest;
  const sized = sizedAt(asked, id, capacity);
  if (!sized || what === undefined) return null;
  if (isPoint(what)) return yearsPoint(asked, sized, what);
  if (/^\d{4}$/.test(what)) return ofYear(asked, sized, Number(what));
  if (what === "marginal") return marginal(asked, sized, Number(next));
  const simple = { mean, reliability, empty, part };
  return Object.hasOwn(simple, what) ? simple[what as keyof typeof simple](asked, sized) : null;
}

function mean_kL(litres: number, { days }: Pick<Sized, "days">): number {
  return perYear(litres, days) / 1000;
}

export function sizeAddress({ tank, point }: Pick<Sized, "tank" | "point">, ...what: string[]): string {
  return address("size", [tank.tank, String(point.capacity_L), ...what]);
}

function mean(asked: Asked, sized: Sized): Working {
  const { tank, point, without, size } = sized;
  const sheet = sheetOf(asked);
  sheet.step(
    "sizeSaved",
    {
      withoutTank: ofRun(mean_kL(total_L(without.mains), sized), parts.noTankRun),
      withTank: ofRun(mean_kL(total_L(point.mains), sized), parts.sizeRun(size)),
    },
    mean_kL(total_L(point.saved), sized),
  );
  return sheet.done(asked.at, titles.size.mean(tank.name, size));
}

function ofYear(asked: Asked, sized: Sized, year: number): Working | null {
  const { tank, point, without, size, years } = sized;
  const k = years.indexOf(year);
  if (k < 0) return null;
  const sheet = sheetOf(asked);
  sheet.step(
    "sizeSaved",
    {
      withoutTank: ofRun(byYear_L(without.mains)[k]! / 1000, parts.noTankRun),
      withTank: ofRun(byYear_L(point.mains)[k]! / 1000, parts.sizeRun(size)),
    },
    savedByYear_kL(point)[k]!,
  );
  return sheet.done(asked.at, titles.size.year(tank.name, size, String(year)));
}

function yearsPoint(asked: Asked, sized: Sized, what: "p10" | "p50" | "p90"): Working | null {
  const { tank, point, size, years } = sized;
  if (years.length === 0) return null;
  const sheet = sheetOf(asked);
  const figures = savedByYear_kL(point).map((kL, k): Part => {
    const name = String(years[k]);
    return { ...opening(kL, sizeAddress(sized, name), name), name };
  });
  sheet.list(figures, "kL");
  pointSteps(sheet, what, figures, false);
  return sheet.done(asked.at, titles.size[what](tank.name, size));
}

function marginal(asked: Asked, sized: Sized, next_L: number): Working | null {
  const { tank, point, size } = sized;
  if (!(next_L > point.capacity_L)) return null;
  const next = sizedAt(asked, tank.tank, String(next_L))!;
  const [now_kL, next_kL] = [total_L(point.saved), total_L(next.point.saved)].map((L) => mean_kL(L, sized));
  const sheet = sheetOf(asked);
  sheet.step(
    "marginal",
    {
      savedNext: opening(next_kL!, sizeAddress(next, "mean")),
      sizeSaved: opening(now_kL!, sizeAddress(sized, "mean")),
      sizeNext: byOurs(next_L, parts.sizesTried),
      sizeNow: byOurs(point.capacity_L, parts.sizesTried),
    },
    ((next_kL! - now_kL!) / (next_L - point.capacity_L)) * 1000,
  );
  return sheet.done(asked.at, titles.size.marginal(tank.name, size));
}

function reliability(asked: Asked, { tank, point, size }: Sized): Working {
  const { shortDays, drawDays } = point;
  const sheet = sheetOf(asked);
  const source = parts.sizeRun(size);
  if (drawDays === 0) sheet.step("reliabilityNone", {}, point.reliability);
  else
    sheet.step(
      "reliability",
      { shortDays: ofRun(shortDays, source), drawDays: ofRun(drawDays, source) },
      point.reliability,
    );
  return sheet.done(asked.at, titles.size.reliability(tank.name, size));
}

function empty(asked: Asked, { tank, point, size, days }: Sized): Working {
  const sheet = sheetOf(asked);
  sheet.step(
    "emptyYear",
    { emptyCount: ofRun(point.emptyDays, parts.sizeRun(size)), recordDays: byOurs(days, parts.countDraws) },
    perYear(point.emptyDays, days),
  );
  return sheet.done(asked.at, titles.size.empty(tank.name, size));
}

/** How near it comes to what a tank that never spills would save. */
function part(asked: Asked, sized: Sized): Working | null {
  const { tank, point, size } = sized;
  const { most_L } = enoughSize(tank.inputs, tank.tank, asked.book.context.worked.ready.frame);
  if (most_L <= 0) return null;
  const saved_L = total_L(point.saved);
  const sheet = sheetOf(asked);
  sheet.step(
    "partOfAll",
    {
      sizeSaved: opening(mean_kL(saved_L, sized), sizeAddress(sized, "mean")),
      mostSaved: ofRun(mean_kL(most_L, sized), parts.neverSpills),
    },
    saved_L / most_L,
  );
  return sheet.done(asked.at, titles.size.part(tank.name, size));
}

/** `choices/more/TANK/tank|roof|demand`: what a quarter more of one of them would add. */
export function moreWorking(asked: Asked): Working | null {
  const [id, what] = asked.rest;
  const { context } = asked.book;
  const { frame } = context.worked.ready;
  const tank = lookedAt(context).find((one) => one.tank === id);
  if (!tank || (what !== "tank" && what !== "roof" && what !== "demand")) return null;
  const { most_L } = enoughSize(tank.inputs, tank.tank, frame);
  const limit = limitOf(tank.inputs, tank.tank, most_L, frame);
  const more_L = { tank: limit.moreTank_L, roof: limit.moreRoof_L, demand: limit.moreDemand_L }[what];
  const kL = (litres: number) => perYear(litres, frame.weather.calendar.days) / 1000;
  const sheet = sheetOf(asked);
  sheet.step(
    "moreSaved",
    {
      savedMore: ofRun(kL(limit.saved_L + more_L), parts.moreRun[what]),
      sizeSaved: opening(kL(limit.saved_L), address("size", [tank.tank, String(tank.capacity_L), "mean"])),
    },
    kL(more_L),
  );
  return sheet.done(asked.at, titles.more[what](tank.name));
}

/** `choices/most/TANK`: what a tank that never spills would save. */
export function mostWorking(asked: Asked): Working | null {
  const [id] = asked.rest;
  const { context } = asked.book;
  const { frame } = context.worked.ready;
  const tank = lookedAt(context).find((one) => one.tank === id);
  if (!tank) return null;
  const { most_L } = enoughSize(tank.inputs, tank.tank, frame);
  const [without] = sizeCurve(tank.inputs, tank.tank, [0], frame);
  const kL = (litres: number) => perYear(litres, frame.weather.calendar.days) / 1000;
  const none_L = total_L(without!.mains);
  const sheet = sheetOf(asked);
  sheet.step(
    "sizeSaved",
    {
      withoutTank: ofRun(kL(none_L), parts.noTankRun),
      withTank: ofRun(kL(none_L - most_L), parts.neverSpills),
    },
    kL(most_L),
  );
  return sheet.done(asked.at, titles.most(tank.name));
}
