import { cycleMinutes } from "../../engine/rounds/run-time.ts";
import { formatIso } from "../../engine/weather/dates.ts";
import type { WeekDay } from "../../report/week-days.ts";
import {
  roundNotes,
  roundSources,
  roundSteps,
  roundSymbols,
  roundTitles,
} from "../../words/en/explain-rounds.ts";
import { roundAt } from "../../words/round-at.ts";
import { amount } from "../say.ts";
import type { Given, Working } from "../working.ts";
import { nameOf, type RoundBook } from "./book.ts";
import { clock, clockSpans, clockWorking } from "./clock.ts";
import { weekRun } from "./run.ts";

function dayOf({ week }: RoundBook, date: string): WeekDay | null {
  return week?.days.find(({ day }) => formatIso(day) === date) ?? null;
}

function note(name: string, text: string, source: string): Given {
  return { name, text, provenance: "worked-out", source };
}

/** When a watering runs: its beginning, its runs and rests, what it waits for. */
export function runTimes(book: RoundBook, id: string, date: string): Working | null {
  const run = weekRun(book, id, date, "times");
  const day = dayOf(book, date);
  const runs = day?.packed.packing.runs.filter(({ job }) => day.packed.jobs[job]!.id === id) ?? [];
  if (!run || !day || runs.length === 0) return null;
  const { watering } = run;
  const from_min = Math.min(...runs.map((one) => one.from_min));
  const to_min = Math.max(...runs.map((one) => one.to_min));
  const rests = cycleMinutes(watering).length - 1;
  const waited = to_min - from_min - watering.minutes - rests * watering.soak_min;
  const { from, minutes, restsCount, rest, waits } = roundSymbols;
  const at = (what: "minutes" | "soak") => roundAt.run(id, date, what);
  const parts = [
    { ...from, value: from_min, is: "moment" as const, source: roundSources.packing },
    { ...minutes, value: watering.minutes, is: "minutes" as const, at: at("minutes") },
    ...(rests > 0 || waited > 0
      ? [
          { ...restsCount, value: rests, is: "count" as const, source: roundSources.counted },
          { ...rest, value: watering.soak_min, is: "minutes" as const, at: at("soak") },
        ]
      : []),
    ...(waited > 0
      ? [{ ...waits, value: waited, is: "minutes" as const, source: roundSources.packing }]
      : []),
  ];
  const template = `{0} + {1}${parts.length > 2 ? " + {2} × {3}" : ""}${waited > 0 ? " + {4}" : ""}`;
  const own = {
    at: run.at,
    title: roundTitles.run("times", nameOf(book, id), book.say.date(watering.day)),
    words: roundSteps.oneAfterOther,
    source: roundSources.packing,
  };
  return clockWorking(book.say, own, template, parts, to_min, timeNotes(book, id, watering.stretches, day));
}

/** The hours that it was packed into, the sun, and who shares its tap. */
function timeNotes(
  book: RoundBook,
  id: string,
  open: readonly { from: number; to: number }[],
  { packed, sun }: WeekDay,
): Given[] {
  const job = packed.jobs.find((one) => one.id === id)!;
  const times = [sun.dawn_min, sun.sunrise_min, sun.sunset_min, sun.dusk_min].filter((time) => time !== null);
  const sharing = packed.jobs.filter(
    (one) => one.id !== id && one.uses.some((use) => job.uses.includes(use)),
  );
  return [
    note(roundNotes.hours, clockSpans(open), roundSources.hours),
    note(roundNotes.cool, clockSpans(job.stretches), roundSources.cool),
    ...(times.length === 4
      ? [note(roundNotes.sun, times.map((time) => clock(Math.round(time))).join(", "), roundSources.sun)]
      : []),
    ...(sharing.length > 0
      ? [
          note(
            roundNotes.tap,
            book.say.list(sharing.map((one) => nameOf(book, one.id))),
            roundSources.packing,
          ),
        ]
      : []),
  ];
}

/** When a day's round is done, and whether it could be done earlier. */
export function finish(book: RoundBook, date: string): Working | null {
  const day = dayOf(book, date);
  if (!day || day.packed.packing.runs.length === 0) return null;
  const { packing, jobs, proven, bound_min } = day.packed;
  const ends = new Map<string, number>();
  for (const { job, to_min } of packing.runs) {
    const { id } = jobs[job]!;
    ends.set(id, Math.max(to_min, ends.get(id) ?? 0));
  }
  const parts = [...ends].map(([id, value]) => {
    const name = nameOf(book, id);
    return { name, symbol: name, value, is: "moment" as const, at: roundAt.run(id, date, "times") };
  });
  const { hoseMoves, walk_m, finish_min } = packing.cost;
  const better = proven ? roundNotes.isProven : roundNotes.notProven(clock(bound_min));
  const own = {
    at: roundAt.finish(date),
    title: roundTitles.finish(book.say.date(day.day)),
    words: roundSteps.lastOf,
    source: roundSources.packing,
  };
  const template = `max(${parts.map((_, place) => `{${place}}`).join(", ")})`;
  const walked = walk_m >= 1 ? amount(Math.round(walk_m), "m", book.say) : null;
  return clockWorking(book.say, own, template, parts, finish_min, [
    note(roundNotes.proven, better, roundSources.packing),
    ...(hoseMoves > 0 || walk_m >= 1
      ? [note(roundNotes.walk, roundNotes.moves(hoseMoves, walked), roundSources.packing)]
      : []),
  ]);
}
