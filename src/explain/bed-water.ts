import { netFromGross_mm } from "../engine/watering.ts";
import { perYear } from "../engine/years.ts";
import { noteWords, originWords, reasonWords } from "../words/en/explain.ts";
import type { Run } from "./address.ts";
import { bedOf, bedPath } from "./bed.ts";
import { areaInput, efficiencyInput, flowInput } from "./bed-method.ts";
import { bedDay, before } from "./bed-state.ts";
import { asksByDay_L, bedMains_L, type Claim, claimOf } from "./claims.ts";
import {
  byRule,
  type Chapters,
  calendarOf,
  constant,
  dayAt,
  elsewhere,
  type Figure,
  fromSurvey,
  lasting,
  linked,
  sheetFor,
} from "./figure.ts";
import { originOf } from "./origins.ts";
import { getsSteps } from "./shares.ts";
import type { Input } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** Watering of a bed: what it takes, what it got, what is done today, and where that came from. */
export const waterChapters: Chapters = {
  net: {
    day: net,
    flow: { term: "net", series: netByDay },
  },
  need: {
    day: need,
    flow: { term: "gross", series: ({ run, k }) => run.beds[k]!.needByDay_L },
  },
  supplied: {
    day: supplied,
    flow: { term: "gross", series: (figure) => historyOf(figure)?.got_L ?? null },
  },
  habit: {
    day: habit,
    flow: { term: "habit", series: ({ run, k }) => run.ready.beds[k]!.habit_L },
  },
  short: { fixed: lacking },
  asks: { day: asks, flow: { term: "asks", series: (figure) => thirsty(figure)?.asks_L ?? null } },
  gets: { day: gets, flow: { term: "gets", series: (figure) => onTank(figure)?.claim.gets_L ?? null } },
  "new-draw": {
    day: newDraw,
    flow: { term: "newDraw", series: (figure) => thirsty(figure)?.newDraw_L ?? null },
  },
  outstanding: { day: outstanding },
  mains: {
    day: mains,
    flow: { term: "mains", series: ({ book, run, k }) => bedMains_L(book, run, k) },
  },
};

function historyOf({ book, address, k }: Figure) {
  return book.history(address.run, k);
}

function netByDay(figure: Figure): Float64Array | null {
  const { area_m2, watering } = bedOf(figure);
  return historyOf(figure)?.got_L.map((got) => netFromGross_mm(got, area_m2, watering.efficiency)) ?? null;
}

function onTank({ book, run, k }: Figure) {
  return claimOf(book, run, k);
}

/** The claim of a bed that asks by its soil, which its tank alone waters. */
function thirsty(figure: Figure): Claim | null {
  const claim = onTank(figure)?.claim;
  return claim && claim.outstanding_L !== null ? claim : null;
}

/** The run in which the bed has all the water that it asks for. */
function watered(figure: Figure): Run {
  const { supply } = bedOf(figure).watering;
  const run = lasting(figure.address.run);
  if (supply !== "none" && supply !== "tank-only") return run;
  return run === "plan" ? "plan-with-water" : "with-water";
}

/** Gross litres of a net depth. */
function grossSteps(figure: Figure, i: number, key: "gross" | "asks", net_mm: Input, value: number): Working {
  const sheet = sheetFor(figure);
  sheet.step(key, { net: net_mm, efficiency: efficiencyInput(figure), area: areaInput(figure) }, value);
  return sheet.done(...titleOf({ ...figure, address: { ...figure.address, when: dayAt(figure, i) } }));
}

/** Need less habit, of a mean year. */
function lacking(figure: Figure): Working | null {
  const { outcome } = figure.book.worked;
  const { gross_L, habit_L } = outcome.beds[figure.k]!;
  if (habit_L === null || figure.run.name !== "need") return null;
  const sheet = sheetFor(figure);
  const year = (total_L: number) => perYear(total_L, outcome.days);
  const gross = linked(figure, "need", year(gross_L));
  const habit = linked(figure, "habit", year(habit_L));
  sheet.step("lacking", { gross, habit }, year(gross_L) - year(habit_L));
  return sheet.done(...titleOf(figure));
}

