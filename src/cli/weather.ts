import { realpathSync } from "node:fs";
import { formatIso } from "../engine/weather/dates.ts";
import { parseDelimited } from "../files/delimited.ts";
import { applyMapping } from "../survey/record/apply.ts";
import { faultSentence } from "../words/en/faults.ts";
import { gapLines } from "../words/en/record-gaps.ts";
import { importWords, noteWords } from "../words/en/weather-import.ts";
import { Refused } from "./input.ts";
import { settledMapping } from "./weather-ask.ts";
import { readFlags, type WeatherFlags } from "./weather-flags.ts";
import { mappingTable } from "./weather-print.ts";
import { readWeatherText } from "./weather-text.ts";
import { writeWhole } from "./write-file.ts";

/** Rows of a raw file at most: a century of days at ten places. */
const mostRows = 400_000;
const shownRows = 5;

/** Maps a weather file to a record, shows how, and writes it; asks where the file can be read in more than one way. */
async function run({ raw, out, given }: WeatherFlags): Promise<void> {
  const text = readWeatherText(raw);
  if (isSame(raw, out)) throw new Refused([`--out: ${importWords.sameFile}`]);
  const { rows, openQuoteRow, cut, longLine } = parseDelimited(text, { maxRows: mostRows });
  if (longLine !== null) throw new Refused([brokenRow(longLine, "record-long-line")]);
  if (cut) throw new Refused([`${raw}: ${importWords.tooManyRows(mostRows)}`]);
  if (openQuoteRow !== null) throw new Refused([brokenRow(openQuoteRow, "record-open-quote")]);
  const atTerminal = process.stdin.isTTY && process.stdout.isTTY;
  const terminal = atTerminal ? { input: process.stdin, output: process.stdout } : null;
  const mapping = await settledMapping(rows, given, terminal, (guess) => say(mappingTable(guess)));
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

function brokenRow(row: number, code: string): string {
  return faultSentence({ path: `row ${row}`, code, facts: {} });
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
