import type { Context, Hono } from "hono";
import type { PageFile } from "../parts.ts";

const aYear_s = 31_536_000;

/** Addresses that the page itself tells apart; each can be bookmarked and asked for. */
const screens = ["/first", "/demo", "/site/*"] as const;

/**
 * The built page and its assets, each at its own address, so that nothing else on the disk can be asked for.
 * A file whose name carries its hash is kept by browsers for good; the rest is asked for again each time.
 */
export function addPage(app: Hono, files: readonly PageFile[]): void {
  const index = indexOf(files);
  if (index) for (const screen of screens) app.get(screen, (c) => pageAnswer(c, index, 200));
  for (const file of files) {
    const headers = {
      "Content-Type": file.type,
      "Cache-Control": file.hashed ? `public, max-age=${aYear_s}, immutable` : "no-cache",
    };
    const address = file.path === "/index.html" ? "/" : file.path;
    app.get(address, (c) => c.body(file.bytes, 200, headers));
  }
}

function indexOf(files: readonly PageFile[]): PageFile | undefined {
  return files.find((file) => file.path === "/index.html");
}

function pageAnswer(c: Context, { bytes, type }: PageFile, status: 200 | 404): Response {
  return c.body(bytes, status, { "Content-Type": type, "Cache-Control": "no-cache" });
}

/** For somebody who reads: the page, which says that there is nothing at this address. Null for programs. */
export function pageNotFound(c: Context, files: readonly PageFile[]): Response | null {
  const index = indexOf(files);
  const reads = c.req.header("Accept")?.includes("text/html") && !c.req.path.startsWith("/api");
  return index && reads ? pageAnswer(c, index, 404) : null;
}
