import { namesOf, roundsDocument } from "../report/rounds.ts";
import { workOutRounds } from "../report/rounds-work.ts";
import { refusalsOf } from "../words/en/refusals.ts";
import { roundsText, roundsWords } from "../words/en/rounds.ts";
import { Refused } from "./input.ts";
import { type RoundsFlags, readRoundsFlags } from "./rounds-flags.ts";
import { readInputs } from "./rounds-input.ts";
import { roundsLines } from "./rounds-print.ts";

function run(flags: RoundsFlags): void {
  const { survey, record } = readInputs(flags.survey, flags.weather);
  const worked = refusing(
    () => workOutRounds(survey, record),
    survey.beds.map(({ id }) => id),
  );
  const document = roundsDocument(worked, roundsWords, { month: flags.month });
  if (flags.asJson) say(JSON.stringify(document, null, 1));
  else say(...roundsLines(document, namesOf(worked).bed));
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
