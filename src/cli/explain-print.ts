import { amount, type Say, type TermUnit } from "../explain/say.ts";
import type { Given, Step, Working } from "../explain/working.ts";
import { explainText } from "../words/en/explain-command.ts";
import { wrapped } from "./table-text.ts";

/** A working for a terminal: steps in order, then what went in, each with the address that it opens at. */
export function workingText({ title, steps, given, sources }: Working): string {
  return [
    wrapped(title),
    ...steps.map(stepText),
    ...(given.length > 0 ? [[explainText.given, ...given.map(givenText)].join("\n")] : []),
    ...(sources.length > 0
      ? [[explainText.sources, ...sources.map((source) => wrapped(source, "  "))].join("\n")]
      : []),
  ].join("\n\n");
}

function stepText({ formula, words, withNumbers, result, source }: Step): string {
  const said = [words, source].filter((part) => part !== undefined && part !== "").join(" · ");
  const numbers = withNumbers === result ? `= ${result}` : `= ${withNumbers} = ${result}`;
  return [wrapped(formula, "  "), wrapped(numbers, "    "), ...(said ? [wrapped(said, "    ")] : [])].join(
    "\n",
  );
}

function givenText({ name, symbol, text, provenance, source, at }: Given): string {
  const letter = symbol === undefined ? "" : ` (${symbol})`;
  const from = at === undefined ? source : explainText.see(at);
  return wrapped(
    `${name}${letter}: ${text}; ${explainText.provenance[provenance]}${from ? `, ${from}` : ""}`,
    "  ",
  );
}

/** A figure in one line: its value, its title, its address. */
export function figureLine({ title, value, unit, at }: Working, say: Say): string {
  return `  ${at!.padEnd(38)} ${amount(value!, unit as TermUnit, say).padStart(14)}  ${title}`;
}
