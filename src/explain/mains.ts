import { dryAndWetYear, giveUpByYear_L, quantile } from "../engine/give-up.ts";
import type { MainsYear } from "../engine/outcome.ts";
import { perYear } from "../engine/years.ts";
import { noteWords, originWords, sumWords } from "../words/en/explain.ts";
import { mean, type When } from "./address.ts";
import { mainsParts, partName } from "./claims.ts";
import {
  byRule,
  type Chapter,
  type Chapters,
  dayAt,
  elsewhere,
  type Figure,
  fromSurvey,
  here,
  sheetFor,
} from "./figure.ts";
import type { Input, Part, Sheet } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** Mains water of the site in a run: its days, what they are made of, and years in kL. */
const site: Chapter = {
  day: ofDay,
  flow: {
    term: "mains",
    inKL: true,
    series: ({ run }) => run.site.mains_L,
    parts: (figure) => mainsParts(figure.book, figure.run, sumWords.leaks),
    notes,
  },
};

/** The measures that the plan has, and whose need stands in today. */
function notes({ book, address, say }: Figure, sheet: Sheet): void {
  const { survey, outcome, intended } = book.worked;
  if (address.what === "plan") {
    const chosen = intended ? (survey.measures ?? []).filter(({ chosen }) => chosen !== false) : [];
    const text = chosen.length > 0 ? say.list(chosen.map(({ name }) => name)) : noteWords.noMeasures;
    sheet.note(noteWords.measures, text, {
      provenance: "worked-out",
      source: originWords.survey("measures"),
    });
  }
  const unknown = survey.beds.filter(({ id }) => outcome.mains.todayUnknown.includes(id));
  if (address.what === "today" && unknown.length > 0)
    sheet.note(noteWords.todayUnknown, say.list(unknown.map(({ name }) => name)), {
      provenance: "assumed",
      source: originWords.needStandsIn,
    });
}

export const mainsChapters: Chapters = {
  today: site,
  need: site,
  plan: site,
  tanks: {
    day: tanksOfDay,
    flow: { term: "yield", series: tanksByDay, parts: tankParts },
  },
  unknown: { fixed: unknown },
  "give-up": { fixed: (figure) => giveUpPoint(figure, 0.5), year: giveUpYear },
  "give-up-p10": { fixed: (figure) => giveUpPoint(figure, 0.1) },
  "give-up-p90": { fixed: (figure) => giveUpPoint(figure, 0.9) },
  "dry-year": { fixed: (figure) => nearestYear(figure, 0.9) },
  "wet-year": { fixed: (figure) => nearestYear(figure, 0.1) },
};

export const leakChapters: Chapters = {
  leaks: {
    day: leaks,
    flow: {
      term: "mains",
      series: ({ run }) =>
        new Float64Array(run.ready.weather.calendar.days).fill(run.ready.grounds.leaks_L_day),
    },
  },
};

function ofDay(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const when = dayAt(figure, i);
  const parts = mainsParts(figure.book, figure.run, sumWords.leaks).map(
    ({ name, byDay_L, address }): Part => {
      return { ...elsewhere(byDay_L[i]!, { ...address, when }), name };
    },
  );
  sheet.sum("mains", sumWords.parts, parts, figure.run.site.mains_L[i]!, originWords.ours);
  return sheet.done(...titleOf(figure));
}

/** What each tank gives, to beds and to other draws, watered to need. */
function tankParts({ run }: Figure) {
  return run.ready.tanks.map(({ group }, k) => ({
    name: partName(run, "tank", group.id),
    byDay_L: run.site.tanks[k]!.series.yield_L,
    address: { run: run.name, subject: "tank" as const, id: group.id, what: "yield" },
  }));
}

function tanksByDay(figure: Figure): Float64Array | null {
  const parts = tankParts(figure);
  const total_L = new Float64Array(figure.run.ready.weather.calendar.days);
  for (const { byDay_L } of parts) for (let i = 0; i < total_L.length; i++) total_L[i]! += byDay_L[i]!;
  return parts.length > 0 ? total_L : null;
}

function tanksOfDay(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const when = dayAt(figure, i);
  const parts = tankParts(figure).map(({ name, byDay_L, address }): Part => {
    return { ...elsewhere(byDay_L[i]!, { ...address, when }), name };
  });
  sheet.sum("yield", sumWords.parts, parts, tanksByDay(figure)?.[i] ?? 0);
  return sheet.done(...titleOf(figure));
}

