import { renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { inputWords } from "../words/en/input.ts";
import { Refused } from "./input.ts";

/**
 * Writes a whole file or none: to a neighbour first, then under its name.
 * @throws Refused where the folder is not there or may not be written
 */
export function writeWhole(path: string, text: string): void {
  const beside = join(dirname(path), `.${process.pid}.part`);
  try {
    writeFileSync(beside, text);
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw new Refused([`${path}: ${inputWords.notWritten(String((error as NodeJS.ErrnoException).code))}`]);
  }
}
