import type { NamedList } from "./ids.ts";

/** Where an entry is named by its id elsewhere, and what becomes of that place when the entry is taken out. */
export interface Reference {
  /** Lists whose entries may be named there. */
  to: readonly NamedList[];
  /** Pattern of the path; a list of ids ends in [] too. */
  at: string;
  /** `field`: the id is taken out. `entry`: the list's entry that names it goes as well. `supply`, `source`: see below. */
  gone: "field" | "entry" | "supply" | "source";
}

/**
 * Every place that names an entry by its id. A bed whose tank goes is watered from the mains alone, or, if only the
 * tank watered it, not at all; a tap whose tank goes is of another source until somebody says which.
 */
export const references: readonly Reference[] = [
  { to: ["tanks"], at: "beds[].watering.tank", gone: "supply" },
  { to: ["taps"], at: "beds[].watering.tap", gone: "field" },
  { to: ["tanks"], at: "roofs[].tank", gone: "field" },
  { to: ["tanks"], at: "tanks[].linked[]", gone: "field" },
  { to: ["tanks"], at: "taps[].source", gone: "source" },
  { to: ["tanks"], at: "draws[].tank", gone: "entry" },
  { to: ["beds"], at: "restrictions[].exempt[]", gone: "field" },
  { to: ["beds"], at: "measures[].mulch.beds[]", gone: "field" },
  { to: ["beds"], at: "measures[].replant.beds[]", gone: "field" },
  { to: ["beds"], at: "measures[].changeWatering.beds[]", gone: "field" },
  { to: ["tanks"], at: "measures[].changeWatering.tank", gone: "entry" },
  { to: ["taps"], at: "measures[].changeWatering.tap", gone: "field" },
  { to: ["tanks"], at: "measures[].addTank.linked[]", gone: "field" },
  { to: ["tanks"], at: "measures[].resizeTank.tank", gone: "entry" },
  { to: ["tanks"], at: "measures[].useTank.tank", gone: "entry" },
  { to: ["beds"], at: "measures[].useTank.beds[]", gone: "field" },
  { to: ["roofs"], at: "measures[].connectRoof.roof", gone: "entry" },
  { to: ["tanks"], at: "measures[].connectRoof.tank", gone: "entry" },
  { to: ["roofs"], at: "measures[].firstFlush.roofs[]", gone: "field" },
  { to: ["tanks"], at: "measures[].addDraw.tank", gone: "entry" },
  { to: ["leaks"], at: "measures[].mendLeak.leaks[]", gone: "field" },
  { to: ["beds", "taps", "tanks", "draws", "leaks"], at: "meters[].feeds[]", gone: "field" },
  { to: ["meters"], at: "meters[].parent", gone: "field" },
  { to: ["meters"], at: "readings[].meter", gone: "entry" },
  { to: ["tanks"], at: "readings[].tank", gone: "entry" },
  { to: ["groups"], at: "found[].group", gone: "field" },
];

/** Measures that are nothing without the entries they name: an empty list of them takes the measure out. */
export const listsThatMustNotEmpty: ReadonlySet<string> = new Set([
  "measures[].mulch.beds",
  "measures[].replant.beds",
  "measures[].changeWatering.beds",
  "measures[].firstFlush.roofs",
  "measures[].mendLeak.leaks",
]);
