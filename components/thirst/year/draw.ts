import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { area, curveStepAfter, line } from "d3-shape";
import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { axisRoom } from "../../charts/axis.ts";
import { type Words, writeCallouts } from "../../charts/callouts.ts";
import type { Drawn } from "../../charts/chart.ts";
import type { Box } from "../../charts/labels.ts";
import type { Svg } from "../../charts/measure.ts";
import { roundBelow } from "../../charts/months/rain.ts";
import { drawTape } from "../../charts/tape.ts";
import { defineTextures, fills } from "../../charts/textures.ts";
import { dayMonths } from "../../charts/year-months.ts";
import type { YearPicture } from "./prepare.ts";

const words = thirst.year;
const SKY_PX = 24;
const RAIN_PX = 64;
const DRAIN_PX = 40;

interface Frame {
  left: number;
  right: number;
  /** Full soil, and its floor. */
  full: number;
  floor: number;
  x: (i: number) => number;
  y: (mm: number) => number;
}

/** Rain falls from above, the soil's store rises and falls, waterings refill it, what it cannot hold drains below. */
export function drawBedYear(svgNode: SVGSVGElement, of: YearPicture, width: number, say: Formatter): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const days = of.stored_mm.length;
  const full = SKY_PX + RAIN_PX + 40;
  const floor = full + Math.round(Math.min(210, Math.max(160, width * 0.3)));
  const top_mm = say.depthValue(of.available_mm) || 1;
  const shownY = scaleLinear([0, top_mm], [floor, full]);
  const ticks = shownY.ticks(4).filter((tick) => tick < top_mm * 0.9);
  const text = (tick: number) => say.number(tick, 2);
  const left = axisRoom([...ticks.map(text), say.depthBare(of.available_mm), say.depthBare(88)]);
  const scaleX = scaleLinear([0, days], [left, width - 1]);
  const frame: Frame = {
    left,
    right: width - 1,
    full,
    floor,
    x: (i) => scaleX(i),
    y: (mm) => shownY(say.depthValue(mm)),
  };
  axis(
    svg,
    frame,
    [
      ...ticks.map((tick) => ({ y: shownY(tick), text: text(tick) })),
      { y: full, text: say.depthBare(of.available_mm) },
    ],
    say,
  );
  drawRain(svg, of, frame, say);
  drawSoil(svg, of, frame);
  const drained = drawDrained(svg, of, frame);
  thirstMarks(svg, of, frame);
  writeWords(svg, of, frame, drained);

  const foot = floor + DRAIN_PX + 8;
  const starts = dayMonths(svg, of.firstDay, days, frame, foot + 16, say);
  drawTape(
    svg,
    foot + 26,
    starts,
    Array.from({ length: Math.ceil(days / 7) }, (_, w) => frame.x(w * 7)),
  );
  const dot = svg.append("circle").attr("class", "dot reading-dot").attr("r", 3.5);
  return {
    height: foot + 52,
    ruler: { left: frame.x(0.5), right: frame.x(days - 0.5), y: foot + 30 },
    at: (i) => frame.x(i + 0.5),
    nearest: (px) => Math.max(0, Math.min(days - 1, Math.floor(scaleX.invert(px)))),
    line: { top: SKY_PX, bottom: foot + 30 },
    follow: (i) => {
      dot.attr("cx", frame.x(i + 0.5)).attr("cy", frame.y(of.stored_mm[i] ?? 0));
    },
  };
}

function axis(
  svg: Svg,
  { left, right, full, floor }: Frame,
  ticks: readonly { y: number; text: string }[],
  say: Formatter,
): void {
  for (const { y, text } of ticks) {
    if (y < floor && y > full)
      svg.append("line").attr("class", "hair").attr("x1", left).attr("x2", right).attr("y1", y).attr("y2", y);
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", left - 8)
      .attr("y", y)
      .attr("dy", "0.33em")
      .attr("text-anchor", "end")
      .text(text);
  }
  svg
    .append("text")
    .attr("class", "tick")
    .attr("x", 0)
    .attr("y", full - 12)
    .text(words.soilAxis(say.depthUnit));
  svg
    .append("text")
    .attr("class", "tick")
    .attr("x", 0)
    .attr("y", SKY_PX - 10)
    .text(words.rainAxis(say.depthUnit));
}

