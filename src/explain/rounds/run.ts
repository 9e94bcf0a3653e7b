import { minutesFor, type RunTime } from "../../engine/rounds/run-time.ts";
import type { BedNeed } from "../../engine/rounds/table.ts";
import type { WeekWatering } from "../../engine/rounds/week-facts.ts";
import { formatIso } from "../../engine/weather/dates.ts";
import { gravityTapOf } from "../../report/week-ask.ts";
import { roundNotes, roundSources, roundTitles } from "../../words/en/explain-rounds.ts";
import { type RunFigure, roundAt } from "../../words/round-at.ts";
import type { Input, Sheet } from "../sheet.ts";
import type { Working } from "../working.ts";
import { methodInputs, nameOf, needOf, opens, pageOf, type RoundBook, workedOut } from "./book.ts";
import { cycleSteps, soakSteps } from "./cycles.ts";

/** A watering of the week with all that it was made from. */
export interface WeekRun {
  bed: BedNeed;
  id: string;
  date: string;
  watering: WeekWatering;
  flow_L_min: number;
  /** Minutes at the flow of today's dip; more where the tank's fall makes it longer. */
  atDip_min: number;
  sheet: Sheet;
  at: string;
}

export function weekRun(book: RoundBook, id: string, date: string, what: RunFigure): WeekRun | null {
  const bed = needOf(book, id);
  const watering = book.week?.beds
    .find((one) => one.id === id)
    ?.waterings.find(({ day }) => formatIso(day) === date);
  if (!bed || !watering) return null;
  const flow_L_min = book.week!.facts.flow_L_min.get(id) ?? bed.ready.grown.bed.watering.flow_L_min;
  const { sheet, at } = pageOf(book, roundAt.run(id, date, what));
  return {
    bed,
    id,
    date,
    watering,
    flow_L_min,
    atDip_min: Math.round(watering.litres / flow_L_min),
    sheet,
    at,
  };
}

function flowInput({ bed, flow_L_min, id }: WeekRun): Input {
  return flow_L_min === bed.ready.grown.bed.watering.flow_L_min
    ? opens(flow_L_min, `bed/${id}/flow`)
    : workedOut(flow_L_min, roundSources.tapToday);
}

function done(book: RoundBook, { sheet, at, id, watering }: WeekRun, what: RunFigure): Working {
  return sheet.done(at, roundTitles.run(what, nameOf(book, id), book.say.date(watering.day)));
}

/** The figures of a watering of the week but its times. */
export function runFigure(
  book: RoundBook,
  id: string,
  date: string,
  what: Exclude<RunFigure, "times" | "missing">,
): Working | null {
  const run = weekRun(book, id, date, what);
  if (!run) return null;
  const { bed, watering, sheet, flow_L_min } = run;
  const at = roundAt.run(id, date, "minutes");
  if (what === "minutes") minuteSteps(book, run);
  if (what === "litres") {
    const minutes =
      run.atDip_min === watering.minutes
        ? opens(watering.minutes, at)
        : { ...workedOut(run.atDip_min, roundSources.atDip), name: roundNotes.atDip };
    sheet.step("wateringLitres", { plannedMinutes: minutes, flow: flowInput(run) }, watering.litres);
  }
  const asRun: RunTime = { ...watering, minutes: run.atDip_min };
  if (what === "cycles") cycleSteps(book, sheet, bed, asRun, opens(run.atDip_min, at), flow_L_min);
  if (what === "soak") soakSteps(book, sheet, bed, watering);
  return done(book, run, what);
}

/** Minutes that refill what is missing, as far as hours, method, runs and tank leave it. */
function minuteSteps(book: RoundBook, run: WeekRun): void {
  const { bed, id, date, watering, sheet, atDip_min, flow_L_min } = run;
  const { area, efficiency } = methodInputs(bed);
  const missing_mm = watering.missing_mm.middle;
  const exact_min = minutesFor(bed.ready.grown.bed, missing_mm, flow_L_min);
  const gone = opens(missing_mm, roundAt.run(id, date, "missing"));
  const minutesExact = sheet.step(
    "minutesToRefill",
    { gone, efficiency, area, flow: flowInput(run) },
    exact_min,
  );
  const allowed = atDip_min < Math.floor(exact_min) ? atDip_min : Math.max(atDip_min, Math.ceil(exact_min));
  const short = book.week!.short_L.get(id) ?? 0;
  const allowedMinutes = workedOut(allowed, short > 0 ? roundSources.tankShort : roundSources.shortened);
  const runMinutes = sheet.step("runMinutes", { allowedMinutes, minutesExact }, atDip_min);
  if (atDip_min !== watering.minutes && gravityTapOf(book.worked.need, bed))
    sheet.step(
      "runByGravity",
      {
        runMinutes,
        longestDay_min: workedOut(Math.floor(bed.ready.grown.bed.watering.maxMinutes), roundSources.hours),
        gravityMinutes: workedOut(watering.minutes, roundSources.torricelli),
      },
      watering.minutes,
    );
}
