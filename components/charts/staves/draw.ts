import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { plate } from "../../../src/words/en/plates.ts";
import { type Formatter, NBSP } from "../../../src/words/format.ts";
import { monthRow } from "../axis.ts";
import type { Drawn } from "../chart.ts";
import { type Svg, wrap } from "../measure.ts";
import { between, steps } from "../steps.ts";
import { drawTape } from "../tape.ts";
import { defineTextures, fills } from "../textures.ts";
import type { Stave, Staves } from "./prepare.ts";

/** From this width on a bed's name stands beside its line; below it, above. */
const BESIDE_PX = 620;
const SQUARE_PX = 30;

const NAME_PX = 17;
const SMALL_PX = 14;
const LINE_PX = 18;

interface Layout {
  beside: boolean;
  /** Where the months run. */
  left: number;
  right: number;
  nameX: number;
  /** Room for the name and what is said of the bed. */
  nameWidth: number;
  bars: number;
}

/** A stave with its words broken into lines, and how high it is with them. */
interface SetStave {
  stave: Stave;
  name: string[];
  about: string[];
  peak: string;
  month: string;
  height: number;
}

function layout(width: number): Layout {
  const nameX = SQUARE_PX + 12;
  if (width < BESIDE_PX)
    return { beside: false, left: 0, right: width, nameX, nameWidth: width - nameX - 140, bars: 38 };
  const nameWidth = Math.round(Math.min(240, width * 0.31));
  return { beside: true, left: nameX + nameWidth + 22, right: width - 152, nameX, nameWidth, bars: 44 };
}

function set(stave: Stave, l: Layout, say: Formatter): SetStave {
  const name = wrap(stave.name, l.nameWidth, NAME_PX, 2, 500);
  const about = wrap(stave.about, l.nameWidth, SMALL_PX, 2);
  const words = (name.length + about.length) * LINE_PX + 2;
  const peak =
    stave.peak === null
      ? plate.staves.never
      : `${say.litresBare(stave.need_L_week[stave.peak]!)}${NBSP}${say.volumeSymbol}`;
  const month = stave.peak === null ? "" : plate.staves.inMonth(say.month(stave.peak));
  const height = l.beside ? Math.max(words, l.bars + 2) + 14 : words + 8 + l.bars + 22;
  return { stave, name, about, peak, month, height };
}

function bars(svg: Svg, stave: Stave, l: Layout, ground: number): void {
  const month = (l.right - l.left) / 12;
  const y = scaleLinear([0, stave.most_L || 1], [ground, ground - l.bars]);
  const gap = Math.max(1.5, month * 0.16);
  stave.need_L_week.forEach((need, m) => {
    const high = y(need);
    if (ground - high < 0.3) return;
    svg
      .append("rect")
      .attr("class", stave.watered ? "bar" : "bar hollow")
      .attr("x", l.left + m * month + gap)
      .attr("y", high)
      .attr("width", month - 2 * gap)
      .attr("height", ground - high);
  });
  svg
    .append("line")
    .attr("class", "ground thin")
    .attr("x1", l.left)
    .attr("x2", l.right)
    .attr("y1", ground)
    .attr("y2", ground);
  if (stave.today_L_week && Math.max(...stave.today_L_week) > 0) {
    const x = (m: number) => l.left + m * month;
    svg
      .append("path")
      .attr("class", "today")
      .attr("d", steps(stave.today_L_week, x, y));
  }
}

