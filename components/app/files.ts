import type { Which } from "./messages.ts";

/** A file put in: what it is by what it holds, not by its name. */
export interface PutIn {
  of: Which;
  name: string;
  text: string;
}

export type Refused = { name: string; why: "not-text" | "too-large" | "unread" };

export const LIMIT_BYTES = 20_000_000;

/** A survey begins with a brace; a record has a header line with a date and separators. Null: neither. */
export function kindOf(text: string): Which | null {
  const start = text.replace(/^\uFEFF/, "").trimStart();
  if (start.startsWith("{") || start.startsWith("[")) return "survey";
  const header = start.split(/\r?\n/, 1)[0] ?? "";
  return /[,;\t|]/.test(header) && !header.includes("\u0000") ? "weather" : null;
}

/** Reads what was dropped or chosen; `wanted` says what a chooser asked for, whatever the file looks like. */
export async function readPutIn(file: File, wanted?: Which): Promise<PutIn | Refused> {
  if (file.size > LIMIT_BYTES) return { name: file.name, why: "too-large" };
  let text: string;
  try {
    text = await file.text();
  } catch {
    return { name: file.name, why: "unread" };
  }
  const of = wanted ?? kindOf(text);
  return of === null ? { name: file.name, why: "not-text" } : { of, name: file.name, text };
}