/** A fine stroke a day from the sky line; as wide as a day where days are wide. */
function drawRain(svg: Svg, of: YearPicture, { left, right, x }: Frame, say: Formatter): void {
  const most = Math.max(...of.rain_mm);
  const y = scaleLinear([0, most || 1], [SKY_PX, SKY_PX + RAIN_PX]);
  const d = Array.from(of.rain_mm, (mm, i) =>
    mm > 0 ? `M${x(i + 0.5).toFixed(1)},${SKY_PX}V${y(mm).toFixed(1)}` : "",
  ).join("");
  if (d) svg.append("path").attr("class", "stroke-rain").attr("d", d);
  svg
    .append("line")
    .attr("class", "ground")
    .attr("x1", left)
    .attr("x2", right)
    .attr("y1", SKY_PX)
    .attr("y2", SKY_PX);
  if (most <= 0) return;
  const step = roundBelow(say.depthValue(most));
  const at = SKY_PX + (RAIN_PX * step) / say.depthValue(most);
  svg.append("line").attr("class", "hair").attr("x1", left).attr("x2", right).attr("y1", at).attr("y2", at);
  svg
    .append("text")
    .attr("class", "tick")
    .attr("x", left - 8)
    .attr("y", at)
    .attr("dy", "0.33em")
    .attr("text-anchor", "end")
    .text(say.number(step, 2));
}

function drawSoil(svg: Svg, of: YearPicture, { left, right, full, floor, x, y }: Frame): void {
  const stored = Array.from(of.stored_mm);
  const last = [...stored, stored.at(-1) ?? 0];
  const under = area<number>()
    .curve(curveStepAfter)
    .x((_, i) => x(i))
    .y0(floor)
    .y1((mm) => y(mm));
  svg
    .append("path")
    .attr("class", "soil")
    .attr("d", under(last) ?? "");
  refills(svg, of, { left, right, full, floor, x, y });
  const shore = line<number>()
    .curve(curveStepAfter)
    .x((_, i) => x(i))
    .y((mm) => y(mm));
  svg
    .append("path")
    .attr("class", "soil-line")
    .attr("d", shore(last) ?? "");
  svg
    .append("line")
    .attr("class", "rim")
    .attr("x1", left)
    .attr("x2", right)
    .attr("y1", full)
    .attr("y2", full);
  svg
    .append("line")
    .attr("class", "ground")
    .attr("x1", left)
    .attr("x2", right)
    .attr("y1", floor)
    .attr("y2", floor);
  const trigger = y(of.available_mm - of.trigger_mm);
  svg
    .append("line")
    .attr("class", "trigger")
    .attr("x1", left)
    .attr("x2", right)
    .attr("y1", trigger)
    .attr("y2", trigger);
}

/** Each watering as the jump that it is, in the ink of its water; above the full line it was too much. */
function refills(svg: Svg, of: YearPicture, { full, x, y }: Frame): void {
  const wide = Math.max(2.6, x(1) - x(0));
  const group = svg.append("g");
  const block = (i: number, from_mm: number, to_mm: number, fill: string, edge: string) => {
    const [top, foot] = [Math.max(full - 14, y(to_mm)), y(from_mm)];
    if (foot - top < 0.4) return;
    group
      .append("rect")
      .attr("fill", fill)
      .attr("class", `edge ${edge}`)
      .attr("x", x(i) - (wide - (x(1) - x(0))) / 2)
      .attr("y", top)
      .attr("width", wide)
      .attr("height", foot - top);
  };
  of.watered_mm.forEach((mm, i) => {
    if (mm <= 0) return;
    const before = i > 0 ? of.stored_mm[i - 1]! : Math.max(0, of.stored_mm[0]! - mm);
    const tank = Math.min(mm, of.fromTank_mm[i]!);
    block(i, before, before + tank, fills.tank, "tank");
    block(i, before + tank, before + mm, of.ownWater ? fills.other : fills.mains, of.ownWater ? "" : "mains");
  });
}

