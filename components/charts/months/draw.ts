import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { plate } from "../../../src/words/en/page.ts";
import type { Formatter } from "../../format.ts";
import { axisRoom, hairlines, monthRow } from "../axis.ts";
import { type Words, writeCallouts } from "../callouts.ts";
import type { Drawn } from "../chart.ts";
import type { Box } from "../labels.ts";
import type { Svg } from "../measure.ts";
import { defineTextures, fills } from "../textures.ts";
import type { Months, Source } from "./prepare.ts";

const words = plate.months;
const RAIN_PX = 74;
const fillOf: Record<Source, string> = {
  mains: fills.mains,
  tank: fills.tank,
  "tank-then-mains": fills.both,
  other: fills.other,
};

interface Frame {
  left: number;
  right: number;
  rainTop: number;
  top: number;
  bottom: number;
  month: number;
}

/** A stepped line over twelve months of equal width; null where two lines are to be closed into an area. */
export function steps(values: readonly number[], x: (m: number) => number, y: (v: number) => number): string {
  return values.map((v, m) => `${m === 0 ? "M" : "L"}${x(m)},${y(v)}L${x(m + 1)},${y(v)}`).join("");
}

/** The area between two stepped lines where the upper is above the lower. */
export function between(
  upper: readonly number[],
  lower: readonly number[],
  x: (m: number) => number,
  y: (v: number) => number,
): string {
  return upper
    .map((u, m) => {
      const l = lower[m]!;
      return u > l ? `M${x(m)},${y(u)}H${x(m + 1)}V${y(l)}H${x(m)}Z` : "";
    })
    .join("");
}

function rainPanel(
  svg: Svg,
  months: Months,
  frame: Frame,
  x: (m: number) => number,
  say: Formatter,
): (mm: number) => number {
  const most = Math.max(...months.rain_mm_week);
  const y = scaleLinear([0, most || 1], [frame.rainTop, frame.rainTop + RAIN_PX]);
  svg
    .append("line")
    .attr("class", "ground")
    .attr("x1", frame.left)
    .attr("x2", frame.right)
    .attr("y1", frame.rainTop)
    .attr("y2", frame.rainTop);
  const zero = new Array<number>(12).fill(0);
  svg
    .append("path")
    .attr("fill", fills.rain)
    .attr("d", between(months.rain_mm_week, zero, x, y));
  const unit = words.rainAxis(say.depthSymbol);
  svg
    .append("text")
    .attr("class", "tick")
    .attr("x", 0)
    .attr("y", frame.rainTop - 10)
    .text(unit);
  if (most > 0) {
    const shown = say.depthValue(most);
    const step = shown > 1 ? Math.floor(shown / (shown > 10 ? 10 : 1)) * (shown > 10 ? 10 : 1) : shown;
    const at = frame.rainTop + (RAIN_PX * step) / shown;
    svg
      .append("line")
      .attr("class", "hair")
      .attr("x1", frame.left)
      .attr("x2", frame.right)
      .attr("y1", at)
      .attr("y2", at);
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", frame.left - 8)
      .attr("y", at)
      .attr("dy", "0.33em")
      .attr("text-anchor", "end")
      .text(say.number(step, 1));
  }
  return y;
}

function labels(months: Months, frame: Frame, x: (m: number) => number, y: (v: number) => number): Words[] {
  const { need_L_week, today_L_week } = months;
  const middle = (m: number) => (x(m) + x(m + 1)) / 2;
  const peak = need_L_week.indexOf(Math.max(...need_L_week));
  const out: Words[] = [];
  if (need_L_week[peak]! > 0) {
    out.push({ text: words.need, target: { x: middle(peak), y: y(need_L_week[peak]!) }, ink: "need" });
  }
  if (today_L_week && Math.max(...today_L_week) > 0) {
    const gaps = today_L_week.map((t, m) => t - need_L_week[m]!);
    const widest = gaps.indexOf(Math.max(...gaps));
    const over = gaps[widest]! > 0;
    const at = over ? widest : today_L_week.indexOf(Math.max(...today_L_week));
    out.push({
      text: months.one ? words.todayOne : words.today,
      target: { x: middle(at), y: y(today_L_week[at]!) },
      ink: "mains",
    });
    const tall = over && y(need_L_week[widest]!) - y(today_L_week[widest]!) > 24;
    if (tall) {
      const target = {
        x: x(widest) + frame.month * 0.75,
        y: (y(need_L_week[widest]!) + y(today_L_week[widest]!)) / 2,
      };
      out.push({ text: words.beyondLabel, target, ink: "mains" });
    }
  }
  return out;
}

