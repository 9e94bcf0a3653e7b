import { bedOf, bedPath } from "./bed.ts";
import { coverInput } from "./bed-plants.ts";
import { bedEt0Input } from "./bed-shade.ts";
import { mulchInput, rootFigure } from "./bed-soil.ts";
import { type BedDay, bedDay, before } from "./bed-state.ts";
import {
  type Chapters,
  constant,
  dayAt,
  type Figure,
  fromSurvey,
  linked,
  ofWeather,
  sheetFor,
} from "./figure.ts";
import type { Input, Sheet } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** A bed's day in the order of the method: FAO-56 with the dual coefficient. */
export const dayChapters: Chapters = {
  rain: {
    day: (figure, i) => onDay(figure, i, bedRain),
    flow: { term: "bedRain", series: ({ run, k }) => run.ready.beds[k]!.grown.rain_mm },
  },
  "kc-max": { day: (figure, i) => onDay(figure, i, kcMaxOf) },
  few: { day: (figure, i) => onDay(figure, i, few) },
  kr: { day: (figure, i) => onDay(figure, i, kr) },
  ke: { day: (figure, i) => onDay(figure, i, ke) },
  p: { day: (figure, i) => onDay(figure, i, fraction) },
  raw: { day: (figure, i) => onDay(figure, i, raw) },
  ks: { day: (figure, i) => onDay(figure, i, ks) },
  etc: {
    day: (figure, i) => onDay(figure, i, etc),
    flow: { term: "etc", series: (figure) => history(figure)?.days.etc_mm ?? null },
  },
  drainage: {
    day: (figure, i) => onDay(figure, i, drainage),
    flow: { term: "drainage", series: (figure) => history(figure)?.days.drainage_mm ?? null },
  },
  depletion: { day: (figure, i) => onDay(figure, i, depletion) },
  surface: { day: (figure, i) => onDay(figure, i, surface) },
  stress: {
    day: (figure, i) => onDay(figure, i, stressDay),
    flow: { term: "stressDay", series: (figure) => stressed(figure) },
  },
  "rain-used": {
    day: (figure, i) => onDay(figure, i, rainUsed),
    flow: { term: "rainUsed", series: (figure) => rainUsedByDay(figure) },
  },
};

type Steps = (figure: Figure, day: BedDay, sheet: Sheet) => void;

function onDay(figure: Figure, i: number, write: Steps): Working | null {
  const day = bedDay(figure, i);
  if (!day) return null;
  const sheet = sheetFor(figure);
  write(figure, day, sheet);
  return sheet.done(...titleOf(figure));
}

function history(figure: Figure) {
  return figure.book.history(figure.address.run, figure.k);
}

/** Another figure of the same bed on the same day. */
function same(figure: Figure, day: BedDay, what: string, value: number): Input {
  return linked(figure, what, value, dayAt(figure, day.i));
}

function grownOf({ run, k }: Figure) {
  return run.ready.beds[k]!.grown;
}

function bedRain(figure: Figure, { i, rain_mm }: BedDay, sheet: Sheet): void {
  const { rain_mm: open } = figure.run.ready.weather;
  const rainShare = fromSurvey(figure, `${bedPath(figure)}.rainShare`, bedOf(figure).rainShare);
  sheet.step("bedRain", { rain: ofWeather(figure, "rain", open[i]!, i), rainShare }, rain_mm);
}

/** The rain that reaches the bed: the open sky's where nothing keeps any off. */
function rainInput(figure: Figure, { i, rain_mm }: BedDay): Input {
  if (bedOf(figure).rainShare === 1) return ofWeather(figure, "rain", rain_mm, i);
  return linked(figure, "rain", rain_mm, dayAt(figure, i));
}

function wetted(figure: Figure, day: BedDay, sheet: Sheet): Input {
  if (day.wetting.wholeSurface) return sheet.step("wettedAll", {}, 1);
  const wettedShare = fromSurvey(figure, `${bedPath(figure)}.watering.wettedShare`, day.wettedShare);
  return sheet.step("wettedMethod", { wettedShare }, day.wettedShare);
}

function few(figure: Figure, day: BedDay, sheet: Sheet): void {
  const inputs = { leafCover: coverInput(figure, day.i), wetted: wetted(figure, day, sheet) };
  sheet.step(bedOf(figure).watering.drip ? "fewDrip" : "few", inputs, day.few);
}

function kcMaxOf(figure: Figure, day: BedDay, sheet: Sheet): void {
  const climate = ofWeather(figure, "climate", grownOf(figure).kcMaxClimate[day.i]!, day.i);
  const height = rootFigure(figure, "height", "height_m");
  sheet.step("kcMax", { climate, height, kcb: same(figure, day, "kcb", day.kcb) }, day.kcMax);
}

function surfaceWetted(figure: Figure, day: BedDay, sheet: Sheet): Input {
  return sheet.step(
    "surfaceWetted",
    {
      surfaceBefore: before(figure, day, "surface"),
      bedRain: rainInput(figure, day),
      net: same(figure, day, "net", day.net_mm),
      wetted: wetted(figure, day, sheet),
    },
    day.surfaceWetted_mm,
  );
}

function kr(figure: Figure, day: BedDay, sheet: Sheet): void {
  const { tew_mm, rew_mm } = grownOf(figure);
  const surface = surfaceWetted(figure, day, sheet);
  const tew = constant(figure, "tew", tew_mm);
  const rew = constant(figure, "rew", rew_mm);
  const key = day.kr === 1 ? "krFull" : day.kr === 0 ? "krNone" : "kr";
  sheet.step(key, { tew, rew, surfaceWetted: surface }, day.kr);
}

