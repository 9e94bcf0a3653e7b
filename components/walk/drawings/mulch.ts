import { svg } from "lit";

/** An even scatter without a pattern. */
const part = (i: number, step: number) => ((i + 1) * step) % 1;

/** A ruler pushed down through mulch to the soil. */
export function mulchDrawing(depth_mm: number | null, words: string) {
  const deep = Math.min(100, Math.max(8, depth_mm ?? 50));
  const top = 130 - deep;
  const chips = Array.from({ length: 64 }, (_, i) => {
    const x = 18 + 290 * part(i, 0.618034);
    const y = top + 4 + Math.max(1, deep - 8) * part(i, 0.7548777);
    const turn = 180 * part(i, 0.5698403);
    return svg`<path class="ink thin" transform="translate(${x} ${y}) rotate(${turn})" d="M-6 -2h12v4h-12z" />`;
  });
  return svg`<svg viewBox="0 0 330 176" width="330" height="176" aria-hidden="true">
    <rect class="ground" x="10" y="130" width="310" height="40" />
    <path class="ink" d="M10 130H320" />
    ${chips}
    <path class="leaf" d="M158 14h26V136l-13 8 -13 -8z" />
    ${Array.from({ length: 11 }, (_, i) => svg`<path class="ink thin" d="M158 ${130 - i * 10}h${i % 5 === 0 ? 12 : 7}" />`)}
    <path class="ink strong" d="M206 ${top}V130M200 ${top}h12M200 130h12" />
    <text class="measure now" x="218" y=${(top + 130) / 2 + 5}>${words}</text>
  </svg>`;
}
