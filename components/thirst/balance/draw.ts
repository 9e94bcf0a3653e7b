import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import { axisRoom, hairlines, monthRow } from "../../charts/axis.ts";
import { type Words, writeCallouts } from "../../charts/callouts.ts";
import type { Drawn } from "../../charts/chart.ts";
import { textWidth } from "../../charts/measure.ts";
import { drawTape } from "../../charts/tape.ts";
import { defineTextures, fills } from "../../charts/textures.ts";
import type { Balance } from "./prepare.ts";

const words = thirst.balance;
const TOP_PX = 34;

const wastedOf = {
  "mains-only": fills.mainsBeyond,
  "tank-only": fills.tankBeyond,
  "tank-then-mains": fills.bothBeyond,
  other: fills.otherBeyond,
  none: fills.otherBeyond,
} as const;

/** The need is the ground line: what is too much stands on it in thin hatching, what lacks hangs below it, empty. */
export function drawBalance(svgNode: SVGSVGElement, balance: Balance, width: number, say: Formatter): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const more = balance.more_L_week;
  const [low, high] = [Math.min(0, ...more), Math.max(0, ...more)];
  const span = high - low || 1;
  const scale = scaleLinear([say.volume(low - 0.08 * span), say.volume(high + 0.14 * span)], [0, 1]).nice(4);
  const ticks = scale.ticks(4);
  const minutes = balance.more_min_week
    ? scaleLinear(
        scale.domain().map((shown) => shown / say.volume(1) / balance.flow_L_min),
        [0, 1],
      )
    : null;
  const minuteTicks = minutes?.ticks(4) ?? [];
  const text = (x: number) => say.number(Math.abs(x));
  const left = axisRoom(ticks.map(text));
  const room = minutes ? axisRoom(minuteTicks.map(text)) : 1;
  const right = width - room;
  const height = Math.round(Math.min(190, Math.max(150, width * 0.28)));
  const bottom = TOP_PX + height;
  const shownY = scaleLinear(scale.domain(), [bottom, TOP_PX]);
  const y = (litres: number) => shownY(say.volume(litres));
  const month = (right - left) / 12;
  const middle = (m: number) => left + (m + 0.5) * month;
  hairlines(svg, shownY, ticks, { left, right, text, unit: words.axis(say.volumeUnit), unitX: 0, unitY: 14 });
  if (minutes) {
    const minuteY = scaleLinear(minutes.domain(), [bottom, TOP_PX]);
    for (const tick of minuteTicks)
      svg
        .append("text")
        .attr("class", "tick")
        .attr("x", right + 8)
        .attr("y", minuteY(tick))
        .attr("dy", "0.33em")
        .text(text(tick));
    const unit = words.minutesAxis;
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", width - textWidth(unit, 14))
      .attr("y", 14)
      .text(unit);
  }
  const gap = Math.max(1.5, month * 0.14);
  more.forEach((litres, m) => {
    const [top, foot] = litres > 0 ? [y(litres), y(0)] : [y(0), y(litres)];
    if (foot - top < 0.5) return;
    svg
      .append("rect")
      .attr("class", litres > 0 ? "beyond bar-of" : "lacks")
      .attr("fill", litres > 0 ? wastedOf[balance.supply] : "none")
      .attr("x", left + m * month + gap)
      .attr("y", top)
      .attr("width", month - 2 * gap)
      .attr("height", foot - top);
  });
  const drawn = more.map((litres, m) => ({
    x: left + m * month,
    y: Math.min(y(litres), y(0)) - 2,
    width: month,
    height: Math.abs(y(litres) - y(0)) + 4,
  }));
  writeCallouts(svg, callouts(balance, middle, y), drawn, {
    x: left + 2,
    y: TOP_PX,
    width: right - left - 4,
    height,
  });
  monthRow(svg, middle, right - left, bottom + 18, say.month);
  drawTape(
    svg,
    bottom + 28,
    more.map((_, m) => middle(m)),
  );
  return {
    height: bottom + 52,
    ruler: { left: middle(0), right: middle(11), y: bottom + 32 },
    at: middle,
    nearest: (px) => Math.max(0, Math.min(11, Math.floor((px - left) / month))),
    line: { top: TOP_PX, bottom: bottom + 32 },
  };
}

function callouts(
  { more_L_week }: Balance,
  middle: (m: number) => number,
  y: (litres: number) => number,
): Words[] {
  const most = more_L_week.indexOf(Math.max(...more_L_week));
  const least = more_L_week.indexOf(Math.min(...more_L_week));
  const said: Words[] = [];
  const tall = (m: number) => Math.abs(y(more_L_week[m]!) - y(0)) > 10;
  const target = (m: number) => ({ x: middle(m), y: y(more_L_week[m]!) });
  if (more_L_week[most]! > 0 && tall(most))
    said.push({ text: words.beyond, target: target(most), ink: "need" });
  if (more_L_week[least]! < 0 && tall(least))
    said.push({ text: words.lacks, target: target(least), ink: "need" });
  return said;
}
