import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { plate } from "../../../src/words/en/page.ts";
import type { Formatter } from "../../format.ts";
import { monthRow } from "../axis.ts";
import type { Drawn } from "../chart.ts";
import { fit, type Svg, textWidth } from "../measure.ts";
import { steps } from "../months/draw.ts";
import { defineTextures, fills } from "../textures.ts";
import type { Stave, Staves } from "./prepare.ts";

/** From this width on a bed's name stands beside its line; below it, above. */
const BESIDE_PX = 620;
const SQUARE_PX = 30;

interface Layout {
  beside: boolean;
  /** Where the months run. */
  left: number;
  right: number;
  nameX: number;
  nameWidth: number;
  peakWidth: number;
  bars: number;
  row: number;
}

function layout(width: number): Layout {
  if (width >= BESIDE_PX) {
    const nameX = SQUARE_PX + 12;
    const nameWidth = Math.round(Math.min(250, width * 0.31));
    const peakWidth = 132;
    return {
      beside: true,
      left: nameX + nameWidth + 18,
      right: width - peakWidth - 16,
      nameX,
      nameWidth,
      peakWidth,
      bars: 34,
      row: 56,
    };
  }
  return {
    beside: false,
    left: 0,
    right: width,
    nameX: SQUARE_PX + 10,
    nameWidth: width,
    peakWidth: 0,
    bars: 34,
    row: 104,
  };
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
  if (stave.today_L_week && Math.max(...stave.today_L_week) > 0) {
    const x = (m: number) => l.left + m * month;
    svg
      .append("path")
      .attr("class", "today")
      .attr("d", steps(stave.today_L_week, x, y));
  }
  svg
    .append("line")
    .attr("class", "ground thin")
    .attr("x1", l.left)
    .attr("x2", l.right)
    .attr("y1", ground)
    .attr("y2", ground);
}

function peakText(stave: Stave, say: Formatter): [string, string] {
  if (stave.peak === null) return [plate.staves.never, ""];
  const volume = `${say.litresBare(stave.need_L_week[stave.peak]!)} ${say.volumeSymbol}`;
  return [volume, plate.staves.inMonth(say.month(stave.peak))];
}

function words(
  svg: Svg,
  stave: Stave,
  l: Layout,
  top: number,
  ground: number,
  width: number,
  say: Formatter,
): void {
  const side = Math.max(1.5, stave.side * SQUARE_PX);
  const squareY = l.beside ? ground : top + SQUARE_PX;
  svg
    .append("rect")
    .attr("class", "plot")
    .attr("x", 0.75)
    .attr("y", squareY - side)
    .attr("width", side)
    .attr("height", side);
  const [volume, month] = peakText(stave, say);
  const text = (x: number, y: number, value: string, style: string, anchor = "start") =>
    svg.append("text").attr("class", style).attr("x", x).attr("y", y).attr("text-anchor", anchor).text(value);
  if (l.beside) {
    text(l.nameX, ground - 20, fit(stave.name, l.nameWidth, 17, 500), "bed")
      .append("title")
      .text(stave.name);
    text(l.nameX, ground - 2, fit(stave.about, l.nameWidth, 14), "tick");
    text(width, ground - 20, volume, "bed", "end");
    text(width, ground - 2, month, "tick", "end");
  } else {
    const room = width - l.nameX - textWidth(volume, 17, 500) - 16;
    text(l.nameX, top + 14, fit(stave.name, room, 17, 500), "bed")
      .append("title")
      .text(stave.name);
    text(width, top + 14, volume, "bed", "end");
    const roomBelow = width - l.nameX - textWidth(month, 14) - 16;
    text(l.nameX, top + 32, fit(stave.about, roomBelow, 14), "tick");
    text(width, top + 32, month, "tick", "end");
  }
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
  const rainTop = l.beside ? 6 : 24;
  const rain = scaleLinear([0, Math.max(...rain_mm_week) || 1], [0, 40]);
  const labelY = l.beside ? rainTop + 18 : 16;
  const most = `${say.depth(Math.max(...rain_mm_week))}`;
  const wettest = rain_mm_week.indexOf(Math.max(...rain_mm_week));
  svg
    .append("text")
    .attr("class", "bed rain")
    .attr("x", l.beside ? l.nameX : 0)
    .attr("y", labelY)
    .text(plate.staves.rain);
  const mostText = l.beside ? most : `${most} ${plate.staves.inMonth(say.month(wettest))}`;
  svg
    .append("text")
    .attr("class", "bed rain")
    .attr("x", width)
    .attr("y", labelY)
    .attr("text-anchor", "end")
    .text(mostText);
  if (l.beside) {
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", width)
      .attr("y", labelY + 18)
      .attr("text-anchor", "end")
      .text(plate.staves.inMonth(say.month(wettest)));
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", l.nameX)
      .attr("y", labelY + 18)
      .text(plate.staves.rainUnit);
  }
  svg
    .append("line")
    .attr("class", "ground thin")
    .attr("x1", l.left)
    .attr("x2", l.right)
    .attr("y1", rainTop)
    .attr("y2", rainTop);
  rain_mm_week.forEach((mm, m) => {
    svg
      .append("rect")
      .attr("fill", fills.rain)
      .attr("x", l.left + m * month)
      .attr("y", rainTop)
      .attr("width", month)
      .attr("height", rain(mm));
  });
  const start = rainTop + 52;
  staves.forEach((stave, i) => {
    const top = start + i * l.row + (l.beside ? 0 : 12);
    const ground = l.beside ? start + (i + 1) * l.row - 6 : top + 34 + 10 + l.bars;
    bars(svg, stave, l, ground);
    words(svg, stave, l, top, ground, width, say);
  });
  const end = start + staves.length * l.row + (l.beside ? 0 : 4);
  monthRow(svg, middle, l.right - l.left, end + 18, say.month);
  return {
    height: end + 48,
    ruler: { left: middle(0), right: middle(11), y: end + 26 },
    at: middle,
    nearest: (px) => Math.max(0, Math.min(11, Math.floor((px - l.left) / month))),
    line: { top: rainTop, bottom: end + 26 },
  };
}
