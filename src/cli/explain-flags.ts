import { parseArgs } from "node:util";
import { parseIso } from "../engine/weather/dates.ts";
import type { UnitSystem } from "../units.ts";
import { explainText } from "../words/en/explain-command.ts";
import { Refused } from "./input.ts";

export interface ExplainFlags {
  survey: string;
  /** null: the survey's normals, or those of its place. */
  weather: string | null;
  /** null: the answer's figures are listed. */
  figure: string | null;
  classSheet: { path: string; bed: string; from: number | null } | null;
  json: boolean;
  units: UnitSystem;
  lang: string;
}

const options = {
  weather: { type: "string" },
  figure: { type: "string" },
  json: { type: "boolean" },
  "class-sheet": { type: "string" },
  bed: { type: "string" },
  from: { type: "string" },
  units: { type: "string" },
  lang: { type: "string" },
  help: { type: "boolean", short: "h" },
} as const;

/**
 * Reads the command's arguments; null where help was asked for.
 * @throws Refused with a line for each argument that is not understood
 */
export function readExplainFlags(args: readonly string[]): ExplainFlags | null {
  const { values, positionals } = parsed(args);
  if (values.help) return null;
  const faults: string[] = [];
  const [survey] = positionals;
  if (survey === undefined || positionals.length > 1) faults.push(explainText.oneSurvey);
  const units = values.units ?? "metric";
  if (units !== "metric" && units !== "us") faults.push(explainText.unitsWanted(units));
  const lang = values.lang ?? "en";
  if (!isLocale(lang)) faults.push(explainText.langWanted(lang));
  const from = values.from === undefined ? null : parseIso(values.from);
  if (values.from !== undefined && from === null) faults.push(explainText.dateWanted(values.from));
  const path = values["class-sheet"];
  if (path !== undefined && values.bed === undefined) faults.push(explainText.bedWanted);
  if (faults.length > 0 || survey === undefined) throw new Refused(faults);
  return {
    survey,
    weather: values.weather ?? null,
    figure: values.figure ?? null,
    classSheet: path === undefined ? null : { path, bed: values.bed ?? "", from },
    json: values.json ?? false,
    units: units === "us" ? "us" : "metric",
    lang,
  };
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], allowPositionals: true, options });
  } catch {
    const known = Object.keys(options).map((name) => `--${name}`);
    const strange = args.find((arg) => arg.startsWith("--") && !known.includes(arg.split("=")[0]!));
    throw new Refused([strange ? explainText.unknownFlag(strange, known) : explainText.flagWithoutValue]);
  }
}

function isLocale(lang: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(lang).length > 0;
  } catch {
    return false;
  }
}
