import type { Hono } from "hono";
import type { PageFile } from "../parts.ts";

const aYear_s = 31_536_000;

/**
 * The built page and its assets, each at its own address, so that nothing else on the disk can be asked for.
 * A file whose name carries its hash is kept by browsers for good; the rest is asked for again each time.
 */
export function addPage(app: Hono, files: readonly PageFile[]): void {
  for (const file of files) {
    const headers = {
      "Content-Type": file.type,
      "Cache-Control": file.hashed ? `public, max-age=${aYear_s}, immutable` : "no-cache",
    };
    const address = file.path === "/index.html" ? "/" : file.path;
    app.get(address, (c) => c.body(file.bytes, 200, headers));
  }
}
