import type { ScaleLinear } from "d3-scale";
import type { Group, Svg } from "./measure.ts";
import { textWidth } from "./measure.ts";

/** Room that the tick labels of an axis take, px. */
export function axisRoom(labels: readonly string[]): number {
  return Math.ceil(Math.max(0, ...labels.map((l) => textWidth(l, 14)))) + 10;
}

/** Hairlines behind, numbers at their left end, the unit at the top. */
export function hairlines(
  svg: Svg,
  y: ScaleLinear<number, number>,
  ticks: readonly number[],
  options: {
    left: number;
    right: number;
    text: (tick: number) => string;
    unit: string;
    unitY: number;
    unitX: number;
  },
): Group {
  const group = svg.append("g");
  for (const tick of ticks) {
    group
      .append("line")
      .attr("class", tick === 0 ? "ground" : "hair")
      .attr("x1", options.left)
      .attr("x2", options.right)
      .attr("y1", y(tick))
      .attr("y2", y(tick));
    group
      .append("text")
      .attr("class", "tick")
      .attr("x", options.left - 8)
      .attr("y", y(tick))
      .attr("dy", "0.33em")
      .attr("text-anchor", "end")
      .text(options.text(tick));
  }
  group
    .append("text")
    .attr("class", "tick")
    .attr("x", options.unitX)
    .attr("y", options.unitY)
    .text(options.unit);
  return group;
}

/** Month letters under the middle of each month; short names where there is room. */
export function monthRow(
  svg: Svg,
  middle: (month: number) => number,
  width: number,
  y: number,
  name: (month: number, form: "short" | "narrow") => string,
): void {
  const form = width / 12 >= 36 ? "short" : "narrow";
  const row = svg.append("g").attr("class", "months");
  for (let m = 0; m < 12; m++) {
    row
      .append("text")
      .attr("class", "tick")
      .attr("x", middle(m))
      .attr("y", y)
      .attr("text-anchor", "middle")
      .text(name(m, form));
  }
}
