import { join } from "node:path";
import { isPageFresh } from "./fresh.ts";

/**
 * Builds the page into dist/page where it is missing or older than its sources.
 * @returns the folder it is in
 */
export async function buildPage(root: string, onBuild: () => void): Promise<string> {
  const folder = join(root, "dist/page");
  if (await isPageFresh(root, folder)) return folder;
  onBuild();
  const { build } = await import("vite");
  await build({ configFile: join(root, "components/vite.config.ts"), logLevel: "error" });
  return folder;
}
