import type { Rng } from "../../engine/weather/rng.ts";

/** Covers that the chart has a picture for. */
export const chartSteps = [0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9] as const;

/** A leaf between two tips, its edges two parabolas, in a square of side 1. */
export interface Leaf {
  from: readonly [number, number];
  /** Control points of the two edges. */
  edges: readonly [readonly [number, number], readonly [number, number]];
  to: readonly [number, number];
}

export interface CoverPicture {
  cover: number;
  /** Leaves on bare ground; above half, gaps of bare ground in leaves. */
  shows: "leaves" | "gaps";
  shapes: readonly Leaf[];
}

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Share of its box that a plump leaf fills; the most that this shape can is 2/3. */
const plump = 0.45;
/** Share of a box's sides that a leaf may take, so that neighbours do not touch. */
const widest = 0.96;

/**
 * A picture with exactly the cover stated, by area: the square is cut into boxes and each box holds a leaf of
 * that share of the box. The area between a chord and a quadratic Bézier curve is 2/3 of the triangle with its
 * control point (Archimedes), and stretching a box keeps shares.
 */
export function coverPicture(cover: number, rng: Rng, boxes = 48): CoverPicture {
  const shows = cover > 0.5 ? "gaps" : "leaves";
  const share = shows === "gaps" ? 1 - cover : cover;
  const scale = Math.min(widest, Math.sqrt(share / plump));
  const filled = share / scale ** 2;
  const shapes = cut({ x: 0, y: 0, width: 1, height: 1 }, boxes, rng).map((box) =>
    leafIn(shrunk(box, scale, rng), filled, rng.uniform() < 0.5),
  );
  return { cover, shows, shapes };
}

/** Cuts a box into as many, across its longer side, nowhere near an end. */
function cut(box: Box, into: number, rng: Rng): Box[] {
  if (into <= 1) return [box];
  const share = 0.35 + 0.3 * rng.uniform();
  const first = Math.min(into - 1, Math.max(1, Math.round(into * share)));
  const [one, other] =
    box.width > box.height
      ? [
          { ...box, width: box.width * share },
          { ...box, x: box.x + box.width * share, width: box.width * (1 - share) },
        ]
      : [
          { ...box, height: box.height * share },
          { ...box, y: box.y + box.height * share, height: box.height * (1 - share) },
        ];
  return [...cut(one!, first, rng), ...cut(other!, into - first, rng)];
}

/** A box within a box, anywhere in it, its sides scaled. */
function shrunk({ x, y, width, height }: Box, scale: number, rng: Rng): Box {
  const inner = { width: width * scale, height: height * scale };
  return {
    x: x + (width - inner.width) * rng.uniform(),
    y: y + (height - inner.height) * rng.uniform(),
    ...inner,
  };
}

/** A leaf along a diagonal of a box that fills the share of it: 4/3 of how far the controls lie off the middle. */
function leafIn({ x, y, width, height }: Box, share: number, falling: boolean): Leaf {
  const off = (3 / 4) * share;
  const at = (u: number, v: number): [number, number] => [x + width * u, y + height * (falling ? 1 - v : v)];
  return {
    from: at(0, 0),
    edges: [at(0.5 - off, 0.5 + off), at(0.5 + off, 0.5 - off)],
    to: at(1, 1),
  };
}

/** The leaf as an SVG path, in a square of the given side. */
export function leafPath({ from, edges, to }: Leaf, side: number): string {
  const point = ([x, y]: readonly [number, number]) => `${(x * side).toFixed(3)} ${(y * side).toFixed(3)}`;
  return `M${point(from)}Q${point(edges[0])} ${point(to)}Q${point(edges[1])} ${point(from)}Z`;
}
