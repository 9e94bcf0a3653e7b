import { readLog } from "../files/log.ts";
import type { WeekAsk } from "../report/week-ask.ts";
import type { LogEntry } from "../survey/schema/log.ts";
import type { Survey } from "../survey/survey.ts";
import { roundsRefusals } from "../words/en/rounds-refusals.ts";
import { Refused, readTextFile } from "./input.ts";
import type { WeekFlags } from "./rounds-flags.ts";
import { mostRecord_MB, sentences } from "./survey-input.ts";

/** What is said of a week, its log read and its ids looked up. @throws Refused */
export function weekAsk(flags: WeekFlags, survey: Survey): WeekAsk {
  const lines: string[] = [];
  const read = flags.log === null ? { entries: [] } : readLog(readTextFile(flags.log, mostRecord_MB));
  if ("faults" in read) lines.push(...sentences(read.faults));
  const entries = "entries" in read ? read.entries : [];
  lines.push(...strangeIds(entries, survey));
  const tanks = new Map(survey.tanks.map(({ id, capacity_L }) => [id, capacity_L]));
  for (const [id, level_L] of flags.level_L) {
    const capacity_L = tanks.get(id);
    if (capacity_L === undefined) lines.push(roundsRefusals.noTank(id, [...tanks.keys()]));
    else if (level_L > capacity_L) lines.push(roundsRefusals.aboveTank(id, level_L, capacity_L));
  }
  if (lines.length > 0) throw new Refused(lines);
  const { firstDay, level_L, lastRound, heat, forecast, hotSpell } = flags;
  return { firstDay, log: entries, level_L, lastRound, heat, forecast, hotSpell };
}

/** Waterings of no bed and dips of no tank that the survey has. */
function strangeIds(entries: readonly LogEntry[], survey: Survey): string[] {
  const ids = { watering: survey.beds, dip: survey.tanks };
  const seen = new Set<string>();
  return entries.flatMap(({ kind, id = "" }) => {
    if (kind === "rain" || seen.has(`${kind} ${id}`) || ids[kind].some((row) => row.id === id)) return [];
    seen.add(`${kind} ${id}`);
    return [
      roundsRefusals.strangeId(
        kind,
        id,
        ids[kind].map((row) => row.id),
      ),
    ];
  });
}
