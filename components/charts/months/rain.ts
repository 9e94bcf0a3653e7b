import { scaleLinear } from "d3-scale";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Svg } from "../measure.ts";
import { between, steps } from "../steps.ts";
import { fills } from "../textures.ts";

/** Height of the wettest month's strokes. */
export const RAIN_PX = 74;

/** The largest of 1, 2, 5 × 10ⁿ that is not above x. */
export function roundBelow(x: number): number {
  const size = 10 ** Math.floor(Math.log10(x));
  return Math.max(...[1, 2, 5].map((k) => k * size).filter((step) => step <= x * (1 + 1e-9)));
}

/** Rain hangs from the sky line in fine strokes, with one hairline to measure it by; what nothing uses, in thin ones. */
export function drawRain(
  svg: Svg,
  rain_mm_week: readonly number[],
  used_mm_week: readonly number[] | null,
  place: { left: number; right: number; top: number },
  x: (month: number) => number,
  say: Formatter,
): void {
  const { left, right, top } = place;
  const most = Math.max(...rain_mm_week);
  const y = scaleLinear([0, most || 1], [top, top + RAIN_PX]);
  const rule = (at: number, style: string) =>
    svg.append("line").attr("class", style).attr("x1", left).attr("x2", right).attr("y1", at).attr("y2", at);
  svg
    .append("text")
    .attr("class", "tick")
    .attr("x", 0)
    .attr("y", top - 10)
    .text(plate.months.rainAxis(say.depthUnit));
  if (most > 0) {
    const shown = say.depthValue(most);
    const step = roundBelow(shown);
    const at = top + (RAIN_PX * step) / shown;
    rule(at, "hair");
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", left - 8)
      .attr("y", at)
      .attr("dy", "0.33em")
      .attr("text-anchor", "end")
      .text(say.number(step, 2));
  }
  const zero = new Array<number>(12).fill(0);
  const hang = (lower: readonly number[], upper: readonly number[], fill: string) =>
    svg
      .append("path")
      .attr("fill", fill)
      .attr("d", between(lower, upper, x, y));
  const used = used_mm_week ?? rain_mm_week;
  hang(rain_mm_week, used, fills.rainBeyond);
  hang(used, zero, fills.rain);
  if (used_mm_week)
    svg
      .append("path")
      .attr("class", "rain-edge")
      .attr("d", steps(rain_mm_week, x, y));
  rule(top, "ground");
}
