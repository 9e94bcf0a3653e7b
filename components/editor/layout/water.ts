import { field, fields, type Node } from "./nodes.ts";

export const habitFields = fields("minutes", "days", "months");

/** How a bed is watered; a measure changes the same fields. */
export const wateringFields = fields("method", "supply", "tank", "tap", "flow_L_min", "runBy");
export const wateringMore = fields("distributionUniformity", "efficiency", "wettedShare");

export const tank: readonly Node[] = [
  field("name"),
  { drawing: "tank" },
  ...fields("capacity_L", "level_L", "unusable_L", "inUse"),
  { group: "topUp", nodes: fields("belowShare", "toShare") },
  { more: [...fields("linked", "rule", "at_m"), { special: "id", of: "id" }] },
];

export const roof: readonly Node[] = [
  ...fields("name", "area_m2", "material", "tank", "share"),
  {
    more: [
      ...fields("firstFlush_mm", "runoff"),
      { drawing: "outline" },
      field("outline_m"),
      { special: "id", of: "id" },
    ],
  },
];

export const tap: readonly Node[] = [
  ...fields("name", "source", "flow_L_min"),
  { rows: "flowAt", begin: {}, nodes: fields("level_L", "flow_L_min") },
  { more: [...fields("line", "at_m"), { special: "id", of: "id" }] },
];

export const draw: readonly Node[] = [
  ...fields("name", "tank", "litresPerDay", "days", "months", "pausesWhenAbsent", "order"),
  { more: [{ special: "id", of: "id" }] },
];

export const leak: readonly Node[] = [
  ...fields("name", "litresPerDay"),
  { more: [{ special: "id", of: "id" }] },
];

export const restriction: readonly Node[] = [
  ...fields("name", "from", "to", "days", "fromTime", "toTime", "parity", "methods", "supplies", "exempt"),
  { more: [{ special: "id", of: "id" }] },
];
