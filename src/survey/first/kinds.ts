import type { Kind, Thirst } from "../words.ts";

/** Kinds that a garden of a thirst may hold; the first is the one that stands in until somebody says. */
const kinds: Readonly<Record<Thirst, readonly Kind[]>> = {
  "very-low": ["shrubs", "succulents", "groundcover"],
  low: ["shrubs", "perennials", "ornamental-grasses", "groundcover"],
  moderate: ["perennials", "shrubs", "groundcover", "hedge"],
  high: ["annuals", "perennials", "groundcover"],
};

const grasses: readonly Kind[] = ["lawn-cool", "lawn-warm"];

/** @param grass whether it is mown grass for the most part */
export function kindsOf(thirst: Thirst, grass = false): readonly Kind[] {
  return grass ? grasses : kinds[thirst];
}
