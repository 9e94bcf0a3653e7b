import { isAddress } from "../explain/address.ts";
import { isChoiceAddress } from "../explain/choices/book.ts";
import { explainDecided } from "../explain/choices/explain.ts";
import { classSheet } from "../explain/class-sheet.ts";
import { explain } from "../explain/explain.ts";
import { headlines } from "../explain/headlines.ts";
import { plainSay } from "../explain/say.ts";
import { type WorkedOut, workOut } from "../report/work-out.ts";
import { classSheetWords } from "../words/en/class-sheet.ts";
import { explainText } from "../words/en/explain-command.ts";
import { flagWords } from "../words/en/flags.ts";
import { runCommand } from "./command.ts";
import { type ExplainFlags, readExplainFlags } from "./explain-flags.ts";
import { figureLine, workingText } from "./explain-print.ts";
import { Refused } from "./input.ts";
import { whileWorking } from "./progress.ts";
import { readInputs, refusing } from "./survey-input.ts";
import { writeWhole } from "./write-file.ts";

/** Reads, works out, and only then writes: input that is refused leaves nothing behind. */
function run(flags: ExplainFlags): void {
  const { figure } = flags;
  if (figure !== null && !isAddress(figure) && !isChoiceAddress(figure))
    throw new Refused([explainText.noAddress(figure)]);
  const worked = whileWorking(flagWords.working, () => work(flags));
  if (flags.classSheet) writeSheet(worked, flags, flags.classSheet);
  else if (figure === null) listFigures(worked, flags);
  else printFigure(worked, figure, flags);
}

function work({ survey, weather }: ExplainFlags): WorkedOut {
  const given = readInputs(survey, weather);
  return refusing(given, () => workOut(given.survey, given.record, { notes: given.notes }));
}

function printFigure(worked: WorkedOut, figure: string, { units, lang, json }: ExplainFlags): void {
  const say = plainSay(units, lang);
  const working = isChoiceAddress(figure)
    ? explainDecided(worked, figure, say)
    : explain(worked, figure, say);
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

runCommand(explainText.help, readExplainFlags, run);
