import { svg } from "lit";
import type { Obstruction } from "../../../src/engine/grounds.ts";
import { horizon, type SunInstant, sunPath } from "../../../src/engine/shade.ts";

export interface SkyDrawing {
  latitude: number;
  longitude: number;
  obstructions: readonly Obstruction[];
  words: { compass: readonly string[]; june: string; december: string; equinox: string };
}

const [left, right, top, foot] = [4, 326, 22, 178];
const up_deg = 90;

/** The months drawn: both ends of the year and the middle strongly, those between as hairlines. */
const drawn = [6, 7, 8, 9, 10, 11, 12];

/** Pieces of a sun's path that run on without leaving one side of the strip. */
export function runsOfPath(path: readonly SunInstant[], x: (azimuth: number) => number): SunInstant[][] {
  const runs: SunInstant[][] = [];
  let run: SunInstant[] = [];
  for (const instant of path) {
    const last = run.at(-1);
    if (last && Math.abs(x(instant.azimuth_deg) - x(last.azimuth_deg)) > (right - left) / 4) {
      runs.push(run);
      run = [];
    }
    run.push(instant);
  }
  return run.length > 0 ? [...runs, run] : runs;
}

/** The sky all round from the middle of a bed: the sun's paths through the year, and what stands before them. */
export function skyDrawing({ latitude, longitude, obstructions, words }: SkyDrawing) {
  // noon in the middle: south where it is north of the equator
  const middle = latitude >= 0 ? 180 : 0;
  const x = (azimuth: number) => left + (((azimuth - middle + 540) % 360) * (right - left)) / 360;
  const y = (altitude: number) => foot - ((foot - top) * altitude) / up_deg;
  const line = (run: readonly SunInstant[]) =>
    `M${run.map(({ azimuth_deg, altitude_deg }) => `${x(azimuth_deg).toFixed(1)} ${y(altitude_deg).toFixed(1)}`).join("L")}`;
  const paths = drawn.map((month) => ({ month, path: sunPath(latitude, longitude, month) }));
  const pieces = horizon(obstructions).filter(({ elevation_deg }) => elevation_deg > 0);
  const highest = (month: number) =>
    paths
      .find((one) => one.month === month)!
      .path.reduce<SunInstant | null>(
        (best, at) => (at.altitude_deg > (best?.altitude_deg ?? 0) ? at : best),
        null,
      );
  const named = [
    { month: 6, text: words.june },
    { month: 9, text: words.equinox },
    { month: 12, text: words.december },
  ];
  return svg`<svg viewBox="0 0 330 204" width="330" height="204" aria-hidden="true">
    ${[30, 60].map((degrees) => svg`<path class="hair" d="M${left} ${y(degrees)}H${right}" /><text class="small" x=${right} y=${y(degrees) - 3} text-anchor="end">${degrees}°</text>`)}
    ${pieces.map(({ from_deg, to_deg, elevation_deg }) =>
      spans(x(from_deg), ((to_deg - from_deg) * (right - left)) / 360).map(
        ([at, width]) =>
          svg`<rect class="wall" x=${at} y=${y(elevation_deg)} width=${width} height=${foot - y(elevation_deg)} />`,
      ),
    )}
    ${paths.map(({ month, path }) =>
      runsOfPath(path, x).map(
        (run) => svg`<path class=${[6, 9, 12].includes(month) ? "ink thin" : "hair"} d=${line(run)} />`,
      ),
    )}
    ${named.map(({ month, text }) => {
      const at = highest(month);
      return at
        ? svg`<text class="measure sun" x=${(left + right) / 2} y=${Math.max(16, y(at.altitude_deg) - 6)} text-anchor="middle">${text}</text>`
        : "";
    })}
    <path class="ink" d="M${left} ${foot}H${right}" />
    ${words.compass.map((word, i) => svg`<text class="small" x=${Math.min(right - 8, Math.max(left + 8, x(i * 45)))} y=${foot + 19} text-anchor="middle">${word}</text>`)}
  </svg>`;
}

/** A stretch of the strip, in two where it runs over its end. */
function spans(from: number, width: number): [number, number][] {
  const over = from + width - right;
  if (over <= 0.01) return [[from, width]];
  return [
    [from, right - from],
    [left, over],
  ];
}

/** Hours of sun a day by month: a bar for each, the whole day's light behind as an outline. */
export function sunHoursDrawing(months: readonly { open_h: number; sun_h: number; name: string }[]) {
  const high = 84;
  const most = Math.max(...months.map(({ open_h }) => open_h), 1);
  const step = 322 / 12;
  return svg`<svg viewBox="0 0 330 128" width="330" height="128" aria-hidden="true">
    ${months.map(({ open_h, sun_h, name }, i) => {
      const [open, sun] = [(high * open_h) / most, (high * sun_h) / most];
      const at = 4 + i * step;
      return svg`<rect class="outline" x=${at + 3} y=${104 - open} width=${step - 6} height=${open} />
        <rect class="solid" x=${at + 3} y=${104 - sun} width=${step - 6} height=${sun} />
        <text class="small" x=${at + step / 2} y=${99 - open} text-anchor="middle">${Math.round(sun_h)}</text>
        <text class="small" x=${at + step / 2} y="122" text-anchor="middle">${name}</text>`;
    })}
    <path class="ink thin" d="M4 104H326" />
  </svg>`;
}
