import type { ChoicesContext } from "../../report/choices-context.ts";
import { planRows } from "../../report/choices-measures.ts";
import { proposedContext } from "../../report/choices-proposals.ts";
import { Ways } from "../../report/choices-ways.ts";
import type { WeatherQuestion } from "../../report/choices-weather.ts";
import type { Drawn } from "../../report/spread.ts";
import { choicesParts } from "../../words/en/choices-workings.ts";
import type { Say } from "../say.ts";
import { type Input, Sheet } from "../sheet.ts";

/** Where an address of the decision begins. */
export const choicesPrefix = "choices/";

/** Whether a text is an address of the decision; `explainChoice` tells whether it leads anywhere. */
export function isChoiceAddress(text: string): boolean {
  return text.startsWith(choicesPrefix);
}

/** What the decision's workings are read from. */
export interface ChoicesBook {
  context: ChoicesContext;
  questions: readonly WeatherQuestion[];
  ways: Ways;
  /** null before the first draw, or where somebody else draws. */
  drawn: { figures: Drawn; rivals: readonly Uint8Array[] } | null;
  /** The same with what is proposed among what may be chosen; worked out when first asked for. */
  proposed(): ChoicesContext;
}

/** @param ways what was worked out of the same water before serves on */
export function choicesBook(
  context: ChoicesContext,
  questions: readonly WeatherQuestion[],
  drawn: ChoicesBook["drawn"] = null,
  ways = new Ways(),
): ChoicesBook {
  let proposed: ChoicesContext | null = null;
  return {
    context,
    questions,
    ways,
    drawn,
    proposed: () => {
      const { underWatered, overWatered } = planRows(context);
      proposed ??= proposedContext(context, [...underWatered, ...overWatered]).context;
      return proposed;
    },
  };
}

/** A figure of the decision asked for: what follows its topic in the address. */
export interface Asked {
  book: ChoicesBook;
  say: Say;
  at: string;
  rest: readonly string[];
}

export type By = "need" | "habit";

/** A set of measures, and how beds are watered beside it. */
export interface SetOf {
  context: ChoicesContext;
  set: Uint8Array;
  by: By;
}

const nothing = "none";

/** The key of a set in addresses: `mulch-front+hedge-drip`, or `none`. */
export function setKey({ measures }: Pick<ChoicesContext, "measures">, set: Uint8Array): string {
  const ids = measures.filter((_, k) => set[k] === 1).map(({ id }) => id);
  return ids.length > 0 ? ids.join("+") : nothing;
}

/** Reads a set's key, and `habit` behind it; null where a measure of it is neither in the survey nor proposed. */
export function setAt(book: ChoicesBook, key: string | undefined, by: string | undefined): SetOf | null {
  if (key === undefined || (by !== undefined && by !== "habit")) return null;
  const ids = key === nothing ? [] : key.split("+");
  const { context } = book;
  const isIn = ({ measures }: ChoicesContext) => ids.every((id) => measures.some((one) => one.id === id));
  const found = isIn(context) ? context : isIn(book.proposed()) ? book.proposed() : null;
  return (
    found && {
      context: found,
      set: Uint8Array.from(found.measures, ({ id }) => (ids.includes(id) ? 1 : 0)),
      by: by ?? "need",
    }
  );
}

/** An address of the decision; a way of watering is said only where it is by habit. */
export function address(topic: string, parts: readonly string[], by: By = "need"): string {
  return `${choicesPrefix}${[topic, ...parts, ...(by === "habit" ? [by] : [])].join("/")}`;
}

export function setAddress(topic: string, { context, set, by }: SetOf, ...parts: string[]): string {
  return address(topic, [setKey(context, set), ...parts], by);
}

/** A figure with a working at an address. */
export function opening(value: number, at: string, name?: string): Input {
  return { value, origin: { provenance: "worked-out", at }, ...(name !== undefined && { name }) };
}

/** A figure that a run gave, and no formula. */
export function ofRun(value: number, source: string, name?: string): Input {
  return { value, origin: { provenance: "worked-out", source }, ...(name !== undefined && { name }) };
}

/** A figure by a rule of the method. */
export function byOurs(value: number, source: string = choicesParts.ruleOfOurs): Input {
  return { value, origin: { provenance: "assumed", source } };
}

/** A number that this same working gave. */
export function above(value: number): Input {
  return { value, origin: null };
}

export function sheetOf({ say }: Asked): Sheet {
  return new Sheet(say);
}

/** Names of a set's measures, in the survey's order. */
export function namesOfSet({ context: { measures }, set }: SetOf): string[] {
  return measures.filter((_, k) => set[k] === 1).map(({ name }) => name);
}
