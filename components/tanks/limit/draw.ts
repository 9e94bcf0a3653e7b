import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import type { Drawn } from "../../charts/chart.ts";
import { textWidth } from "../../charts/measure.ts";
import { defineTextures, fills } from "../../charts/textures.ts";
import type { LimitRow } from "./chart.ts";

const BESIDE_PX = 480;
const BAR_PX = 14;

/** Three runs, a bar to each; the one that is the limit stands in full ink. */
export function drawLimit(svgNode: SVGSVGElement, rows: readonly LimitRow[], width: number): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const beside = width >= BESIDE_PX;
  const names = Math.max(...rows.map(({ what }) => textWidth(what, 16, 600)));
  const left = beside ? names + 16 : 0;
  const room = Math.max(...rows.map(({ text }) => textWidth(text, 14, 600))) + 12;
  const most = Math.max(1e-9, ...rows.map(({ more_L_year }) => more_L_year));
  const x = scaleLinear([0, most], [left, Math.min(width - room, left + 360)]);
  const row = beside ? 34 : 54;
  rows.forEach((line, i) => {
    const y = 4 + i * row;
    const bar = beside ? y + 6 : y + 24;
    svg
      .append("text")
      .attr("class", line.isLimit ? "row-name strong" : "row-name")
      .attr("x", 0)
      .attr("y", y + 18)
      .text(line.what);
    const end = x(Math.max(0, line.more_L_year));
    if (end - left > 0.3)
      svg
        .append("rect")
        .attr("x", left)
        .attr("y", bar)
        .attr("width", end - left)
        .attr("height", BAR_PX)
        .attr("fill", line.isLimit ? fills.tank : "none")
        .attr("class", "edge tank");
    svg
      .append("line")
      .attr("class", "ground")
      .attr("x1", left)
      .attr("x2", left)
      .attr("y1", bar - 4)
      .attr("y2", bar + BAR_PX + 4);
    svg
      .append("text")
      .attr("class", "tick full")
      .attr("x", end + 8)
      .attr("y", bar + BAR_PX - 2)
      .text(line.text);
  });
  const height = 8 + rows.length * row;
  return {
    height,
    ruler: { left: 0, right: width, y: height },
    at: () => 0,
    nearest: () => 0,
    line: { top: 0, bottom: 0 },
  };
}
