import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { area, line } from "d3-shape";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { axisRoom } from "../axis.ts";
import { writeCallouts } from "../callouts.ts";
import type { Drawn } from "../chart.ts";
import type { Svg } from "../measure.ts";
import { drawTape } from "../tape.ts";
import { defineTextures, fills } from "../textures.ts";
import { spillByWeek, type TankYear } from "./prepare.ts";
import { drawSection } from "./section.ts";

const words = plate.tank;
const SPILL_PX = 34;
const MS_PER_DAY = 86_400_000;

function monthStarts(t: TankYear): { index: number; month: number }[] {
  return t.level_L.flatMap((_, i) => {
    const date = new Date((t.firstDay + i) * MS_PER_DAY);
    return date.getUTCDate() === 1 || i === 0 ? [{ index: i, month: date.getUTCMonth() }] : [];
  });
}

/** Water over the rim: thin strokes as high as a week's spill. */
function spillOver(svg: Svg, t: TankYear, x: (i: number) => number, full: number): void {
  const weeks = spillByWeek(t.spill_L);
  const most = Math.max(...weeks, 0);
  if (most <= 0) return;
  const height = scaleLinear([0, most], [0, SPILL_PX]);
  const d = weeks.map((spill_L, w) => {
    if (spill_L <= 0) return "";
    const from = x(w * 7);
    const to = x(Math.min(t.level_L.length - 1, w * 7 + 7));
    return `M${from},${full}V${full - height(spill_L)}H${Math.max(from + 1, to)}V${full}Z`;
  });
  svg.append("path").attr("fill", fills.tankBeyond).attr("class", "spill").attr("d", d.join(""));
}

/** Days when not all was there, as marks under the ground line. */
function shortMarks(svg: Svg, t: TankYear, x: (i: number) => number, y: number): void {
  const d = t.short.map((s, i) => (s ? `M${x(i)},${y}v9` : "")).join("");
  if (d) svg.append("path").attr("class", "short-day").attr("d", d);
}

