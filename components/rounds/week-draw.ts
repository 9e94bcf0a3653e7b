import { type SVGTemplateResult, svg } from "lit";
import { weekPage } from "../../src/words/en/rounds-page.ts";
import { fit } from "../charts/measure.ts";
import { fills } from "../charts/textures.ts";
import type { Stop, WeekDayDrawn, WeekDrawn } from "./week-days.ts";

/** Where a day's drawing puts things, by its width. */
interface Layout {
  left: number;
  right: number;
  row: number;
  top: number;
  bar: number;
  isNarrow: boolean;
}

const narrow_px = 560;

function layoutOf(width: number): Layout {
  const isNarrow = width < narrow_px;
  return isNarrow
    ? { left: 22, right: width - 6, row: 50, top: 26, bar: 13, isNarrow }
    : { left: 262, right: width - 8, row: 36, top: 26, bar: 15, isNarrow };
}

/** One day's round: a line a bed, its runs on the clock, and the path of whoever walks from one to the next. */
export function dayDrawing(
  { from_min, to_min }: Pick<WeekDrawn, "from_min" | "to_min">,
  day: WeekDayDrawn,
  supplies: (id: string) => string,
  width: number,
): SVGTemplateResult {
  const at = layoutOf(width);
  const x = (minute: number) => at.left + ((minute - from_min) / (to_min - from_min)) * (at.right - at.left);
  const height = at.top + at.row * day.stops.length + 8;
  const y = (k: number) => at.top + at.row * k + (at.isNarrow ? 34 : 19);
  return svg`<svg
    viewBox="0 0 ${width} ${height}" width=${width} height=${height} role="img" aria-label=${weekPage.dayAbout(day.stops.length)}
  >
    ${hours(from_min, to_min, at, x, height)}
    ${sun(day, from_min, to_min, x, at, height)}
    ${path(day.stops, x, y, at)}
    ${day.stops.map((stop, k) => stopLine(stop, supplies(stop.id), x, y(k), at))}
  </svg>`;
}

function hours(from: number, to: number, at: Layout, x: (m: number) => number, height: number) {
  const span = (to - from) / 60;
  const room = (at.right - at.left) / 52;
  const step = [1, 2, 3, 4, 6, 12].find((one) => span / one <= room) ?? 12;
  const marks = Array.from({ length: Math.floor(span / step) + 1 }, (_, k) => from + 60 * step * k);
  return marks.map(
    (
      minute,
    ) => svg`<line class="hair" x1=${x(minute)} x2=${x(minute)} y1=${at.top - 4} y2=${height - 6}></line>
      <text class="tick" x=${x(minute)} y=${at.top - 10} text-anchor=${minute === to && at.isNarrow ? "end" : "middle"}>${weekPage.clock(minute)}</text>`,
  );
}

function sun(
  { sunrise_min }: WeekDayDrawn,
  from: number,
  to: number,
  x: (m: number) => number,
  at: Layout,
  height: number,
) {
  if (sunrise_min === null || sunrise_min <= from || sunrise_min >= to) return svg``;
  const place = x(sunrise_min);
  return svg`<line class="sun" x1=${place} x2=${place} y1=${at.top - 4} y2=${height - 6}></line>`;
}

/** Footsteps from the start of one bed's water to the start of the next. */
function path(stops: readonly Stop[], x: (m: number) => number, y: (k: number) => number, at: Layout) {
  const walked = stops.flatMap(({ step, runs }, k) =>
    step === null ? [] : [{ x: x(runs[0]!.from_min), y: y(k) }],
  );
  return walked.slice(1).map((to, k) => {
    const from = walked[k]!;
    const bend = Math.max(18, (to.y - from.y) * 0.45);
    const turn = at.isNarrow ? 10 : 16;
    return svg`<path class="steps" d="M${from.x - 2},${from.y} C${from.x - turn},${from.y + bend} ${to.x - turn},${to.y - bend} ${to.x - 2},${to.y}"></path>`;
  });
}

function stopLine(stop: Stop, supply: string, x: (m: number) => number, y: number, at: Layout) {
  const number = stop.step === null ? "" : `${stop.step}`;
  const label = number ? `${number}  ${stop.name}` : stop.name;
  const size = 15;
  const name = at.isNarrow
    ? svg`<text class="stop" x="0" y=${y - at.bar - 4}>${fit(label, at.right, size, 600)}</text>`
    : svg`<text class="stop" x="0" y=${y + 5}>${fit(label, at.left - 22, size, 600)}</text>`;
  return svg`${name}${joined(stop, x, y)}${stop.runs.map(({ from_min, to_min }) =>
    water(x(from_min), Math.max(2, x(to_min) - x(from_min)), y - at.bar / 2, at.bar, stop.tankShare, supply),
  )}${stop.runs.length === 0 ? noTime(y, at) : svg``}`;
}

/** Between two runs the soil soaks: a hairline says that they belong together. */
function joined({ runs }: Stop, x: (m: number) => number, y: number) {
  const [first] = runs;
  const last = runs.at(-1);
  if (!first || !last || runs.length < 2) return svg``;
  return svg`<line class="soak" x1=${x(first.from_min)} x2=${x(last.to_min)} y1=${y} y2=${y}></line>`;
}

function water(left: number, width: number, top: number, tall: number, tankShare: number, supply: string) {
  const rest = supply === "other" ? fills.other : fills.mains;
  const ink = supply === "other" ? "other" : "mains";
  const tank = tall * tankShare;
  return svg`${
    tank > 0.5
      ? svg`<rect x=${left} y=${top + tall - tank} width=${width} height=${tank} fill=${fills.tank}></rect>`
      : svg``
  }${
    tall - tank > 0.5
      ? svg`<rect class="edge ${ink}" x=${left} y=${top} width=${width} height=${tall - tank} fill=${rest}></rect>`
      : svg``
  }`;
}

function noTime(y: number, at: Layout) {
  return svg`<text class="tick" x=${at.left} y=${y + 5}>${weekPage.noTime}</text>`;
}
