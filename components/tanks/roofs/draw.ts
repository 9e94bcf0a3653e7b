import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import type { RoofBrings } from "../../../src/report/roofs-bring.ts";
import { tanks } from "../../../src/words/en/tanks.ts";
import { type Formatter, NBSP } from "../../../src/words/format.ts";
import type { Drawn } from "../../charts/chart.ts";
import { fit, type Svg, textWidth, wrap } from "../../charts/measure.ts";
import { defineTextures, fills } from "../../charts/textures.ts";
import { isTaken, roofsInOrder } from "./prepare.ts";

const words = tanks.roofPlate;
const BESIDE_PX = 560;
const BAR_PX = 18;

/** A roof's slope over its name, then all the rain that falls on it: into the tank, first flush, and the rest. */
export function drawRoofs(
  svgNode: SVGSVGElement,
  roofs: readonly RoofBrings[],
  width: number,
  say: Formatter,
): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const beside = width >= BESIDE_PX;
  const nameWidth = beside ? Math.round(Math.min(220, width * 0.32)) : width - 36;
  const left = beside ? nameWidth + 52 : 0;
  const x = scaleLinear(
    [0, Math.max(1, ...roofs.map(({ falls_L_year }) => falls_L_year))],
    [left, width - 1],
  );
  const top = heads(svg, left, beside, say);
  const row = beside ? 62 : 96;
  roofsInOrder(roofs).forEach((roof, i) => {
    const y = top + i * row;
    gable(svg, 0, y + 8);
    write(svg, 36, y + 17, fit(roof.name, nameWidth, 16, 500), "bed small");
    wrap(aboutRoof(roof, say), nameWidth, 14, 2).forEach((line, k) => {
      write(svg, 36, y + 36 + k * 17, line, "tick");
    });
    const bar = beside ? y + 6 : y + 48;
    rainOn(svg, roof, x, bar);
    const text = isTaken(roof)
      ? `${say.litresBare(roof.sends_L_year)}${NBSP}${say.volumeSymbol}`
      : words.could(`${say.litresBare(roof.sends_L_year)}${NBSP}${say.volumeSymbol}`);
    write(svg, x(0), bar + BAR_PX + 17, text, isTaken(roof) ? "word small tank" : "tick");
    if (isTaken(roof)) flushWord(svg, roof, x, bar, textWidth(text, 14, 500), say);
  });
  const foot = top + roofs.length * row;
  return {
    height: foot,
    ruler: { left: 0, right: width, y: foot },
    at: () => 0,
    nearest: () => 0,
    line: { top: 0, bottom: 0 },
  };
}

function write(svg: Svg, x: number, y: number, text: string, style: string): void {
  svg.append("text").attr("class", style).attr("x", x).attr("y", y).text(text);
}

function aboutRoof({ area_m2, tank, idle }: RoofBrings, say: Formatter): string {
  const where = tank === null ? words.unconnected : idle ? words.toIdle(tank) : words.to(tank);
  return `${say.area(area_m2)}, ${where}`;
}

/** A gable with its gutter, as a child draws a house. */
function gable(svg: Svg, x: number, y: number): void {
  svg
    .append("path")
    .attr("class", "wall")
    .attr("d", `M${x + 1},${y + 10}L${x + 13},${y}L${x + 25},${y + 10}`);
  svg
    .append("path")
    .attr("class", "pipe")
    .attr("d", `M${x + 4},${y + 9}V${y + 20}H${x + 22}V${y + 9}`);
}

function rainOn(svg: Svg, roof: RoofBrings, x: (litres: number) => number, y: number): void {
  const block = (from: number, to: number, fill: string, style: string) => {
    if (x(to) - x(from) < 0.3) return;
    svg
      .append("rect")
      .attr("x", x(from))
      .attr("y", y)
      .attr("width", x(to) - x(from))
      .attr("height", BAR_PX)
      .attr("fill", fill)
      .attr("class", style);
  };
  const { falls_L_year, sends_L_year, firstFlush_L_year } = roof;
  if (!isTaken(roof)) {
    block(0, falls_L_year, fills.rainBeyond, "edge rain");
    block(0, sends_L_year, "none", "could");
    return;
  }
  block(0, falls_L_year, "none", "bar hollow");
  block(0, sends_L_year, fills.tank, "edge tank");
  block(sends_L_year, sends_L_year + firstFlush_L_year, fills.tankBeyond, "edge tank");
}

/** "first flush 9,800 L" under its own part of the bar, where it does not touch what stands before it. */
function flushWord(
  svg: Svg,
  { sends_L_year, firstFlush_L_year, falls_L_year }: RoofBrings,
  x: (litres: number) => number,
  bar: number,
  taken: number,
  say: Formatter,
): void {
  if (firstFlush_L_year < 1) return;
  const text = `${words.flush} ${say.litresBare(firstFlush_L_year)}${NBSP}${say.volumeSymbol}`;
  const room = textWidth(text, 14);
  const wanted = x(sends_L_year + firstFlush_L_year / 2) - room / 2;
  const at = Math.min(Math.max(wanted, x(0) + taken + 18), x(falls_L_year) + 200);
  write(
    svg,
    Math.min(at, Math.max(x(0) + taken + 18, x(sends_L_year + firstFlush_L_year) - 8)),
    bar + BAR_PX + 17,
    text,
    "tick",
  );
}

/** What the inks are, each word in its own. */
function heads(svg: Svg, left: number, beside: boolean, say: Formatter): number {
  write(svg, left, 14, words.axis(say.volumeUnit), "tick");
  let at = left;
  const parts = [
    { text: words.sends, style: "word small tank" },
    { text: words.flush, style: "word small need" },
    ...(beside ? [{ text: words.other, style: "tick" }] : []),
  ];
  for (const { text, style } of parts) {
    write(svg, at, 33, text, style);
    at += textWidth(text, 14, 500) + 16;
  }
  if (!beside) write(svg, left, 51, words.other, "tick");
  return beside ? 46 : 64;
}
