import { parseArgs } from "node:util";
import { defaultFolder } from "../server/args.ts";
import { backupWords } from "../words/en/backup.ts";
import { Refused } from "./input.ts";

/**
 * Reads the arguments of a command on a data folder and one file; null where help was asked for.
 * @param option the one that names the file: out or from
 * @throws Refused with a line for each argument that is not understood
 */
export function readDataFlags(
  args: readonly string[],
  option: string,
): { data: string; file: string } | null {
  const options = {
    data: { type: "string" },
    [option]: { type: "string" },
    help: { type: "boolean", short: "h" },
  } as const;
  const { tokens } = parseArgs({
    args: [...args],
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const found = new Map<string, string>();
  const faults: string[] = [];
  const known = ["--data", `--${option}`];
  for (const token of tokens) {
    if (token.kind === "positional") faults.push(backupWords.unknown(token.value, known));
    if (token.kind !== "option") continue;
    if (token.name === "help") return null;
    if (!(token.name in options)) faults.push(backupWords.unknown(token.rawName, known));
    else if (token.value === undefined || token.value === "")
      faults.push(backupWords.needsValue(token.rawName));
    else found.set(token.name, token.value);
  }
  const file = found.get(option);
  if (file === undefined && faults.length === 0) faults.push(backupWords.wanted(`--${option}`));
  if (faults.length > 0 || file === undefined) throw new Refused(faults);
  return { data: found.get("data") ?? defaultFolder, file };
}
