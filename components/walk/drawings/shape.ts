import { nothing, type SVGTemplateResult, svg } from "lit";
import type { Corner } from "../../../src/survey/measuring/polygon.ts";
import type { ShapeFigure } from "./shape-geometry.ts";

/** A box of a drawing, px, and how metres lie in it. */
export interface Frame {
  width: number;
  height: number;
  x(metres: number): number;
  y(metres: number): number;
}

/** Fits corners into a box, alike in both directions, y up. */
export function frameFor(
  corners: readonly Corner[],
  width: number,
  most: number,
  margin: number,
  sides = margin,
): Frame {
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  const [west, east] = [Math.min(...xs), Math.max(...xs)];
  const [south, north] = [Math.min(...ys), Math.max(...ys)];
  const wide = Math.max(east - west, 1e-9);
  const high = Math.max(north - south, 1e-9);
  const scale = Math.min((width - 2 * sides) / wide, (most - 2 * margin) / high);
  const height = high * scale + 2 * margin;
  const left = (width - wide * scale) / 2;
  return {
    width,
    height,
    x: (metres) => left + (metres - west) * scale,
    y: (metres) => margin + (north - metres) * scale,
  };
}

export function pathOf(corners: readonly Corner[], { x, y }: Frame, close = true): string {
  const points = corners.map(([east, north]) => `${x(east).toFixed(1)} ${y(north).toFixed(1)}`);
  return `M${points.join("L")}${close ? "Z" : ""}`;
}

interface ShapeOptions {
  width: number;
  /** The blank that is being filled, drawn strongly. */
  slot: number | null;
  /** What stands at each blank's side: the length as typed, or its letter. */
  label(slot: number): string;
  /** Taken away from the others. */
  cut?: boolean;
  /** Whether the lengths are typed: else it is only what such a shape looks like. */
  toScale: boolean;
}

const margin = 30;
/** Room for a length written beside an edge. */
const sides = 58;

/** A shape as it was taped: paper ground, ink edge, each length written where it was measured. */
export function shapeDrawing(figure: ShapeFigure, options: ShapeOptions): SVGTemplateResult {
  const { width, slot, label, cut = false, toScale } = options;
  const frame = frameFor(figure.corners, width, 230, margin, sides);
  const edge = pathOf(figure.corners, frame, figure.closes);
  const hole = figure.hole ? pathOf(figure.hole, frame) : "";
  const middle = centre(figure.corners);
  const labelled = new Set<number>();
  return svg`<svg viewBox="0 0 ${width} ${frame.height.toFixed(1)}" width=${width} height=${frame.height.toFixed(1)} aria-hidden="true">
    <path class="area ${cut ? "cut" : ""} ${toScale ? "" : "sketch"} ${figure.closes ? "" : "open"}" fill-rule="evenodd" d="${edge}${hole}" />
    ${figure.dimensions.map((one) => {
      const isFirst = !labelled.has(one.slot);
      labelled.add(one.slot);
      const [x1, y1, x2, y2] = [
        frame.x(one.from[0]),
        frame.y(one.from[1]),
        frame.x(one.to[0]),
        frame.y(one.to[1]),
      ];
      const text = isFirst ? label(one.slot) : "";
      const at = beside(one.from, one.to, middle, frame, one.inside ?? false);
      return svg`<line class="length ${one.slot === slot ? "now" : ""} ${one.inside ? "inside" : ""}" x1=${x1} y1=${y1} x2=${x2} y2=${y2} />
        ${text ? svg`<text class="measure ${one.slot === slot ? "now" : ""}" x=${at.x} y=${at.y} text-anchor=${at.anchor}>${text}</text>` : nothing}`;
    })}
  </svg>`;
}

function centre(corners: readonly Corner[]): Corner {
  const sum = corners.reduce(([sx, sy], [x, y]): [number, number] => [sx + x, sy + y], [0, 0] as [
    number,
    number,
  ]);
  return [sum[0] / corners.length, sum[1] / corners.length];
}

/** Where a length is written: outside its edge; beside a line across. */
function beside(from: Corner, to: Corner, middle: Corner, frame: Frame, inside: boolean) {
  const mx = frame.x((from[0] + to[0]) / 2);
  const my = frame.y((from[1] + to[1]) / 2);
  const dx = frame.x(to[0]) - frame.x(from[0]);
  const dy = frame.y(to[1]) - frame.y(from[1]);
  const length = Math.hypot(dx, dy) || 1;
  const out = (mx - frame.x(middle[0])) * -dy + (my - frame.y(middle[1])) * dx >= 0 ? 1 : -1;
  const turned = inside ? 1 : out;
  const [nx, ny] = [(-dy / length) * turned, (dx / length) * turned];
  const far = inside ? 8 : 12;
  const anchor = nx > 0.5 ? "start" : nx < -0.5 ? "end" : "middle";
  return { x: mx + nx * far, y: my + ny * far + (ny > 0.5 ? 9 : ny < -0.5 ? -1 : 5), anchor };
}
