import { flowFromJug_L_min } from "../../engine/watering.ts";
import { tapDrop_mL } from "../../tables/drops.ts";
import { drip_L_day, leak_L_day } from "./drips.ts";
import { propagate } from "./figure.ts";
import { flowAtOneMetre_L_min, largestMiss } from "./gravity-hose.ts";
import { lineLoss, meterFlow_L_min } from "./meter-flow.ts";
import type { Note } from "./note.ts";
import { impossible, type Read, type Slot, type Way, worked } from "./way.ts";

const litres: Slot = { name: "litres", unit: "L", by: "jug" };
const seconds: Slot = { name: "seconds", unit: "s", by: "stopwatch" };

const jugFlow = (read: Read) =>
  propagate(([volume, time]) => flowFromJug_L_min(volume!, time!), [read.of("litres"), read.of("seconds")]);

const jug: Way = {
  code: "jug",
  part: "water",
  slots: [litres, seconds],
  work(read) {
    if (read.of("seconds").figure === 0) return impossible("no-time");
    const notes = read.raw("seconds").length < 3 ? [{ code: "repeat-the-jug" }] : [];
    return worked({ flow_L_min: jugFlow(read) }, notes);
  },
};

const register = (name: string): Slot[] => [
  { name: `${name}before`, unit: "count" },
  { name: `${name}after`, unit: "count" },
  { name: `${name}minutes`, unit: "min", by: "clock" },
];

const registerSlots: Slot[] = [
  { name: "litres-per-unit", unit: "count" },
  { name: "smallest-step", unit: "count" },
];

function throughMeter(read: Read, name: string) {
  const before = read.raw(`${name}before`)[0]!;
  const after = read.raw(`${name}after`)[0]!;
  const minutes = read.of(`${name}minutes`);
  if (after < before) return impossible("register-ran-back", { before, after });
  if (minutes.figure === 0) return impossible("no-time");
  const [litresPerUnit, step] = [read.raw("litres-per-unit")[0]!, read.raw("smallest-step")[0]!];
  return meterFlow_L_min({ before, after, step, litresPerUnit, minutes });
}

/** A zone's flow at the meter: everything else off, read before and after. */
const zone: Way = {
  code: "zone-meter",
  part: "water",
  slots: [...registerSlots, ...register("")],
  work(read) {
    const flow = throughMeter(read, "");
    return "impossible" in flow ? flow : worked({ flow_L_min: flow });
  },
};

/** The same with one outlet open and then with two, for what a shared line loses. */
const zoneTwice: Way = {
  code: "zone-meter-two",
  part: "water",
  slots: [...registerSlots, ...register("one-"), ...register("two-")],
  work(read) {
    const [alone, both] = [throughMeter(read, "one-"), throughMeter(read, "two-")];
    if ("impossible" in alone) return alone;
    if ("impossible" in both) return both;
    const share = lineLoss(alone.figure, both.figure);
    return worked({ flow_L_min: alone }, [{ code: "line-loses", facts: { share } }]);
  },
};

/** More than this off the square-root rule and something changed between the readings. Ours. */
const mostMiss = 0.15;

/** A hose from a tank: at two levels or more, water above the hose's end, litres caught and seconds. */
const gravityHose: Way = {
  code: "gravity-hose",
  part: "water",
  slots: [
    { name: "level-head-litres-seconds", unit: "L", list: true, together: 4, each: ["L", "m", "L", "s"] },
  ],
  work(read) {
    const flat = read.raw("level-head-litres-seconds");
    const runs = Array.from({ length: flat.length / 4 }, (_, i) => {
      const [level_L, head_m, litres, time] = flat.slice(4 * i, 4 * i + 4) as [
        number,
        number,
        number,
        number,
      ];
      return { level_L, head_m, flow_L_min: time > 0 ? flowFromJug_L_min(litres, time) : 0 };
    });
    if (runs.length < 2) return impossible("one-level-only");
    if (runs.some(({ head_m, flow_L_min }) => head_m === 0 || flow_L_min === 0))
      return impossible("no-head-or-flow");
    const miss = largestMiss(runs);
    const notes: Note[] = [{ code: "flow-at-one-metre", facts: { flow_L_min: flowAtOneMetre_L_min(runs) } }];
    if (miss > mostMiss) notes.push({ code: "not-square-root", facts: { miss } });
    const flowAt = runs
      .map(({ level_L, flow_L_min }) => ({ level_L, flow_L_min }))
      .sort((a, b) => a.level_L - b.level_L);
    return { figures: {}, values: { flowAt }, notes };
  },
};

/** A pump's flow by jug, and the level in the tank at which it cuts out. */
const pump: Way = {
  code: "pump",
  part: "water",
  slots: [litres, seconds, { name: "cut-out-level", unit: "L" }],
  work(read) {
    if (read.of("seconds").figure === 0) return impossible("no-time");
    return worked({ flow_L_min: jugFlow(read), unusable_L: read.of("cut-out-level") });
  },
};

/** Drips counted over a minute; the size of a drop is a range, taken as evenly likely. */
const drips: Way = {
  code: "drips",
  part: "water",
  slots: [{ name: "drips-a-minute", unit: "count", by: "drip-count" }],
  work(read) {
    const { low, middle, high } = tapDrop_mL;
    const drop = { figure: middle, standardError: (high - low) / Math.sqrt(12) };
    const leak = propagate(([count, size]) => drip_L_day(count!, size!), [read.of("drips-a-minute"), drop]);
    const count = read.of("drips-a-minute").figure;
    return worked({ litresPerDay: leak }, [
      { code: "drop-size-disputed", facts: { low: drip_L_day(count, low), high: drip_L_day(count, high) } },
    ]);
  },
};

/** A leak that runs, caught in a jug. */
const leak: Way = {
  code: "leak-jug",
  part: "water",
  slots: [litres, seconds],
  work(read) {
    if (read.of("seconds").figure === 0) return impossible("no-time");
    return worked({ litresPerDay: propagate(([flow]) => leak_L_day(flow!), [jugFlow(read)]) });
  },
};

export const flowWays: readonly Way[] = [jug, zone, zoneTwice, gravityHose, pump, drips, leak];
