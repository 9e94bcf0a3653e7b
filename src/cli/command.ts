import { Refused } from "./input.ts";

/**
 * Runs a command: its help where that was asked for, else its work. What is refused goes to standard error, a
 * line each, and the status is 2.
 * @param read the command's arguments; null where help was asked for
 */
export function runCommand<T>(
  help: string,
  read: (args: string[]) => T | null,
  run: (flags: T) => void,
): void {
  // a reader that stops early, such as head, is no fault
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });
  try {
    const flags = read(process.argv.slice(2));
    if (flags === null) process.stdout.write(`${help}\n`);
    else run(flags);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    for (const line of error.lines) process.stderr.write(`${line}\n`);
    process.exitCode = 2;
  }
}