function ke(figure: Figure, day: BedDay, sheet: Sheet): void {
  sheet.step(
    "ke",
    {
      mulch: mulchInput(figure),
      kr: same(figure, day, "kr", day.kr),
      kcMax: same(figure, day, "kc-max", day.kcMax),
      kcb: same(figure, day, "kcb", day.kcb),
      few: same(figure, day, "few", day.few),
    },
    day.ke,
  );
}

function fraction(figure: Figure, day: BedDay, sheet: Sheet): void {
  sheet.step(
    "fractionDay",
    {
      fraction: rootFigure(figure, "fraction", "depletionFraction"),
      kcb: same(figure, day, "kcb", day.kcb),
      ke: same(figure, day, "ke", day.ke),
      bedEt0: bedEt0Input(figure, day.i),
    },
    day.fraction,
  );
}

function rawStep(figure: Figure, day: BedDay, sheet: Sheet, taw: Input, p: Input): Input {
  return sheet.step("raw", { fractionDay: p, taw }, day.fraction * grownOf(figure).available_mm);
}

function raw(figure: Figure, day: BedDay, sheet: Sheet): void {
  const taw = constant(figure, "available", grownOf(figure).available_mm);
  rawStep(figure, day, sheet, taw, same(figure, day, "p", day.fraction));
}

function ks(figure: Figure, day: BedDay, sheet: Sheet): void {
  const taw = constant(figure, "available", grownOf(figure).available_mm);
  const p = same(figure, day, "p", day.fraction);
  const limit = rawStep(figure, day, sheet, taw, p);
  const rootWetted = sheet.step(
    "rootWetted",
    {
      rootBefore: before(figure, day, "depletion"),
      bedRain: rainInput(figure, day),
      net: same(figure, day, "net", day.net_mm),
    },
    day.rootWetted_mm,
  );
  if (day.rootWetted_mm <= limit.value) sheet.step("ksFull", {}, day.ks);
  else sheet.step("ks", { taw, rootWetted, fractionDay: p }, day.ks);
}

function demand(figure: Figure, day: BedDay, sheet: Sheet): { asked: Input; held: Input } {
  const asked = sheet.step(
    "asked",
    {
      ks: same(figure, day, "ks", day.ks),
      kcb: same(figure, day, "kcb", day.kcb),
      ke: same(figure, day, "ke", day.ke),
      bedEt0: bedEt0Input(figure, day.i),
    },
    day.asked_mm,
  );
  const held = sheet.step(
    "held",
    {
      taw: constant(figure, "available", grownOf(figure).available_mm),
      rootBefore: before(figure, day, "depletion"),
      bedRain: rainInput(figure, day),
      net: same(figure, day, "net", day.net_mm),
    },
    day.held_mm,
  );
  return { asked, held };
}

function etc(figure: Figure, day: BedDay, sheet: Sheet): void {
  sheet.step("etc", demand(figure, day, sheet), day.history.days.etc_mm[day.i]!);
}

function drainage(figure: Figure, day: BedDay, sheet: Sheet): void {
  const { days } = day.history;
  sheet.step(
    "drainage",
    {
      bedRain: rainInput(figure, day),
      net: same(figure, day, "net", day.net_mm),
      etc: same(figure, day, "etc", days.etc_mm[day.i]!),
      rootBefore: before(figure, day, "depletion"),
    },
    days.drainage_mm[day.i]!,
  );
}

function depletion(figure: Figure, day: BedDay, sheet: Sheet): void {
  const { days } = day.history;
  sheet.step(
    "root",
    {
      rootBefore: before(figure, day, "depletion"),
      bedRain: rainInput(figure, day),
      net: same(figure, day, "net", day.net_mm),
      etc: same(figure, day, "etc", days.etc_mm[day.i]!),
      drainage: same(figure, day, "drainage", days.drainage_mm[day.i]!),
    },
    days.rootDepletion_mm[day.i]!,
  );
}

function surface(figure: Figure, day: BedDay, sheet: Sheet): void {
  const wet = surfaceWetted(figure, day, sheet);
  const { asked, held } = demand(figure, day, sheet);
  const limit =
    day.asked_mm > 0
      ? sheet.step("limit", { held, asked }, day.limit)
      : sheet.step("limitNone", {}, day.limit);
  sheet.step(
    "surface",
    {
      tew: constant(figure, "tew", grownOf(figure).tew_mm),
      surfaceWetted: wet,
      limit,
      ke: same(figure, day, "ke", day.ke),
      bedEt0: bedEt0Input(figure, day.i),
      few: same(figure, day, "few", day.few),
    },
    day.history.days.surfaceDepletion_mm[day.i]!,
  );
}

function stressDay(figure: Figure, day: BedDay, sheet: Sheet): void {
  const ks = same(figure, day, "ks", day.ks);
  sheet.step(day.ks < 1 ? "stressDay" : "stressNot", { ks }, day.ks < 1 ? 1 : 0);
}

function stressed(figure: Figure): Float64Array | null {
  return history(figure)?.days.ks.map((ks) => (ks < 1 ? 1 : 0)) ?? null;
}

function rainUsed(figure: Figure, day: BedDay, sheet: Sheet): void {
  const drainage_mm = day.history.days.drainage_mm[day.i]!;
  const drained = same(figure, day, "drainage", drainage_mm);
  sheet.step("rainUsed", { bedRain: rainInput(figure, day), drainage: drained }, day.rain_mm - drainage_mm);
}

function rainUsedByDay(figure: Figure): Float64Array | null {
  const found = history(figure);
  return found && grownOf(figure).rain_mm.map((rain, i) => rain - found.days.drainage_mm[i]!);
}