function need(figure: Figure, i: number): Working | null {
  const { run, k } = figure;
  const { area_m2, watering } = bedOf(figure);
  const gross_L = run.beds[k]!.needByDay_L[i]!;
  const net_mm = netFromGross_mm(gross_L, area_m2, watering.efficiency);
  const net = elsewhere(net_mm, {
    ...figure.address,
    run: watered(figure),
    what: "net",
    when: dayAt(figure, i),
  });
  return grossSteps(figure, i, "gross", net, gross_L);
}

function supplied(figure: Figure, i: number): Working | null {
  const day = bedDay(figure, i);
  if (!day) return null;
  return grossSteps(
    figure,
    i,
    "gross",
    linked(figure, "net", day.net_mm, dayAt(figure, i)),
    day.history.got_L[i]!,
  );
}

/** Why a bed may not be watered on a day. */
function whyClosed(figure: Figure, i: number): string {
  const { allowedWeekdays } = bedOf(figure).watering;
  return allowedWeekdays[calendarOf(figure).weekday[i]!] ? reasonWords.nobodyThere : reasonWords.notAllowed;
}

function net(figure: Figure, i: number): Working | null {
  const day = bedDay(figure, i);
  if (!day) return null;
  const sheet = sheetFor(figure);
  const { by } = day.history;
  if (by === "rain") sheet.step("netClosed", {}, day.net_mm, reasonWords.rainOnly);
  else if (by === "tank")
    sheet.step(
      "netGot",
      {
        gets: linked(figure, "gets", day.history.got_L[i]!, dayAt(figure, i)),
        area: areaInput(figure),
        efficiency: efficiencyInput(figure),
      },
      day.net_mm,
    );
  else wantedSteps(figure, i, sheet, day.rootBefore_mm, day.net_mm);
  return sheet.done(...titleOf(figure));
}

/** What a bed asks for by its soil: nothing yet, or a refill as far as the longest watering goes. */
function wantedSteps(
  figure: Figure,
  i: number,
  sheet: ReturnType<typeof sheetFor>,
  root_mm: number,
  value: number,
): Input {
  const { grown, open } = figure.run.ready.beds[figure.k]!;
  if (!open[i]) return sheet.step("netClosed", {}, value, whyClosed(figure, i));
  const rootBefore = before(figure, bedDay(figure, i)!, "depletion");
  const trigger = constant(figure, "trigger", grown.trigger_mm);
  if (root_mm < grown.trigger_mm) return sheet.step("netNotYet", { rootBefore, trigger }, value);
  if (grown.mostNet_mm === Number.POSITIVE_INFINITY)
    return sheet.step("netRefill", { rootBefore, trigger }, value);
  const most = constant(figure, "most", grown.mostNet_mm);
  return sheet.step("netMost", { rootBefore, trigger, most }, value);
}

function asks(figure: Figure, i: number): Working | null {
  const claim = thirsty(figure);
  const day = bedDay(figure, i);
  if (!claim || !day) return null;
  const sheet = sheetFor(figure);
  const { area_m2, watering } = bedOf(figure);
  const asked_mm = netFromGross_mm(claim.asks_L[i]!, area_m2, watering.efficiency);
  const wanted = wantedSteps(figure, i, sheet, day.rootBefore_mm, asked_mm);
  const inputs = { net: wanted, efficiency: efficiencyInput(figure), area: areaInput(figure) };
  sheet.step("asks", inputs, claim.asks_L[i]!);
  return sheet.done(...titleOf(figure));
}

