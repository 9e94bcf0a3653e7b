import type { Thirst } from "../words.ts";

/** Where the garden is. */
export interface FirstPlace {
  name: string;
  /** Degrees, south negative. */
  latitude: number;
  /** Degrees, west negative. */
  longitude: number;
  timeZone?: string;
  /** Set where somebody said so; else the map's guess stands in. */
  elevation_m?: number;
  coastal?: boolean;
}

/** When in the year a garden is watered. */
export type Season = "all-year" | "warm-half" | "hottest-three";

/** How the garden is watered today, as somebody tells it. */
export type FirstToday =
  | { is: "minutes"; minutesPerWeek: number; season: Season }
  /** Water billed in summer and in winter, in bills of so many months. */
  | { is: "bills"; summer_kL: number; winter_kL: number; months: number }
  | { is: "not-watered" }
  | { is: "unknown" };

/** The entries of a first answer; what is left out was not made yet. */
export interface FirstEntries {
  place?: FirstPlace;
  garden_m2?: number;
  thirst?: Thirst;
  /** Whether it is mown grass for the most part. */
  grass?: boolean;
  mulched?: boolean;
  /** In plan; 0 where no roof can be reached. */
  roof_m2?: number;
  /** 0 L: none there and none thought of. */
  tank?: { capacity_L: number; isThere: boolean };
  today?: FirstToday;
}

export type FirstEntry = "place" | "garden" | "thirst" | "mulch" | "roof" | "tank" | "today";

/** The six that make a first answer, in the order asked. */
export const sixEntries = ["place", "garden", "thirst", "mulch", "roof", "tank"] as const;

/** The entries made, in the order asked. */
export function madeEntries(entries: FirstEntries): FirstEntry[] {
  const { place, garden_m2, thirst, mulched, roof_m2, tank, today } = entries;
  const made: readonly [FirstEntry, boolean][] = [
    ["place", place !== undefined],
    ["garden", garden_m2 !== undefined],
    ["thirst", thirst !== undefined],
    ["mulch", mulched !== undefined],
    ["roof", roof_m2 !== undefined],
    ["tank", tank !== undefined],
    ["today", today !== undefined],
  ];
  return made.flatMap(([entry, isMade]) => (isMade ? [entry] : []));
}

/** Whether today's watering is known well enough to speak of a saving. */
export function knowsToday({ today }: FirstEntries): boolean {
  return today !== undefined && today.is !== "unknown";
}
