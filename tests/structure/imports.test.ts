import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { exceptions, matches, partOf, rules } from "./rules.ts";
import { type Import, root, type Source, sourcesBelow, withoutComments } from "./sources.ts";

/** The code that runs; how the page is built is no part of it. */
const sources = sourcesBelow("src", "components").filter(({ path }) => !path.endsWith(".config.ts"));

function isAllowed(source: Source, imported: Import): boolean {
  const rule = rules[partOf(source.path)];
  if (rule === undefined) return false;
  const name = imported.file ?? imported.from;
  if (exceptions.some(({ files, imports }) => source.path.startsWith(files) && name.startsWith(imports)))
    return true;
  if (imported.file === null) return (rule.packages ?? []).some((pattern) => matches(pattern, imported.from));
  const part = partOf(imported.file);
  return (
    part === partOf(source.path) ||
    rule.parts.includes(part) ||
    (imported.typeOnly && (rule.types ?? []).includes(part))
  );
}

test("there is code to look at", () => {
  expect(sources.length).toBeGreaterThan(20);
  expect(sources.flatMap((source) => source.imports).length).toBeGreaterThan(20);
});

test("dependencies point one way", () => {
  const forbidden = sources.flatMap((source) =>
    source.imports
      .filter((imported) => !isAllowed(source, imported))
      .map((imported) => `${source.path} imports ${imported.typeOnly ? "types of " : ""}${imported.from}`),
  );
  expect(forbidden).toEqual([]);
});

test("relative imports name a file that is there, with its ending", () => {
  const wrong = sources.flatMap((source) =>
    source.imports
      .filter(({ file }) => file !== null && !(/\.\w+$/.test(file) && existsSync(join(root, file))))
      .map(({ from }) => `${source.path}: ${from}`),
  );
  expect(wrong).toEqual([]);
});

test("no file imports itself, by any way round", () => {
  const runtime = new Map(
    sources.map((source) => [
      source.path,
      source.imports.flatMap(({ file, typeOnly }) => (file === null || typeOnly ? [] : [file])),
    ]),
  );
  expect(firstCycle(runtime)).toEqual([]);
});

/** The first ring of files found, walking depth first; none is an empty list. */
function firstCycle(graph: ReadonlyMap<string, readonly string[]>): string[] {
  const done = new Set<string>();
  const walk = (path: string, way: readonly string[]): string[] => {
    if (way.includes(path)) return [...way.slice(way.indexOf(path)), path];
    if (done.has(path)) return [];
    for (const next of graph.get(path) ?? []) {
      const cycle = walk(next, [...way, path]);
      if (cycle.length > 0) return cycle;
    }
    done.add(path);
    return [];
  };
  for (const path of graph.keys()) {
    const cycle = walk(path, []);
    if (cycle.length > 0) return cycle;
  }
  return [];
}

describe("the engine has no clock, chance, place or outside", () => {
  const engine = sources.filter((source) => source.path.startsWith("src/engine/"));
  const outside = {
    "the clock": /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\./,
    chance: /\bMath\.random\b|\bcrypto\b/,
    "the locale":
      /\bIntl\b|\.toLocale|\blocaleCompare\b|\.getTimezoneOffset\b|\.get(FullYear|Month|Date|Day|Hours)\(/,
    "the platform": /["']node:|\bprocess\.|\bfetch\(|\bconsole\.|\bwindow\b|\bdocument\.|\blocalStorage\b/,
  };
  test.each(Object.entries(outside))("%s", (_name, pattern) => {
    const found = engine.filter(({ text }) => pattern.test(withoutComments(text))).map(({ path }) => path);
    expect(found).toEqual([]);
  });
});
