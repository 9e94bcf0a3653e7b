import type { Corner } from "../../../src/survey/measuring/polygon.ts";
import { sideTooLong } from "../../../src/survey/measuring/shapes.ts";

/** A length on the drawing that a blank stands for. */
export interface Dimension {
  /** The blank, counted from 0. */
  slot: number;
  from: Corner;
  to: Corner;
  /** A tape laid across, not an edge of the shape. */
  inside?: boolean;
}

/** A shape as measured: its edge as corners in metres, y up, bends in short steps. */
export interface ShapeFigure {
  corners: Corner[];
  /** An inner edge, for what is cut out of the middle. */
  hole?: Corner[];
  dimensions: Dimension[];
  /** Whether it closes; where it does not, the corners are a line with its ends apart. */
  closes: boolean;
}

/** Sizes that a shape is drawn with before anything is typed, in the order of its blanks. */
export const usualSizes: Readonly<Record<string, readonly number[]>> = {
  rectangle: [6, 4],
  triangle: [6, 5, 4],
  circle: [5],
  ellipse: [7, 4.4],
  trapezium: [7, 4, 3.6],
  "l-shape": [7, 5, 3.5, 2.4],
  "four-sides": [6, 3.6, 5, 4.6, 6.6],
  offsets: [1.5, 2, 2.8, 3.3, 2.9, 2.2],
  "offsets-uneven": [0, 2, 1.6, 3, 3.6, 2.6, 6, 3.4, 7, 1.8],
  oval: [6, 4],
  path: [9, 1.5],
  ring: [2, 1.2],
  plants: [6, 1],
  pots: [6, 0.5, 0.45],
  "raised-beds": [3, 2.4, 1.2, 0.4],
};

const steps = 72;

function arc(cx: number, cy: number, rx: number, ry: number, from: number, to: number): Corner[] {
  const count = Math.max(2, Math.round((steps * Math.abs(to - from)) / (2 * Math.PI)));
  return Array.from({ length: count + 1 }, (_, i): Corner => {
    const angle = from + ((to - from) * i) / count;
    return [cx + rx * Math.cos(angle), cy + ry * Math.sin(angle)];
  });
}

const round = (cx: number, cy: number, rx: number, ry: number) =>
  arc(cx, cy, rx, ry, 0, 2 * Math.PI).slice(1);

/** The third corner of a triangle over a base from 0, 0 to `base`, 0; sides from its left and right end. */
function apex(base: number, left: number, right: number): Corner {
  const x = (left ** 2 - right ** 2 + base ** 2) / (2 * base);
  return [x, Math.sqrt(Math.max(0, left ** 2 - x ** 2))];
}

type Build = (sizes: readonly number[]) => ShapeFigure;

const closed = (corners: Corner[], dimensions: Dimension[], hole?: Corner[]): ShapeFigure => ({
  corners,
  dimensions,
  closes: true,
  ...(hole ? { hole } : {}),
});

const side = (slot: number, from: Corner, to: Corner): Dimension => ({ slot, from, to });
const across = (slot: number, from: Corner, to: Corner): Dimension => ({ slot, from, to, inside: true });

function box(width: number, height: number): Corner[] {
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
}

