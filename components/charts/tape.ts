import type { Svg } from "./measure.ts";

/** A tape along the foot of a drawing, to read it by: a hairline with a long tick at each place named. */
export function drawTape(svg: Svg, y: number, long: readonly number[], short: readonly number[] = []): void {
  const ticks = [...long.map((x) => `M${x},${y}v7`), ...short.map((x) => `M${x},${y}v3.5`)].join("");
  const all = [...long, ...short];
  if (all.length === 0) return;
  svg
    .append("path")
    .attr("class", "tape")
    .attr("d", `M${Math.min(...all)},${y}H${Math.max(...all)}${ticks}`);
}
