import { css, html, svg } from "lit";
import type { FirstEntry } from "../../src/survey/first/entries.ts";
import { firstWords } from "../../src/words/en/first.ts";
import type { Formatter } from "../../src/words/format.ts";

/** The need after some entries, for each square metre of garden. */
export interface TapeRow {
  /** The entry that was made last. */
  entry: FirstEntry;
  made: readonly FirstEntry[];
  need_kL_m2: { p10: number; p50: number; p90: number };
}

/** Entries that bear on what the garden needs; roof, tank and today's watering do not. */
const bearing: readonly FirstEntry[] = ["place", "garden", "thirst", "mulch"];

/**
 * The rows with a new answer: in the place of the one for the same entries and of any that came after it. An entry
 * that does not bear on the need makes the last row surer, no more.
 */
export function withRow(rows: readonly TapeRow[], row: TapeRow): TapeRow[] {
  const made = row.made.filter((entry) => bearing.includes(entry));
  const before = rows.filter(
    (one) => one.made.length < made.length && one.made.every((entry) => made.includes(entry)),
  );
  const same = rows.find((one) => one.made.length === made.length);
  const entry = bearing.includes(row.entry) ? row.entry : (same?.entry ?? made.at(-1) ?? row.entry);
  return [...before, { ...row, entry, made }];
}

/** A tape that gets shorter: one line an entry, from the low end to the high one, on one scale. */
export function tape(rows: readonly TapeRow[], area_m2: number, say: Formatter) {
  const most = Math.max(...rows.map((row) => row.need_kL_m2.p90)) || 1;
  const at = (figure: number) => `${Math.round((1000 * figure) / most) / 10}%`;
  return html`<figure class="tape" aria-labelledby="tape-name">
    <figcaption id="tape-name">${firstWords.tape} <span class="quiet">${firstWords.tapeUnit(unitOf(say))}</span></figcaption>
    <ol>
      ${rows.map((row, place) => {
        const { p10, p50, p90 } = row.need_kL_m2;
        const isLast = place === rows.length - 1;
        return html`<li class=${isLast ? "last" : ""}>
          <span class="entry-name">${firstWords.tapeNames[row.entry]}</span>
          ${svg`<svg aria-hidden="true" focusable="false">
            <line class="rail" x1="0" x2="100%" y1="50%" y2="50%" />
            <line class="width" x1=${at(p10)} x2=${at(p90)} y1="50%" y2="50%" />
            <line class="end" x1=${at(p10)} x2=${at(p10)} y1="20%" y2="80%" />
            <line class="end" x1=${at(p90)} x2=${at(p90)} y1="20%" y2="80%" />
            <line class="middle" x1=${at(p50)} x2=${at(p50)} y1="5%" y2="95%" />
          </svg>`}
          <span class="ends">${firstWords.tapeEnds(say.yearlyBare(p10 * area_m2), say.yearlyBare(p90 * area_m2))}</span>
        </li>`;
      })}
    </ol>
  </figure>`;
}

function unitOf(say: Formatter): string {
  return say.system === "us" ? say.volumeUnit : "kL";
}

export const tapeLook = css`
  .tape {
    max-width: 30rem;
  }
  figcaption {
    font-size: 0.9rem;
    font-weight: 650;
    line-height: 1.45;
  }
  figcaption .quiet {
    display: block;
    font-weight: 400;
  }
  .tape ol {
    margin: 0.25rem 0 0;
    padding: 0;
    list-style: none;
  }
  .tape li {
    display: grid;
    grid-template-columns: 3rem minmax(0, 1fr) 5.2rem;
    gap: 0 0.6rem;
    align-items: center;
    min-height: 1.35rem;
    color: var(--grey);
    font-size: 0.85rem;
    line-height: 1.2;
  }
  .tape .last {
    min-height: 1.9rem;
    color: var(--ink);
    font-size: 0.9rem;
    font-weight: 650;
  }
  .tape .entry-name {
    text-align: end;
  }
  .tape .ends {
    white-space: nowrap;
  }
  .tape svg {
    display: block;
    overflow: visible;
    width: 100%;
    height: 1.1rem;
  }
  .tape line {
    stroke: var(--grey);
    stroke-width: 1.5;
  }
  .tape .rail {
    stroke: var(--hair);
    stroke-width: 1;
  }
  .tape .last line {
    stroke: var(--ink);
  }
  .tape .last .width {
    stroke-width: 5;
  }
  .tape .last .rail {
    stroke: var(--hair);
  }
  .tape .last .middle {
    stroke-width: 2.5;
  }
`;
