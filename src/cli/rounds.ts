import { formatIso } from "../engine/weather/dates.ts";
import { namesOf, roundsDocument } from "../report/rounds.ts";
import type { GroundsRounds } from "../report/rounds-schema.ts";
import { type RoundsWorked, workOutRounds } from "../report/rounds-work.ts";
import { weekDocument } from "../report/week.ts";
import { workOutWeek } from "../report/week-work.ts";
import { refusalsOf } from "../words/en/refusals.ts";
import { roundsText, roundsWords } from "../words/en/rounds.ts";
import { weekWords } from "../words/en/rounds-week.ts";
import { Refused } from "./input.ts";
import { writeRoundsFiles } from "./rounds-files.ts";
import { type RoundsFlags, readRoundsFlags } from "./rounds-flags.ts";
import { readInputs, weekAsk } from "./rounds-input.ts";
import { roundsLines } from "./rounds-print.ts";
import { weekLines } from "./rounds-print-week.ts";

function run(flags: RoundsFlags): void {
  const { survey, record, notes } = readInputs(flags.survey, flags.weather);
  const ask = flags.week && weekAsk(flags.week, survey);
  const worked = refusing(
    () => workOutRounds(survey, record, { notes }),
    survey.beds.map(({ id }) => id),
  );
  const weekWorked = ask && workOutWeek(worked, ask);
  const week = weekWorked ? weekDocument(worked, weekWorked, weekWords) : undefined;
  const madeOn = flags.today === null ? null : formatIso(flags.today);
  const document = roundsDocument(worked, roundsWords, { month: flags.month, madeOn, week });
  writeRoundsFiles(flags, worked, weekWorked, document);
  if (flags.asJson) say(JSON.stringify(document, null, 1));
  else say(...linesOf(document, worked));
}

/** The week where one was asked for, else the table. */
function linesOf(document: GroundsRounds, worked: RoundsWorked): string[] {
  const { bed } = namesOf(worked);
  const tanks = new Map(worked.survey.tanks.map(({ id, name }) => [id, name]));
  return document.week
    ? weekLines(document, document.week, bed, (id) => tanks.get(id) ?? id)
    : roundsLines(document, bed);
}

/** Turns what the engine refuses into lines for people. */
function refusing<T>(work: () => T, beds: readonly string[]): T {
  try {
    return work();
  } catch (error) {
    const refusals = refusalsOf(error, beds);
    if (refusals === null) throw error;
    throw new Refused(refusals.map(({ path, sentence }) => `${path}: ${sentence}`));
  }
}

function say(...lines: string[]): void {
  process.stdout.write(`${lines.join("\n")}\n`);
}

/** A reader that stops early, such as head, is no fault. */
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

try {
  const flags = readRoundsFlags(process.argv.slice(2));
  if (flags) run(flags);
  else say(roundsText.usage);
} catch (error) {
  if (!(error instanceof Refused)) throw error;
  process.stderr.write(`${error.lines.join("\n")}\n`);
  process.exitCode = 2;
}
