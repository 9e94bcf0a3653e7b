import type { Say } from "../say.ts";
import { amount } from "../say.ts";
import type { Given, Working } from "../working.ts";

export function clock(minute: number): string {
  const two = (n: number) => String(n).padStart(2, "0");
  return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}

export function clockSpans(stretches: readonly { from: number; to: number }[]): string {
  return stretches.map(({ from, to }) => `${clock(from)}–${clock(to)}`).join(", ");
}

/** A number on its way into a reckoning of times. */
interface ClockPart {
  name: string;
  symbol: string;
  value: number;
  /** A moment of the day, a length, or how many. */
  is: "moment" | "minutes" | "count";
  at?: string;
  source?: string;
}

/** A working that ends in a moment of the day: moments are written as on a clock. */
export function clockWorking(
  say: Say,
  own: { at: string; title: string; words: string; source: string },
  template: string,
  parts: readonly ClockPart[],
  value: number,
  notes: readonly Given[],
): Working {
  const text = ({ is, value: minutes }: ClockPart) =>
    is === "moment" ? clock(minutes) : is === "count" ? say.number(minutes) : amount(minutes, "min", say);
  const fill = (written: (part: ClockPart) => string) =>
    template.replace(/\{(\d+)\}/g, (_, place: string) => written(parts[Number(place)]!));
  const given = parts.map((part): Given => {
    const { name, symbol, value: number, at, source } = part;
    const from = { ...(at !== undefined && { at }), ...(source !== undefined && { source }) };
    return { name, text: text(part), provenance: "worked-out", symbol, value: number, unit: "min", ...from };
  });
  return {
    title: own.title,
    steps: [
      {
        formula: fill(({ symbol }) => symbol),
        words: own.words,
        withNumbers: fill(text),
        result: clock(value),
        source: own.source,
        value,
        unit: "min",
        expression: {
          template,
          inputs: Object.fromEntries(parts.map((part, place) => [String(place), part.value])),
        },
      },
    ],
    given: [...given, ...notes],
    sources: [own.source],
    provenance: "worked-out",
    at: own.at,
    value,
    unit: "min",
  };
}
