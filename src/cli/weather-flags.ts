import { parseArgs } from "node:util";
import { type WeatherColumn, weatherColumns } from "../engine/weather/record.ts";
import {
  type DateOrder,
  type DatePart,
  dateOrders,
  dateParts,
  type Given,
} from "../survey/record/mapping.ts";
import { importWords } from "../words/en/weather-import.ts";
import { Refused } from "./input.ts";

export interface WeatherFlags {
  raw: string;
  out: string;
  given: Given;
}

/**
 * Reads the command's arguments; null where help was asked for.
 * @throws Refused with a line for each argument that is not understood
 */
export function readFlags(args: readonly string[]): WeatherFlags | null {
  const { values, positionals } = parsed(args);
  if (values.help) return null;
  const faults: string[] = [];
  const columns = pairs("--column", values.column ?? [], [...weatherColumns, ...dateParts], faults);
  const units = pairs("--unit", values.unit ?? [], weatherColumns, faults);
  const where = values.where === undefined ? null : pair("--where", values.where, faults);
  const dates = dateOrders.find((order: DateOrder) => order === values.dates);
  if (values.dates !== undefined && !dates) faults.push(`--dates: ${importWords.datesOrder(values.dates)}`);
  const [raw] = positionals;
  if (raw === undefined || positionals.length > 1) faults.push(importWords.oneFile);
  if (values.out === undefined) faults.push(importWords.noOut);
  if (faults.length > 0 || raw === undefined || values.out === undefined) throw new Refused(faults);
  const given: Given = { columns, units };
  if (dates) given.dates = dates;
  if (where) given.where = { header: where[0], value: where[1] };
  return { raw, out: values.out, given };
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        out: { type: "string" },
        column: { type: "string", multiple: true },
        unit: { type: "string", multiple: true },
        dates: { type: "string" },
        where: { type: "string" },
        help: { type: "boolean", short: "h" },
      },
    });
  } catch {
    const known = ["--out", "--column", "--unit", "--dates", "--where", "--help"];
    const strange = args.find((arg) => arg.startsWith("-") && !known.includes(arg.split("=")[0]!));
    throw new Refused([strange ? importWords.unknownFlag(strange, known) : importWords.flagWithoutValue]);
  }
}

function pairs<Name extends WeatherColumn | DatePart>(
  flag: string,
  texts: readonly string[],
  known: readonly Name[],
  faults: string[],
): Partial<Record<Name, string>> {
  const found: Partial<Record<Name, string>> = {};
  for (const text of texts) {
    const [name, value] = pair(flag, text, faults) ?? [];
    if (name === undefined || value === undefined) continue;
    const field = known.find((each) => each.toLowerCase() === name.toLowerCase());
    if (field) found[field] = value;
    else faults.push(`${flag}: ${importWords.unknownField(name, known)}`);
  }
  return found;
}

/** A header may hold `=` itself only in the value: the first one parts the two. */
function pair(flag: string, text: string, faults: string[]): [name: string, value: string] | null {
  const at = text.indexOf("=");
  if (at > 0) return [text.slice(0, at).trim(), text.slice(at + 1).trim()];
  faults.push(`${flag}: ${importWords.wantsPair(text)}`);
  return null;
}
