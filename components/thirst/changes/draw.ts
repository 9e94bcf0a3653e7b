import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import type { Formatter } from "../../../src/words/format.ts";
import type { Drawn } from "../../charts/chart.ts";
import { type Svg, textWidth, wrap } from "../../charts/measure.ts";
import { defineTextures } from "../../charts/textures.ts";
import { type ChangeRow, type Changes, moreText } from "./prepare.ts";

const BESIDE_PX = 560;
const BAR_PX = 13;

/** A bar a line; the upright through all of them is the bed as it is. What is more than that is open, what is less is missing from it. */
export function drawChanges(svgNode: SVGSVGElement, changes: Changes, width: number, say: Formatter): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const { rows, most_L } = changes;
  const beside = width >= BESIDE_PX;
  const nameWidth = beside ? Math.round(Math.min(250, width * 0.36)) : width - 4;
  const left = beside ? nameWidth + 14 : 0;
  const texts = rows.map((row) => figureText(row, most_L, say));
  const right = width - Math.max(...texts.map((text) => textWidth(text, 14, 600))) - 12;
  const x = scaleLinear([0, most_L || 1], [left, right]);
  const asIs = x(rows[0]!.need_L_year);
  let y = 4;
  rows.forEach((row, i) => {
    const lines = wrap(row.what, nameWidth, 16, 2, row.kind === "as-is" ? 600 : 400);
    lines.forEach((line, k) => {
      svg
        .append("text")
        .attr("class", row.kind === "as-is" ? "row-name strong" : "row-name")
        .attr("x", 0)
        .attr("y", y + 16 + k * 19)
        .text(line);
    });
    const bar = beside ? y + (lines.length * 19) / 2 - 2 : y + lines.length * 19 + 5;
    drawBar(svg, row, bar, x, asIs);
    if (!beside) upright(svg, "thread-of", asIs, bar - 4, bar + BAR_PX + 4);
    if (!beside) upright(svg, "ground", left, bar - 4, bar + BAR_PX + 4);
    const end = Math.max(x(row.need_L_year), row.kind === "as-is" ? 0 : asIs);
    svg
      .append("text")
      .attr("class", "tick full")
      .attr("x", end + 8)
      .attr("y", bar + BAR_PX - 2)
      .text(texts[i]!);
    y = Math.max(y + lines.length * 19 + 12, bar + BAR_PX + 13);
  });
  if (beside) upright(svg, "thread-of", asIs, 4, y - 6);
  if (beside) upright(svg, "ground", left, 4, y - 6);
  return {
    height: y,
    ruler: { left: 0, right: width, y },
    at: () => 0,
    nearest: () => 0,
    line: { top: 0, bottom: 0 },
  };
}

function upright(svg: Svg, style: string, x: number, y1: number, y2: number): void {
  svg.append("line").attr("class", style).attr("x1", x).attr("x2", x).attr("y1", y1).attr("y2", y2);
}

function figureText({ kind, need_L_year, more_L_year }: ChangeRow, most_L: number, say: Formatter): string {
  return kind === "as-is"
    ? `${say.litresBare(need_L_year)} ${say.volumeSymbol}`
    : moreText(more_L_year, most_L, say);
}

function drawBar(svg: Svg, row: ChangeRow, y: number, x: (litres: number) => number, asIs: number): void {
  const end = x(row.need_L_year);
  const block = (from: number, to: number, style: string) => {
    if (to - from < 0.3) return;
    svg
      .append("rect")
      .attr("class", style)
      .attr("x", from)
      .attr("y", y)
      .attr("width", to - from)
      .attr("height", BAR_PX);
  };
  block(x(0), Math.min(end, asIs), "bar");
  if (end > asIs) block(asIs, end, "lacks");
}
