import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { areaUnit } from "../../../src/words/thirst-spoken.ts";
import type { Drawn } from "../../charts/chart.ts";
import { fit, type Svg, textWidth, wrap } from "../../charts/measure.ts";
import { defineTextures, fills } from "../../charts/textures.ts";
import { type Order, type OrderRow, perAreaText } from "./prepare.ts";

const words = thirst.orderPlate;
/** From this width on names stand beside both bars; below it, above them. */
const BESIDE_PX = 620;
const SQUARE_PX = 26;
const BAR_PX = 13;
const GAP_PX = 26;

interface Column {
  left: number;
  /** Where its longest bar ends, room for the figure after it left. */
  right: number;
}

interface Layout {
  beside: boolean;
  nameX: number;
  nameWidth: number;
  area: Column;
  all: Column;
  row: number;
}

function layout(width: number, room: { area: number; all: number }): Layout {
  const nameX = SQUARE_PX + 12;
  if (width < BESIDE_PX)
    return {
      beside: false,
      nameX,
      nameWidth: width - nameX,
      area: { left: nameX, right: width - room.area },
      all: { left: nameX, right: width - room.all },
      row: 76,
    };
  const nameWidth = Math.round(Math.min(230, width * 0.3));
  const left = nameX + nameWidth + 18;
  const half = (width - left - GAP_PX) / 2;
  return {
    beside: true,
    nameX,
    nameWidth,
    area: { left, right: left + half - room.area },
    all: { left: left + half + GAP_PX, right: width - room.all },
    row: 40,
  };
}

function block(svg: Svg, x1: number, x2: number, y: number, fill: string, style: string): void {
  if (x2 - x1 < 0.3) return;
  svg
    .append("rect")
    .attr("x", x1)
    .attr("y", y)
    .attr("width", x2 - x1)
    .attr("height", BAR_PX)
    .attr("fill", fill)
    .attr("class", style);
}

function write(svg: Svg, x: number, y: number, text: string, style: string): void {
  svg.append("text").attr("class", style).attr("x", x).attr("y", y).text(text);
}

/** Watering on each square metre, and after it the rain that is used there. */
function areaBar(svg: Svg, row: OrderRow, x: (litres: number) => number, y: number, say: Formatter): void {
  const end = x(row.perArea_L);
  block(svg, x(0), end, y, row.watered ? "var(--ink)" : "none", row.watered ? "" : "bar hollow");
  const wet = x(row.perArea_L + row.rainUsed_L_m2);
  block(svg, end, wet, y, fills.rain, "edge rain");
  svg
    .append("line")
    .attr("class", "ground")
    .attr("x1", x(0))
    .attr("x2", x(0))
    .attr("y1", y - 4)
    .attr("y2", y + BAR_PX + 4);
  write(svg, wet + 7, y + BAR_PX - 2, perAreaText(row.perArea_L, say), "tick full");
}

/** Watering in all by its water: tank first, then the mains. */
function allBar(svg: Svg, row: OrderRow, x: (litres: number) => number, y: number, say: Formatter): void {
  const tank = x(row.fromTank_L);
  const end = x(row.inAll_L);
  if (!row.watered) block(svg, x(0), end, y, "none", "bar hollow");
  else if (row.own) block(svg, x(0), end, y, fills.other, "edge");
  else {
    block(svg, x(0), tank, y, fills.tank, "edge tank");
    block(svg, tank, end, y, row.tankOnly ? "none" : fills.mains, row.tankOnly ? "bar hollow" : "edge mains");
  }
  svg
    .append("line")
    .attr("class", "ground")
    .attr("x1", x(0))
    .attr("x2", x(0))
    .attr("y1", y - 4)
    .attr("y2", y + BAR_PX + 4);
  const text = row.watered ? say.litresBare(row.inAll_L) : words.rainOnly;
  write(svg, (row.watered ? end : x(0)) + 7, y + BAR_PX - 2, text, row.watered ? "tick full" : "tick");
}

/** A line a bed, two measures to each. */
export function drawOrder(svgNode: SVGSVGElement, order: Order, width: number, say: Formatter): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const { rows } = order;
  const longest = (texts: readonly string[]) =>
    Math.max(0, ...texts.map((text) => textWidth(text, 14, 600))) + 10;
  const l = layout(width, {
    area: longest(rows.map((row) => perAreaText(row.perArea_L, say))),
    all: longest(rows.map((row) => say.litresBare(row.inAll_L))),
  });
  const most = (figure: (row: OrderRow) => number) => Math.max(...rows.map(figure), 0) || 1;
  const area = scaleLinear(
    [0, most((row) => row.perArea_L + row.rainUsed_L_m2)],
    [l.area.left, l.area.right],
  );
  const all = scaleLinear([0, most((row) => (row.watered ? row.inAll_L : 0))], [l.all.left, l.all.right]);
  const top = heads(svg, l, say);
  const at: number[] = [];
  rows.forEach((row, i) => {
    const y = top + i * l.row;
    at.push(y);
    const side = Math.max(2, row.side * SQUARE_PX);
    const middle = l.beside ? y + l.row / 2 : y + 14;
    svg
      .append("rect")
      .attr("class", "plot")
      .attr("x", SQUARE_PX - side + 0.5)
      .attr("y", middle - side / 2)
      .attr("width", side)
      .attr("height", side);
    if (l.beside) {
      const lines = wrap(row.name, l.nameWidth, 16, 2, 500);
      lines.forEach((line, k) => {
        write(svg, l.nameX, middle + 5 + (k - (lines.length - 1) / 2) * 17, line, "bed small");
      });
      areaBar(svg, row, area, middle - BAR_PX / 2, say);
      allBar(svg, row, all, middle - BAR_PX / 2, say);
    } else {
      write(svg, l.nameX, middle + 5, fit(row.name, l.nameWidth, 16, 500), "bed small");
      areaBar(svg, row, area, y + 28, say);
      allBar(svg, row, all, y + 50, say);
    }
    svg
      .append("line")
      .attr("class", "hair")
      .attr("x1", 0)
      .attr("x2", width)
      .attr("y1", y + l.row)
      .attr("y2", y + l.row);
  });
  const foot = top + rows.length * l.row;
  return {
    height: foot + 6,
    ruler: { left: 0, right: width, y: foot },
    at: () => 0,
    nearest: () => 0,
    line: { top: 0, bottom: 0 },
  };
}

/** What each column measures, and below it what its inks are, each word in its own. */
function heads(svg: Svg, l: Layout, say: Formatter): number {
  const perArea = words.perArea(say.volumeUnit, areaUnit(say));
  const inAll = words.inAll(say.volumeUnit);
  const plants = [
    { text: words.watering, style: "need" },
    { text: words.rain, style: "rain" },
  ];
  const waters = [
    { text: words.tank, style: "tank" },
    { text: words.mains, style: "mains" },
  ];
  if (!l.beside) {
    write(svg, 0, 14, perArea, "tick");
    inked(svg, 0, 32, plants);
    write(svg, 0, 54, inAll, "tick");
    inked(svg, 0, 72, waters);
    return 84;
  }
  write(svg, l.area.left, 14, perArea, "tick");
  inked(svg, l.area.left, 32, plants);
  write(svg, l.all.left, 14, inAll, "tick");
  inked(svg, l.all.left, 32, waters);
  return 44;
}

function inked(svg: Svg, x: number, y: number, parts: readonly { text: string; style: string }[]): void {
  let at = x;
  for (const { text, style } of parts) {
    write(svg, at, y, text, `word small ${style}`);
    at += textWidth(text, 14, 500) + 16;
  }
}
