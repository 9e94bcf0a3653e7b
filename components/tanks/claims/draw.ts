import { scaleLinear } from "d3-scale";
import { select } from "d3-selection";
import type { Claim } from "../../../src/report/tanks-view.ts";
import { tanks } from "../../../src/words/en/tanks.ts";
import { type Formatter, NBSP } from "../../../src/words/format.ts";
import type { Drawn } from "../../charts/chart.ts";
import { fit, type Svg, textWidth } from "../../charts/measure.ts";
import { defineTextures, fills } from "../../charts/textures.ts";

const words = tanks.claims;
const BESIDE_PX = 560;
const BAR_PX = 15;

/** A line for each who asks: what the tank gives, and what of the rest the mains give or nobody does. */
export function drawClaims(
  svgNode: SVGSVGElement,
  claims: readonly Claim[],
  width: number,
  say: Formatter,
): Drawn {
  const svg = select<SVGSVGElement, undefined>(svgNode);
  defineTextures(svg);
  const beside = width >= BESIDE_PX;
  const texts = claims.map(
    ({ got_L_year, asks_L_year }) =>
      `${say.litresBare(got_L_year)}${NBSP}${say.volumeSymbol}, ${words.share(say.share(Math.min(1, got_L_year / Math.max(1e-9, asks_L_year))))}`,
  );
  const nameWidth = beside ? Math.round(Math.min(220, width * 0.32)) : width;
  const left = beside ? nameWidth + 16 : 0;
  const most = Math.max(1, ...claims.map(({ asks_L_year, got_L_year }) => Math.max(asks_L_year, got_L_year)));
  const x = scaleLinear([0, most], [left, width - 1]);
  const top = heads(svg, claims, left);
  const row = beside ? 52 : 70;
  claims.forEach((claim, i) => {
    const y = top + i * row;
    write(svg, 0, y + 18, fit(claim.name, nameWidth, 16, 500), "bed small");
    const bar = beside ? y + 6 : y + 28;
    const got = Math.min(claim.got_L_year, Math.max(claim.asks_L_year, claim.got_L_year));
    block(svg, x(0), x(got), bar, fills.tank, "edge tank");
    block(
      svg,
      x(got),
      x(claim.asks_L_year),
      bar,
      claim.restFromMains ? fills.mains : "none",
      claim.restFromMains ? "edge mains" : "lacks",
    );
    write(svg, x(0), bar + BAR_PX + 17, texts[i]!, "tick");
  });
  const foot = top + claims.length * row;
  return {
    height: foot,
    ruler: { left: 0, right: width, y: foot },
    at: () => 0,
    nearest: () => 0,
    line: { top: 0, bottom: 0 },
  };
}

function heads(svg: Svg, claims: readonly Claim[], left: number): number {
  const isShort = (claim: Claim) => claim.asks_L_year > claim.got_L_year * 1.001;
  const parts = [
    { text: words.given, style: "tank" },
    ...(claims.some((claim) => claim.restFromMains && isShort(claim))
      ? [{ text: words.mains, style: "mains" }]
      : []),
    ...(claims.some((claim) => !claim.restFromMains && isShort(claim))
      ? [{ text: words.lacks, style: "need" }]
      : []),
  ];
  let at = left;
  for (const { text, style } of parts) {
    write(svg, at, 14, text, `word small ${style}`);
    at += textWidth(text, 14, 500) + 16;
  }
  return 26;
}

function write(svg: Svg, x: number, y: number, text: string, style: string): void {
  svg.append("text").attr("class", style).attr("x", x).attr("y", y).text(text);
}

function block(svg: Svg, from: number, to: number, y: number, fill: string, style: string): void {
  if (to - from < 0.3) return;
  svg
    .append("rect")
    .attr("x", from)
    .attr("y", y)
    .attr("width", to - from)
    .attr("height", BAR_PX)
    .attr("fill", fill)
    .attr("class", style);
}