/** Writes a stave's words; returns what shows a month in place of its peak. */
function words(
  svg: Svg,
  { stave, name, about, peak, month }: SetStave,
  l: Layout,
  top: number,
  width: number,
  say: Formatter,
): (m: number) => void {
  const side = Math.max(2, stave.side * SQUARE_PX);
  svg
    .append("rect")
    .attr("class", "plot")
    .attr("x", SQUARE_PX - side + 0.5)
    .attr("y", top + 16 - Math.min(16, side))
    .attr("width", side)
    .attr("height", side);
  const write = (x: number, y: number, value: string, style: string, anchor = "start") =>
    svg.append("text").attr("class", style).attr("x", x).attr("y", y).attr("text-anchor", anchor).text(value);
  name.forEach((line, i) => {
    write(l.nameX, top + 14 + i * LINE_PX, line, "bed")
      .append("title")
      .text(stave.name);
  });
  about.forEach((line, i) => {
    write(l.nameX, top + 14 + (name.length + i) * LINE_PX, line, "tick");
  });
  const volume = write(width, top + 14, peak, "bed", "end");
  const when = write(width, top + 14 + LINE_PX, month, "tick", "end");
  return (m) => {
    volume.text(`${say.litresBare(stave.need_L_week[m]!)}${NBSP}${say.volumeSymbol}`);
    when.text(plate.staves.inMonth(say.month(m)));
  };
}

function rainStave(
  svg: Svg,
  rain_mm_week: readonly number[],
  l: Layout,
  width: number,
  say: Formatter,
): number {
  const most = Math.max(...rain_mm_week);
  const month = say.month(rain_mm_week.indexOf(most));
  const top = l.beside ? 6 : 26;
  const y = scaleLinear([0, most || 1], [top, top + 42]);
  const write = (x: number, at: number, value: string, style: string, anchor = "start") =>
    svg
      .append("text")
      .attr("class", style)
      .attr("x", x)
      .attr("y", at)
      .attr("text-anchor", anchor)
      .text(value);
  if (l.beside) {
    write(l.nameX, top + 14, plate.staves.rain, "bed rain");
    write(l.nameX, top + 14 + LINE_PX, plate.staves.rainUnit, "tick");
    write(width, top + 14, say.depth(most), "bed rain", "end");
    write(width, top + 14 + LINE_PX, plate.staves.inMonth(month), "tick", "end");
  } else {
    write(0, 16, plate.staves.rain, "bed rain");
    write(width, 16, `${say.depth(most)} ${plate.staves.inMonth(month)}`, "bed rain", "end");
  }
  const step = (l.right - l.left) / 12;
  const zero = new Array<number>(12).fill(0);
  svg
    .append("path")
    .attr("fill", fills.rain)
    .attr(
      "d",
      between(rain_mm_week, zero, (m) => l.left + m * step, y),
    );
  svg
    .append("line")
    .attr("class", "ground thin")
    .attr("x1", l.left)
    .attr("x2", l.right)
    .attr("y1", top)
    .attr("y2", top);
  return top;
}

/** Rain first, hanging; then a line a bed, each by its own measure, like parts in a score. */
export function drawStaves(
  svgNode: SVGSVGElement,
  { staves, rain_mm_week }: Staves,
  width: number,
  say: Formatter,
): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const l = layout(width);
  const month = (l.right - l.left) / 12;
  const middle = (m: number) => l.left + (m + 0.5) * month;
  const top = rainStave(svg, rain_mm_week, l, width, say);
  let y = top + 62;
  const show: ((m: number) => void)[] = [];
  for (const stave of staves) {
    const laid = set(stave, l, say);
    const wordsTop = y;
    const ground = l.beside ? y + Math.max(l.bars, laid.height - 16) : y + laid.height - 22;
    bars(svg, stave, l, ground);
    show.push(words(svg, laid, l, wordsTop, width, say));
    y += laid.height;
  }
  monthRow(svg, middle, l.right - l.left, y + 12, say.month);
  drawTape(
    svg,
    y + 22,
    rain_mm_week.map((_, m) => middle(m)),
  );
  return {
    height: y + 46,
    ruler: { left: middle(0), right: middle(11), y: y + 26 },
    at: middle,
    nearest: (px) => Math.max(0, Math.min(11, Math.floor((px - l.left) / month))),
    line: { top, bottom: y + 26 },
    follow: (m, reading) => {
      if (reading) for (const stave of show) stave(m);
    },
  };
}