/** What a week loses past the roots hangs below the soil, thin. Returns the week that loses most. */
function drawDrained(svg: Svg, of: YearPicture, { floor, x }: Frame): { week: number; mm: number } {
  const weeks: number[] = [];
  of.drained_mm.forEach((mm, i) => {
    const week = Math.floor(i / 7);
    weeks[week] = (weeks[week] ?? 0) + mm;
  });
  const most = Math.max(...weeks);
  const height = scaleLinear([0, most || 1], [0, DRAIN_PX - 4]);
  weeks.forEach((mm, w) => {
    if (mm < 0.05) return;
    svg
      .append("rect")
      .attr("fill", fills.rainBeyond)
      .attr("class", "edge rain")
      .attr("x", x(w * 7))
      .attr("y", floor + 2)
      .attr("width", Math.max(1, x(Math.min(of.drained_mm.length, w * 7 + 7)) - x(w * 7)))
      .attr("height", height(mm));
  });
  return { week: weeks.indexOf(most), mm: most };
}

/** Days of thirst, as marks that hang from the ground line. */
function thirstMarks(svg: Svg, of: YearPicture, { floor, x }: Frame): void {
  const d = Array.from(of.stressed, (is, i) => (is ? `M${x(i + 0.5).toFixed(1)},${floor + 2}v8` : "")).join(
    "",
  );
  if (d) svg.append("path").attr("class", "short-day").attr("d", d);
}

function writeWords(svg: Svg, of: YearPicture, frame: Frame, drained: { week: number; mm: number }): void {
  const { left, right, full, floor, x, y } = frame;
  const columns = 36;
  const step = of.stored_mm.length / columns;
  const drawn: Box[] = Array.from({ length: columns }, (_, k) => {
    const slice = Array.from(of.stored_mm.slice(Math.floor(k * step), Math.ceil((k + 1) * step)));
    const [high, low] = [y(Math.max(...slice)), y(Math.min(...slice))];
    return { x: x(k * step), y: high - 3, width: x(step) - x(0), height: low - high + 6 };
  });
  const trigger = y(of.available_mm - of.trigger_mm);
  const said: Words[] = [{ text: words.trigger, target: { x: left + 30, y: trigger }, ink: "need" }];
  writeCallouts(svg, said, [...drawn, { x: left, y: trigger - 2, width: right - left, height: 4 }], {
    x: left + 4,
    y: full + 4,
    width: right - left - 8,
    height: floor - full - 8,
  });
  const below: Words[] = [];
  if (drained.mm >= 1)
    below.push({ text: words.drained, target: { x: x(drained.week * 7 + 3.5), y: floor + 20 }, ink: "rain" });
  const thirsty = of.stressed.indexOf(1);
  if (thirsty >= 0 && right - left > 420)
    below.push({ text: words.thirstyMark, target: { x: x(thirsty), y: floor + 10 }, ink: "need" });
  const weekWide = x(7) - x(0);
  const hanging = Array.from({ length: Math.ceil(of.drained_mm.length / 7) }, (_, w) => w).flatMap((w) => {
    const mm = of.drained_mm.slice(w * 7, w * 7 + 7).reduce((sum, each) => sum + each, 0);
    return mm >= 0.05
      ? [{ x: x(w * 7), y: floor + 2, width: weekWide, height: (mm / drained.mm) * DRAIN_PX }]
      : [];
  });
  writeCallouts(svg, below, hanging, {
    x: left,
    y: floor + 12,
    width: right - left - 4,
    height: DRAIN_PX - 10,
  });
}
