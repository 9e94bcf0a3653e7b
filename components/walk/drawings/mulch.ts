import { svg } from "lit";

/** A ruler pushed down through mulch to the soil. */
export function mulchDrawing(depth_mm: number | null, words: string) {
  const deep = Math.min(100, Math.max(8, depth_mm ?? 50));
  const top = 130 - deep;
  const chips = Array.from({ length: 46 }, (_, i) => {
    const x = 24 + ((i * 61) % 282);
    const y = top + 4 + ((i * 37) % Math.max(1, deep - 8));
    const turn = (i * 53) % 180;
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
