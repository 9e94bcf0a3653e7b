import type { Corner } from "../../../src/survey/measuring/polygon.ts";

/** What is set on a plan, in pixels of the picture. */
export interface Traced {
  /** Both ends of the known length. */
  known: Corner[];
  /** Corners of the shape, in order. */
  corners: Corner[];
}

/** Steps that can be taken back. */
export interface Tracing {
  now: Traced;
  past: readonly Traced[];
}

export const emptyTrace: Traced = { known: [], corners: [] };

const mostSteps = 200;

export function did(tracing: Tracing, now: Traced): Tracing {
  return { now, past: [...tracing.past, tracing.now].slice(-mostSteps) };
}

export function undone({ now, past }: Tracing): Tracing {
  return past.length === 0 ? { now, past } : { now: past.at(-1)!, past: past.slice(0, -1) };
}

const far = (a: Corner, b: Corner) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** The point nearest to another within reach; null for none. */
export function nearest(at: Corner, points: readonly Corner[], reach: number): number | null {
  let best: number | null = null;
  points.forEach((point, i) => {
    if (far(at, point) <= reach && (best === null || far(at, point) < far(at, points[best]!))) best = i;
  });
  return best;
}

/**
 * Where a point set at a place goes: on to a corner near by, else square or in line with the side before it where
 * that is within reach, else where it was set.
 */
export function snapped(
  at: Corner,
  corners: readonly Corner[],
  others: readonly Corner[],
  reach: number,
): Corner {
  const on = nearest(at, others, reach);
  if (on !== null) return others[on]!;
  const [before, last] = [corners.at(-2), corners.at(-1)];
  if (!before || !last) return at;
  const along = unit([last[0] - before[0], last[1] - before[1]]);
  if (!along) return at;
  for (const way of [along, [-along[1], along[0]] as Corner]) {
    const length = (at[0] - last[0]) * way[0] + (at[1] - last[1]) * way[1];
    const foot: Corner = [last[0] + length * way[0], last[1] + length * way[1]];
    if (far(foot, at) <= reach && Math.abs(length) > reach) return foot;
  }
  return at;
}

function unit([x, y]: Corner): Corner | null {
  const length = Math.hypot(x, y);
  return length === 0 ? null : [x / length, y / length];
}

/** Corners of the picture as metres east and north of its lower left corner. */
export function inMetres(corners: readonly Corner[], metresPerPixel: number, height_px: number): Corner[] {
  const round = (value: number) => Math.round(value * 1000) / 1000;
  return corners.map(([x, y]) => [round(x * metresPerPixel), round((height_px - y) * metresPerPixel)]);
}

/** Metres of an outline as pixels of the picture again. */
export function inPixels(
  outline_m: readonly (readonly number[])[],
  metresPerPixel: number,
  height_px: number,
): Corner[] {
  return outline_m.map(([x = 0, y = 0]) => [x / metresPerPixel, height_px - y / metresPerPixel]);
}

/** A view of the picture: how large it is shown and what of it. */
export interface View {
  scale: number;
  x: number;
  y: number;
}

export const wholeView: View = { scale: 1, x: 0, y: 0 };

/** How small and how large a picture may be shown. */
const [furthest_scale, nearest_scale] = [0.05, 12];

/** Zoomed about a place on the screen, which stays where it is. */
export function zoomed({ scale, x, y }: View, by: number, at: Corner): View {
  const next = Math.min(nearest_scale, Math.max(furthest_scale, scale * by));
  const ratio = next / scale;
  return { scale: next, x: at[0] - (at[0] - x) * ratio, y: at[1] - (at[1] - y) * ratio };
}

export const toPicture = ({ scale, x, y }: View, [sx, sy]: Corner): Corner => [
  (sx - x) / scale,
  (sy - y) / scale,
];
export const toScreen = ({ scale, x, y }: View, [px, py]: Corner): Corner => [px * scale + x, py * scale + y];

/** How far two fingers moved apart: the ratio of their distances. */
export function spread(before: Corner, now: Corner, other: Corner): number {
  return far(now, other) / Math.max(1, far(before, other));
}
