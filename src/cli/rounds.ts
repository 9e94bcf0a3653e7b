import { formatIso } from "../engine/weather/dates.ts";
import { namesOf, roundsDocument } from "../report/rounds.ts";
import type { GroundsRounds } from "../report/rounds-schema.ts";
import { type RoundsWorked, workOutRounds } from "../report/rounds-work.ts";
import { weekDocument } from "../report/week.ts";
import { workOutWeek } from "../report/week-work.ts";
import type { UnitSystem } from "../units.ts";
import { roundsText, roundsWords } from "../words/en/rounds.ts";
import { weekWordsIn } from "../words/rounds-said.ts";
import { runCommand } from "./command.ts";
import { writeRoundsFiles } from "./rounds-files.ts";
import { type RoundsFlags, readRoundsFlags } from "./rounds-flags.ts";
import { weekAsk } from "./rounds-input.ts";
import { roundsLines } from "./rounds-print.ts";
import { weekLines } from "./rounds-print-week.ts";
import { readInputs, refusing } from "./survey-input.ts";

function run(flags: RoundsFlags): void {
  const given = readInputs(flags.survey, flags.weather);
  const { survey, record, notes } = given;
  const ask = flags.week && weekAsk(flags.week, survey);
  const worked = refusing(given, () => workOutRounds(survey, record, { notes, starts: flags.starts }));
  const weekWorked = ask && workOutWeek(worked, ask);
  const week = weekWorked ? weekDocument(worked, weekWorked, weekWordsIn(flags.units)) : undefined;
  const madeOn = flags.today === null ? null : formatIso(flags.today);
  const document = roundsDocument(worked, roundsWords, { month: flags.month, madeOn, week });
  // a bed's card has its whole year
  const whole = flags.month === null ? document : roundsDocument(worked, roundsWords, { madeOn, week });
  writeRoundsFiles(flags, worked, weekWorked, { document, whole });
  if (flags.asJson) say(JSON.stringify(document, null, 1));
  else say(...linesOf(document, worked, flags.units));
}

/** The week where one was asked for, else the table. */
function linesOf(document: GroundsRounds, worked: RoundsWorked, units: UnitSystem): string[] {
  const { bed } = namesOf(worked);
  const tanks = new Map(worked.survey.tanks.map(({ id, name }) => [id, name]));
  return document.week
    ? weekLines(document, document.week, { bed, tank: (id) => tanks.get(id) ?? id }, units)
    : roundsLines(document, bed, units);
}

function say(...lines: string[]): void {
  process.stdout.write(`${lines.join("\n")}\n`);
}

runCommand(roundsText.usage, readRoundsFlags, run);
