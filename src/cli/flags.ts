import { type ParseArgsConfig, parseArgs } from "node:util";
import type { UnitSystem } from "../units.ts";
import { flagWords } from "../words/en/flags.ts";
import { Refused } from "./input.ts";

/** Most years that are generated. */
export const mostYears = 200;

type Options = NonNullable<ParseArgsConfig["options"]>;

/** Takes a command line apart. @throws Refused where an option is unknown, or lacks its value */
export function parsedFlags<T extends Options>(args: readonly string[], options: T) {
  try {
    return parseArgs({ args: [...args], allowPositionals: true, options });
  } catch {
    const known = Object.keys(options).map((name) => `--${name}`);
    const strange = args.find((arg) => arg.startsWith("-") && !known.includes(arg.split("=")[0]!));
    throw new Refused([strange ? flagWords.unknown(strange, known) : flagWords.withoutValue]);
  }
}

/** Reads flags' texts one by one, collecting what is wrong with each. */
export class FlagReader {
  readonly faults: string[] = [];

  /** The one survey file that a command is given. */
  survey(positionals: readonly string[], command: string): string {
    const [survey] = positionals;
    if (survey === undefined || positionals.length > 1) this.faults.push(flagWords.oneSurvey(command));
    return survey ?? "";
  }

  whole(flag: string, text: string, low: number, high: number): number {
    const value = Number(text);
    if (text.trim() !== "" && Number.isInteger(value) && value >= low && value <= high) return value;
    this.faults.push(flagWords.whole(flag, text, low, high));
    return low;
  }

  seed(text = "1"): number {
    return this.whole("--seed", text, 0, Number.MAX_SAFE_INTEGER);
  }

  years(text = "50"): number {
    return this.whole("--years", text, 1, mostYears);
  }

  units(text = "metric"): UnitSystem {
    if (text === "metric" || text === "us") return text;
    this.faults.push(flagWords.units(text));
    return "metric";
  }

  lang(text = "en"): string {
    if (!isLocale(text)) this.faults.push(flagWords.lang(text));
    return text;
  }

  /** @throws Refused with every fault found */
  done<T>(flags: T): T {
    if (this.faults.length > 0) throw new Refused(this.faults);
    return flags;
  }
}

function isLocale(lang: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(lang).length > 0;
  } catch {
    return false;
  }
}
