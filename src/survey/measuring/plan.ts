import type { Figure } from "./figure.ts";
import { type Corner, polygonArea, polygonPerimeter } from "./polygon.ts";

/** A plan's scale: a length known on the ground and as drawn, and how well a point can be set on the plan. */
export interface PlanScale {
  known_m: Figure;
  /** The same length between the two points set on the plan. */
  known_px: number;
  /** Standard error of a point set on the plan, along each axis. */
  point_px: number;
}

/** Metres to a pixel; both ends of the known length carry a point's error. */
export function metresPerPixel({ known_m, known_px, point_px }: PlanScale): Figure {
  const scale = known_m.figure / known_px;
  const relative = Math.hypot(known_m.standardError / known_m.figure, (Math.SQRT2 * point_px) / known_px);
  return { figure: scale, standardError: scale * relative };
}

/**
 * Area of a shape traced on a plan, m². Moving one corner sweeps half the diagonal of its neighbours; the scale
 * moves all corners alike.
 */
export function tracedArea_m2(corners: readonly Corner[], plan: PlanScale): Figure {
  const scale = metresPerPixel(plan);
  const area_m2 = polygonArea(corners) * scale.figure ** 2;
  const swept = corners.reduce((sum, _, i) => {
    const [before, after] = neighbours(corners, i);
    return sum + ((after[0] - before[0]) ** 2 + (after[1] - before[1]) ** 2) / 4;
  }, 0);
  const byPoints = plan.point_px * Math.sqrt(swept) * scale.figure ** 2;
  const byScale = (2 * area_m2 * scale.standardError) / scale.figure;
  return { figure: area_m2, standardError: Math.hypot(byPoints, byScale) };
}

/** Perimeter of a traced shape, m: each corner moves it along the two sides that meet there. */
export function tracedPerimeter_m(corners: readonly Corner[], plan: PlanScale): Figure {
  const scale = metresPerPixel(plan);
  const figure = polygonPerimeter(corners) * scale.figure;
  const moved = corners.reduce((sum, corner, i) => {
    const [before, after] = neighbours(corners, i).map((other) => towards(other, corner));
    return sum + (before![0] + after![0]) ** 2 + (before![1] + after![1]) ** 2;
  }, 0);
  const byPoints = plan.point_px * Math.sqrt(moved) * scale.figure;
  return { figure, standardError: Math.hypot(byPoints, (figure * scale.standardError) / scale.figure) };
}

function neighbours(corners: readonly Corner[], i: number): [Corner, Corner] {
  const count = corners.length;
  return [corners[(i + count - 1) % count]!, corners[(i + 1) % count]!];
}

/** Unit step from one corner to another; none where they are the same. */
function towards([fromX, fromY]: Corner, [x, y]: Corner): Corner {
  const far = Math.hypot(x - fromX, y - fromY);
  return far === 0 ? [0, 0] : [(x - fromX) / far, (y - fromY) / far];
}
