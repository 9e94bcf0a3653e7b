import type { Sentence, Slot } from "./en/page.ts";

/** Puts a sentence together of words and figures that open: said`${slot} are missing.` */
export function said(
  words: TemplateStringsArray,
  ...between: readonly (string | number | Slot | Sentence)[]
): Sentence {
  const parts = words.flatMap((text, k): (string | Slot)[] => {
    const next = between[k];
    const after =
      next === undefined ? [] : isSentence(next) ? next : [typeof next === "number" ? String(next) : next];
    return [text, ...after];
  });
  return parts.filter((part) => part !== "");
}

function isSentence(part: string | number | Slot | Sentence): part is Sentence {
  return Array.isArray(part);
}

/** A sentence as plain text, for paper and documents. */
export function textOf(sentence: Sentence): string {
  return sentence.map((part) => (typeof part === "string" ? part : part.text)).join("");
}
