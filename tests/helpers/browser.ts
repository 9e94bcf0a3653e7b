import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { type Browser, chromium } from "playwright-core";

const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome"];

/** Ours, not a package's: one process fewer to crash is not worth a browser without its own protections. */
const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--force-color-profile=srgb",
];

function runs(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The browser that is there: CHROMIUM_PATH, else the first of the usual names on the path. */
function installed(): string | undefined {
  const named = process.env.CHROMIUM_PATH;
  if (named) return named;
  const folders = ["/usr/bin", ...(process.env.PATH ?? "").split(delimiter)];
  return folders.flatMap((folder) => names.map((name) => join(folder, name))).find(runs);
}

/** One that a package carries, unpacked on first use. */
async function carried(): Promise<string> {
  const { default: packed } = await import("@sparticuz/chromium");
  return packed.executablePath();
}

/**
 * A real Chromium.
 * @param more flags beside the usual ones
 * @throws a sentence that says what to do where none starts, so that a journey never goes by unrun
 */
export async function launchBrowser(more: readonly string[] = []): Promise<Browser> {
  const tried: string[] = [];
  for (const find of [async () => installed(), carried]) {
    let path: string | undefined;
    try {
      path = await find();
      if (path) return await chromium.launch({ executablePath: path, args: [...flags, ...more] });
    } catch (error) {
      tried.push(`${path ?? "the packed browser"}: ${String(error).split("\n")[0]}`);
    }
  }
  throw new Error(
    `The journeys need a Chromium and none started. Install one (Debian: apt-get install chromium) or set CHROMIUM_PATH to one. ${tried.join(" · ")}`,
  );
}
