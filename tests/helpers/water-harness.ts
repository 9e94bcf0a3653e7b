import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { serve as listen } from "@hono/node-server";
import { Hono } from "hono";
import { build, mergeConfig } from "vite";
import config from "../../components/vite.config.ts";
import { securityHeaders } from "../../src/server/headers.ts";
import { readPageFiles } from "../../src/server/page/files.ts";
import { addPage } from "../../src/server/routes/page.ts";

const root = fileURLToPath(new URL("../components/water/harness", import.meta.url));

export interface WaterHarness {
  /** Ends in a slash. */
  address: string;
  stop(): Promise<void>;
}

/**
 * The screens of thirst and of tanks on a page of their own, built as the page is and served under the same policy.
 * @param surveys documents by the name that they are asked for
 * @param records weather as CSV, likewise
 */
export async function waterHarness(
  surveys: Readonly<Record<string, unknown>>,
  records: Readonly<Record<string, string>>,
  port = 0,
): Promise<WaterHarness> {
  const folder = mkdtempSync(join(tmpdir(), "grounds-water-"));
  await build(
    mergeConfig(config, {
      configFile: false,
      root,
      logLevel: "error",
      build: { outDir: folder, reportCompressedSize: false },
    }),
  );
  const app = new Hono();
  app.use(securityHeaders());
  app.get("/surveys/:name", (c) => c.json(surveys[c.req.param("name")] as object));
  app.get("/records/:name", (c) => c.text(records[c.req.param("name")] ?? ""));
  addPage(app, await readPageFiles(folder));
  const server = listen({ fetch: app.fetch, hostname: "127.0.0.1", port });
  await new Promise<void>((done) => server.once("listening", () => done()));
  const { port: taken } = server.address() as { port: number };
  return {
    address: `http://127.0.0.1:${taken}/`,
    stop: async () => {
      await new Promise((done) => server.close(done));
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
