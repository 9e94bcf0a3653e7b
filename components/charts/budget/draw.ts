import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import { choicesPlates } from "../../../src/words/en/choices-plates.ts";
import { axisRoom, hairlines } from "../axis.ts";
import { type Words, writeCallouts } from "../callouts.ts";
import type { Drawn } from "../chart.ts";
import type { Box } from "../labels.ts";
import { textWidth } from "../measure.ts";
import { nearest } from "../size-curve/draw.ts";
import { unitOf, yearlyIn } from "../size-curve/prepare.ts";
import { drawTape } from "../tape.ts";
import { defineTextures, fills } from "../textures.ts";
import type { BudgetSteps, BudgetWords } from "./prepare.ts";

const words = choicesPlates.budget;
const PLOT_PX = 250;

/** Money to the right, mains water given up as steps, in the mains' hatching since it is mains water that goes. */
export function drawBudget(
  node: SVGSVGElement,
  { steps, budget }: BudgetSteps,
  width: number,
  of: BudgetWords,
): Drawn {
  const { say, money } = of;
  const svg = select<SVGSVGElement, undefined>(node);
  defineTextures(svg);
  const v = (kL: number) => yearlyIn(kL, say);
  const saved = steps.map((step) => v(step.saved_kL));
  const dearest = Math.max(1, ...steps.map(({ cost }) => cost), budget ?? 0) * 1.06;
  const top = 52;
  const bottom = top + PLOT_PX;
  const y = scaleLinear([Math.min(0, ...saved), Math.max(0.1, ...saved) * 1.32], [bottom, top]);
  const ticks = y.ticks(5);
  const left = axisRoom(ticks.map((t) => say.number(t)));
  const right = width - 6;
  const x = scaleLinear([0, dearest], [left, right]);
  hairlines(svg, y, ticks, {
    left,
    right,
    text: (t) => say.number(t),
    unit: words.axis(unitOf(say)),
    unitX: 0,
    unitY: 14,
  });
  const outline = steps
    .map((step, k) => `${k === 0 ? `M${x(step.cost)},` : `H${x(step.cost)}V`}${y(saved[k]!)}`)
    .join("");
  svg
    .append("path")
    .attr("fill", fills.mains)
    .attr("d", `${outline}H${right}V${y(0)}H${left}Z`);
  svg.append("path").attr("class", "need").attr("d", `${outline}H${right}`);
  for (const tick of x.ticks(Math.max(2, Math.floor(width / 130))))
    svg
      .append("text")
      .attr("class", "tick")
      .attr("x", x(tick))
      .attr("y", bottom + 18)
      .attr("text-anchor", tick === 0 ? "start" : "middle")
      .text(money(tick));
  svg
    .append("text")
    .attr("class", "tick")
    .attr("x", right)
    .attr("y", bottom + 36)
    .attr("text-anchor", "end")
    .text(words.costAxis);
  const boxes: Box[] = steps.map((step, k) => ({
    x: x(step.cost) - 3,
    y: y(saved[k]!) - 4,
    width: (k + 1 < steps.length ? x(steps[k + 1]!.cost) : right) - x(step.cost) + 6,
    height: 8,
  }));
  // words stand above the steps, not on the hatching
  boxes.push(
    ...steps.map((_, k) => ({
      ...boxes[k]!,
      y: y(saved[k]!),
      height: Math.max(8, bottom - y(saved[k]!)),
    })),
  );
  if (budget !== null) {
    const at = x(budget);
    const text = words.budget(money(budget));
    const w = textWidth(text, 14, 500);
    svg
      .append("line")
      .attr("class", "thread")
      .attr("x1", at)
      .attr("x2", at)
      .attr("y1", top - 8)
      .attr("y2", bottom);
    svg
      .append("text")
      .attr("class", "mark")
      .attr("x", Math.min(Math.max(left, at - w / 2), right - w))
      .attr("y", top - 14)
      .text(text);
    boxes.push({ x: at - 2, y: top, width: 4, height: PLOT_PX });
  }
  const said: Words[] = [{ text: words.need, target: { x: x(0) + 1, y: y(saved[0] ?? 0) }, ink: "mains" }];
  steps.forEach((step, k) => {
    if (!step.isBest) return;
    svg.append("circle").attr("class", "dot").attr("cx", x(step.cost)).attr("cy", y(saved[k]!)).attr("r", 5);
    if (k > 0)
      said.push({
        text: `${words.best}: ${step.whole}`,
        target: { x: x(step.cost), y: y(saved[k]!) },
        ink: "need",
      });
  });
  writeCallouts(svg, said, boxes, { x: left + 8, y: top, width: right - left - 12, height: PLOT_PX - 8 });
  const places = steps.map(({ cost }) => x(cost));
  drawTape(svg, bottom + 44, places);
  return {
    height: bottom + 72,
    ruler: { left: places[0] ?? left, right: places.at(-1) ?? right, y: bottom + 48 },
    at: (i) => places[i] ?? left,
    nearest: (px) => nearest(places, px),
    isUneven: true,
    line: { top, bottom: bottom + 48 },
  };
}
