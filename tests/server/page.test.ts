import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { readPageFiles } from "../../src/server/page/files.ts";
import { isPageFresh } from "../../src/server/page/fresh.ts";

let folder = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "grounds-page-"));
  for (const part of ["components/answer", "src", "data", "demo", "dist/page/assets"]) {
    mkdirSync(join(folder, part), { recursive: true });
  }
});
afterEach(() => rmSync(folder, { recursive: true }));

function write(path: string, at_s: number): void {
  writeFileSync(join(folder, path), "x");
  utimesSync(join(folder, path), at_s, at_s);
}

const farAhead_s = Date.now() / 1000 + 1000;
const isFresh = () => isPageFresh(folder, join(folder, "dist/page"));

test("a page that was never built is not fresh", async () => {
  expect(await isFresh()).toBe(false);
});

test("a page built after its sources is fresh, until one of them is touched", async () => {
  write("components/answer/view.ts", farAhead_s - 20);
  write("dist/page/index.html", farAhead_s - 10);
  expect(await isFresh()).toBe(true);
  write("components/answer/view.ts", farAhead_s);
  expect(await isFresh()).toBe(false);
});

test("the built page is read with its types; only hashed assets are kept for good", async () => {
  for (const path of ["index.html", "assets/index-Ab_3-xY9.js", "assets/plain.css", "assets/index.js.map"]) {
    write(`dist/page/${path}`, farAhead_s);
  }
  const files = await readPageFiles(join(folder, "dist/page"));
  expect(files.map(({ path, type, hashed }) => [path, type, hashed])).toEqual([
    ["/assets/index-Ab_3-xY9.js", "text/javascript; charset=utf-8", true],
    ["/assets/plain.css", "text/css; charset=utf-8", false],
    ["/index.html", "text/html; charset=utf-8", false],
  ]);
});
