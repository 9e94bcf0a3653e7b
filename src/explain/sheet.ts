import { citations, type Formula, type FormulaKey, formulas } from "../words/en/explain-formulas.ts";
import { type TermKey, terms } from "../words/en/explain-terms.ts";
import { amount, bare, type Say, type TermUnit } from "./say.ts";
import type { Given, Provenance, Step, Working } from "./working.ts";

/** Where a number came from. One that this same working gave in a step before has none. */
export interface Origin {
  provenance: Provenance;
  source?: string;
  at?: string;
}

/** A number on its way into a formula. */
export interface Input {
  value: number;
  origin: Origin | null;
  /** What it is, where the letter's own name is not enough. */
  name?: string;
}

/** One part of a sum. */
export interface Part extends Input {
  name: string;
}

/** Writes one working: steps in order, and each number that goes in once. */
export class Sheet {
  private readonly steps: Step[] = [];
  private readonly given = new Map<string, Given>();
  private readonly say: Say;

  constructor(say: Say) {
    this.say = say;
  }

  /**
   * Puts numbers into a formula.
   * @param value what the engine's own function gives
   * @returns it, for a later step of the same working
   */
  step(key: FormulaKey, inputs: Partial<Record<TermKey, Input>>, value: number, words?: string): Input {
    const formula: Formula = formulas[key];
    const { symbol, unit } = terms[formula.gives];
    for (const [letter, input] of Object.entries(inputs)) this.letter(letter as TermKey, input);
    const letterOf = (fill: (key: TermKey) => string) =>
      formula.template.replace(/\{(\w+)\}/g, (_, letter: string) => fill(letter as TermKey));
    this.steps.push({
      formula: `${symbol} = ${letterOf((letter) => terms[letter].symbol)}`,
      words: words ?? formula.words,
      withNumbers: letterOf((letter) => this.inFormula(inputs[letter]!.value, terms[letter].unit)),
      result: amount(value, unit, this.say),
      ...(formula.source !== null && { source: formula.source }),
      value,
      unit,
      expression: {
        template: formula.template,
        inputs: Object.fromEntries(Object.entries(inputs).map(([letter, { value }]) => [letter, value])),
      },
    });
    return { value, origin: null };
  }

  /** Adds numbers up: months of a year, beds of a site. */
  sum(key: TermKey, words: string, parts: readonly Part[], value: number, source?: string): Input {
    const { symbol, unit } = terms[key];
    for (const part of parts) this.put(`${part.name}|${part.origin?.at ?? ""}`, part.name, unit, part);
    this.steps.push({
      formula: `${symbol} = Σ ${words}`,
      withNumbers: parts.map((part) => this.inFormula(part.value, unit)).join(" + ") || "0",
      result: amount(value, unit, this.say),
      ...(source !== undefined && { source }),
      value,
      unit,
      expression: {
        template: "Σ",
        inputs: Object.fromEntries(parts.map((part, place) => [String(place), part.value])),
      },
    });
    return { value, origin: null };
  }

  /** Any arithmetic of a letter's own unit, for what no formula of the list says. */
  plain(
    key: TermKey,
    template: string,
    words: string,
    inputs: Record<string, { value: number; unit: TermUnit }>,
    value: number,
  ): Input {
    const { symbol, unit } = terms[key];
    const fill = (text: (name: string) => string) =>
      template.replace(/\{([^}]+)\}/g, (_, name: string) => text(name));
    this.steps.push({
      formula: `${symbol} = ${fill((name) => name)}`,
      words,
      withNumbers: fill((name) => this.inFormula(inputs[name]!.value, inputs[name]!.unit)),
      result: amount(value, unit, this.say),
      value,
      unit,
      expression: {
        template,
        inputs: Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input.value])),
      },
    });
    return { value, origin: null };
  }

  /** Lists something that went in and is no number of a formula: a texture, a method, a day that is closed. */
  note(name: string, text: string, origin: Origin): void {
    this.given.set(name, { name, text, ...origin });
  }

  /** Lists numbers that a step chose from. */
  list(parts: readonly Part[], unit: TermUnit): void {
    for (const part of parts) this.put(`${part.name}|${part.origin?.at ?? ""}`, part.name, unit, part);
  }

  private letter(letter: TermKey, input: Input): void {
    const { symbol, name, unit } = terms[letter];
    this.put(
      `${letter}|${input.name ?? ""}|${input.origin?.at ?? ""}`,
      input.name ?? name,
      unit,
      input,
      symbol,
    );
  }

  private put(key: string, name: string, unit: TermUnit, { value, origin }: Input, symbol?: string): void {
    if (origin === null) return;
    this.given.set(key, {
      name,
      text: amount(value, unit, this.say),
      ...origin,
      ...(symbol !== undefined && { symbol }),
      value,
      unit,
    });
  }

  private inFormula(value: number, unit: TermUnit): string {
    const text = bare(value, unit, this.say);
    return value < 0 ? `(${text})` : text;
  }

  /** The working so far, under its title; the last step is the figure. */
  done(at: string, title: string, provenance: Provenance = "worked-out"): Working {
    const last = this.steps.at(-1);
    const sources = [
      ...new Set(this.steps.map(({ source }) => source).filter((source) => source !== undefined)),
    ];
    return {
      title,
      steps: this.steps,
      given: [...this.given.values()],
      sources: citations(sources),
      provenance,
      at,
      ...(last && { value: last.value!, unit: last.unit! }),
    };
  }
}
