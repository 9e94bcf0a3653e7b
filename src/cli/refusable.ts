import { CannotBackUp } from "../server/store/backup.ts";
import { CannotOpenStore } from "../server/store/open.ts";
import { Refused } from "./input.ts";

/** Runs a command on the data folder: what is refused goes to standard error, a line each, and the status is 2. */
export async function refusable(run: () => Promise<void>): Promise<void> {
  try {
    await run();
  } catch (error) {
    const lines =
      error instanceof Refused
        ? error.lines
        : error instanceof CannotBackUp || error instanceof CannotOpenStore
          ? [error.message]
          : null;
    if (lines === null) throw error;
    for (const line of lines) console.error(line);
    process.exitCode = 2;
  }
}
