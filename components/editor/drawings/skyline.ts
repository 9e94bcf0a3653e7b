import { html, nothing, svg } from "lit";
import type { Obstruction } from "../../../src/engine/grounds.ts";
import { horizon, type SunInstant, skyView, sunPath } from "../../../src/engine/shade.ts";
import { type Address, isFields, valueIn } from "../../../src/survey/edit/document.ts";
import { drawingWords } from "../../../src/words/en/editor-drawings.ts";
import { setStyle } from "../../look/set-style.ts";
import type { Editing, Shown } from "../editing.ts";
import { numberIn } from "./number-in.ts";

/** Width and height of the strip: degrees round, and up to straight overhead. */
const round_deg = 360;
const up_deg = 90;

/** The skyline all round as seen from the bed, with the sun's way over it in midsummer and midwinter. */
export function skyline({ draft }: Editing, at: Address): Shown {
  const list = valueIn(draft, [...at, "obstructions"]);
  const sectors = (Array.isArray(list) ? list : []).flatMap(sector);
  const latitude = numberIn(draft, "site", "latitude") ?? 0;
  const longitude = numberIn(draft, "site", "longitude") ?? 0;
  // noon in the middle: south where it is north of the equator
  const middle = latitude >= 0 ? 180 : 0;
  const x = (azimuth_deg: number) => (azimuth_deg - middle + 540) % round_deg;
  const pieces = horizon(sectors);
  const isPlace = Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180;
  const paths = isPlace ? [6, 12].map((month) => sunPath(latitude, longitude, month)) : [];
  const [june = [], december = []] = paths;
  const [summer, winter] = latitude >= 0 ? [june, december] : [december, june];
  const words = drawingWords.skyline(sectors.length, Math.round(100 * (1 - skyView(pieces))));
  return html`<figure class="skyline">
    <div class="strip" aria-hidden="true">
      <svg viewBox="0 0 360 90" preserveAspectRatio="none">
        ${[30, 60].map((y) => svg`<line class="hair" x1="0" x2="360" y1=${up_deg - y} y2=${up_deg - y} />`)}
        ${sunLine(summer, x, "sun")} ${sunLine(winter, x, "sun winter")}
        ${pieces
          .filter(({ elevation_deg }) => elevation_deg > 0)
          .flatMap(({ from_deg, to_deg, elevation_deg }) =>
            spans(x(from_deg), to_deg - from_deg).map(
              ([left, width]) =>
                svg`<rect class="wall" x=${left} width=${width} y=${up_deg - elevation_deg} height=${elevation_deg} />`,
            ),
          )}
        <line class="ground" x1="0" x2="360" y1="90" y2="90" />
      </svg>
      ${[30, 60].map((y) => html`<span class="height" ${setStyle({ bottom: share(y, up_deg) })}>${y}°</span>`)}
      ${sunWord(summer, x, drawingWords.midsummer)} ${sunWord(winter, x, drawingWords.midwinter)}
    </div>
    <div class="compass" aria-hidden="true">
      ${drawingWords.compass.map((word, quarter) => compassWord(word, x(90 * quarter)))}
      ${compassWord(drawingWords.compass[middle === 180 ? 0 : 2], round_deg)}
    </div>
    <figcaption>${words}</figcaption>
  </figure>`;
}

function sector(row: unknown): Obstruction[] {
  const fromAzimuth_deg = numberIn(row, "fromAzimuth_deg");
  const toAzimuth_deg = numberIn(row, "toAzimuth_deg");
  const elevation_deg = numberIn(row, "elevation_deg");
  if (!isFields(row) || fromAzimuth_deg === null || toAzimuth_deg === null || elevation_deg === null)
    return [];
  const isWithin = [fromAzimuth_deg, toAzimuth_deg].every((one) => one >= 0 && one <= 360);
  return isWithin && elevation_deg >= 0 && elevation_deg <= 90
    ? [{ fromAzimuth_deg, toAzimuth_deg, elevation_deg }]
    : [];
}

/** A stretch that may pass the strip's right end, in one piece or two. */
function spans(left: number, width: number): [number, number][] {
  const over = left + width - round_deg;
  if (over <= 0) return [[left, width]];
  return [
    [left, width - over],
    [0, over],
  ];
}

function sunLine(path: readonly SunInstant[], x: (azimuth_deg: number) => number, look: string) {
  if (path.length === 0) return nothing;
  const points = path.map(
    ({ azimuth_deg, altitude_deg }) => [x(azimuth_deg), up_deg - altitude_deg] as const,
  );
  const d = points.map(([left, top], i) => {
    const isJump = i > 0 && Math.abs(left - points[i - 1]![0]) > 180;
    return `${i === 0 || isJump ? "M" : "L"}${left.toFixed(1)},${top.toFixed(1)}`;
  });
  return svg`<path class=${look} d=${d.join("")} />`;
}

function share(part: number, whole: number): string {
  return `${(100 * part) / whole}%`;
}

function compassWord(word: string, left_deg: number) {
  const edge = left_deg === 0 ? "at-start" : left_deg === round_deg ? "at-end" : "";
  return html`<span class=${edge} ${setStyle({ left: share(left_deg, round_deg) })}>${word}</span>`;
}

/** The word stands over the highest point. */
function sunWord(path: readonly SunInstant[], x: (azimuth_deg: number) => number, word: string) {
  const top = path.reduce<SunInstant | null>(
    (best, one) => (best && best.altitude_deg > one.altitude_deg ? best : one),
    null,
  );
  if (!top) return nothing;
  const height = Math.min(88, top.altitude_deg);
  return html`<span
    class="sun-word"
    ${setStyle({ left: share(x(top.azimuth_deg), round_deg), bottom: share(height, up_deg) })}
    >${word}</span
  >`;
}
