import { cycleMinutes, minutesFor, type RunTime } from "../../engine/rounds/run-time.ts";
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
interface WeekRun {
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

function weekRun(book: RoundBook, id: string, date: string, what: RunFigure): WeekRun | null {
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

/** When a watering runs: its beginning, its runs and rests, what it waits for. */
export function runTimes(book: RoundBook, id: string, date: string): Working | null {
  const run = weekRun(book, id, date, "times");
  const day = book.week?.days.find((one) => formatIso(one.day) === date);
  if (!run || !day) return null;
  const { packed, sun } = day;
  const { watering, sheet } = run;
  const runs = packed.packing.runs.filter(({ job }) => packed.jobs[job]!.id === id);
  if (runs.length === 0) return null;
  const from_min = Math.min(...runs.map((one) => one.from_min));
  const to_min = Math.max(...runs.map((one) => one.to_min));
  const rests = cycleMinutes(watering).length - 1;
  const waited = to_min - from_min - watering.minutes - rests * watering.soak_min;
  const inputs = {
    clockStart: workedOut(from_min, roundSources.packing),
    runMinutes: opens(watering.minutes, roundAt.run(id, date, "minutes")),
    restsCount: workedOut(rests, roundSources.counted),
    soak: opens(watering.soak_min, roundAt.run(id, date, "soak")),
  };
  if (waited === 0) sheet.step("elapsed", inputs, to_min);
  else sheet.step("waited", { ...inputs, waited: workedOut(waited, roundSources.packing) }, to_min);
  const job = packed.jobs.find((one) => one.id === id)!;
  const origin = { provenance: "worked-out" as const, source: roundSources.hours };
  sheet.note(roundNotes.hours, clockSpans(watering.stretches), origin);
  sheet.note(roundNotes.cool, clockSpans(job.stretches), { ...origin, source: roundSources.cool });
  const times = [sun.dawn_min, sun.sunrise_min, sun.sunset_min, sun.dusk_min];
  if (times.every((time) => time !== null))
    sheet.note(roundNotes.sun, times.map((time) => clock(Math.round(time))).join(", "), {
      ...origin,
      source: roundSources.sun,
    });
  const sharing = packed.jobs.filter(
    (one) => one.id !== id && one.uses.some((use) => job.uses.includes(use)),
  );
  if (sharing.length > 0)
    sheet.note(roundNotes.tap, book.say.list(sharing.map((one) => nameOf(book, one.id))), {
      ...origin,
      source: roundSources.packing,
    });
  return done(book, run, "times");
}

export function clock(minute: number): string {
  const two = (n: number) => String(n).padStart(2, "0");
  return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}

function clockSpans(stretches: readonly { from: number; to: number }[]): string {
  return stretches.map(({ from, to }) => `${clock(from)}–${clock(to)}`).join(", ");
}
