import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { area, line } from "d3-shape";
import { choicesPlates } from "../../../src/words/en/choices-plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { axisRoom, hairlines } from "../axis.ts";
import { type Words, writeCallouts } from "../callouts.ts";
import type { Drawn } from "../chart.ts";
import type { Box } from "../labels.ts";
import { type Svg, textWidth } from "../measure.ts";
import { drawTape } from "../tape.ts";
import { bandOf, type SizeCurve, sizeText, unitOf, yearlyIn } from "./prepare.ts";

const words = choicesPlates.sizes;
/** A line of the marks' names above the plot. */
const MARK_PX = 19;
const PLOT_PX = 260;

type Row = SizeCurve["rows"][number];

/** Size to the right, mains water saved upward: what tank water brings, in its ink. */
export function drawSizes(node: SVGSVGElement, curve: SizeCurve, width: number, say: Formatter): Drawn {
  const svg = select<SVGSVGElement, undefined>(node);
  const { rows, most_kL } = curve;
  const v = (kL: number) => yearlyIn(kL, say);
  const most = Math.max(
    ...rows.flatMap((row) => [bandOf(row).high, row.wet_kL ?? 0, row.dry_kL ?? 0]),
    most_kL ?? 0,
    0.1,
  );
  const y = scaleLinear([0, v(most) * 1.06], [0, 1]);
  const ticks = y.ticks(4);
  const left = axisRoom(ticks.map((t) => say.number(t)));
  const right = width - 6;
  const largest = rows.at(-1)?.capacity_L ?? 1;
  const x = scaleLinear([0, say.volume(largest)], [left, right]);
  const xOf = (row: Pick<Row, "capacity_L">) => x(say.volume(row.capacity_L));
  const set = setMarks(curve, xOf, left, right, say);
  const top = 34 + MARK_PX * Math.max(1, ...set.map(({ line }) => line + 1));
  const bottom = top + PLOT_PX;
  y.range([bottom, top]);
  hairlines(svg, y, ticks, {
    left,
    right,
    text: (tick) => say.number(tick),
    unit: words.axis(unitOf(say)),
    unitX: 0,
    unitY: 14,
  });
  sizeAxis(svg, x, bottom, width, say);
  band(svg, rows, xOf, (kL) => y(v(kL)));
  const marks = drawMarks(svg, set, { xOf, y: (kL) => y(v(kL)), top, bottom });
  writeCallouts(
    svg,
    callouts(curve, xOf, (kL) => y(v(kL))),
    [...inked(rows, xOf, (kL) => y(v(kL))), ...marks],
    { x: left + 6, y: top + 2, width: right - left - 8, height: PLOT_PX - 6 },
  );
  drawTape(svg, bottom + 44, rows.filter(({ mark }) => mark).map(xOf), rows.map(xOf));
  return {
    height: bottom + 72,
    ruler: { left: x(0), right, y: bottom + 48 },
    at: (i) => xOf(rows[i] ?? rows[0]!),
    nearest: (px) => nearest(rows.map(xOf), px),
    isUneven: true,
    line: { top, bottom: bottom + 48 },
  };
}

export function nearest(places: readonly number[], px: number): number {
  let best = 0;
  places.forEach((place, k) => {
    if (Math.abs(place - px) < Math.abs(places[best]! - px)) best = k;
  });
  return best;
}

function sizeAxis(
  svg: Svg,
  x: ReturnType<typeof scaleLinear<number, number>>,
  bottom: number,
  width: number,
  say: Formatter,
): void {
  for (const tick of x.ticks(Math.max(2, Math.floor(width / 150))))
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", x(tick))
      .attr("y", bottom + 18)
      .attr("text-anchor", tick === 0 ? "start" : "middle")
      .text(say.number(tick, 0));
  svg
    .append("text")
    .attr("class", "tick")
    .attr("x", x.range()[1]!)
    .attr("y", bottom + 36)
    .attr("text-anchor", "end")
    .text(words.sizeAxis(say.volumeSymbol));
}

