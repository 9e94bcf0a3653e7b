import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));
const patience_ms = 60_000;

export interface Served {
  /** Ends in a slash. */
  address: string;
  stop(): Promise<void>;
}

/** Starts the program as a newcomer does, on a free port and an empty data folder, and waits for its address. */
export async function serve(): Promise<Served> {
  const data = mkdtempSync(join(tmpdir(), "grounds-journey-"));
  const { NODE_ENV: _, ...environment } = process.env;
  const child = spawn(
    process.execPath,
    ["--import", "tsx", "src/server/main.ts", "--port", "0", "--data", data],
    { cwd: root, env: environment },
  );
  const address = await addressOf(child);
  return {
    address,
    stop: async () => {
      const gone = new Promise((resolve) => child.once("exit", resolve));
      child.kill("SIGTERM");
      await gone;
      rmSync(data, { recursive: true, force: true });
    },
  };
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    const fail = () => reject(new Error(`The server did not say its address. It said:\n${said}`));
    const timer = setTimeout(fail, patience_ms);
    const hear = (chunk: Buffer) => {
      said += chunk;
      const [found] = said.match(/http:\/\/127\.0\.0\.1:\d+\//) ?? [];
      if (!found) return;
      clearTimeout(timer);
      resolve(found);
    };
    child.stdout!.on("data", hear);
    child.stderr!.on("data", hear);
    child.once("exit", () => {
      clearTimeout(timer);
      fail();
    });
  });
}
