import { expect, test } from "vitest";
import { filesBelow, root, sourcesBelow, textOf, withoutComments } from "./sources.ts";

const written = filesBelow(".").filter((path) => /\.(ts|js|json|md|css|html|svg|csv|ya?ml)$/.test(path));
const code = sourcesBelow("src", "components", "tests");

/** A pattern in two parts, so that this file does not hold what it looks for. */
function pattern(...parts: string[]): RegExp {
  return new RegExp(parts.join(""));
}

function holding(wanted: RegExp, texts: readonly { path: string; text: string }[]): string[] {
  return texts.filter(({ text }) => wanted.test(text)).map(({ path }) => path);
}

test("files of code stay small", () => {
  const long = code
    .filter(({ path }) => !path.startsWith("tests/"))
    .map(({ path, text }) => ({ path, lines: text.split("\n").length - 1 }))
    .filter(({ lines }) => lines > 300);
  expect(long).toEqual([]);
});

test("the list of packages says nothing of where they came from", () => {
  const lock = textOf("package-lock.json");
  expect(lock).toContain('"integrity"');
  expect(lock).not.toMatch(/"resolved"/);
});

test("versions of packages are exact", () => {
  const { dependencies, devDependencies } = JSON.parse(textOf("package.json"));
  const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+$/.test(String(version)),
  );
  expect(loose).toEqual([]);
});

test.each([
  ["work left for later", pattern("\\b(TO", "DO|FIX", "ME|XX", "X)\\b")],
  ["types switched off", pattern("\\bas a", "ny\\b|@ts-", "ignore|@ts-", "nocheck|: a", "ny\\b|<a", "ny>")],
  ["answers of our own as truth", pattern("toMatch", "(Inline)?Snapshot")],
])("no code holds %s", (_name, wanted) => {
  expect(holding(wanted, code)).toEqual([]);
});

test("no test is left out, or run alone", () => {
  const wanted = pattern(
    "\\b(test|it|describe)\\.(on",
    "ly|sk",
    "ip|to",
    "do)\\b|\\b(xit|xtest|xdescribe)\\(",
  );
  const tests = code.filter(({ path }) => path.startsWith("tests/"));
  expect(holding(wanted, tests)).toEqual([]);
});

test("no file carries the address of the machine it was written on, or of a package host", () => {
  const texts = written.map((path) => ({ path, text: textOf(path) }));
  const here = root.replace(/\/$/, "");
  expect(texts.filter(({ text }) => text.includes(`${here}/`)).map(({ path }) => path)).toEqual([]);
  expect(holding(pattern("registry\\.", "[a-z]+\\.(org|com)"), texts)).toEqual([]);
});

test("no code is kept in comments", () => {
  const kept = pattern(
    "^\\s*//\\s*(const|let|import|export|if \\(|for \\(|return\\b.*;|}|\\w+\\(.*\\);)",
    "",
  );
  const lines = code.flatMap(({ path, text }) =>
    text.split("\n").flatMap((line, i) => (kept.test(line) ? [`${path}:${i + 1}`] : [])),
  );
  expect(lines).toEqual([]);
});

test("TypeScript is used for types only", () => {
  const construct =
    /^\s*(export\s+)?(const\s+)?(enum|namespace)\s+\w+|constructor\([^)]*?[(,\s](private|public|protected|readonly)\s+\w+\??\s*:/m;
  expect(
    holding(
      construct,
      code.map(({ path, text }) => ({ path, text: withoutComments(text) })),
    ),
  ).toEqual([]);
});
