import { type Figure, propagate } from "./figure.ts";
import { deepest_m, type TankShape, volume_L } from "./tank-volume.ts";
import { impossible, type Outcome, type Slot, type Way, worked } from "./way.ts";

const tape = (name: string): Slot => ({ name, unit: "m", by: "tape" });
const depth: Slot = { name: "depth", unit: "m", by: "stick" };

/** What is below a depth: the whole tank, the water now, or what lies below the outlet, by the field asked for. */
function litres(volume: Figure): Outcome {
  return worked({ capacity_L: volume, level_L: volume, unusable_L: volume });
}

/** A tank's shape from its measures, and the water in it up to the last of them. */
function tank(code: string, measures: readonly Slot[], shape: (m: readonly number[]) => TankShape): Way {
  const slots = [...measures, depth];
  return {
    code,
    part: "tanks",
    slots,
    work(read) {
      const figures = slots.map(({ name }) => read.of(name));
      const sizes = figures.map(({ figure }) => figure);
      const most_m = deepest_m(shape(sizes));
      if (sizes.at(-1)! > most_m * 1.02)
        return impossible("deeper-than-tank", { depth_m: sizes.at(-1)!, most_m });
      const volume = (m: number[]) => volume_L(shape(m), Math.min(m.at(-1)!, deepest_m(shape(m))));
      return litres(propagate(volume, figures));
    },
  };
}

const upright = tank("tank-upright", [tape("across")], ([across]) => ({
  shape: "upright",
  across_m: across!,
}));

/** Across from the girth, where one cannot reach over the top: the wall is then in it, and is said. */
const girth: Way = {
  code: "tank-girth",
  part: "tanks",
  slots: [tape("girth"), { name: "wall", unit: "m", by: "stick" }, depth],
  work(read) {
    const volume = ([round, wall, high]: number[]) =>
      volume_L({ shape: "upright", across_m: round! / Math.PI - 2 * wall! }, high!);
    return litres(propagate(volume, ["girth", "wall", "depth"].map(read.of)));
  },
};

const box = tank("tank-box", [tape("length"), tape("width")], ([length, width]) => ({
  shape: "box",
  length_m: length!,
  width_m: width!,
}));

const lying = tank("tank-lying", [tape("across"), tape("length")], ([across, length]) => ({
  shape: "lying",
  across_m: across!,
  length_m: length!,
}));

const cone = tank("tank-cone", [tape("bottom"), tape("top"), tape("height")], ([bottom, top, height]) => ({
  shape: "cone",
  bottom_m: bottom!,
  top_m: top!,
  height_m: height!,
}));

/** A toilet's cistern: inner length, width and the drop of its water, and flushes a day. */
const cistern: Way = {
  code: "cistern",
  part: "tanks",
  slots: [
    ...["length", "width", "drop"].map((name): Slot => ({ name, unit: "mm", by: "ruler" })),
    { name: "flushes-a-day", unit: "count" },
  ],
  work(read) {
    const sides = ["length", "width", "drop"].map(read.of);
    const flushes = read.of("flushes-a-day").figure;
    const flush = propagate(([a, b, c]) => (a! * b! * c!) / 1e6, sides);
    return worked({ litresPerDay: propagate(([litresEach]) => flushes * litresEach!, [flush]) }, [
      { code: "a-flush-is", facts: { litres: flush.figure } },
    ]);
  },
};

/** A first-flush diverter's pipe over the roof that it serves: the rain it sends away, mm. */
const firstFlush: Way = {
  code: "first-flush",
  part: "tanks",
  slots: [
    { name: "pipe-across", unit: "mm", by: "ruler" },
    tape("pipe-length"),
    { name: "roof-area", unit: "m²" },
  ],
  work(read) {
    const roof = read.of("roof-area").figure;
    if (roof === 0) return impossible("nothing-along");
    const volume = ([across, length]: number[]) =>
      volume_L({ shape: "upright", across_m: across! / 1000 }, length!);
    const held = propagate(volume, [read.of("pipe-across"), read.of("pipe-length")]);
    return worked({ firstFlush_mm: propagate(([litresHeld]) => litresHeld! / roof, [held]) }, [
      { code: "diverter-holds", facts: { litres: held.figure } },
    ]);
  },
};

/** A roof face along the eave and along its slope, with the pitch: in plan the slope is shorter by its cosine. */
const roofPitch: Way = {
  code: "roof-pitch",
  part: "tanks",
  slots: [tape("eave"), tape("slope"), { name: "pitch", unit: "°", by: "tilt" }],
  work(read) {
    if (read.of("pitch").figure >= 90) return impossible("above-overhead", { elevation_deg: 90 });
    const plan = ([eave, slope, pitch]: number[]) => eave! * slope! * Math.cos((pitch! * Math.PI) / 180);
    return worked({ area_m2: propagate(plan, ["eave", "slope", "pitch"].map(read.of)) });
  },
};

/** The same from the slope and how far the ridge rises over the eave. */
const roofRise: Way = {
  code: "roof-rise",
  part: "tanks",
  slots: [tape("eave"), tape("slope"), tape("rise")],
  work(read) {
    const [eave, slope, rise] = ["eave", "slope", "rise"].map(read.of) as [Figure, Figure, Figure];
    if (rise.figure >= slope.figure)
      return impossible("rise-above-slope", { rise_m: rise.figure, slope_m: slope.figure });
    const plan = ([a, b, c]: number[]) => a! * Math.sqrt(b! ** 2 - c! ** 2);
    return worked({ area_m2: propagate(plan, [eave, slope, rise]) });
  },
};

export const tankWays: readonly Way[] = [
  roofPitch,
  roofRise,
  upright,
  girth,
  box,
  lying,
  cone,
  cistern,
  firstFlush,
];
