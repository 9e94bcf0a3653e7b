import { type Box, placeCallouts } from "./labels.ts";
import { type Svg, textWidth, wrap } from "./measure.ts";

export interface Words {
  text: string;
  target: { x: number; y: number };
  /** Class of ink: need, mains, tank, rain. */
  ink: string;
  /** Left out where it would cover more than this share of itself with what is drawn: the heading says it too. */
  spare?: number;
}

const SIZE_PX = 15;
const HEIGHT_PX = 18;

/** Writes each label where it covers nothing, broken into lines where the drawing is narrow, with a leader. */
export function writeCallouts(svg: Svg, words: readonly Words[], drawn: readonly Box[], bounds: Box): void {
  const group = svg.append("g").attr("class", "callouts");
  const most_px = Math.max(96, bounds.width * 0.42);
  const set = words.map((w) => wrap(w.text, most_px, SIZE_PX, 3, 500));
  const sizes = set.map((lines, i) => ({
    width: Math.max(...lines.map((line) => textWidth(line, SIZE_PX, 500))),
    height: lines.length * HEIGHT_PX,
    target: words[i]!.target,
  }));
  placeCallouts(sizes, drawn, bounds).forEach((box, i) => {
    if (box.covers > (words[i]!.spare ?? Number.POSITIVE_INFINITY)) return;
    if (box.leader) {
      group
        .append("line")
        .attr("class", "leader")
        .attr("x1", box.leader.x1)
        .attr("y1", box.leader.y1)
        .attr("x2", box.leader.x2)
        .attr("y2", box.leader.y2);
    }
    set[i]!.forEach((line, k) => {
      group
        .append("text")
        .attr("class", `word ${words[i]!.ink}`)
        .attr("x", box.x)
        .attr("y", box.y + (k + 1) * HEIGHT_PX - 5)
        .text(line);
    });
  });
}
