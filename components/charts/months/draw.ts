import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { plate } from "../../../src/words/en/plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { axisRoom, hairlines, monthRow } from "../axis.ts";
import { type Words, writeCallouts } from "../callouts.ts";
import type { Drawn } from "../chart.ts";
import type { Box } from "../labels.ts";
import type { Svg } from "../measure.ts";
import { between, steps } from "../steps.ts";
import { drawTape } from "../tape.ts";
import { defineTextures, fills } from "../textures.ts";
import type { Months, MonthYears, Source } from "./prepare.ts";
import { drawRain, RAIN_PX } from "./rain.ts";

const words = plate.months;
const fillOf: Record<Source, string> = { mains: fills.mains, tank: fills.tank, other: fills.other };

/** What is wasted may have come from any of several sources: both hatchings, then, and plain ink for its words. */
const beyondOf: Record<Source | "several", string> = {
  mains: fills.mainsBeyond,
  tank: fills.tankBeyond,
  other: fills.otherBeyond,
  several: fills.bothBeyond,
};
const inkOf: Record<Source | "several", string> = {
  mains: "mains",
  tank: "tank",
  other: "need",
  several: "need",
};

function sourceOf({ parts }: Months): Source | "several" {
  return parts.length === 1 ? parts[0]!.source : "several";
}

interface Frame {
  left: number;
  right: number;
  rainTop: number;
  top: number;
  bottom: number;
  month: number;
}

function labels(months: Months, frame: Frame, x: (m: number) => number, y: (v: number) => number): Words[] {
  const { need_L_week, today_L_week } = months;
  const middle = (m: number) => (x(m) + x(m + 1)) / 2;
  const peak = need_L_week.indexOf(Math.max(...need_L_week));
  const out: Words[] = [];
  if (need_L_week[peak]! > 0) {
    out.push({ text: words.need, target: { x: middle(peak), y: y(need_L_week[peak]!) }, ink: "need" });
  }
  if (months.years) {
    const { dry_L_week, wet_L_week } = months.years;
    const span = dry_L_week.map((dry, m) => dry - wet_L_week[m]!);
    const m = span.indexOf(Math.max(...span));
    if (y(wet_L_week[m]!) - y(dry_L_week[m]!) > 8)
      out.push({ text: words.wetToDry, target: { x: middle(m), y: y(dry_L_week[m]!) - 2 }, ink: "need" });
  }
  if (today_L_week && Math.max(...today_L_week) > 0) {
    const gaps = today_L_week.map((t, m) => t - need_L_week[m]!);
    const widest = gaps.indexOf(Math.max(...gaps));
    const over = gaps[widest]! > 0;
    const at = gaps.findIndex((gap, m) => today_L_week[m]! > 0 && gap > 0 === over);
    out.push({
      text: months.one ? words.todayOne : words.today,
      target: { x: middle(at), y: y(today_L_week[at]!) },
      ink: "need",
    });
    const tall = over && y(need_L_week[widest]!) - y(today_L_week[widest]!) > 24;
    if (tall) {
      const target = {
        x: x(widest) + frame.month * 0.75,
        y: (y(need_L_week[widest]!) + y(today_L_week[widest]!)) / 2,
      };
      out.push({ text: words.beyondLabel, target, ink: inkOf[sourceOf(months)] });
    }
  }
  return out;
}

/** A stroke through each month from a wet one to a dry one. */
function drawYears(
  svg: Svg,
  { dry_L_week, wet_L_week }: MonthYears,
  frame: Frame,
  x: (m: number) => number,
  y: (v: number) => number,
): void {
  const half = Math.min(7, frame.month * 0.18);
  const d = dry_L_week.map((dry, m) => {
    const middle = x(m) + frame.month / 2;
    const [top, foot] = [y(dry), y(wet_L_week[m]!)];
    if (Math.abs(foot - top) < 1) return "";
    return `M${middle},${foot}V${top}M${middle - half},${top}h${2 * half}M${middle - half},${foot}h${2 * half}`;
  });
  svg.append("path").attr("class", "span-back").attr("d", d.join(""));
  svg.append("path").attr("class", "span").attr("d", d.join(""));
}

/** Rain hangs from the top; what watering must bring grows from the ground. */
export function drawMonths(svgNode: SVGSVGElement, months: Months, width: number, say: Formatter): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const { need_L_week, today_L_week } = months;
  const most_L = Math.max(...need_L_week, ...(today_L_week ?? [0]), ...(months.years?.dry_L_week ?? [0]));
  const top = scaleLinear([0, say.volume(most_L) * (width < 480 ? 1.45 : 1.22) || 1], [0, 1]);
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

  drawRain(
    svg,
    months.rain_mm_week,
    months.rainUsed_mm_week,
    { left: frame.left, right: frame.right, top: frame.rainTop },
    x,
    say,
  );
  hairlines(svg, shownY, ticks, {
    left: frame.left,
    right: frame.right,
    text: (t) => say.number(t),
    unit: words.axis(say.volumeUnit),
    unitX: 0,
    unitY: frame.top - 16,
  });
  const fill = svg.append("g");
  let ground: readonly number[] = new Array<number>(12).fill(0);
  for (const { source, L_week } of months.parts) {
    const top = L_week.map((x, m) => x + ground[m]!);
    fill
      .append("path")
      .attr("fill", fillOf[source])
      .attr("d", between(top, ground, x, y));
    ground = top;
  }
  if (today_L_week) {
    fill
      .append("path")
      .attr("fill", beyondOf[sourceOf(months)])
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
  if (months.years) drawYears(svg, months.years, frame, x, y);

  const drawn: Box[] = Array.from({ length: 12 }, (_, m) => {
    const high = y(Math.max(need_L_week[m]!, today_L_week?.[m] ?? 0));
    return { x: x(m), y: high, width: frame.month, height: frame.bottom - high };
  });
  months.years?.dry_L_week.forEach((dry, m) => {
    const high = y(dry) - 2;
    drawn.push({
      x: x(m) + frame.month * 0.3,
      y: high,
      width: frame.month * 0.4,
      height: frame.bottom - high,
    });
  });
  const bounds = {
    x: frame.left + 2,
    y: frame.top - 6,
    width: frame.right - frame.left - 4,
    height: frame.bottom - frame.top,
  };
  writeCallouts(svg, labels(months, frame, x, y), drawn, bounds);
  monthRow(svg, (m) => x(m) + frame.month / 2, frame.right - frame.left, frame.bottom + 20, say.month);
  drawTape(
    svg,
    frame.bottom + 30,
    months.need_L_week.map((_, m) => x(m) + frame.month / 2),
  );
  return {
    height: frame.bottom + 54,
    ruler: { left: x(0) + frame.month / 2, right: x(11) + frame.month / 2, y: frame.bottom + 34 },
    at: (i) => x(i) + frame.month / 2,
    nearest: (px) => Math.max(0, Math.min(11, Math.floor((px - frame.left) / frame.month))),
    line: { top: frame.rainTop, bottom: frame.bottom + 34 },
  };
}