/** What stands in, in a mean year, for beds whose watering of today is not known. */
function unknown(figure: Figure): Working {
  const { outcome } = figure.book.worked;
  const sheet = sheetFor(figure);
  const parts = outcome.beds.flatMap(({ id, gross_L }): Part[] => {
    if (!outcome.mains.todayUnknown.includes(id)) return [];
    const address = { run: "need", subject: "bed", id, what: "need", when: mean } as const;
    return [{ ...elsewhere(perYear(gross_L, outcome.days), address), name: partName(figure.run, "bed", id) }];
  });
  sheet.sum(
    "gross",
    sumWords.unknownBeds,
    parts,
    parts.reduce((sum, { value }) => sum + value, 0),
  );
  return sheet.done(...titleOf(figure), "assumed");
}

function leaks(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const parts = (figure.run.survey.leaks ?? []).map(({ name, litresPerDay }, j): Part => {
    return { ...fromSurvey(figure, `leaks[${j}].litresPerDay`, litresPerDay), name };
  });
  sheet.sum("mains", sumWords.leaks, parts, figure.run.ready.grounds.leaks_L_day);
  return sheet.done(...titleOf(figure));
}

function yearsOf({ book }: Figure): readonly MainsYear[] {
  return book.worked.outcome.mains.byYear;
}

function ofMains(what: string, value: number, when: When): Input {
  return elsewhere(value, { run: "need", subject: "mains", id: "", what, when });
}

function giveUpYear(figure: Figure, year: number): Working | null {
  const found = yearsOf(figure).find((row) => row.year === year);
  if (!found) return null;
  const sheet = sheetFor(figure);
  const when: When = { kind: "year", year };
  const todayKL = ofMains("today", found.today_L / 1000, when);
  const planKL = ofMains("plan", found.plan_L / 1000, when);
  sheet.step("giveUpYear", { todayKL, planKL }, (found.today_L - found.plan_L) / 1000);
  return sheet.done(...titleOf(figure));
}

interface YearFigure {
  year: number;
  kL: number;
}

/** A point of the years' figures, linear between the two years next to it. */
function pointSteps(
  sheet: Sheet,
  point: number,
  what: string,
  years: readonly YearFigure[],
  key: "between" | "needPoint",
): Input {
  const sorted = [...years].sort((a, b) => a.kL - b.kL);
  const count = byRule(sorted.length, originWords.wholeYears);
  const at = point * (sorted.length - 1);
  const order = sheet.step("place", { point: byRule(point, originWords.ours), count }, at);
  const k = Math.floor(at);
  const linkedYear = ({ year, kL }: YearFigure): Input => ({
    ...ofMains(what, kL, { kind: "year", year }),
    name: String(year),
  });
  const value = quantile(
    sorted.map(({ kL }) => kL),
    point,
  );
  sheet.list(
    sorted.map((row) => ({ ...linkedYear(row), name: String(row.year) })),
    "kL",
  );
  return sheet.step(
    key,
    {
      below: linkedYear(sorted[k]!),
      order,
      placeBelow: here(k),
      above: linkedYear(sorted[Math.min(k + 1, sorted.length - 1)]!),
    },
    value,
  );
}

function giveUpPoint(figure: Figure, point: number): Working {
  const sheet = sheetFor(figure);
  const { byYear } = figure.book.worked.outcome.mains;
  if (byYear.length === 0) return giveUpMean(figure, sheet);
  const years = giveUpByYear_L(byYear).map((litres, n) => ({ year: byYear[n]!.year, kL: litres / 1000 }));
  pointSteps(sheet, point, "give-up", years, "between");
  return sheet.done(...titleOf(figure));
}

/** Where no year of the record is whole there is only the mean. */
function giveUpMean(figure: Figure, sheet: Sheet): Working {
  const { mains, days } = figure.book.worked.outcome;
  const kL = (litres: number) => perYear(litres, days) / 1000;
  const todayKL = ofMains("today", kL(mains.today_L), { kind: "mean" });
  const planKL = ofMains("plan", kL(mains.plan_L), { kind: "mean" });
  sheet.step("giveUpYear", { todayKL, planKL }, kL(mains.today_L) - kL(mains.plan_L), sumWords.noWholeYear);
  return sheet.done(...titleOf(figure));
}

function nearestYear(figure: Figure, point: number): Working | null {
  const byYear = yearsOf(figure);
  const { dryYear, wetYear } = dryAndWetYear(byYear);
  const year = point > 0.5 ? dryYear : wetYear;
  if (year === null) return null;
  const sheet = sheetFor(figure);
  const years = byYear.map((row) => ({ year: row.year, kL: row.need_L / 1000 }));
  const yearsNeed = pointSteps(sheet, point, "need", years, "needPoint");
  sheet.step("nearestYear", { yearsNeed, year: here(year) }, year);
  return sheet.done(...titleOf(figure));
}
