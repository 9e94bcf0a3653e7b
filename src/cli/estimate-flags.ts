import type { UnitSystem } from "../units.ts";
import { FlagReader, parsedFlags } from "./flags.ts";

export interface EstimateFlags {
  survey: string;
  /** null: the survey's normals, or those of its place. */
  weather: string | null;
  years: number;
  seed: number;
  /** Draws of what is not known for sure. */
  draws: number;
  json: boolean;
  daily: string | null;
  units: UnitSystem;
  lang: string;
}

const options = {
  weather: { type: "string" },
  json: { type: "boolean" },
  daily: { type: "string" },
  units: { type: "string" },
  lang: { type: "string" },
  years: { type: "string" },
  seed: { type: "string" },
  draws: { type: "string" },
  help: { type: "boolean", short: "h" },
} as const;

const mostDraws = 10_000;

/**
 * Reads the command's arguments; null where help was asked for.
 * @throws Refused with a line for each argument that is not understood
 */
export function readEstimateFlags(args: readonly string[]): EstimateFlags | null {
  const { values, positionals } = parsedFlags(args, options);
  if (values.help) return null;
  const read = new FlagReader();
  return read.done({
    survey: read.survey(positionals, "estimate"),
    weather: values.weather ?? null,
    years: read.years(values.years),
    seed: read.seed(values.seed),
    draws: read.whole("--draws", values.draws ?? "0", 0, mostDraws),
    json: values.json ?? false,
    daily: values.daily ?? null,
    units: read.units(values.units),
    lang: read.lang(values.lang),
  });
}
