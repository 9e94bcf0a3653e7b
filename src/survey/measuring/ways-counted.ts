import { exactly, propagate } from "./figure.ts";
import { circle_m2 } from "./shapes.ts";
import { type Slot, type Way, worked } from "./way.ts";

const number: Slot = { name: "number", unit: "count" };
const tape = (name: string): Slot => ({ name, unit: "m", by: "tape" });

/** Plants entered by count and the width of their canopy, as seen from above. */
const plants: Way = {
  code: "plants",
  part: "areas",
  slots: [number, tape("canopy")],
  work(read) {
    const plants = Math.round(read.of("number").figure);
    const canopy = read.of("canopy");
    const area = propagate(([across]) => plants * circle_m2(across!), [canopy]);
    return { ...worked({ area_m2: area, "count.canopy_m": canopy, "count.plants": exactly(plants) }) };
  },
};

/** The pot bounds the roots; what stands in it is potting mix (common practice). */
const inPot = { words: { "soil.texture": "potting-mix" }, notes: [{ code: "potting-mix" }] };

/** Round pots: all their soil's surface together, and roots no deeper than the pot is filled. */
const pots: Way = {
  code: "pots",
  part: "areas",
  slots: [number, tape("across"), tape("depth")],
  work(read) {
    const pots = Math.round(read.of("number").figure);
    const area = propagate(([across]) => pots * circle_m2(across!), [read.of("across")]);
    return { figures: { area_m2: area, rootDepth_m: read.of("depth") }, ...inPot };
  },
};

const raisedBeds: Way = {
  code: "raised-beds",
  part: "areas",
  slots: [number, tape("length"), tape("width"), tape("depth")],
  work(read) {
    const beds = Math.round(read.of("number").figure);
    const area = propagate(([a, b]) => beds * a! * b!, [read.of("length"), read.of("width")]);
    return { figures: { area_m2: area, rootDepth_m: read.of("depth") }, ...inPot };
  },
};

/** Ways that count plants and pots. */
export const countedWays: readonly Way[] = [plants, pots, raisedBeds];
