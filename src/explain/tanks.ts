import type { TankGroup } from "../engine/tanks.ts";
import { perYear, sumOver } from "../engine/years.ts";
import { originWords, sumWords } from "../words/en/explain.ts";
import { claimsOn } from "./claims.ts";
import {
  type Chapters,
  calendarOf,
  constant,
  dayAt,
  elsewhere,
  type Figure,
  fromSurvey,
  linked,
  sheetFor,
} from "./figure.ts";
import { roofParts } from "./roofs.ts";
import { claimAsks } from "./shares.ts";
import type { Input, Part, Sheet } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** A tank, or linked tanks acting as one under the first's id. */
export const tankChapters: Chapters = {
  inflow: { day: inflow, flow: { term: "inflow", series: (figure) => seriesOf(figure).inflow_L } },
  draw: { day: draw, flow: { term: "draw", series: (figure) => seriesOf(figure).draw_L } },
  "new-draw": { day: newDraw, flow: { term: "newDraw", series: newDrawByDay } },
  yield: { day: yielded, flow: { term: "yield", series: (figure) => seriesOf(figure).yield_L } },
  spill: { day: spill, flow: { term: "spill", series: (figure) => seriesOf(figure).spill_L } },
  topup: { day: topUp, flow: { term: "topUp", series: (figure) => seriesOf(figure).topUp_L } },
  short: { day: short, flow: { term: "short", series: shortByDay } },
  "draw-days": { day: drawDay, flow: { term: "drawDay", series: drawDays } },
  level: { day: level },
  reliability: { fixed: reliability },
  "volumetric-reliability": { fixed: volumetric },
  capacity: { fixed: (figure) => groupSum(figure, "capacity", "capacity_L") },
  unusable: { fixed: (figure) => groupSum(figure, "unusable", "unusable_L") },
};

function seriesOf({ run, k }: Figure) {
  return run.site.tanks[k]!.series;
}

function groupOf({ run, k }: Figure): TankGroup {
  return run.ready.tanks[k]!.group;
}

function memberPath({ run }: Figure, id: string): string {
  return `tanks[${run.survey.tanks.findIndex((tank) => tank.id === id)}]`;
}

/** Capacity or what lies below the outlet: one tank's from the survey, of linked tanks the sum. */
function groupInput(figure: Figure, what: "capacity" | "unusable", name: "capacity_L" | "unusable_L"): Input {
  const { members, ...group } = groupOf(figure);
  if (members.length > 1) return constant(figure, what, group[name]);
  return fromSurvey(figure, `${memberPath(figure, members[0]!.id)}.${name}`, group[name]);
}

function groupSum(figure: Figure, what: "capacity" | "unusable", name: "capacity_L" | "unusable_L"): Working {
  const sheet = sheetFor(figure);
  const { members, ...group } = groupOf(figure);
  const parts = members.map((tank) => ({
    ...fromSurvey(figure, `${memberPath(figure, tank.id)}.${name}`, tank[name]),
    name: figure.run.survey.tanks.find(({ id }) => id === tank.id)?.name ?? tank.id,
  }));
  sheet.sum(what, sumWords.linked, parts, group[name]);
  return sheet.done(...titleOf(figure));
}

/** Level with what lies below the outlet on the evening before day i: day 1's start where there is none. */
function levelBefore(figure: Figure, i: number): Input {
  const { level_L, yield_L, spill_L, inflow_L, topUp_L } = seriesOf(figure);
  if (i > 0) return linked(figure, "level", level_L[i - 1]!, dayAt(figure, i - 1));
  const group = groupOf(figure);
  if (group.surveyed_L !== null) {
    const value = group.surveyed_L + group.unusable_L;
    const measured = group.members.filter((tank) => tank.level_L !== null);
    const path = `${memberPath(figure, measured[0]!.id)}.level_L`;
    return measured.length === 1 && group.members.length === 1
      ? fromSurvey(figure, path, value)
      : { value, origin: { provenance: "measured", source: originWords.levels } };
  }
  const isSpunUp = group.inUse && calendarOf(figure).days >= 365;
  const start_L = isSpunUp
    ? level_L[0]! + yield_L[0]! + spill_L[0]! - inflow_L[0]! - topUp_L[0]!
    : group.half_L + group.unusable_L;
  const source = isSpunUp ? originWords.spunUp : originWords.halfFull;
  return { value: start_L, origin: { provenance: "assumed", source } };
}