const builds: Readonly<Record<string, Build>> = {
  rectangle: ([a = 0, b = 0]) => closed(box(a, b), [side(0, [0, 0], [a, 0]), side(1, [a, 0], [a, b])]),
  triangle: ([a = 0, b = 0, c = 0]) => (sideTooLong(a, b, c) === null ? triangle(a, b, c) : gaping(a, b, c)),
  circle: ([d = 0]) => closed(round(d / 2, d / 2, d / 2, d / 2), [across(0, [0, d / 2], [d, d / 2])]),
  ellipse: ([a = 0, b = 0]) =>
    closed(round(a / 2, b / 2, a / 2, b / 2), [
      across(0, [0, b / 2], [a, b / 2]),
      across(1, [a / 2, 0], [a / 2, b]),
    ]),
  trapezium: ([a = 0, b = 0, h = 0]) => {
    const left = (a - b) / 2;
    return closed(
      [
        [0, 0],
        [a, 0],
        [left + b, h],
        [left, h],
      ],
      [side(0, [0, 0], [a, 0]), side(1, [left + b, h], [left, h]), across(2, [a / 2, 0], [a / 2, h])],
    );
  },
  "l-shape": ([a = 0, b = 0, p = 0, q = 0]) =>
    closed(
      [
        [0, 0],
        [a, 0],
        [a, b - q],
        [a - p, b - q],
        [a - p, b],
        [0, b],
      ],
      [
        side(0, [0, 0], [a, 0]),
        side(1, [0, b], [0, 0]),
        across(2, [a - p, b - q], [a, b - q]),
        across(3, [a - p, b], [a - p, b - q]),
      ],
    ),
  "four-sides": ([a = 0, b = 0, c = 0, d = 0, e = 0]) => {
    if (sideTooLong(a, b, e) !== null) return gaping(a, b, e, [0, 1, 4]);
    if (sideTooLong(c, d, e) !== null) return gaping(c, d, e, [2, 3, 4]);
    const [bx, by] = apex(e, a, b);
    const [dx, dy] = apex(e, d, c);
    const corners: Corner[] = [
      [0, 0],
      [bx, -by],
      [e, 0],
      [dx, dy],
    ];
    const [p, q, r, s] = corners as [Corner, Corner, Corner, Corner];
    return closed(corners, [side(0, p, q), side(1, q, r), side(2, r, s), side(3, s, p), across(4, p, r)]);
  },
  oval: ([straight = 0, width = 0]) => {
    const r = width / 2;
    return closed(
      [
        ...arc(r + straight, r, r, r, -Math.PI / 2, Math.PI / 2),
        ...arc(r, r, r, r, Math.PI / 2, (3 * Math.PI) / 2),
      ],
      [side(0, [r, 0], [r + straight, 0]), across(1, [r + straight / 2, 0], [r + straight / 2, width])],
    );
  },
  path: ([a = 0, b = 0]) => closed(box(a, b), [across(0, [0, b / 2], [a, b / 2]), side(1, [a, 0], [a, b])]),
  ring: ([inner = 0, width = 0]) => {
    const r = inner + width;
    return closed(
      round(r, r, r, r),
      [across(0, [r, r], [r + inner, r]), across(1, [r + inner, r], [2 * r, r])],
      round(r, r, inner, inner),
    );
  },
  plants: ([, d = 0]) => closed(round(d / 2, d / 2, d / 2, d / 2), [across(1, [0, d / 2], [d, d / 2])]),
  pots: ([, d = 0, h = 0]) => {
    const foot = d * 0.14;
    return closed(
      [
        [foot, 0],
        [d - foot, 0],
        [d, h],
        [0, h],
      ],
      [side(1, [d, h], [0, h]), across(2, [d / 2, h], [d / 2, 0])],
    );
  },
  "raised-beds": ([, a = 0, b = 0]) => closed(box(a, b), [side(1, [0, 0], [a, 0]), side(2, [a, 0], [a, b])]),
};

function triangle(a: number, b: number, c: number): ShapeFigure {
  const top = apex(a, c, b);
  return closed([[0, 0], [a, 0], top], [side(0, [0, 0], [a, 0]), side(1, [a, 0], top), side(2, top, [0, 0])]);
}

/** Three sides that do not close: the longest as the base, the other two from its ends, apart. */
function gaping(a: number, b: number, c: number, slots: readonly number[] = [0, 1, 2]): ShapeFigure {
  const order = [a, b, c]
    .map((length, i) => ({ length, slot: slots[i]! }))
    .sort((x, y) => y.length - x.length);
  const [long, one, other] = order as [
    (typeof order)[number],
    (typeof order)[number],
    (typeof order)[number],
  ];
  const lift = 0.2;
  const left: Corner = [one.length * Math.cos(lift), one.length * Math.sin(lift)];
  const right: Corner = [long.length - other.length * Math.cos(lift), other.length * Math.sin(lift)];
  return {
    corners: [left, [0, 0], [long.length, 0], right],
    dimensions: [
      side(long.slot, [0, 0], [long.length, 0]),
      side(one.slot, [0, 0], left),
      side(other.slot, [long.length, 0], right),
    ],
    closes: false,
  };
}

/** An edge measured from a base line: at even steps, or where it changes. */
function offsetShape(
  along: readonly number[],
  offsets: readonly number[],
  slotOf: (i: number) => number,
): ShapeFigure {
  const top = along.map((x, i): Corner => [x, offsets[i] ?? 0]);
  const last = along.at(-1) ?? 0;
  return closed(
    [[along[0] ?? 0, 0], [last, 0], ...top.toReversed()],
    [
      side(0, [along[0] ?? 0, 0], [along[1] ?? last, 0]),
      ...top.map(([x, y], i) => across(slotOf(i), [x, 0], [x, y])),
    ],
  );
}

/**
 * A shape to scale from the lengths of its blanks, in their order; lists one after another. Null where there is
 * nothing to draw it with.
 */
export function shapeFigure(way: string, sizes: readonly number[]): ShapeFigure | null {
  if (way === "offsets") {
    const [step = 1, ...offsets] = sizes;
    if (offsets.length < 2) return null;
    const along = offsets.map((_, i) => i * step);
    const shape = offsetShape(along, offsets, () => 2);
    return { ...shape, dimensions: shape.dimensions.map((one, i) => (i === 0 ? { ...one, slot: 1 } : one)) };
  }
  if (way === "offsets-uneven") {
    const along = sizes.filter((_, i) => i % 2 === 0);
    const offsets = sizes.filter((_, i) => i % 2 === 1);
    if (offsets.length < 2) return null;
    return offsetShape(along.slice(0, offsets.length), offsets, () => 0);
  }
  return builds[way]?.(sizes) ?? null;
}
