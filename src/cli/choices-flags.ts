import { parseArgs } from "node:util";
import { mostDraws, usualDraws } from "../report/choices.ts";
import { choicesText } from "../words/en/choices-command.ts";
import { Refused } from "./input.ts";

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
}

const options = {
  weather: { type: "string" },
  years: { type: "string" },
  budget: { type: "string" },
  draws: { type: "string" },
  seed: { type: "string" },
  json: { type: "boolean" },
  brief: { type: "string" },
  help: { type: "boolean", short: "h" },
} as const;

const mostYears = 200;

/**
 * Reads the command's arguments; null where help was asked for.
 * @throws Refused with a line for each argument that is not understood
 */
export function readChoicesFlags(args: readonly string[]): ChoicesFlags | null {
  const { values, positionals } = parsed(args);
  if (values.help) return null;
  const faults: string[] = [];
  const whole = (flag: string, text: string, low: number, high: number): number => {
    const value = Number(text);
    if (text.trim() !== "" && Number.isInteger(value) && value >= low && value <= high) return value;
    faults.push(`${flag}: ${choicesText.whole(text, low, high)}`);
    return low;
  };
  const [survey] = positionals;
  if (survey === undefined || positionals.length > 1) faults.push(choicesText.oneSurvey);
  const flags = {
    survey: survey ?? "",
    weather: values.weather ?? null,
    years: whole("--years", values.years ?? "50", 1, mostYears),
    budget: budgetOf(values.budget, faults),
    draws: whole("--draws", values.draws ?? String(usualDraws), 0, mostDraws),
    seed: whole("--seed", values.seed ?? "1", 0, Number.MAX_SAFE_INTEGER),
    json: values.json ?? false,
    brief: briefOf(values.brief, faults),
  };
  if (faults.length > 0) throw new Refused(faults);
  return flags;
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

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], allowPositionals: true, options });
  } catch {
    const known = Object.keys(options).map((name) => `--${name}`);
    const strange = args.find((arg) => arg.startsWith("--") && !known.includes(arg.split("=")[0]!));
    throw new Refused([strange ? choicesText.unknownFlag(strange, known) : choicesText.flagWithoutValue]);
  }
}