function same(figure: Figure, i: number, what: string, value: number): Input {
  return linked(figure, what, value, dayAt(figure, i));
}

function inflow(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const value = seriesOf(figure).inflow_L[i]!;
  if (groupOf(figure).inUse) sheet.sum("inflow", sumWords.roofs, roofParts(figure, i), value);
  else sheet.step("nothing", {}, value);
  return sheet.done(...titleOf(figure));
}

function draw(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const parts = claimsOn(figure.book, figure.run, figure.k).map((claim) => claimAsks(figure, claim, i));
  sheet.sum("draw", sumWords.askers, parts, seriesOf(figure).draw_L[i]!);
  return sheet.done(...titleOf(figure));
}

function newDrawByDay(figure: Figure): Float64Array {
  const { book, run, k } = figure;
  return book.once(`new draw ${run.name} ${k}`, () => {
    const total_L = new Float64Array(calendarOf(figure).days);
    for (const { newDraw_L } of claimsOn(book, run, k))
      for (let i = 0; i < total_L.length; i++) total_L[i]! += newDraw_L[i]!;
    return total_L;
  });
}

function newDraw(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const parts = claimsOn(figure.book, figure.run, figure.k).map((claim): Part => {
    const asked = claimAsks(figure, claim, i);
    if (claim.outstanding_L === null) return asked;
    const { address } = figure;
    const when = dayAt(figure, i);
    const fresh = { ...address, subject: "bed" as const, id: claim.id, what: "new-draw", when };
    return { ...elsewhere(claim.newDraw_L[i]!, fresh), name: asked.name };
  });
  sheet.sum("newDraw", sumWords.askers, parts, newDrawByDay(figure)[i]!);
  return sheet.done(...titleOf(figure));
}

/** What lies above the outlet the evening before. */
function usableBefore(figure: Figure, i: number, sheet: Sheet): Input {
  const { unusable_L } = groupOf(figure);
  const level = levelBefore(figure, i);
  const unusable = groupInput(figure, "unusable", "unusable_L");
  return sheet.step("usableBefore", { levelBefore: level, unusable }, level.value - unusable_L);
}

function yielded(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const { yield_L, draw_L, inflow_L } = seriesOf(figure);
  const { inUse, rule } = groupOf(figure);
  const asked = same(figure, i, "draw", draw_L[i]!);
  if (!inUse) {
    sheet.step("yieldNone", { draw: asked }, yield_L[i]!);
    return sheet.done(...titleOf(figure));
  }
  const usable = usableBefore(figure, i, sheet);
  if (rule === "after-spillage") sheet.step("yieldAfter", { draw: asked, usableBefore: usable }, yield_L[i]!);
  else
    sheet.step(
      "yieldBefore",
      { draw: asked, usableBefore: usable, inflow: same(figure, i, "inflow", inflow_L[i]!) },
      yield_L[i]!,
    );
  return sheet.done(...titleOf(figure));
}

/** What is left above the outlet after yield and spill, before any top-up. */
function kept(figure: Figure, i: number, sheet: Sheet) {
  const { inflow_L, yield_L, level_L, topUp_L } = seriesOf(figure);
  const group = groupOf(figure);
  const inputs = {
    usableBefore: usableBefore(figure, i, sheet),
    inflow: same(figure, i, "inflow", inflow_L[i]!),
    yield: same(figure, i, "yield", yield_L[i]!),
  };
  const capacity = groupInput(figure, "capacity", "capacity_L");
  const unusable = groupInput(figure, "unusable", "unusable_L");
  const usable = sheet.step("usable", { capacity, unusable }, group.usable_L);
  const key = group.rule === "after-spillage" ? "keptAfter" : "keptBefore";
  const value = level_L[i]! - topUp_L[i]! - group.unusable_L;
  return { ...inputs, capacity, unusable, kept: sheet.step(key, { ...inputs, usable }, value) };
}

