import { readdir, readFile } from "node:fs/promises";
import { extname, join } from "node:path";
import type { PageFile } from "../parts.ts";

const types: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".txt": "text/plain; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
};

/** The bundler's names end in a dash and eight characters of hash. */
const hashedName = /-[\w-]{8}\.\w+$/;

/** Reads the built page from a folder; a file of a kind not known here is left out. */
export async function readPageFiles(folder: string): Promise<PageFile[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const known = files.filter((file) => extname(file) in types).sort();
  return Promise.all(
    known.map(async (file) => {
      const path = file.slice(folder.length).replaceAll("\\", "/");
      return {
        path: path.startsWith("/") ? path : `/${path}`,
        type: types[extname(file)]!,
        bytes: new Uint8Array(await readFile(file)),
        hashed: path.includes("assets/") && hashedName.test(path),
      };
    }),
  );
}
