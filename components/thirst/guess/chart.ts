import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { areaUnit, overArea } from "../../../src/words/thirst-spoken.ts";
import type { Chart } from "../../charts/chart.ts";
import { drawGuess } from "./draw.ts";
import type { GuessResult } from "./prepare.ts";

const words = thirst.guess;

export function guessChart(result: GuessResult, say: Formatter): Chart {
  const { lines, right, near, farthest } = result;
  const [bed, guessed, found, litres] = words.columns;
  const place = (x: number) => say.number(x, 0);
  const parts = [words.score(right, lines.length)];
  if (farthest && near > right) parts.push(words.near(near, lines.length));
  if (farthest) {
    const places = Math.abs(farthest.guessed - farthest.found);
    if (places > 1) parts.push(words.farthest(farthest.bed.name, places, farthest.found < farthest.guessed));
  }
  return {
    id: "order-guessed-and-found",
    finding: parts.join(" "),
    about: words.about,
    readings: [],
    start: 0,
    table: {
      columns: [
        { name: bed! },
        { name: guessed!, show: place },
        { name: found!, show: place },
        { name: `${litres}, ${say.volumeSymbol}/${areaUnit(say)}`, show: (x) => say.number(x, 1) },
      ],
      rows: lines.map((line) => [
        line.bed.name,
        line.guessed + 1,
        line.found + 1,
        overArea(line.bed.gross_L_m2_year, say),
      ]),
    },
    draw: (svg, width) => drawGuess(svg, result, width, say),
  };
}
