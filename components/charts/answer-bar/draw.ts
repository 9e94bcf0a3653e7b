import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { Drawn } from "../chart.ts";
import { spreadRow } from "../labels.ts";
import { type Svg, textWidth } from "../measure.ts";
import { defineTextures, fills } from "../textures.ts";
import type { AnswerBar, Bar } from "./prepare.ts";

const words = plate.bar;
const BAR_PX = 30;

interface RowLabel {
  text: string;
  ink: string;
  x: number;
}

/** Labels of one row above a bar, moved apart where they would touch. */
function writeRow(svg: Svg, labels: readonly RowLabel[], y: number, width: number): void {
  const xs = spreadRow(
    labels.map((l) => ({ x: l.x, width: textWidth(l.text, 15, 500) })),
    0,
    width,
    14,
  );
  labels.forEach((label, i) => {
    svg.append("text").attr("class", `word ${label.ink}`).attr("x", xs[i]!).attr("y", y).text(label.text);
  });
}

function block(svg: Svg, x: number, y: number, width: number, fill: string, edge: string): void {
  if (width < 0.5) return;
  svg
    .append("rect")
    .attr("x", x)
    .attr("y", y)
    .attr("width", width)
    .attr("height", BAR_PX)
    .attr("fill", fill)
    .attr("class", `edge ${edge}`);
}

/** A dimension line as on a plan: a stroke between two ticks, with its words beside or on it. */
function dimension(svg: Svg, x1: number, x2: number, y: number, text: string, width: number): void {
  const group = svg.append("g");
  const w = textWidth(text, 15, 650);
  const inside = x2 - x1 > w + 40;
  const x = inside ? (x1 + x2 - w) / 2 : x1 - w - 10 >= 0 ? x1 - w - 10 : Math.min(x2 + 10, width - w);
  const line = inside ? `M${x1},${y}H${x - 6}M${x + w + 6},${y}H${x2}` : `M${x1},${y}H${x2}`;
  group
    .append("path")
    .attr("class", "measure")
    .attr("d", `M${x1},${y - 6}V${y + 6}M${x2},${y - 6}V${y + 6}${line}`);
  group
    .append("text")
    .attr("class", "word strong")
    .attr("x", x)
    .attr("y", y + 5)
    .text(text);
}

/** The spread of years about the mean: a dot, and a whisker from the wet year to the dry one. */
function whisker(
  svg: Svg,
  { bars, wet_kL, dry_kL }: AnswerBar,
  x: (kL: number) => number,
  y: number,
  width: number,
  say: Formatter,
): number {
  if (wet_kL === null || dry_kL === null) return y;
  const [low, high] = [x(wet_kL), x(dry_kL)];
  svg
    .append("path")
    .attr("class", "measure")
    .attr("d", `M${low},${y - 5}V${y + 5}M${high},${y - 5}V${y + 5}M${low},${y}H${high}`);
  svg
    .append("circle")
    .attr("class", "dot")
    .attr("cx", x(bars.at(-1)!.mains_kL))
    .attr("cy", y)
    .attr("r", 4);
  const labels = [`${words.wet} ${say.yearlyBare(wet_kL)}`, `${words.dry} ${say.yearlyBare(dry_kL)}`];
  const widths = labels.map((l) => textWidth(l, 14));
  const xs = spreadRow(
    [
      { x: low - widths[0]!, width: widths[0]! },
      { x: high, width: widths[1]! },
    ],
    0,
    width,
    12,
  );
  labels.forEach((text, i) => {
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", xs[i]!)
      .attr("y", y + 24)
      .text(text);
  });
  return y + 30;
}

function barLabels(bar: Bar, x: (kL: number) => number, say: Formatter): RowLabel[] {
  const labels = [{ text: words.label(bar.name, say.yearly(bar.mains_kL)), ink: "mains", x: 0 }];
  if (bar.tanks_kL > 0)
    labels.push({ text: words.tanks(say.yearly(bar.tanks_kL)), ink: "tank", x: x(bar.mains_kL) });
  return labels;
}

/** Draws the bars to the width there is. */
export function drawAnswerBar(
  svgNode: SVGSVGElement,
  answer: AnswerBar,
  width: number,
  say: Formatter,
): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const x = scaleLinear([0, answer.most_kL || 1], [0.5, width - 1]);
  const { today } = answer;
  const last_kL = answer.bars.at(-1)!.mains_kL;
  let y = 0;
  if (today) {
    const both = Math.min(today.mains_kL, last_kL);
    y += 16;
    writeRow(svg, barLabels(today, x, say), y, width);
    y += 8;
    block(svg, x(0), y, x(both) - x(0), fills.mains, "mains");
    block(svg, x(both), y, x(today.mains_kL) - x(both), fills.mainsBeyond, "beyond");
    y += BAR_PX + 18;
    const change_kL = today.mains_kL - last_kL;
    if (Math.abs(x(change_kL) - x(0)) > 1) {
      const text = (change_kL > 0 ? words.lessBy : words.moreBy)(say.yearly(Math.abs(change_kL)));
      dimension(svg, x(both), x(Math.max(today.mains_kL, last_kL)), y, text, width);
      y += 20;
    }
  }
  for (const bar of answer.bars) {
    y += 16;
    writeRow(svg, barLabels(bar, x, say), y, width);
    y += 8;
    block(svg, x(0), y, x(bar.mains_kL) - x(0), fills.mains, "mains");
    block(svg, x(bar.mains_kL), y, x(bar.tanks_kL) - x(0), fills.tank, "tank");
    y += BAR_PX + 16;
  }
  y = whisker(svg, answer, x, y, width, say);
  return {
    height: y,
    ruler: { left: 0, right: width, y },
    at: () => 0,
    nearest: () => 0,
    line: { top: 0, bottom: 0 },
  };
}
