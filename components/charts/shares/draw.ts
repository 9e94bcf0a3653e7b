import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import type { Formatter } from "../../../src/words/format.ts";
import type { Drawn } from "../chart.ts";
import { fit, textWidth } from "../measure.ts";
import { nearest } from "../size-curve/draw.ts";
import { drawTape } from "../tape.ts";
import { defineTextures, fills } from "../textures.ts";
import type { Parts } from "./prepare.ts";

const BAR_PX = 54;
const LINE_PX = 27;
const TOP_PX = 4;

/** One bar of mains water, each part led by a thread to its own line of words below. */
export function drawShares(node: SVGSVGElement, { parts }: Parts, width: number, say: Formatter): Drawn {
  const svg = select<SVGSVGElement, undefined>(node);
  defineTextures(svg);
  const whole = Math.max(
    1e-9,
    parts.reduce((sum, { length_kL }) => sum + length_kL, 0),
  );
  const x = scaleLinear([0, whole], [1, width - 1]);
  const bottom = TOP_PX + BAR_PX;
  parts.forEach(({ from_kL, length_kL }, k) => {
    const left = x(from_kL);
    svg
      .append("rect")
      .attr("x", left)
      .attr("y", TOP_PX)
      .attr("width", Math.max(1, x(from_kL + length_kL) - left))
      .attr("height", BAR_PX)
      .attr("fill", k % 2 === 0 ? fills.mains : fills.mainsBeyond)
      .attr("class", "edge mains");
  });
  const middles = parts.map(({ from_kL, length_kL }) => x(from_kL + length_kL / 2));
  const foot = bottom + 18 + 42;
  const isToTheLeft = (at: number) => at > width * 0.6;
  const places = parts.map((_, k) => k);
  // words run away from their thread, so that no thread goes through them
  const lines = [
    ...places.filter((k) => isToTheLeft(middles[k]!)),
    ...places.filter((k) => !isToTheLeft(middles[k]!)).reverse(),
  ];
  parts.forEach((part, k) => {
    const y = foot + lines.indexOf(k) * LINE_PX + 12;
    const volume = say.yearly(part.share_kL);
    const at = middles[k]!;
    const isLeft = isToTheLeft(at);
    const volumeWidth = textWidth(volume, 15, 650) + 12;
    const name = fit(part.name, width - volumeWidth - 14, 15, 500);
    const whole_px = textWidth(name, 15, 500) + volumeWidth;
    // where there is no room beside the thread, the words stand under its end
    const from = isLeft ? Math.max(at - 10, whole_px) : Math.min(at + 10, width - whole_px);
    const isBeside = isLeft ? from < at : from > at;
    const end = isBeside ? `V${y - 5}H${at + (isLeft ? -6 : 6)}` : `V${y - 15}`;
    svg
      .append("path")
      .attr("class", "thread-line")
      .attr("d", `M${at},${bottom + 1}${end}`);
    const text = svg
      .append("text")
      .attr("class", "word")
      .attr("x", from)
      .attr("y", y)
      .attr("text-anchor", isLeft ? "end" : "start");
    text.append("tspan").text(`${name}  `);
    text.append("tspan").attr("class", "strong").text(volume);
    text.append("title").text(part.name);
  });
  drawTape(svg, bottom + 10, middles);
  return {
    height: foot + parts.length * LINE_PX + 2,
    ruler: { left: middles[0] ?? 0, right: middles.at(-1) ?? width, y: bottom + 14 },
    at: (i) => middles[i] ?? 0,
    nearest: (px) => nearest(middles, px),
    isUneven: true,
    line: { top: TOP_PX, bottom: bottom + 14 },
  };
}
