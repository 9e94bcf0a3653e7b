import { svg } from "lit";

const most = 24;

/** Progress as a tally of strokes, fives crossed: done ones in ink, the rest faint. */
export function tallyOf(done: number, all: number) {
  if (all > most || all === 0) return svg``;
  const strokes = Array.from({ length: all }, (_, i) => i);
  const x = (i: number) => Math.floor(i / 5) * 22 + (i % 5) * 4 + 2;
  const width = x(all - 1) + 6;
  return svg`<svg viewBox="0 0 ${width} 18" width=${width} height="18" aria-hidden="true">
    ${strokes.map((i) => {
      const crosses = i % 5 === 4;
      const at = crosses
        ? { x1: x(i - 4) - 2, y1: 15, x2: x(i - 1) + 2, y2: 3 }
        : { x1: x(i), y1: 2, x2: x(i) - 1, y2: 16 };
      return svg`<line class=${i < done ? "ink" : "hair"} x1=${at.x1} y1=${at.y1} x2=${at.x2} y2=${at.y2} />`;
    })}
  </svg>`;
}
