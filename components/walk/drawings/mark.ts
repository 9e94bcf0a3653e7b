import { type SVGTemplateResult, svg } from "lit";

/** A measured length on a drawing: a line with ticks at its ends, its words beside it. */
export function lengthMark(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  words: string,
  now = false,
  side: 1 | -1 = 1,
): SVGTemplateResult {
  const far = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [nx, ny] = [(-(y2 - y1) / far) * side, ((x2 - x1) / far) * side];
  const tick = (x: number, y: number) => `M${x - nx * 5} ${y - ny * 5}L${x + nx * 5} ${y + ny * 5}`;
  const [mx, my] = [(x1 + x2) / 2 + nx * 11, (y1 + y2) / 2 + ny * 11];
  const anchor = nx > 0.5 ? "start" : nx < -0.5 ? "end" : "middle";
  return svg`<path class="ink ${now ? "strong" : "thin"}" d="M${x1} ${y1}L${x2} ${y2}${tick(x1, y1)}${tick(x2, y2)}" />
    <text class="measure ${now ? "now" : ""}" x=${mx} y=${my + (ny > 0.5 ? 9 : ny < -0.5 ? 0 : 5)} text-anchor=${anchor}>${words}</text>`;
}
