import { svg } from "lit";
import type { Show } from "../../../src/words/en/walk-show.ts";

/** A timing of a hose from a tank. */
export interface TimedRun {
  level_L: number;
  head_m: number;
  flow_L_min: number;
}

const [left, right, top, foot] = [52, 300, 22, 168];

/** Flow against the water's height above the hose's end: the timings, and the square-root curve through them. */
export function flowCurve(runs: readonly TimedRun[], curve: ((head_m: number) => number) | null, show: Show) {
  const most = Math.max(...runs.map(({ head_m }) => head_m)) * 1.15;
  const highest = Math.max(...runs.map(({ flow_L_min }) => flow_L_min), curve ? curve(most) : 0) * 1.1;
  const x = (head: number) => left + ((right - left) * head) / most;
  const y = (flow: number) => foot - ((foot - top) * flow) / highest;
  const line = curve
    ? Array.from(
        { length: 41 },
        (_, i) => `${x((most * i) / 40).toFixed(1)} ${y(curve((most * i) / 40)).toFixed(1)}`,
      )
    : [];
  return svg`<svg viewBox="0 0 330 206" width="330" height="206" aria-hidden="true">
    <path class="ink" d="M${left} ${foot}H${right}" />
    <path class="hair" d="M${left} ${top}V${foot}" />
    ${line.length > 0 ? svg`<path class="tank-line" d="M${line.join("L")}" />` : ""}
    ${runs.map(
      ({ head_m, flow_L_min }) => svg`<circle class="solid" cx=${x(head_m)} cy=${y(flow_L_min)} r="5" />
        <text class="measure" x=${x(head_m)} y=${y(flow_L_min) - 12} text-anchor="middle">${show(flow_L_min, "L/min")}</text>
        <text class="small" x=${x(head_m)} y=${foot + 20} text-anchor="middle">${show(head_m, "m")}</text>`,
    )}
  </svg>`;
}
