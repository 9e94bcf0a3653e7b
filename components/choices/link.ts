import type { Survey } from "../../src/survey/survey.ts";
import { planOf } from "./edits.ts";
import { type ScreenState, writeState } from "./state.ts";

/** An address that opens the same plan, budget, tank and weather, whatever the survey's own become. */
export function linkTo(survey: Survey, state: ScreenState, href: string): string {
  const budget = state.budget ?? survey.money?.budget ?? null;
  const address = new URL(href);
  address.hash = writeState({ ...state, plan: planOf(survey), budget });
  return address.href;
}
