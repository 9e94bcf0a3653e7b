import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serve as listen } from "@hono/node-server";
import { Hono } from "hono";
import { build, mergeConfig } from "vite";
import config from "../../components/vite.config.ts";
import { securityHeaders } from "../../src/server/headers.ts";
import { readPageFiles } from "../../src/server/page/files.ts";
import { addPage } from "../../src/server/routes/page.ts";

export interface Harness {
  /** Ends in a slash. */
  address: string;
  stop(): Promise<void>;
}

/**
 * A screen on a page of its own, built as the page is and served under the same policy.
 * @param root folder of the page
 * @param add what the page asks for beside its files
 */
export async function harness(root: string, add: (app: Hono) => void, port = 0): Promise<Harness> {
  const outDir = mkdtempSync(join(tmpdir(), "grounds-harness-"));
  await build(
    mergeConfig(config, {
      configFile: false,
      root,
      logLevel: "error",
      build: { outDir, reportCompressedSize: false },
    }),
  );
  const app = new Hono();
  app.use(securityHeaders());
  add(app);
  addPage(app, await readPageFiles(outDir));
  const server = listen({ fetch: app.fetch, hostname: "127.0.0.1", port });
  await new Promise<void>((done) => server.once("listening", () => done()));
  const { port: taken } = server.address() as { port: number };
  return {
    address: `http://127.0.0.1:${taken}/`,
    stop: async () => {
      await new Promise((done) => server.close(done));
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}

/** The same for a screen that asks for one survey and one record of weather as CSV. */
export function siteHarness(root: string, survey: unknown, record: string, port = 0): Promise<Harness> {
  return harness(
    root,
    (app) => {
      app.get("/survey.json", (c) => c.json(survey as object));
      app.get("/record.csv", (c) => c.text(record));
    },
    port,
  );
}
