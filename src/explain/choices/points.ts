import { quantile } from "../../engine/give-up.ts";
import { choicesParts as parts } from "../../words/en/choices-workings.ts";
import type { Input, Part, Sheet } from "../sheet.ts";
import { above, byOurs } from "./book.ts";

export const pointNames = { p10: 0.1, p50: 0.5, p90: 0.9 } as const;
export type PointName = keyof typeof pointNames;

export function isPoint(text: string | undefined): text is PointName {
  return text !== undefined && Object.hasOwn(pointNames, text);
}

/** Steps of a point of some figures: its place among them in order, and the line between the two beside it. */
export function pointSteps(sheet: Sheet, name: PointName, figures: readonly Part[], isMoney: boolean): Input {
  const sorted = [...figures].sort((a, b) => a.value - b.value);
  const share = pointNames[name];
  const at = share * (sorted.length - 1);
  const order = sheet.step(
    "placeDrawn",
    { point: byOurs(share), drawn: byOurs(sorted.length, parts.countDraws) },
    at,
  );
  const k = Math.floor(at);
  const [low, high] = [sorted[k]!, sorted[Math.min(k + 1, sorted.length - 1)]!];
  const value = quantile(
    sorted.map((figure) => figure.value),
    share,
  );
  const placeBelow = above(k);
  if (isMoney)
    return sheet.step("pointMoney", { belowMoney: low, order, placeBelow, aboveMoney: high }, value);
  return sheet.step("pointKL", { below: low, order, placeBelow, above: high }, value);
}
