import type { Planting } from "../engine/grounds.ts";
import { climateAdjustedKcb, density, heldCover } from "../engine/plants.ts";
import { noteWords, originWords } from "../words/en/explain.ts";
import { bedOf, bedPath } from "./bed.ts";
import { shareOf } from "./bed-soil.ts";
import {
  byRule,
  type Chapters,
  calendarOf,
  constant,
  type Figure,
  fromSurvey,
  ofWeather,
  sheetFor,
} from "./figure.ts";
import type { Input, Part, Sheet } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** Leaf cover of a month, and Kcb of a day. */
export const plantChapters: Chapters = {
  "leaf-cover": { month: leafCover },
  kcb: { day: kcb },
};

function leafCover(figure: Figure, month: number): Working {
  const sheet = sheetFor(figure);
  const { run, k } = figure;
  const { leafCover: own, leafCoverMonthly } = run.survey.beds[k]!;
  const path = `${bedPath(figure)}.leafCover`;
  const assumed = run.resolved.assumed.find(({ where }) => where === path)?.value;
  const cover = own ?? Number(assumed);
  const coverMonth = leafCoverMonthly
    ? fromSurvey(figure, `${path}Monthly[${month}]`, leafCoverMonthly[month]!)
    : byRule(1, originWords.everyMonth);
  sheet.step(
    "leafCover",
    { leafCover: fromSurvey(figure, path, cover), coverMonth },
    heldCover(bedOf(figure).leafCover[month]!),
  );
  return sheet.done(...titleOf(figure));
}

/** The leaf cover of day i's month. */
export function coverInput(figure: Figure, i: number): Input {
  const month = calendarOf(figure).month[i]!;
  const cover = heldCover(bedOf(figure).leafCover[month]!);
  return constant(figure, "leaf-cover", cover, { kind: "calendar-month", month });
}

function kcb(figure: Figure, i: number): Working | null {
  const history = figure.book.history(figure.address.run, figure.k);
  if (!history) return null;
  const sheet = sheetFor(figure);
  const parts = bedOf(figure).plantings.map((planting, j) => kcbPart(figure, i, sheet, planting, j));
  sheet.sum("kcb", originWords.plantings, parts, history.days.kcb[i]!);
  return sheet.done(...titleOf(figure));
}

function kcbPart(figure: Figure, i: number, sheet: Sheet, planting: Planting, j: number): Part {
  const month = calendarOf(figure).month[i]!;
  const { kind, monthly: own } = figure.run.survey.beds[figure.k]!.plantings[j]!;
  const path = `${bedPath(figure)}.plantings[${j}]`;
  const named = (input: Input, what: string): Input => ({ ...input, name: noteWords.of(kind, what) });
  const height = named(fromSurvey(figure, `${path}.height_m`, planting.height_m), noteWords.height);
  const kcbFull = named(fromSurvey(figure, `${path}.kcbFull`, planting.kcbFull), noteWords.kcbFull);
  const monthly = own
    ? named(fromSurvey(figure, `${path}.monthly[${month}]`, planting.monthly[month]!), noteWords.monthly)
    : byRule(planting.monthly[month]!, originWords.everyMonth);
  const share = shareOf(figure, planting, j);
  const cover = bedOf(figure).leafCover[month]!;
  const kd = density(cover, planting.height_m);
  const dense = sheet.step(
    "density",
    { leafCover: coverInput(figure, i), height },
    kd,
    noteWords.of(kind, noteWords.density),
  );
  const climate = figure.run.ready.weather.kcbClimate?.[i];
  const adjusts = climate !== undefined && planting.climateAdjusted && planting.kcbFull > 0.45;
  if (!adjusts) {
    const value = planting.share * planting.monthly[month]! * kd * planting.kcbFull;
    return { ...sheet.step("kcbPartPlain", { share, monthly, density: dense, kcbFull }, value), name: kind };
  }
  const full = climateAdjustedKcb(planting.kcbFull, climate, planting.height_m);
  const kcbAdjusted = sheet.step(
    "kcbAdjusted",
    { kcbFull, climateLimited: ofWeather(figure, "climate-limited", climate, i), height },
    full,
  );
  const value = planting.share * planting.monthly[month]! * kd * full;
  return { ...sheet.step("kcbPart", { share, monthly, density: dense, kcbAdjusted }, value), name: kind };
}
