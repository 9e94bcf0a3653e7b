import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";

/** What the page is made of, beside the packages. */
const sources = ["components", "src", "data", "demo", "package-lock.json"];

/** Whether the built page is there and no source is newer. */
export async function isPageFresh(root: string, folder: string): Promise<boolean> {
  const built = await modified_ms(join(folder, "index.html"));
  const newest = await Promise.all(sources.map((source) => newest_ms(join(root, source))));
  return built > Math.max(...newest);
}

async function newest_ms(path: string): Promise<number> {
  const own = await stat(path).catch(() => null);
  if (own === null) return 0;
  if (!own.isDirectory()) return own.mtimeMs;
  const entries = await readdir(path, { recursive: true });
  const times = await Promise.all(entries.map((entry) => modified_ms(join(path, entry))));
  return Math.max(own.mtimeMs, ...times);
}

async function modified_ms(path: string): Promise<number> {
  return (await stat(path).catch(() => null))?.mtimeMs ?? 0;
}
