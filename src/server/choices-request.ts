import { mostDraws } from "../report/choices.ts";
import { choicesText } from "../words/en/choices-command.ts";
import { type EstimateRequest, estimateRequest, refused } from "./estimate-request.ts";
import type { Fault } from "./problem.ts";

export interface ChoicesBody extends EstimateRequest {
  budget: number | null;
  draws: number;
  seed: number;
}

/** Draws that one request may ask for: a program that wants more asks again with another seed. */
export const mostDrawsOfRequest = Math.min(1_000, mostDraws);

/** Takes the body of a decision apart; survey and weather as an estimate's. */
export function choicesRequest(body: unknown): ChoicesBody {
  if (typeof body !== "object" || body === null || Array.isArray(body))
    return { ...estimateRequest(body), budget: null, draws: 0, seed: 1 };
  const { budget = null, draws = 0, seed = 1, ...documents } = body as Record<string, unknown>;
  const faults: Fault[] = [];
  if (!isAmount(budget)) faults.push({ path: "budget", sentence: choicesText.amount(shownAs(budget)) });
  if (!isWhole(draws, mostDrawsOfRequest))
    faults.push({ path: "draws", sentence: choicesText.whole(shownAs(draws), 0, mostDrawsOfRequest) });
  if (!isWhole(seed, Number.MAX_SAFE_INTEGER))
    faults.push({ path: "seed", sentence: choicesText.whole(shownAs(seed), 0, Number.MAX_SAFE_INTEGER) });
  if (!isAmount(budget) || !isWhole(draws, mostDrawsOfRequest) || !isWhole(seed, Number.MAX_SAFE_INTEGER))
    throw refused(faults);
  return { ...estimateRequest(documents), budget, draws, seed };
}

function isAmount(value: unknown): value is number | null {
  return value === null || (typeof value === "number" && Number.isFinite(value) && value >= 0);
}

function isWhole(value: unknown, most: number): value is number {
  return typeof value === "number" && Number.isInteger(value) && value >= 0 && value <= most;
}

function shownAs(value: unknown): string {
  return (JSON.stringify(value) ?? "nothing").slice(0, 60);
}
