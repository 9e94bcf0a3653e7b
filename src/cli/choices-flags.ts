import { mostDraws, usualDraws } from "../report/choices.ts";
import type { UnitSystem } from "../units.ts";
import { choicesText } from "../words/en/choices-command.ts";
import { FlagReader, parsedFlags } from "./flags.ts";

export interface ChoicesFlags {
  survey: string;
  /** null: the survey's normals, or those of its place. */
  weather: string | null;
  years: number;
  budget: number | null;
  draws: number;
  seed: number;
  json: boolean;
  brief: { path: string; form: "md" | "html" } | null;
  units: UnitSystem;
}

const options = {
  weather: { type: "string" },
  years: { type: "string" },
  budget: { type: "string" },
  draws: { type: "string" },
  seed: { type: "string" },
  json: { type: "boolean" },
  brief: { type: "string" },
  units: { type: "string" },
  help: { type: "boolean", short: "h" },
} as const;

/**
 * Reads the command's arguments; null where help was asked for.
 * @throws Refused with a line for each argument that is not understood
 */
export function readChoicesFlags(args: readonly string[]): ChoicesFlags | null {
  const { values, positionals } = parsedFlags(args, options);
  if (values.help) return null;
  const read = new FlagReader();
  return read.done({
    survey: read.survey(positionals, "choices"),
    weather: values.weather ?? null,
    years: read.years(values.years),
    budget: budgetOf(values.budget, read.faults),
    draws: read.whole("--draws", values.draws ?? String(usualDraws), 0, mostDraws),
    seed: read.seed(values.seed),
    json: values.json ?? false,
    brief: briefOf(values.brief, read.faults),
    units: read.units(values.units),
  });
}

function budgetOf(text: string | undefined, faults: string[]): number | null {
  if (text === undefined) return null;
  const amount = Number(text);
  if (text.trim() !== "" && Number.isFinite(amount) && amount >= 0) return amount;
  faults.push(`--budget: ${choicesText.amount(text)}`);
  return null;
}

function briefOf(path: string | undefined, faults: string[]): ChoicesFlags["brief"] {
  if (path === undefined) return null;
  const ending = /\.(md|html)$/i.exec(path)?.[1]?.toLowerCase();
  if (ending === "md" || ending === "html") return { path, form: ending };
  faults.push(`--brief: ${choicesText.briefForm(path)}`);
  return null;
}
