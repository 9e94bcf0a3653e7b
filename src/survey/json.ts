import type { Fault } from "./faults.ts";
import { wholeSurvey } from "./faults.ts";
import { oneLine } from "./path.ts";

/** Limits on what is read at all, before anything is looked at. */
export const surveyLimits = { characters: 20_000_000, depth: 40, values: 1_000_000 } as const;

/** JSON text to a value; a fault says where the text stops being JSON. */
export function readJson(text: string): { value: unknown } | { fault: Fault } {
  const fault = (code: string, facts: Fault["facts"]) => ({ fault: { path: wholeSurvey, code, facts } });
  if (text.length > surveyLimits.characters)
    return fault("too-large", { characters: text.length, most: surveyLimits.characters });
  const json = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  if (json.trim() === "") return fault("empty", {});
  if (deepest(json) > surveyLimits.depth) return fault("too-deep", { most: surveyLimits.depth });
  try {
    return { value: JSON.parse(json) };
  } catch {
    const { at, cut } = whereItBreaks(json);
    const before = json.slice(0, at).split("\n");
    const place = { line: before.length, column: before[before.length - 1]!.length + 1 };
    if (cut) return fault("json-cut", place);
    return fault("json-broken", { ...place, found: oneLine(String.fromCodePoint(json.codePointAt(at)!), 8) });
  }
}

/** Whether a value has more levels or more parts than a survey may have. */
export function tooMuch(value: unknown): Fault | null {
  const waiting: [unknown, number][] = [[value, 0]];
  let values = 0;
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const [part, depth] = next;
    values += 1;
    if (depth > surveyLimits.depth)
      return { path: wholeSurvey, code: "too-deep", facts: { most: surveyLimits.depth } };
    if (values > surveyLimits.values)
      return { path: wholeSurvey, code: "too-many-values", facts: { most: surveyLimits.values } };
    if (typeof part !== "object" || part === null) continue;
    for (const inner of Array.isArray(part) ? part : Object.values(part)) waiting.push([inner, depth + 1]);
  }
  return null;
}

/** Deepest nesting of brackets outside strings. */
function deepest(json: string): number {
  let depth = 0;
  let most = 0;
  let quoted = false;
  for (let at = 0; at < json.length; at++) {
    const mark = json[at];
    if (quoted) {
      if (mark === "\\") at += 1;
      else if (mark === '"') quoted = false;
    } else if (mark === '"') quoted = true;
    else if (mark === "{" || mark === "[") most = Math.max(most, ++depth);
    else if (mark === "}" || mark === "]") depth -= 1;
  }
  return most;
}

const space = /[ \t\n\r]*/y;
const plain = /(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)(?![\w.+-])/y;
const fragment = /[\w.+-]*/y;
const hex = /[0-9a-fA-F]{4}/y;

/** The end of a match at a place; the place itself where there is none. */
function after(pattern: RegExp, json: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(json) ? pattern.lastIndex : at;
}

/** The end of the string that opens at a place; `whole` is false where it breaks there instead. */
function afterString(json: string, at: number): { at: number; whole: boolean } {
  let next = at + 1;
  while (next < json.length && json[next] !== '"') {
    if (json.charCodeAt(next) < 0x20) return { at: next, whole: false };
    if (json[next] !== "\\") next += 1;
    else if (json[next + 1] === "u") {
      if (after(hex, json, next + 2) === next + 2) return { at: next, whole: false };
      next += 6;
    } else if (next + 1 < json.length && !'"\\/bfnrt'.includes(json[next + 1]!))
      return { at: next, whole: false };
    else next += 2;
  }
  return next < json.length ? { at: next + 1, whole: true } : { at: json.length, whole: false };
}

/** Where text that is not JSON breaks off: the first mark that cannot stand there, or the end (`cut`). */
function whereItBreaks(json: string): { at: number; cut: boolean } {
  const open: ("{" | "[")[] = [];
  let at = 0;
  let awaited: "value" | "first" | "name" | "colon" | "after" = "value";
  while (true) {
    at = after(space, json, at);
    const mark = json[at];
    const inside = open[open.length - 1];
    const closes = mark !== undefined && mark === (inside === "{" ? "}" : inside === "[" ? "]" : undefined);
    if (closes && (awaited === "after" || awaited === "first")) {
      open.pop();
      at += 1;
      awaited = "after";
    } else if (awaited === "after") {
      if (mark !== "," || inside === undefined) break;
      at += 1;
      awaited = inside === "{" ? "name" : "value";
    } else if (awaited === "colon") {
      if (mark !== ":") break;
      at += 1;
      awaited = "value";
    } else if (mark === '"') {
      const string = afterString(json, at);
      at = string.at;
      if (!string.whole) break;
      awaited = inside === "{" && awaited !== "value" ? "colon" : "after";
    } else if (inside === "{" && awaited !== "value") break;
    else if (mark === "{" || mark === "[") {
      open.push(mark);
      at += 1;
      awaited = "first";
    } else {
      const end = after(plain, json, at);
      if (end === at) break;
      at = end;
      awaited = "after";
    }
  }
  // Half a number or half a word at the very end, inside brackets, is a cut too.
  if (open.length > 0 && after(fragment, json, at) === json.length) at = json.length;
  return { at, cut: at >= json.length };
}
