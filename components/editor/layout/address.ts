import { type Address, addressOfText, type Draft, keyOf, pathOf } from "../../../src/survey/edit/document.ts";
import { patternOf } from "../../../src/survey/edit/sorts.ts";
import { type Part, partAt, places, type Sheet } from "./screens.ts";

/** A screen of the editor, by its address: blank, `beds`, `beds/oval`, `beds/oval/soil`. */
export interface Screen {
  part: Part | null;
  id: string | null;
  sheet: Sheet | null;
}

export function screenAt(at: string): Screen {
  const [slug = "", id = "", sheetSlug = ""] = at.split("/").map(decode);
  const part = partAt(slug) ?? null;
  if (!part || !("list" in part) || id === "") return { part, id: null, sheet: null };
  return { part, id, sheet: part.sheets.find((sheet) => sheet.slug === sheetSlug) ?? null };
}

function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/** Where a field, or what is around it, is edited. */
export function screenOf(document: Draft, address: Address): string {
  const path = pathOf(document, address) ?? [];
  const [section] = path;
  const first = address[1];
  const id = typeof first === "object" ? first.id : "";
  const pattern = patternOf(path);
  const found =
    places.get(pattern) ??
    [...places].find(([known]) => known.startsWith(`${pattern}.`) || known.startsWith(`${pattern}[`))?.[1] ??
    [...places].find(([known]) => pattern.startsWith(known))?.[1];
  if (!found) return typeof section === "string" && partAt(section) ? section : "";
  if (!("list" in found.part)) return found.part.slug;
  return [found.part.slug, id, found.sheet].filter((part) => part !== "").join("/");
}

/** The screen of the field at a path such as `beds[2].area_m2`, and the field's key on it. */
export function screenOfPath(document: Draft, path: string): { at: string; key: string } {
  const address = addressOfText(document, path);
  return { at: screenOf(document, address), key: keyOf(address) };
}