/** What the bed asks its tank or the mains for on day i, with the working that it comes from. */
export function bedAsks(figure: Figure, i: number): Input {
  const { run, address } = figure;
  const claim = thirsty(figure);
  const when = dayAt(figure, i);
  if (claim) return linked(figure, "asks", claim.asks_L[i]!, when);
  const value = asksByDay_L(run, figure.k)[i]!;
  const isHabit = run.name === "today" && run.ready.beds[figure.k]!.habit_L !== null;
  return elsewhere(value, { ...address, run: lasting(address.run), what: isHabit ? "habit" : "need", when });
}

function gets(figure: Figure, i: number): Working | null {
  const found = onTank(figure);
  if (!found) return null;
  const sheet = sheetFor(figure);
  getsSteps(figure, i, sheet, found, bedAsks(figure, i));
  return sheet.done(...titleOf(figure));
}

function mains(figure: Figure, i: number): Working | null {
  const mains_L = bedMains_L(figure.book, figure.run, figure.k);
  if (!mains_L) return null;
  const sheet = sheetFor(figure);
  const asked = bedAsks(figure, i);
  const found = onTank(figure);
  if (found) {
    const got = linked(figure, "gets", found.claim.gets_L[i]!, dayAt(figure, i));
    sheet.step("mainsRest", { asks: asked, gets: got }, mains_L[i]!);
  } else sheet.step("mainsAll", { asks: asked }, mains_L[i]!);
  return sheet.done(...titleOf(figure));
}

function stoodOut(figure: Figure, claim: Claim, i: number): Input {
  if (i === 0) return byRule(0, originWords.ours);
  return linked(figure, "outstanding", claim.outstanding_L![i - 1]!, dayAt(figure, i - 1));
}

function newDraw(figure: Figure, i: number): Working | null {
  const claim = thirsty(figure);
  if (!claim) return null;
  const sheet = sheetFor(figure);
  const inputs = { asks: bedAsks(figure, i), outstanding: stoodOut(figure, claim, i) };
  sheet.step("newDraw", inputs, claim.newDraw_L[i]!);
  return sheet.done(...titleOf(figure));
}

function outstanding(figure: Figure, i: number): Working | null {
  const claim = thirsty(figure);
  const day = bedDay(figure, i);
  if (!claim || !day) return null;
  const sheet = sheetFor(figure);
  const root_mm = day.history.days.rootDepletion_mm[i]!;
  const { area_m2, watering } = bedOf(figure);
  const root = linked(figure, "depletion", root_mm, dayAt(figure, i));
  const refill = sheet.step(
    "refill",
    { root, efficiency: efficiencyInput(figure), area: areaInput(figure) },
    (root_mm / watering.efficiency) * area_m2,
  );
  const inputs = {
    outstanding: stoodOut(figure, claim, i),
    asks: bedAsks(figure, i),
    gets: linked(figure, "gets", claim.gets_L[i]!, dayAt(figure, i)),
    refill,
  };
  sheet.step("outstanding", inputs, claim.outstanding_L![i]!);
  return sheet.done(...titleOf(figure));
}

function habit(figure: Figure, i: number): Working | null {
  const { habit_L } = figure.run.ready.beds[figure.k]!;
  const { habit: done } = bedOf(figure).watering;
  if (!habit_L || !done) return null;
  const sheet = sheetFor(figure);
  const { weekday, month } = calendarOf(figure);
  const path = `${bedPath(figure)}.watering.habit`;
  if (habit_L[i]! > 0) {
    const minutes = fromSurvey(figure, `${path}.minutes`, done.minutes);
    sheet.step("habit", { minutes, flow: flowInput(figure) }, habit_L[i]!);
  } else {
    const isDay = done.weekdays[weekday[i]!] && done.months[month[i]!];
    const why =
      done.minutes === 0 ? reasonWords.notWatered : isDay ? reasonWords.nobodyThere : reasonWords.notThisDay;
    sheet.step("habitNone", {}, 0, why);
  }
  const days = figure.run.survey.beds[figure.k]!.watering.habit!.days.join(", ");
  sheet.note(noteWords.days, days, originOf(figure.book, figure.run, figure.say, `${path}.days`));
  return sheet.done(...titleOf(figure));
}