/** Rain hangs from the top; what watering must bring grows from the ground. */
export function drawMonths(svgNode: SVGSVGElement, months: Months, width: number, say: Formatter): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const { need_L_week, today_L_week } = months;
  const most_L = Math.max(...need_L_week, ...(today_L_week ?? [0]));
  const top = scaleLinear([0, say.volume(most_L) * 1.12 || 1], [0, 1]).nice(4);
  const ticks = top.ticks(4);
  const left = Math.max(axisRoom(ticks.map((t) => say.number(t))), axisRoom([say.depthBare(88)]));
  const height = Math.round(Math.min(250, Math.max(190, width * 0.36)));
  const frame: Frame = {
    left,
    right: width - 1,
    rainTop: 24,
    top: 24 + RAIN_PX + 40,
    bottom: 24 + RAIN_PX + 40 + height,
    month: (width - 1 - left) / 12,
  };
  const x = (m: number) => frame.left + m * frame.month;
  const shownY = scaleLinear(top.domain(), [frame.bottom, frame.top]);
  const y = (x_L: number) => shownY(say.volume(x_L));

  const rainY = rainPanel(svg, months, frame, x, say);
  hairlines(svg, shownY, ticks, {
    left: frame.left,
    right: frame.right,
    text: (t) => say.number(t),
    unit: words.axis(say.volumeUnit),
    unitX: 0,
    unitY: frame.top - 12,
  });
  const zero = new Array<number>(12).fill(0);
  const fill = svg.append("g");
  fill
    .append("path")
    .attr("fill", fillOf[months.source])
    .attr("d", between(need_L_week, zero, x, y));
  if (today_L_week) {
    fill
      .append("path")
      .attr("fill", fills.mainsBeyond)
      .attr("d", between(today_L_week, need_L_week, x, y));
    svg
      .append("path")
      .attr("class", "today")
      .attr("d", steps(today_L_week, x, y));
  }
  svg
    .append("path")
    .attr("class", "need")
    .attr("d", steps(need_L_week, x, y));

  const drawn: Box[] = Array.from({ length: 12 }, (_, m) => {
    const high = y(Math.max(need_L_week[m]!, today_L_week?.[m] ?? 0));
    return { x: x(m), y: high, width: frame.month, height: frame.bottom - high };
  });
  const bounds = {
    x: frame.left + 2,
    y: frame.top - 6,
    width: frame.right - frame.left - 4,
    height: frame.bottom - frame.top,
  };
  writeCallouts(svg, labels(months, frame, x, y), drawn, bounds);
  const wettest = months.rain_mm_week.indexOf(Math.max(...months.rain_mm_week));
  if (months.rain_mm_week[wettest]! > 0) {
    const rainBoxes = months.rain_mm_week.map((mm, m) => ({
      x: x(m),
      y: frame.rainTop,
      width: frame.month,
      height: rainY(mm) - frame.rainTop,
    }));
    const target = { x: x(wettest) + frame.month / 2, y: rainY(months.rain_mm_week[wettest]!) };
    const space = {
      x: frame.left + 2,
      y: frame.rainTop + 4,
      width: frame.right - frame.left - 4,
      height: RAIN_PX + 12,
    };
    writeCallouts(svg, [{ text: words.rain, target, ink: "rain" }], rainBoxes, space);
  }
  monthRow(svg, (m) => x(m) + frame.month / 2, frame.right - frame.left, frame.bottom + 20, say.month);
  return {
    height: frame.bottom + 50,
    ruler: { left: x(0) + frame.month / 2, right: x(11) + frame.month / 2, y: frame.bottom + 28 },
    at: (i) => x(i) + frame.month / 2,
    nearest: (px) => Math.max(0, Math.min(11, Math.floor((px - frame.left) / frame.month))),
    line: { top: frame.rainTop, bottom: frame.bottom + 28 },
  };
}
