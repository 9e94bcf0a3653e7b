import { type BriefNames, briefOf } from "../report/brief.ts";
import { briefHtml, briefMarkdown } from "../report/brief-forms.ts";
import { choicesOf } from "../report/choices.ts";
import { workOut } from "../report/work-out.ts";
import type { Survey } from "../survey/survey.ts";
import { cautionSentence } from "../words/en/cautions.ts";
import { briefWords } from "../words/en/choices.ts";
import { choicesText } from "../words/en/choices-command.ts";
import { choiceCautionSentence } from "../words/en/choices-reasons.ts";
import { flagWords } from "../words/en/flags.ts";
import { type ChoicesFlags, readChoicesFlags } from "./choices-flags.ts";
import { runCommand } from "./command.ts";
import { whileWorking } from "./progress.ts";
import { readInputs, refusing } from "./survey-input.ts";
import { writeWhole } from "./write-file.ts";

/** Reads, works out, and only then writes: input that is refused leaves nothing behind. */
function run({ survey, weather, years, seed, budget, draws, json, brief, units }: ChoicesFlags): void {
  const given = readInputs(survey, weather, { years, seed });
  const say = { caution: cautionSentence, choiceCaution: choiceCautionSentence };
  const choices = whileWorking(flagWords.working, () =>
    refusing(given, () => {
      const worked = workOut(given.survey, given.record, { notes: given.notes });
      return choicesOf(worked, { budget, draws, seed }, say);
    }),
  );
  const blocks = briefOf(choices, briefWords(choices.currency, units), namesIn(given.survey));
  if (brief !== null)
    writeWhole(brief.path, brief.form === "html" ? briefHtml(blocks, "en") : briefMarkdown(blocks));
  process.stdout.write(json ? `${JSON.stringify(choices, null, 1)}\n` : briefMarkdown(blocks));
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

runCommand(choicesText.help, readChoicesFlags, run);
