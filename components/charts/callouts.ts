import { type Box, placeCallouts } from "./labels.ts";
import { type Svg, textWidth } from "./measure.ts";

export interface Words {
  text: string;
  target: { x: number; y: number };
  /** Class of ink: need, mains, tank, rain. */
  ink: string;
}

const SIZE_PX = 15;
const HEIGHT_PX = 18;

/** Writes each label where it covers nothing, with a leader to what it names. */
export function writeCallouts(svg: Svg, words: readonly Words[], drawn: readonly Box[], bounds: Box): void {
  const group = svg.append("g").attr("class", "callouts");
  const placed = placeCallouts(
    words.map((w) => ({ width: textWidth(w.text, SIZE_PX, 500), height: HEIGHT_PX, target: w.target })),
    drawn,
    bounds,
  );
  placed.forEach((box, i) => {
    const { text, ink } = words[i]!;
    if (box.leader) {
      group
        .append("line")
        .attr("class", "leader")
        .attr("x1", box.leader.x1)
        .attr("y1", box.leader.y1)
        .attr("x2", box.leader.x2)
        .attr("y2", box.leader.y2);
    }
    group
      .append("text")
      .attr("class", `word ${ink}`)
      .attr("x", box.x)
      .attr("y", box.y + HEIGHT_PX - 5)
      .text(text);
  });
}
