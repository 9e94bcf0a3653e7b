import { parseArgs } from "node:util";
import type { UnitSystem } from "../units.ts";
import { estimateWords } from "../words/en/estimate.ts";
import { Refused } from "./input.ts";

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

/** Most years that are generated, and most draws that are made. */
const mostYears = 200;
const mostDraws = 10_000;

/**
 * Reads the command's arguments; null where help was asked for.
 * @throws Refused with a line for each argument that is not understood
 */
export function readFlags(args: readonly string[]): EstimateFlags | null {
  const { values, positionals } = parsed(args);
  if (values.help) return null;
  const faults: string[] = [];
  const [survey] = positionals;
  if (survey === undefined || positionals.length > 1) faults.push(estimateWords.oneSurvey);
  const units = values.units ?? "metric";
  if (units !== "metric" && units !== "us") faults.push(estimateWords.unitsWanted(units));
  const lang = values.lang ?? "en";
  if (!isLocale(lang)) faults.push(estimateWords.langWanted(lang));
  const years = whole("--years", values.years ?? "50", 1, mostYears, faults);
  const seed = whole("--seed", values.seed ?? "1", 0, Number.MAX_SAFE_INTEGER, faults);
  const draws = whole("--draws", values.draws ?? "0", 0, mostDraws, faults);
  if (faults.length > 0 || survey === undefined) throw new Refused(faults);
  return {
    survey,
    weather: values.weather ?? null,
    years,
    seed,
    draws,
    json: values.json ?? false,
    daily: values.daily ?? null,
    units: units as UnitSystem,
    lang,
  };
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], allowPositionals: true, options });
  } catch {
    const known = Object.keys(options).map((name) => `--${name}`);
    const strange = args.find((arg) => arg.startsWith("--") && !known.includes(arg.split("=")[0]!));
    throw new Refused([strange ? estimateWords.unknownFlag(strange, known) : estimateWords.flagWithoutValue]);
  }
}

function isLocale(lang: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(lang).length > 0;
  } catch {
    return false;
  }
}

function whole(flag: string, text: string, low: number, high: number, faults: string[]): number {
  const value = Number(text);
  if (text.trim() !== "" && Number.isInteger(value) && value >= low && value <= high) return value;
  faults.push(`${flag}: ${estimateWords.wholeWanted(text, low, high)}`);
  return low;
}