/** The tank in section, and its level through the year beside it, by the same measure. */
export function drawTankYear(svgNode: SVGSVGElement, t: TankYear, width: number, say: Formatter): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const full = 78;
  const floor = full + Math.round(Math.min(210, Math.max(150, width * 0.28)));
  const capacity = say.volume(t.capacity_L) || 1;
  const shownY = scaleLinear([0, capacity], [floor, full]);
  // plain products: a ruler redraws this as it moves, and a scale is called thousands of times
  const perLitre = (floor - full) / (t.capacity_L || 1);
  const y = (x_L: number) => floor - x_L * perLitre;
  const ticks = shownY.ticks(4).filter((tick) => t.capacity_L > 0 && tick < capacity * 0.9);
  const axis = axisRoom([...ticks.map((tick) => say.number(tick)), say.litresBare(t.capacity_L)]);
  const sectionWidth = width < 480 ? 54 : 96;
  const section = { left: axis + 14, right: axis + 14 + sectionWidth };
  const left = section.right + (width < 480 ? 26 : 46);
  const right = width - 1;
  const days = t.level_L.length;
  const perDay = (right - left) / Math.max(1, days - 1);
  const x = (i: number) => left + i * perDay;

  const fullText = say.litresBare(t.capacity_L);
  // a group of its own: how many ticks there are moves nothing else along
  const measure = svg.append("g");
  measure
    .append("text")
    .attr("class", "tick full")
    .attr("x", axis - 4)
    .attr("y", full)
    .attr("dy", "0.33em")
    .attr("text-anchor", "end")
    .text(fullText);
  for (const tick of ticks) {
    measure
      .append("text")
      .attr("class", "tick")
      .attr("x", axis - 4)
      .attr("y", shownY(tick))
      .attr("dy", "0.33em")
      .attr("text-anchor", "end")
      .text(say.number(tick));
    if (tick > 0)
      measure
        .append("line")
        .attr("class", "hair")
        .attr("x1", left)
        .attr("x2", right)
        .attr("y1", shownY(tick))
        .attr("y2", shownY(tick));
  }
  svg
    .append("text")
    .attr("class", "tick")
    .attr("x", axis - 4)
    .attr("y", full - 30)
    .attr("text-anchor", "end")
    .text(say.volumeSymbol);

  const setLevel = drawSection(svg, { ...section, full, floor, y }, t.unusable_L, left - section.right);
  const surface = area<number>()
    .x((_, i) => x(i))
    .y0(floor)
    .y1((d) => y(d));
  svg
    .append("path")
    .attr("fill", fills.tank)
    .attr("d", surface(t.level_L as number[]) ?? "");
  if (t.unusable_L > 0) {
    const dead = area<number>()
      .x((_, i) => x(i))
      .y0(floor)
      .y1((d) => y(Math.min(d, t.unusable_L)));
    svg
      .append("path")
      .attr("fill", "var(--paper)")
      .attr("d", dead(t.level_L as number[]) ?? "");
    svg
      .append("path")
      .attr("fill", fills.below)
      .attr("d", dead(t.level_L as number[]) ?? "");
  }
  const shore = line<number>()
    .x((_, i) => x(i))
    .y((d) => y(d));
  svg
    .append("path")
    .attr("class", "shore")
    .attr("d", shore(t.level_L as number[]) ?? "");
  if (t.before_L) {
    const before = line<number>()
      .x((_, i) => x(i))
      .y((d) => Math.max(full - 6, y(d)));
    const path = before(t.before_L as number[]) ?? "";
    svg.append("path").attr("class", "before back").attr("d", path);
    svg.append("path").attr("class", "before").attr("d", path);
  }
  spillOver(svg, t, x, full);
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
  shortMarks(svg, t, x, floor + 4);

  const starts = monthStarts(t);
  const form = (right - left) / 12 >= 36 ? "short" : "narrow";
  starts.forEach(({ index, month }, k) => {
    const next = starts[k + 1]?.index ?? days - 1;
    if (next - index < 12) return;
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", (x(index) + x(next)) / 2)
      .attr("y", floor + 30)
      .attr("text-anchor", "middle")
      .text(say.month(month, form));
  });

  drawTape(
    svg,
    floor + 40,
    starts.map(({ index }) => x(index)),
    t.level_L.flatMap((_, i) => (i % 7 === 0 ? [x(i)] : [])),
  );
  writeWords(svg, t, { left, right, full, floor, x, y }, say);

  const thread = svg
    .append("line")
    .attr("class", "thread")
    .attr("x1", section.right + 2);
  const dot = svg.append("circle").attr("class", "dot").attr("r", 3.5);
  return {
    keepsParts: true,
    height: floor + 64,
    ruler: { left: x(0), right: x(days - 1), y: floor + 44 },
    at: x,
    nearest: (px) => Math.max(0, Math.min(days - 1, Math.round((px - left) / perDay))),
    line: { top: full, bottom: floor + 44 },
    follow: (i) => {
      const level = y(t.level_L[i] ?? 0);
      setLevel(t.level_L[i] ?? 0);
      thread.attr("x2", x(i)).attr("y1", level).attr("y2", level);
      dot.attr("cx", x(i)).attr("cy", level);
    },
  };
}

interface Run {
  left: number;
  right: number;
  full: number;
  floor: number;
  x: (i: number) => number;
  y: (level_L: number) => number;
}

/** "short on 61 days" over the first of them, "spilled" at the largest spill, where the sky is free. */
function writeWords(svg: Svg, t: TankYear, { left, right, full, floor, x, y }: Run, say: Formatter): void {
  const columns = 24;
  const step = Math.max(1, Math.floor(t.level_L.length / columns));
  const drawn = Array.from({ length: columns }, (_, k) => {
    const slice = t.level_L.slice(k * step, (k + 1) * step);
    const top = y(Math.max(0, ...slice));
    return { x: x(k * step), y: top, width: x(step) - x(0), height: floor - top };
  });
  const bounds = { x: left + 4, y: full + 4, width: right - left - 8, height: floor - full - 8 };
  if (t.shortDays > 0) {
    const text = t.shortDays === 1 ? words.shortDay : words.shortDays(say.number(t.shortDays));
    const day = t.short.indexOf(true);
    writeCallouts(
      svg,
      [{ text, target: { x: x(day), y: floor + 3 }, ink: "need", spare: 0.1 }],
      drawn,
      bounds,
    );
  }
  const weeks = spillByWeek(t.spill_L);
  const most = Math.max(...weeks, 0);
  if (most > 0) {
    const w = weeks.indexOf(most);
    const text = `${words.spilled}: ${say.litres(t.spilled_L)}`;
    const sky = { x: left, y: full - SPILL_PX - 42, width: right - left - 4, height: 20 };
    writeCallouts(
      svg,
      [
        {
          text,
          target: { x: x(Math.min(t.level_L.length - 1, w * 7 + 3)), y: full - SPILL_PX },
          ink: "tank",
        },
      ],
      [],
      sky,
    );
  }
}
