import { planRun } from "../../../src/report/spread.ts";
import { lastAnswer } from "./answer.ts";
import type { Answers } from "./messages.ts";
import { otherMessages } from "./other-messages.ts";

const seed = 1;
/** Told after so many draws; the last is all of them. */
const steps = [24, 100, 300] as const;
/** Longest that another request waits. */
const turn_ms = 24;

/** Draws the answer last worked out over the ranges of what is not known, until another answer takes its place. */
export async function drawWidth(
  tell: (told: Answers["width"], isLast: boolean) => void,
  isOvertaken: () => boolean,
): Promise<void> {
  const last = lastAnswer();
  if (!last || last.worked.survey.beds.length === 0) return tell({ width: null }, true);
  const run = planRun(last.worked, seed);
  let turned = performance.now();
  for (const step of steps) {
    while (run.done() < step) {
      run.draw();
      if (performance.now() - turned < turn_ms) continue;
      await otherMessages();
      turned = performance.now();
      if (isOvertaken()) return;
      if (lastAnswer() !== last) return tell({ width: null }, true);
    }
    const isLast = step === steps.at(-1);
    const { draws, giveUp_kL_year, need_kL_year, byUnknown } = run.outcome();
    tell({ width: { draws, giveUp_kL_year, need_kL_year, byUnknown } }, isLast);
  }
}
