import { svg } from "lit";

const across = 6;
const cell = 54;

/** The cans as they stand on the grid, filled as far as they caught; the driest quarter is named. */
export function cansDrawing(caught: readonly number[]) {
  const count = Math.max(caught.length, across * 2);
  const rows = Math.ceil(count / across);
  const most = Math.max(...caught, 1);
  const driest = new Set(
    caught
      .map((mL, i) => ({ mL, i }))
      .sort((a, b) => a.mL - b.mL)
      .slice(0, Math.floor(caught.length / 4))
      .map(({ i }) => i),
  );
  return svg`<svg viewBox="0 0 330 ${rows * cell + 6}" width="330" height=${rows * cell + 6} aria-hidden="true">
    ${Array.from({ length: rows * across }, (_, i) => {
      const [x, y] = [(i % across) * cell + 27, Math.floor(i / across) * cell + 4];
      const mL = caught[i];
      const high = mL === undefined ? 0 : (26 * mL) / most;
      return svg`${mL === undefined ? "" : svg`<rect class="tank-water" x=${x - 12} y=${y + 28 - high} width="24" height=${high} />`}
        <path class="ink ${mL === undefined ? "thin dashed" : driest.has(i) ? "strong" : "thin"}" d="M${x - 12} ${y}V${y + 28}H${x + 12}V${y}" />
        ${mL === undefined ? "" : svg`<text class=${driest.has(i) ? "measure now" : "small"} x=${x} y=${y + 44} text-anchor="middle">${mL}</text>`}`;
    })}
  </svg>`;
}
