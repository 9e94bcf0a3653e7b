import type { Sentence } from "./en/page.ts";

/** Signs of no script, around the address and the text of a figure. */
const [begins, parts, ends] = ["\uE000", "\uE001", "\uE002"];
const figure = new RegExp(`(${begins}[^${ends}]*${ends})`);

/** A figure within a sentence, with the address at which it opens. */
export function marked(text: string, at: string): string {
  return `${begins}${at}${parts}${text}${ends}`;
}

/** A sentence taken apart at the figures marked in it. */
export function figuresIn(text: string): Sentence {
  return text.split(figure).flatMap((part): Sentence => {
    if (!part.startsWith(begins)) return part === "" ? [] : [part];
    const [at = "", shown = ""] = part.slice(1, -1).split(parts);
    return [{ at, text: shown }];
  });
}

/** The sentence as it reads, without its marks. */
export function unmarked(text: string): string {
  return figuresIn(text)
    .map((part) => (typeof part === "string" ? part : part.text))
    .join("");
}
