import { select } from "d3-selection";
import { shortName } from "../../../src/words/en/page.ts";
import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { areaUnit } from "../../../src/words/thirst-spoken.ts";
import type { Drawn } from "../../charts/chart.ts";
import { fit, textWidth } from "../../charts/measure.ts";
import { perAreaText } from "../order/prepare.ts";
import type { GuessResult } from "./prepare.ts";

const words = thirst.guess;
const ROW_PX = 42;

/** The guess on the left, the order found on the right, a thread from each bed to where it stands; litres between. */
export function drawGuess(
  svgNode: SVGSVGElement,
  { lines }: GuessResult,
  width: number,
  say: Formatter,
): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  const narrow = width < 520;
  const name_px = narrow ? 14 : 16;
  const side = Math.round(width * (narrow ? 0.36 : 0.34));
  const numberWidth = textWidth(`${lines.length}. `, name_px) + 6;
  const right = width - side - (narrow ? 0 : 70);
  const top = 34;
  const y = (place: number) => top + place * ROW_PX + 12;
  const write = (x: number, at: number, text: string, style: string, anchor = "start") =>
    svg.append("text").attr("class", style).attr("x", x).attr("y", at).attr("text-anchor", anchor).text(text);
  write(0, 14, fit(words.guessed, side, 14), "tick");
  write(right, 14, fit(words.found, width - right, 14), "tick");
  for (const line of lines) {
    const { bed, guessed, found } = line;
    svg
      .append("line")
      .attr("class", guessed === found ? "thread-right" : "leader")
      .attr("x1", side + 6)
      .attr("y1", y(guessed) - 5)
      .attr("x2", right - 8)
      .attr("y2", y(found) - 5);
    const label = (x: number, place: number) => {
      write(x, y(place), `${place + 1}.`, "tick");
      const room = (narrow ? side : side - 4) - numberWidth;
      const text = write(x + numberWidth, y(place), fit(shortName(bed.name), room, name_px, 500), "bed");
      text.classed(narrow ? "tiny" : "small", true);
    };
    label(0, guessed);
    label(right, found);
    if (!narrow) write(width, y(found), perAreaText(bed.gross_L_m2_year, say), "tick full", "end");
    if (line.more_L_m2 !== null) {
      const between = (narrow ? words.betweenShort : words.between)(
        `${perAreaText(line.more_L_m2, say)} ${say.volumeSymbol}`,
        areaUnit(say),
      );
      write(right + numberWidth, y(found) + 20, fit(between, width - right - numberWidth, 13), "outlet-word");
    }
  }
  return {
    height: top + lines.length * ROW_PX,
    ruler: { left: 0, right: width, y: 0 },
    at: () => 0,
    nearest: () => 0,
    line: { top: 0, bottom: 0 },
  };
}
