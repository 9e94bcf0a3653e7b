import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Runs one of the command line's programs as a person does, and gives what it said. */
export function command(name: string, args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["--import", "tsx", join(root, "src/cli", `${name}.ts`), ...args],
    { cwd: root, encoding: "utf8", maxBuffer: 2 ** 28 },
  );
  return { status, stdout, stderr };
}

/** An empty folder of its own. */
export function emptyFolder(): string {
  return mkdtempSync(join(tmpdir(), "grounds-"));
}

export function filesIn(folder: string): string[] {
  return readdirSync(folder).sort();
}
