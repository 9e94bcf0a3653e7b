import { type Figure, propagate } from "./figure.ts";
import { offsetRule, offsets_m2, unevenOffsets_m2 } from "./offsets.ts";
import { tracedArea_m2 } from "./plan.ts";
import { type Corner, crossingSides } from "./polygon.ts";
import * as shapes from "./shapes.ts";
import { impossible, type Read, type Slot, type Way, worked } from "./way.ts";

const length = (name: string): Slot => ({ name, unit: "m", by: "tape" });

const area = (figure: Figure) => worked({ area_m2: figure });

/** A shape whose area is a formula of single lengths. */
function plain(code: string, names: readonly string[], formula: (...lengths: number[]) => number): Way {
  return {
    code,
    part: "areas",
    slots: names.map(length),
    work: (read) => area(propagate((lengths) => formula(...lengths), names.map(read.of))),
  };
}

const triangle: Way = {
  code: "triangle",
  part: "areas",
  slots: ["side-a", "side-b", "side-c"].map(length),
  work(read) {
    const sides = ["side-a", "side-b", "side-c"].map(read.of);
    return unclosed(sides) ?? area(propagate(([a, b, c]) => shapes.triangle_m2(a!, b!, c!), sides));
  },
};

const fourSides: Way = {
  code: "four-sides",
  part: "areas",
  slots: ["side-a", "side-b", "side-c", "side-d", "diagonal"].map(length),
  work(read) {
    const [a, b, c, d, across] = ["side-a", "side-b", "side-c", "side-d", "diagonal"].map(read.of);
    return (
      unclosed([a!, b!, across!]) ??
      unclosed([c!, d!, across!]) ??
      area(propagate(([p, q, r, s, t]) => shapes.fourSides_m2(p!, q!, r!, s!, t!), [a!, b!, c!, d!, across!]))
    );
  },
};

function unclosed(sides: readonly Figure[]) {
  const [a, b, c] = sides.map(({ figure }) => figure) as [number, number, number];
  const longest_m = shapes.sideTooLong(a, b, c);
  return longest_m === null
    ? null
    : impossible("side-too-long", { longest_m, others_m: a + b + c - longest_m });
}

const lShape: Way = {
  code: "l-shape",
  part: "areas",
  slots: ["length", "width", "cut-length", "cut-width"].map(length),
  work(read) {
    const sides = ["length", "width", "cut-length", "cut-width"].map(read.of);
    const [long, wide, cutLong, cutWide] = sides.map(({ figure }) => figure) as [
      number,
      number,
      number,
      number,
    ];
    if (cutLong >= long || cutWide >= wide) return impossible("cut-too-large", { cutLong, cutWide });
    return area(propagate(([a, b, c, d]) => shapes.lShape_m2(a!, b!, c!, d!), sides));
  },
};

/** `curved` is 1 where the edge bends smoothly, 0 where it runs straight from offset to offset. */
const offsets: Way = {
  code: "offsets",
  part: "areas",
  slots: [{ name: "curved", unit: "code" }, length("step"), { ...length("offset"), list: true }],
  work(read) {
    const across = read.each("offset");
    if (across.length < 2) return impossible("too-few-offsets", { found: across.length, wanted: 2 });
    const curved = read.raw("curved")[0] === 1;
    const rule = offsetRule(across.length, curved);
    const figure = propagate(
      ([step, ...edge]) => offsets_m2(step!, edge, rule),
      [read.of("step"), ...across],
    );
    const notes = [{ code: `rule-${rule}` }];
    if (curved && rule === "trapezoid") notes.push({ code: "one-offset-more-for-simpson" });
    return worked({ area_m2: figure }, notes);
  },
};

const unevenOffsets: Way = {
  code: "offsets-uneven",
  part: "areas",
  slots: [{ ...length("along-and-offset"), list: true, together: 2 }],
  work(read) {
    const readings = read.each("along-and-offset");
    const along = readings.filter((_, i) => i % 2 === 0);
    const across = readings.filter((_, i) => i % 2 === 1);
    if (across.length < 2) return impossible("too-few-offsets", { found: across.length, wanted: 2 });
    if (along.some(({ figure }, i) => i > 0 && figure <= along[i - 1]!.figure))
      return impossible("along-not-rising");
    const count = along.length;
    const figure = propagate(
      (values) => unevenOffsets_m2(values.slice(0, count), values.slice(count)),
      [...along, ...across],
    );
    return worked({ area_m2: figure }, [{ code: "rule-trapezoid" }]);
  },
};

/** A shape traced on a plan: a known length on the ground and on the plan, then corners x, y. */
const plan: Way = {
  code: "plan",
  part: "areas",
  slots: [
    length("known"),
    { name: "known-drawn", unit: "px" },
    { name: "point-error", unit: "px" },
    { name: "corner", unit: "px", list: true, together: 2, signed: true },
  ],
  work(read) {
    const corners = cornersOf(read.raw("corner"));
    if (corners.length < 3) return impossible("too-few-corners", { found: corners.length, wanted: 3 });
    const crossing = crossingSides(corners);
    if (crossing) return impossible("sides-cross", { one: crossing[0] + 1, other: crossing[1] + 1 });
    return area(
      tracedArea_m2(corners, {
        known_m: read.of("known"),
        known_px: read.raw("known-drawn")[0]!,
        point_px: read.raw("point-error")[0]!,
      }),
    );
  },
};

export function cornersOf(flat: readonly number[]): Corner[] {
  return Array.from(
    { length: Math.floor(flat.length / 2) },
    (_, i): Corner => [flat[2 * i]!, flat[2 * i + 1]!],
  );
}

const half = (read: Read, slot: string): Figure => propagate(([across]) => across! / 2, [read.of(slot)]);

const oval: Way = {
  code: "oval",
  part: "areas",
  slots: [length("straight"), length("across")],
  work: (read) =>
    area(
      propagate(
        ([straight, radius]) => shapes.stadium_m2(straight!, radius!),
        [read.of("straight"), half(read, "across")],
      ),
    ),
};

/** Ways of measuring an area with a tape, or on a plan. */
export const areaWays: readonly Way[] = [
  plain("rectangle", ["length", "width"], (a, b) => a! * b!),
  triangle,
  plain("circle", ["across"], (across) => shapes.circle_m2(across!)),
  plain("ellipse", ["long-way", "short-way"], (a, b) => shapes.ellipse_m2(a!, b!)),
  plain("trapezium", ["side-a", "side-opposite", "apart"], (a, b, c) => shapes.trapezium_m2(a!, b!, c!)),
  lShape,
  fourSides,
  offsets,
  unevenOffsets,
  oval,
  plain("path", ["length", "width"], (a, b) => shapes.path_m2(a!, b!)),
  plain("ring", ["inner-radius", "width"], (a, b) => shapes.ring_m2(a!, b!)),
  plan,
];
