import { isAddress } from "../explain/address.ts";
import { classSheet } from "../explain/class-sheet.ts";
import { explain } from "../explain/explain.ts";
import { headlines } from "../explain/headlines.ts";
import { plainSay } from "../explain/say.ts";
import { type WorkedOut, workOut } from "../report/work-out.ts";
import { classSheetWords } from "../words/en/class-sheet.ts";
import { explainText } from "../words/en/explain-command.ts";
import { refusalsOf } from "../words/en/refusals.ts";
import { type ExplainFlags, readExplainFlags } from "./explain-flags.ts";
import { figureLine, workingText } from "./explain-print.ts";
import { Refused } from "./input.ts";
import { whileWorking } from "./progress.ts";
import { readInputs } from "./rounds-input.ts";
import { writeWhole } from "./write-file.ts";

/** Reads, works out, and only then writes: input that is refused leaves nothing behind. */
function run(flags: ExplainFlags): void {
  const { figure } = flags;
  if (figure !== null && !isAddress(figure)) throw new Refused([explainText.noAddress(figure)]);
  const worked = whileWorking(explainText.working, () => work(flags));
  if (flags.classSheet) writeSheet(worked, flags, flags.classSheet);
  else if (figure === null) listFigures(worked, flags);
  else printFigure(worked, figure, flags);
}

function work({ survey, weather }: ExplainFlags): WorkedOut {
  const given = readInputs(survey, weather);
  try {
    return workOut(given.survey, given.record, { notes: given.notes });
  } catch (error) {
    const bedIds = given.survey.beds.map(({ id }) => id);
    const refusals = refusalsOf(error, bedIds);
    if (refusals === null) throw error;
    throw new Refused(refusals.map(({ path, sentence }) => `${path}: ${sentence}`));
  }
}

function printFigure(worked: WorkedOut, figure: string, { units, lang, json }: ExplainFlags): void {
  const working = explain(worked, figure, plainSay(units, lang));
  if (!working) throw new Refused([explainText.nowhere(figure)]);
  process.stdout.write(`${json ? JSON.stringify(working, null, 1) : workingText(working)}\n`);
}

function listFigures(worked: WorkedOut, { units, lang, json }: ExplainFlags): void {
  const say = plainSay(units, lang);
  const workings = headlines(worked).flatMap((address) => explain(worked, address, say) ?? []);
  const rows = workings.map(({ at, title, value, unit }) => ({ at, title, value, unit }));
  if (json) process.stdout.write(`${JSON.stringify(rows, null, 1)}\n`);
  else
    process.stdout.write(`${[explainText.figures, ...workings.map((w) => figureLine(w, say))].join("\n")}\n`);
}

function writeSheet(
  worked: WorkedOut,
  { units, lang }: ExplainFlags,
  { path, bed, from }: NonNullable<ExplainFlags["classSheet"]>,
): void {
  const html = classSheet(worked, { bed, from }, classSheetWords, plainSay(units, lang));
  if (html === null) throw new Refused([explainText.noWeek(bed)]);
  writeWhole(path, html);
}

/** A reader that stops early, such as head, is no fault. */
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

try {
  const flags = readExplainFlags(process.argv.slice(2));
  if (flags === null) console.log(explainText.help);
  else run(flags);
} catch (error) {
  if (!(error instanceof Refused)) throw error;
  for (const line of error.lines) console.error(line);
  process.exitCode = 2;
}
