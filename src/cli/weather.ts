import { realpathSync } from "node:fs";
import { createInterface } from "node:readline/promises";
import { formatIso } from "../engine/weather/dates.ts";
import { parseDelimited } from "../files/delimited.ts";
import { applyMapping } from "../survey/record/apply.ts";
import { guessMapping } from "../survey/record/guess.ts";
import type { Cells, Given, Mapping, Question } from "../survey/record/mapping.ts";
import { faultSentence } from "../words/en/faults.ts";
import {
  answerWords,
  importWords,
  noteWords,
  questionLine,
  questionWords,
} from "../words/en/weather-import.ts";
import { Refused } from "./input.ts";
import { readFlags, type WeatherFlags } from "./weather-flags.ts";
import { gapLines, mappingTable } from "./weather-print.ts";
import { readWeatherText } from "./weather-text.ts";
import { writeWhole } from "./write-file.ts";

/** Rows of a raw file at most: a century of days at ten places. */
const mostRows = 400_000;
const shownRows = 5;

/** Maps a weather file to a record, shows how, and writes it; asks where the file can be read in more than one way. */
async function run({ raw, out, given }: WeatherFlags): Promise<void> {
  const text = readWeatherText(raw);
  if (isSame(raw, out)) throw new Refused([`--out: ${importWords.sameFile}`]);
  const { rows, openQuoteRow, cut } = parseDelimited(text, { maxRows: mostRows });
  if (cut) throw new Refused([`${raw}: ${importWords.tooManyRows(mostRows)}`]);
  if (openQuoteRow !== null) throw new Refused([`row ${openQuoteRow}: ${importWords.openQuote}`]);
  const mapping = await settled(rows, given);
  const applied = applyMapping(rows, mapping);
  if ("faults" in applied) throw new Refused(applied.faults.map(faultSentence));
  const { record, notes } = applied;
  const lines = applied.text.trimEnd().split("\n");
  const last = formatIso(record.firstDay + record.days - 1);
  writeWhole(out, applied.text);
  say(
    importWords.span(raw, lines.length - 1, formatIso(record.firstDay), last),
    "",
    mappingTable(mapping),
    "",
  );
  say(...notes.map(noteWords), ...gapLines(record), "");
  say(importWords.firstRows, ...lines.slice(0, 1 + shownRows), "", importWords.written(out));
}

/** Guesses, and asks until nothing is open. */
async function settled(rows: Cells, given: Given): Promise<Mapping> {
  let known = given;
  for (;;) {
    const mapping = guessMapping(rows, known);
    const [open] = mapping.questions;
    if (!open) return mapping;
    const canAsk =
      process.stdin.isTTY &&
      process.stdout.isTTY &&
      mapping.questions.every(({ answers }) => answers.length > 0);
    if (!canAsk) {
      if (Object.keys(mapping.fields).length > 0) say(mappingTable(mapping));
      throw new Refused(mapping.questions.map(questionLine));
    }
    known = merged(known, await ask(open));
  }
}

async function ask(question: Question): Promise<Given> {
  const { answers } = question;
  say(
    "",
    questionWords(question),
    ...answers.map((answer, at) => `  ${at + 1}  ${answerWords(question, answer)}`),
  );
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  try {
    for (;;) {
      const answer = answers[Number(await terminal.question(importWords.ask(answers.length))) - 1];
      if (answer) return answer.given;
    }
  } finally {
    terminal.close();
  }
}

function merged(known: Given, answer: Given): Given {
  return {
    ...known,
    ...answer,
    columns: { ...known.columns, ...answer.columns },
    units: { ...known.units, ...answer.units },
  };
}

function isSame(raw: string, out: string): boolean {
  try {
    return realpathSync(raw) === realpathSync(out);
  } catch {
    return false;
  }
}

function say(...lines: string[]): void {
  process.stdout.write(`${lines.join("\n")}\n`);
}

try {
  const flags = readFlags(process.argv.slice(2));
  if (flags) await run(flags);
  else say(importWords.usage);
} catch (error) {
  if (!(error instanceof Refused)) throw error;
  process.stderr.write(`${error.lines.join("\n")}\n`);
  process.exitCode = 2;
}
