/**
 * How something was measured, as `found` keeps it: `WAY`, or `WAY 3,1` with the number of readings of each blank
 * where any was read more than once; several shapes as `rectangle 1,1 + circle 1 - triangle`; `paced` before it
 * where lengths were paced, the paces' own calibration coming first.
 */
export interface Term {
  /** Added or taken away. */
  sign: 1 | -1;
  way: string;
  /** Number of readings of each blank; null where it is one each and the rest the list's. */
  counts: number[] | null;
}

export interface How {
  paced: boolean;
  terms: Term[];
}

const term = /^([a-z]+(?:-[a-z]+)*)(?: (\d+(?:,\d+)*))?$/;

/** Null where the text is none of this form: something typed, or from another program. */
export function readHow(text: string): How | null {
  const paced = text.startsWith("paced ");
  const parts = (paced ? text.slice("paced ".length) : text).split(/ ([+-]) /);
  const terms: Term[] = [];
  for (let i = 0; i < parts.length; i += 2) {
    const match = term.exec(parts[i]!);
    if (!match) return null;
    const counts = match[2] === undefined ? null : match[2].split(",").map(Number);
    terms.push({ sign: i > 0 && parts[i - 1] === "-" ? -1 : 1, way: match[1]!, counts });
  }
  return { paced, terms };
}

export function writeHow({ paced, terms }: How): string {
  const words = terms.map(({ sign, way, counts }, i) => {
    const joined = i === 0 ? "" : sign < 0 ? " - " : " + ";
    return `${joined}${way}${counts ? ` ${counts.join(",")}` : ""}`;
  });
  return `${paced ? "paced " : ""}${words.join("")}`;
}
