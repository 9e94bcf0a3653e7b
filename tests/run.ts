/**
 * The whole gate, one step after another: types, lint, the page, the tests, and the tests of dates under a
 * second time zone. Every step runs, whatever the one before it said; the last line is the count.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { countOf } from "./run/count.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const results = mkdtempSync(join(tmpdir(), "grounds-tests-"));

/** Where a day could slip: a zone far from UTC, with summer time on the other side of the year. */
const farZone = "Pacific/Auckland";
const dateTests = ["tests/engine/weather", "tests/files", "tests/survey/record", "tests/report/time-zone"];

function run(title: string, program: string, args: readonly string[], zone = "UTC"): boolean {
  console.log(`\n— ${title}`);
  const { status } = spawnSync(join(root, "node_modules/.bin", program), args, {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, TZ: zone },
  });
  return status === 0;
}

function runStep(
  title: string,
  program: string,
  args: readonly string[],
): { passed: number; failed: number } {
  const isDone = run(title, program, args);
  if (!isDone) console.log(`✗ ${title}: see above.`);
  return { passed: 0, failed: isDone ? 0 : 1 };
}

function runTests(
  title: string,
  folders: readonly string[],
  zone: string,
): { passed: number; failed: number } {
  const file = join(results, `${zone.replace("/", "-")}.json`);
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${file}`];
  const isDone = run(
    title,
    "vitest",
    ["run", "--config", "tests/vitest.config.ts", ...reporters, ...folders],
    zone,
  );
  const { passed, failed, sentences } = countOf(file, isDone);
  for (const sentence of sentences) console.log(`✗ ${sentence}`);
  return { passed, failed };
}

const counts = [
  runStep("Types", "tsc", ["--noEmit"]),
  runStep("Lint and form", "biome", ["check", "."]),
  runStep("The page", "vite", ["build", "--config", "components/vite.config.ts", "--logLevel", "warn"]),
  runTests("Tests", [], "UTC"),
  runTests(`Tests of dates, in ${farZone}`, dateTests, farZone),
];
rmSync(results, { recursive: true });

const passed = counts.reduce((sum, count) => sum + count.passed, 0);
const failed = counts.reduce((sum, count) => sum + count.failed, 0);
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
