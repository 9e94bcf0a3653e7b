import { existsSync } from "node:fs";
import { join } from "node:path";
import { type Browser, chromium } from "playwright-core";

/** Keeps Chromium from looking for its maker's hosts, which a closed network refuses many at a time. */
const quiet = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/**
 * A real Chromium: the one named by CHROMIUM_PATH, one that is on this machine, or the one that a package
 * brings. A journey that finds none fails with a sentence; it is never passed over.
 */
export async function launchBrowser(): Promise<Browser> {
  const tried: string[] = [];
  for (const executablePath of [...installed(), await carried()]) {
    try {
      return await chromium.launch({ executablePath, args: quiet });
    } catch (error) {
      tried.push(`${executablePath}: ${String(error).split("\n")[0]}`);
    }
  }
  throw new Error(
    `No Chromium could be started, so the journeys cannot run. Install one (Debian: apt-get install chromium) or name one in CHROMIUM_PATH. Tried:\n${tried.join("\n")}`,
  );
}

function installed(): string[] {
  const named = process.env.CHROMIUM_PATH;
  const folders = (process.env.PATH ?? "").split(":");
  const programs = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];
  const found = programs
    .flatMap((program) => folders.map((folder) => join(folder, program)))
    .filter(existsSync);
  return named ? [named, ...found] : found;
}

/** The browser inside the package, unpacked on first use; only its path is taken, not its arguments. */
async function carried(): Promise<string> {
  const { default: packaged } = await import("@sparticuz/chromium");
  return packaged.executablePath();
}
