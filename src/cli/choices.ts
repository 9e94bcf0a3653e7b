import { readRecord } from "../files/record.ts";
import { type BriefNames, briefOf } from "../report/brief.ts";
import { briefHtml, briefMarkdown } from "../report/brief-forms.ts";
import { choicesOf } from "../report/choices.ts";
import type { GroundsChoices } from "../report/choices-schema.ts";
import { givenWeather } from "../report/given-weather.ts";
import { workOut } from "../report/work-out.ts";
import { readClimate } from "../server/climate-file.ts";
import { readSurvey } from "../survey/read.ts";
import type { Survey } from "../survey/survey.ts";
import { cautionSentence } from "../words/en/cautions.ts";
import { briefWords, choiceCautionSentence } from "../words/en/choices.ts";
import { choicesText } from "../words/en/choices-command.ts";
import { faultSentence } from "../words/en/faults.ts";
import { refusalsOf } from "../words/en/refusals.ts";
import { type ChoicesFlags, readChoicesFlags } from "./choices-flags.ts";
import { Refused, readTextFile } from "./input.ts";
import { whileWorking } from "./progress.ts";
import { writeWhole } from "./write-file.ts";

const mostSurvey_MB = 20;
const mostRecord_MB = 64;

/** Reads, works out, and only then writes: input that is refused leaves nothing behind. */
function run(flags: ChoicesFlags): void {
  const survey = surveyIn(flags.survey);
  const choices = whileWorking(choicesText.working, () => decided(survey, flags));
  const blocks = briefOf(choices, briefWords(choices.currency), namesIn(survey));
  if (flags.brief !== null) {
    const { path, form } = flags.brief;
    writeWhole(path, form === "html" ? briefHtml(blocks, "en") : briefMarkdown(blocks));
  }
  process.stdout.write(flags.json ? `${JSON.stringify(choices, null, 1)}\n` : briefMarkdown(blocks));
}

function surveyIn(path: string): Survey {
  const read = readSurvey(readTextFile(path, mostSurvey_MB));
  if ("faults" in read) throw new Refused(read.faults.map(faultSentence));
  return read.survey;
}

function decided(survey: Survey, { weather, years, budget, draws, seed }: ChoicesFlags): GroundsChoices {
  const read = weather === null ? { record: null } : readRecord(readTextFile(weather, mostRecord_MB));
  if ("faults" in read) throw new Refused(read.faults.map(faultSentence));
  const given = givenWeather(survey, read.record, readClimate, { years, seed });
  if ("faults" in given) throw new Refused(given.faults.map(faultSentence));
  try {
    const worked = workOut(given.survey, given.record, { notes: given.notes });
    const say = { caution: cautionSentence, choiceCaution: choiceCautionSentence };
    return choicesOf(worked, { budget, draws, seed }, say);
  } catch (error) {
    const refusals = refusalsOf(
      error,
      survey.beds.map(({ id }) => id),
    );
    if (refusals === null) throw error;
    throw new Refused(refusals.map(({ path, sentence }) => `${path}: ${sentence}`));
  }
}

function namesIn({ beds, tanks, measures = [] }: Survey): BriefNames {
  const all = [...beds, ...tanks, ...measures.flatMap(({ addTank }) => addTank ?? [])];
  const named = new Map(all.map(({ id, name }) => [id, name]));
  return {
    bed: (id) => named.get(id) ?? id,
    tank: (id) => named.get(id) ?? id,
    bedAt: (place) => beds[place]?.name ?? String(place),
  };
}

/** A reader that stops early, such as head, is no fault. */
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

try {
  const flags = readChoicesFlags(process.argv.slice(2));
  if (flags === null) console.log(choicesText.help);
  else run(flags);
} catch (error) {
  if (!(error instanceof Refused)) throw error;
  for (const line of error.lines) console.error(line);
  process.exitCode = 2;
}
