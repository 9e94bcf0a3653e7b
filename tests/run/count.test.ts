import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { countOf } from "./count.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "grounds-count-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

const ran = { name: "a.test.ts", status: "passed", assertionResults: [{}] };
const unloaded = { name: "b.test.ts", status: "failed", assertionResults: [] };

function count(isDone: boolean, changes: Record<string, unknown>) {
  const file = join(folder, "result.json");
  const result = {
    numPassedTests: 3,
    numFailedTests: 0,
    numPendingTests: 0,
    numTodoTests: 0,
    testResults: [ran],
  };
  writeFileSync(file, JSON.stringify({ ...result, ...changes }));
  const { passed, failed } = countOf(file, isDone);
  return { passed, failed };
}

test.each([
  ["all passed", true, {}, 0],
  ["two failed", false, { numFailedTests: 2 }, 2],
  ["a file could not be loaded", false, { testResults: [ran, unloaded] }, 1],
  ["a test was left out", true, { numPendingTests: 1 }, 1],
  ["the run broke outside of a test", false, {}, 1],
] as const)("%s", (_name, isDone, changes, failed) => {
  expect(count(isDone, changes)).toEqual({ passed: 3, failed });
});

test("a run without a result is a failure", () => {
  expect(countOf(join(folder, "absent.json"), true)).toMatchObject({ passed: 0, failed: 1 });
});
