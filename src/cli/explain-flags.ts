import { parseIso } from "../engine/weather/dates.ts";
import type { UnitSystem } from "../units.ts";
import { explainText } from "../words/en/explain-command.ts";
import { FlagReader, parsedFlags } from "./flags.ts";

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
  const { values, positionals } = parsedFlags(args, options);
  if (values.help) return null;
  const read = new FlagReader();
  const from = values.from === undefined ? null : parseIso(values.from);
  if (values.from !== undefined && from === null) read.faults.push(explainText.dateWanted(values.from));
  const path = values["class-sheet"];
  if (path !== undefined && values.bed === undefined) read.faults.push(explainText.bedWanted);
  return read.done({
    survey: read.survey(positionals, "explain"),
    weather: values.weather ?? null,
    figure: values.figure ?? null,
    classSheet: path === undefined ? null : { path, bed: values.bed ?? "", from },
    json: values.json ?? false,
    units: read.units(values.units),
    lang: read.lang(values.lang),
  });
}
