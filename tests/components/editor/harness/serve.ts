import { fileURLToPath } from "node:url";
import { createServer, type ViteDevServer } from "vite";

/** Serves the editor alone, from its sources, on a free port. */
export async function serveHarness(): Promise<{ address: string; stop(): Promise<void> }> {
  const root = fileURLToPath(new URL("../../../..", import.meta.url));
  const server: ViteDevServer = await createServer({
    root,
    configFile: false,
    logLevel: "error",
    appType: "mpa",
    cacheDir: fileURLToPath(new URL("../../../../node_modules/.vite/harness", import.meta.url)),
    resolve: {
      conditions: ["module", "browser", "production"],
      alias: { "@fontsource-variable": `${root}node_modules/@fontsource-variable` },
    },
    server: { port: 0, host: "127.0.0.1", hmr: false, watch: null },
    optimizeDeps: { noDiscovery: true, include: [] },
  });
  await server.listen();
  const [address = ""] = server.resolvedUrls?.local ?? [];
  return { address: `${address}tests/components/editor/harness/index.html`, stop: () => server.close() };
}
