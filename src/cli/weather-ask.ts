import { createInterface } from "node:readline/promises";
import { guessMapping } from "../survey/record/guess.ts";
import type { Cells, Given, Mapping, Question } from "../survey/record/mapping.ts";
import { answerWords, importWords, questionLine, questionWords } from "../words/en/weather-import.ts";
import { Refused } from "./input.ts";

/** Where a person reads questions and types answers. */
export interface Terminal {
  input: NodeJS.ReadableStream;
  output: NodeJS.WritableStream;
}

/**
 * Guesses a mapping, and asks at the terminal until nothing is open. A guess that leaves something open is shown first.
 * @throws Refused with every open question where there is no terminal, or no answer
 */
export async function settledMapping(
  rows: Cells,
  given: Given,
  terminal: Terminal | null,
  show: (guess: Mapping) => void = () => {},
): Promise<Mapping> {
  let known = given;
  let isShown = false;
  for (;;) {
    const mapping = guessMapping(rows, known);
    const { questions } = mapping;
    const [open] = questions;
    if (!open) return mapping;
    if (!isShown && Object.keys(mapping.fields).length > 0) show(mapping);
    isShown = true;
    const answerable = questions.every(({ answers }) => answers.length > 0);
    const answer = terminal && answerable ? await ask(open, terminal) : null;
    if (!answer) throw new Refused(questions.map(questionLine));
    known = merged(known, answer);
  }
}

/** What the chosen answer gives; null where the input ends or is broken off. */
async function ask(question: Question, { input, output }: Terminal): Promise<Given | null> {
  const { answers } = question;
  const lines = answers.map((answer, at) => `  ${at + 1}  ${answerWords(question, answer)}\n`);
  output.write(`\n${questionWords(question)}\n${lines.join("")}`);
  const dialogue = createInterface({ input, output });
  const ended = new Promise<null>((end) => dialogue.once("close", () => end(null)));
  try {
    for (;;) {
      const typed = await Promise.race([dialogue.question(importWords.ask(answers.length)), ended]);
      if (typed === null) return null;
      const answer = answers[Number(typed) - 1];
      if (answer) return answer.given;
    }
  } catch {
    return null;
  } finally {
    dialogue.close();
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
