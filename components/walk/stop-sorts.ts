import type { Unit } from "../../src/quantities.ts";
import type { WalkPart } from "../../src/survey/measuring/way.ts";

/** What a stop finds out. */
export type StopKind =
  | "area"
  | "thirst"
  | "shares"
  | "cover"
  | "mulch"
  | "mulch-cover"
  | "mulch-depth"
  | "soil"
  | "slope"
  | "intake"
  | "shade"
  | "flow"
  | "habit"
  | "heads"
  | "cans"
  | "roof-area"
  | "roof-material"
  | "downpipe"
  | "roof-share"
  | "first-flush"
  | "capacity"
  | "level"
  | "outlet"
  | "tank-use"
  | "tap-flow"
  | "hose-flow"
  | "cistern"
  | "leak";

interface StopSort {
  part: WalkPart;
  /** End of the field's path; `*` is the planting. */
  at: string;
  also?: readonly string[];
  ways: readonly string[];
  /** What a practised group takes for it. Ours, for planning a walk. */
  minutes: number;
  unit: Unit | null;
}

const plain = ["rectangle", "triangle", "circle", "ellipse", "trapezium", "l-shape", "four-sides"];
const curved = ["offsets", "offsets-uneven", "oval", "path", "ring"];
const tankWays = ["tank-upright", "tank-girth", "tank-box", "tank-lying", "tank-cone"];

export const stopSorts: Readonly<Record<StopKind, StopSort>> = {
  area: {
    part: "areas",
    at: "area_m2",
    also: ["rootDepth_m", "soil.texture", "plantings[0].count.canopy_m", "plantings[0].count.plants"],
    ways: [...plain, ...curved, "plan", "plants", "pots", "raised-beds"],
    minutes: 5,
    unit: "m²",
  },
  thirst: { part: "thirst", at: "plantings[*].thirst", ways: ["thirst-key"], minutes: 3, unit: null },
  shares: {
    part: "thirst",
    at: "plantings[0].share",
    ways: ["transect-points", "transect-stretches"],
    minutes: 5,
    unit: "share",
  },
  cover: {
    part: "cover",
    at: "leafCover",
    ways: ["leaf-chart", "leaf-points", "leaf-photograph"],
    minutes: 4,
    unit: "share",
  },
  mulch: { part: "cover", at: "mulch.material", ways: [], minutes: 1, unit: null },
  "mulch-cover": {
    part: "cover",
    at: "mulch.cover",
    ways: ["mulch-chart", "mulch-points"],
    minutes: 3,
    unit: "share",
  },
  "mulch-depth": { part: "cover", at: "mulch.depth_mm", ways: ["mulch-depth"], minutes: 3, unit: "mm" },
  soil: {
    part: "soil",
    at: "soil.texture",
    also: ["soil.sand_pct", "soil.clay_pct"],
    ways: ["soil-feel", "soil-jar"],
    minutes: 3,
    unit: null,
  },
  slope: { part: "soil", at: "soil.slope_pct", ways: ["slope"], minutes: 3, unit: "%" },
  intake: { part: "soil", at: "soil.intake_mm_h", ways: ["soil-ring"], minutes: 20, unit: "mm/h" },
  shade: {
    part: "shade",
    at: "obstructions",
    ways: ["skyline-fists", "skyline-heights", "skyline-tilt"],
    minutes: 6,
    unit: null,
  },
  flow: {
    part: "water",
    at: "watering.flow_L_min",
    ways: ["jug", "zone-meter", "zone-meter-two", "pump"],
    minutes: 4,
    unit: "L/min",
  },
  habit: {
    part: "water",
    at: "watering.habit.minutes",
    also: ["watering.habit.days"],
    ways: ["habit-week"],
    minutes: 3,
    unit: "min",
  },
  heads: { part: "water", at: "watering.distributionUniformity", ways: [], minutes: 5, unit: null },
  cans: {
    part: "water",
    at: "watering.distributionUniformity",
    ways: ["catch-cans"],
    minutes: 40,
    unit: "share",
  },
  "roof-area": {
    part: "tanks",
    at: "area_m2",
    ways: [
      "rectangle",
      "roof-pitch",
      "roof-rise",
      "l-shape",
      "triangle",
      "trapezium",
      "four-sides",
      "circle",
      "plan",
    ],
    minutes: 5,
    unit: "m²",
  },
  "roof-material": { part: "tanks", at: "material", ways: [], minutes: 1, unit: null },
  downpipe: { part: "tanks", at: "tank", ways: [], minutes: 2, unit: null },
  "roof-share": { part: "tanks", at: "share", ways: [], minutes: 2, unit: "share" },
  "first-flush": { part: "tanks", at: "firstFlush_mm", ways: ["first-flush"], minutes: 4, unit: "mm" },
  capacity: { part: "tanks", at: "capacity_L", ways: tankWays, minutes: 5, unit: "L" },
  level: { part: "tanks", at: "level_L", ways: tankWays, minutes: 3, unit: "L" },
  outlet: { part: "tanks", at: "unusable_L", ways: tankWays, minutes: 2, unit: "L" },
  "tank-use": { part: "tanks", at: "inUse", ways: [], minutes: 3, unit: null },
  "tap-flow": {
    part: "water",
    at: "flow_L_min",
    ways: ["jug", "zone-meter", "pump"],
    minutes: 4,
    unit: "L/min",
  },
  "hose-flow": {
    part: "water",
    at: "flowAt",
    also: ["flow_L_min"],
    ways: ["gravity-hose", "jug", "pump"],
    minutes: 10,
    unit: null,
  },
  cistern: { part: "tanks", at: "litresPerDay", ways: ["cistern"], minutes: 6, unit: "L a day" },
  leak: { part: "water", at: "litresPerDay", ways: ["drips", "leak-jug"], minutes: 4, unit: "L a day" },
};
