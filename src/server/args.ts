import { parseArgs } from "node:util";
import { serverWords } from "../words/en/server.ts";

export interface ServerArgs {
  port: number;
  /** Folder of the file that everything is kept in. */
  data: string;
  help: boolean;
}

export const defaultPort = 8017;
export const defaultFolder = "grounds-data";
const ownHosts = ["127.0.0.1", "localhost"];

/** Reads the command line, or gives every sentence that says what is wrong with it. */
export function readArgs(args: readonly string[]): ServerArgs | { faults: string[] } {
  const { tokens } = parseArgs({
    args: [...args],
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const faults: string[] = [];
  const found: ServerArgs = { port: defaultPort, data: defaultFolder, help: false };
  for (const token of tokens) {
    if (token.kind === "positional") faults.push(serverWords.unknownOption(token.value));
    if (token.kind !== "option") continue;
    if (token.name === "help") found.help = true;
    else if (!(token.name in options)) faults.push(serverWords.unknownOption(token.rawName));
    else if (token.value === undefined) faults.push(serverWords.optionNeedsValue(token.rawName));
    else if (token.name === "host" && !ownHosts.includes(token.value)) {
      faults.push(serverWords.hostRefused(token.value));
    } else if (token.name === "data") {
      found.data = token.value;
    } else if (token.name === "port") {
      if (isPort(token.value)) found.port = Number(token.value);
      else faults.push(serverWords.portForm(token.value));
    }
  }
  return faults.length > 0 ? { faults } : found;
}

const options = {
  port: { type: "string" },
  host: { type: "string" },
  data: { type: "string" },
  help: { type: "boolean", short: "h" },
} as const;

function isPort(text: string): boolean {
  return /^\d{1,5}$/.test(text) && Number(text) <= 65535;
}
