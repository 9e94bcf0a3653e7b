import { readNumber, showNumber } from "./number.ts";
import { blank, isBlank, type Reading, type Writing } from "./writing.ts";

/** Numbers one after another: 42; 43.5; 43. */
export function numbersWriting(locale?: string): Writing {
  return {
    read: (text) => {
      if (isBlank(text)) return { value: [] };
      const numbers = inParts(text).map((part) => readNumber(part, locale));
      return numbers.includes(null) ? { wrong: "unreadable" } : { value: numbers };
    },
    show: (value) => showAll(value, "; ", locale),
    unit: "",
    inputMode: "text",
    width: 28,
  };
}

/** A point of the site plan: metres east and north, 12; 96. */
export function pointWriting(locale?: string): Writing {
  return {
    read: (text) => (isBlank(text) ? blank : readPoint(text, locale)),
    show: (value) => showAll(value, "; ", locale),
    unit: "m",
    inputMode: "text",
    width: 14,
  };
}

/** Corners of an outline, one a line. */
export function pointsWriting(locale?: string): Writing {
  return {
    read: (text) => {
      if (isBlank(text)) return blank;
      const lines = text.split(/\n/).filter((line) => !isBlank(line));
      const points = lines.map((line) => readPoint(line, locale));
      const values = points.flatMap((point) => ("value" in point ? [point.value] : []));
      return values.length === points.length ? { value: values } : { wrong: "unreadable" };
    },
    show: (value) =>
      Array.isArray(value)
        ? value.map((point) => showAll(point, "; ", locale)).join("\n")
        : String(value ?? ""),
    unit: "m",
    inputMode: "text",
    width: 18,
    lines: 5,
  };
}

function readPoint(text: string, locale?: string): Reading {
  const parts = inParts(text);
  const [alone = ""] = parts;
  const pair = parts.length === 1 && alone.split(",").length === 2 ? alone.split(",") : parts;
  const numbers = pair.map((part) => readNumber(part, locale));
  return numbers.length !== 2 || numbers.includes(null) ? { wrong: "unreadable" } : { value: numbers };
}

/** Parts of a line: between semicolons where there are any, else commas with a space behind them, else spaces. */
function inParts(text: string): string[] {
  const sign = text.includes(";") ? /;/ : /,\s/.test(text) ? /,\s+/ : /\s+/;
  return text
    .trim()
    .split(sign)
    .map((part) => part.replace(/[;,]$/, "").trim())
    .filter((part) => part !== "");
}

function showAll(value: unknown, between: string, locale?: string): string {
  if (!Array.isArray(value)) return String(value ?? "");
  return value
    .map((one) => (typeof one === "number" ? showNumber(one, 12, locale) : String(one)))
    .join(between);
}
