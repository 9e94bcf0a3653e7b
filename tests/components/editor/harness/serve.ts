import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build, preview } from "vite";

/** Builds the editor alone into a folder of its own, and serves it on a free port. */
export async function serveHarness(): Promise<{ address: string; stop(): Promise<void> }> {
  const root = fileURLToPath(new URL(".", import.meta.url));
  const packages = fileURLToPath(new URL("../../../../node_modules/", import.meta.url));
  const outDir = mkdtempSync(join(tmpdir(), "grounds-harness-"));
  const shared = { root, configFile: false, logLevel: "error", publicDir: false } as const;
  await build({
    ...shared,
    base: "./",
    resolve: {
      conditions: ["module", "browser", "production"],
      alias: { "@fontsource-variable": join(packages, "@fontsource-variable") },
    },
    build: { outDir, emptyOutDir: true, target: "es2022", modulePreload: { polyfill: false }, minify: false },
  });
  const server = await preview({ ...shared, build: { outDir }, preview: { host: "127.0.0.1", port: 0 } });
  const [address = ""] = server.resolvedUrls?.local ?? [];
  return {
    address,
    stop: async () => {
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}