function band(svg: Svg, rows: readonly Row[], x: (row: Row) => number, y: (kL: number) => number): void {
  const between = area<Row>()
    .x(x)
    .y0((row) => y(bandOf(row).low))
    .y1((row) => y(bandOf(row).high));
  svg
    .append("path")
    .attr("class", "wash")
    .attr("fill", "var(--tank)")
    .attr("fill-opacity", 0.16)
    .attr("d", between(rows as Row[]));
  const stroke = (of: (row: Row) => number | null, style: string) => {
    const path = line<Row>()
      .x(x)
      .defined((row) => of(row) !== null)
      .y((row) => y(of(row)!));
    svg
      .append("path")
      .attr("class", style)
      .attr("d", path(rows as Row[]));
  };
  stroke((row) => bandOf(row).low, "curve edge");
  stroke((row) => bandOf(row).high, "curve edge");
  stroke((row) => row.wet_kL, "curve thin");
  stroke((row) => row.dry_kL, "curve dashed");
  stroke((row) => bandOf(row).middle, "curve middle");
}

interface Plot {
  xOf(row: Row): number;
  y(kL: number): number;
  top: number;
  bottom: number;
}

interface SetMark {
  row: Row;
  text: string;
  /** Where its name begins, and in which line above the plot, counted from the plot up. */
  from: number;
  line: number;
}

/** Sets the names of the sizes marked, each over its stroke, in as few lines as hold them apart. */
function setMarks(
  { marked }: SizeCurve,
  xOf: (row: Row) => number,
  left: number,
  right: number,
  say: Formatter,
): SetMark[] {
  const names = { today: words.today, quoted: words.quoted, enough: words.enoughMark };
  const ends: number[] = [];
  return marked.map((row) => {
    const text = `${names[row.mark!]} ${sizeText(row.capacity_L, say)}`;
    const w = textWidth(text, 14, 500);
    const from = Math.max(0, Math.min(Math.max(left, xOf(row) - w / 2), right - w));
    const free = ends.findIndex((end) => end + 10 < from);
    const line = free < 0 ? ends.length : free;
    ends[line] = from + w;
    return { row, text, from, line };
  });
}

function drawMarks(svg: Svg, marks: readonly SetMark[], { xOf, y, top, bottom }: Plot): Box[] {
  const bases = marks.map(({ line }) => top - 8 - line * MARK_PX);
  marks.forEach(({ row }, k) => {
    svg
      .append("line")
      .attr("class", "leader")
      .attr("x1", xOf(row))
      .attr("x2", xOf(row))
      .attr("y1", bases[k]! + 4)
      .attr("y2", bottom);
  });
  return marks.map(({ row, text, from }, k) => {
    const at = xOf(row);
    svg.append("text").attr("class", "mark").attr("x", from).attr("y", bases[k]!).text(text);
    svg
      .append("circle")
      .attr("class", row.mark === "today" ? "dot" : "dot hollow")
      .attr("cx", at)
      .attr("cy", y(bandOf(row).middle))
      .attr("r", 4.5);
    return { x: at - 2, y: top, width: 4, height: bottom - top };
  });
}

function callouts(
  { rows, dryYear, wetYear }: SizeCurve,
  x: (row: Row) => number,
  y: (kL: number) => number,
): Words[] {
  const at = rows[Math.floor(rows.length * 0.72)];
  if (!at) return [];
  const said: Words[] = [{ text: words.middle, target: { x: x(at), y: y(bandOf(at).middle) }, ink: "tank" }];
  const far = rows[Math.floor(rows.length * 0.9)] ?? at;
  if (far.wet_kL !== null && wetYear !== null && wetYear !== dryYear)
    said.push({ text: words.wet(String(wetYear)), target: { x: x(far), y: y(far.wet_kL) }, ink: "tank" });
  if (far.dry_kL !== null && dryYear !== null && wetYear !== dryYear)
    said.push({ text: words.dry(String(dryYear)), target: { x: x(far), y: y(far.dry_kL) }, ink: "tank" });
  return said;
}

/** Where curves run, as boxes that labels keep off. */
function inked(rows: readonly Row[], x: (row: Row) => number, y: (kL: number) => number): Box[] {
  return rows.flatMap((row, k) => {
    const next = rows[k + 1];
    if (!next) return [];
    const { low, middle, high } = bandOf(next);
    return [
      low,
      middle,
      high,
      ...(next.dry_kL === null ? [] : [next.dry_kL]),
      ...(next.wet_kL === null ? [] : [next.wet_kL]),
    ].map((kL) => ({
      x: x(row),
      y: y(kL) - 3,
      width: Math.max(2, x(next) - x(row)),
      height: 6,
    }));
  });
}
