import { html, nothing, svg } from "lit";
import { drawingWords } from "../../../src/words/en/editor-drawings.ts";
import type { Editing, Shown } from "../editing.ts";
import { shownValue } from "../shown.ts";
import { numberIn } from "./number-in.ts";

const top = 26;
const floor = 136;
const left = 26;
const right = 116;

/** A tank cut open: what is in it, what stays below the outlet, and where the mains begin and stop to fill it. */
export function tank(editing: Editing, entry: unknown): Shown {
  const capacity_L = numberIn(entry, "capacity_L");
  if (capacity_L === null || capacity_L <= 0) return nothing;
  const level_L = numberIn(entry, "level_L");
  const unusable_L = numberIn(entry, "unusable_L") ?? 0;
  const below = numberIn(entry, "topUp", "belowShare");
  const to = numberIn(entry, "topUp", "toShare");
  const y = (litres: number) => floor - (floor - top) * Math.min(1, Math.max(0, litres / capacity_L));
  const litres = (value: number) => shownValue(editing, ["tanks", 0, "level_L"], value);
  const lines = [
    { at: top, words: drawingWords.full(litres(capacity_L)), isDrawn: true },
    ...(level_L === null
      ? []
      : [{ at: y(level_L), words: drawingWords.level(litres(level_L)), isDrawn: true }]),
    ...(to === null ? [] : [{ at: y(to * capacity_L), words: drawingWords.topUpTo, isDrawn: true }]),
    ...(below === null ? [] : [{ at: y(below * capacity_L), words: drawingWords.topUpBelow, isDrawn: true }]),
    ...(unusable_L > 0
      ? [{ at: y(unusable_L), words: drawingWords.outlet(litres(unusable_L)), isDrawn: true }]
      : []),
  ];
  const apart = spread(lines.map(({ at }) => at));
  const words = lines.map((line) => line.words).join(", ");
  return html`<div class="tank" role="img" aria-label=${drawingWords.tank(words)}>
    <svg viewBox="0 0 300 152" aria-hidden="true">
      <defs>
        <pattern id="stays" width="4" height="4" patternUnits="userSpaceOnUse">
          <rect width="4" height="4" fill="var(--paper)" />
          <line class="stays" x1="0" x2="4" y1="2" y2="2" />
        </pattern>
      </defs>
      ${level_L === null ? nothing : svg`<rect class="water" x=${left} width=${right - left} y=${y(level_L)} height=${floor - y(level_L)} />`}
      ${
        unusable_L > 0
          ? svg`<rect x=${left} width=${right - left} y=${Math.max(y(unusable_L), level_L === null ? 0 : y(level_L))} height=${floor - Math.max(y(unusable_L), level_L === null ? 0 : y(level_L))} fill="url(#stays)" />`
          : nothing
      }
      <path class="wall" d="M${left},${floor}V${top - 6}Q${(left + right) / 2},${top - 18} ${right},${top - 6}V${floor}" />
      <line class="ground" x1=${left - 12} x2=${right + 12} y1=${floor} y2=${floor} />
      ${lines.map(
        (
          { at, words: word },
          i,
        ) => svg`<path class="leader" d="M${right},${at}L${right + 16},${apart[i]}H${right + 22}" />
          <text x=${right + 26} y=${apart[i]! + 4.5}>${word}</text>`,
      )}
    </svg>
  </div>`;
}

/** Heights of words, moved apart so that none covers another, the top one first. */
function spread(heights: readonly number[]): number[] {
  const step = 17;
  const order = heights.map((_, i) => i).sort((a, b) => heights[a]! - heights[b]!);
  const placed = [...heights];
  order.forEach((i, rank) => {
    const before = rank === 0 ? Number.NEGATIVE_INFINITY : placed[order[rank - 1]!]! + step;
    placed[i] = Math.max(heights[i]!, before);
  });
  const over = Math.max(0, placed[order[order.length - 1]!]! - (floor + 6));
  return placed.map((height) => height - over);
}
