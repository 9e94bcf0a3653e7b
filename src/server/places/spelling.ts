/** Letters that stay one letter when their marks are taken off, as people without them on their keys type them. */
const plainLetters: Readonly<Record<string, string>> = {
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
  ł: "l",
  đ: "d",
  ð: "d",
  þ: "th",
  ħ: "h",
  ı: "i",
  ə: "e",
};

/** A name as it is compared: lower case, without accents, every run of other signs a space. */
export function folded(name: string): string {
  const lower = name.toLowerCase();
  return plainWords.test(lower) ? lower : unmarked(lower);
}

/** Most names are this already, and folding a hundred thousand of the others would be the slow part. */
const plainWords = /^[a-z0-9]+(?: [a-z0-9]+)*$/;

function unmarked(lower: string): string {
  return lower
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replace(/[ßæœøłđðþħıə]/g, (letter) => plainLetters[letter]!)
    .replace(/['’ʻʼ`]/g, "")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

export const triples = 38 ** 3;

/** The runs of three signs of a folded name with a space at each end, each as a number below `triples`. */
export function triplesOf(name: string): number[] {
  const found: number[] = [];
  let run = 0;
  for (let i = 0; i <= name.length; i++) {
    run = (run * 38 + (i < name.length ? sign(name.charCodeAt(i)) : 0)) % triples;
    if (i > 0 && !found.includes(run)) found.push(run);
  }
  return found;
}

/** Space 0, letters 1–26, digits 27–36, anything else 37. */
function sign(code: number): number {
  if (code === 32) return 0;
  if (code >= 97 && code <= 122) return code - 96;
  if (code >= 48 && code <= 57) return code - 21;
  return 37;
}

/** How far what was typed is from a name. */
export interface Distance {
  /** Letters to change, add, drop or swap with their neighbour to get the whole name. */
  whole: number;
  /** The same to get the beginning of it that fits best. */
  beginning: number;
}

const rows: Uint16Array[] = Array.from({ length: 3 }, () => new Uint16Array(256));

/**
 * Edit distance with swaps of neighbours (optimal string alignment), of the whole name and of its beginning in
 * one pass. @source Damerau (1964), Communications of the ACM 7:171-176; restricted form
 */
export function distance(typed: string, name: string): Distance {
  const width = Math.min(name.length, 255);
  let [before, last, row] = [rows[0]!, rows[1]!, rows[2]!];
  for (let j = 0; j <= width; j++) last[j] = j;
  for (let i = 1; i <= typed.length; i++) {
    row[0] = i;
    for (let j = 1; j <= width; j++) {
      const same = typed.charCodeAt(i - 1) === name.charCodeAt(j - 1);
      let least = Math.min(last[j - 1]! + (same ? 0 : 1), last[j]! + 1, row[j - 1]! + 1);
      const swapped =
        i > 1 &&
        j > 1 &&
        typed.charCodeAt(i - 1) === name.charCodeAt(j - 2) &&
        typed.charCodeAt(i - 2) === name.charCodeAt(j - 1);
      if (swapped) least = Math.min(least, before[j - 2]! + 1);
      row[j] = least;
    }
    [before, last, row] = [last, row, before];
  }
  let beginning = last[0]!;
  for (let j = 1; j <= width; j++) beginning = Math.min(beginning, last[j]!);
  return { whole: last[width]!, beginning };
}