function spill(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const value = seriesOf(figure).spill_L[i]!;
  if (groupOf(figure).inUse) {
    const { usableBefore, inflow, yield: given, kept: left } = kept(figure, i, sheet);
    sheet.step("spill", { usableBefore, inflow, yield: given, kept: left }, value);
  } else sheet.step("spillNone", {}, value);
  return sheet.done(...titleOf(figure));
}

function topUp(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const group = groupOf(figure);
  const value = seriesOf(figure).topUp_L[i]!;
  if (!group.topUp || !group.inUse) {
    sheet.step("topUpNot", {}, value);
    return sheet.done(...titleOf(figure));
  }
  const { kept: left, unusable, capacity } = kept(figure, i, sheet);
  const path = `${memberPath(figure, group.id)}.topUp`;
  const belowShare = fromSurvey(figure, `${path}.belowShare`, group.topUp.belowShare);
  const toShare = fromSurvey(figure, `${path}.toShare`, group.topUp.toShare);
  const key = value > 0 ? "topUp" : "topUpNot";
  sheet.step(key, { toShare, belowShare, capacity, kept: left, unusable }, value);
  return sheet.done(...titleOf(figure));
}

function level(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const { level_L, topUp_L } = seriesOf(figure);
  if (groupOf(figure).inUse) {
    const { kept: left, unusable } = kept(figure, i, sheet);
    sheet.step("level", { kept: left, topUp: same(figure, i, "topup", topUp_L[i]!), unusable }, level_L[i]!);
  } else sheet.step("levelStands", { levelBefore: levelBefore(figure, i) }, level_L[i]!);
  return sheet.done(...titleOf(figure));
}

function isShort(figure: Figure, i: number): boolean {
  const { draw_L, yield_L } = seriesOf(figure);
  return draw_L[i]! > 0 && yield_L[i]! < draw_L[i]!;
}

function byDay(figure: Figure, is: (i: number) => boolean): Float64Array {
  return Float64Array.from({ length: calendarOf(figure).days }, (_, i) => (is(i) ? 1 : 0));
}

function shortByDay(figure: Figure): Float64Array {
  return byDay(figure, (i) => isShort(figure, i));
}

function drawDays(figure: Figure): Float64Array {
  return byDay(figure, (i) => seriesOf(figure).draw_L[i]! > 0);
}

function short(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const { draw_L, yield_L } = seriesOf(figure);
  const inputs = {
    draw: same(figure, i, "draw", draw_L[i]!),
    yield: same(figure, i, "yield", yield_L[i]!),
  };
  const is = isShort(figure, i);
  sheet.step(is ? "short" : "shortNot", inputs, is ? 1 : 0);
  return sheet.done(...titleOf(figure));
}

function drawDay(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const drawn_L = seriesOf(figure).draw_L[i]!;
  const asked = same(figure, i, "draw", drawn_L);
  sheet.step(drawn_L > 0 ? "drawDay" : "drawDayNot", { draw: asked }, drawn_L > 0 ? 1 : 0);
  return sheet.done(...titleOf(figure));
}

/** A flow's mean of a year, as its own working gives it. */
function meanYear(figure: Figure, what: string, byDay: Float64Array): Input {
  const { days } = calendarOf(figure);
  return linked(figure, what, perYear(sumOver(byDay, { from: 0, to: days }), days));
}

function reliability(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const { drawDays: asked, shortDays } = figure.run.site.tanks[figure.k]!;
  if (asked === 0) sheet.step("reliabilityNone", {}, 1);
  else {
    const inputs = {
      shortDays: meanYear(figure, "short", shortByDay(figure)),
      drawDays: meanYear(figure, "draw-days", drawDays(figure)),
    };
    sheet.step("reliability", inputs, 1 - shortDays / asked);
  }
  return sheet.done(...titleOf(figure));
}

function volumetric(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const { newDraw_L, series } = figure.run.site.tanks[figure.k]!;
  if (newDraw_L <= 0) sheet.step("volumetricNone", {}, 1);
  else {
    const total_L = sumOver(series.yield_L, { from: 0, to: series.yield_L.length });
    const inputs = {
      yield: meanYear(figure, "yield", series.yield_L),
      newDraw: meanYear(figure, "new-draw", newDrawByDay(figure)),
    };
    sheet.step("volumetric", inputs, total_L / newDraw_L);
  }
  return sheet.done(...titleOf(figure));
}
