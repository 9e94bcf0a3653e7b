import { fileURLToPath } from "node:url";
import type { Browser } from "playwright-core";
import { build, type Rolldown } from "vite";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launchBrowser } from "../helpers/browser.ts";
import { runEngineSuite, type SuiteCase } from "../helpers/engine-suite.ts";
import { textOf } from "../helpers/worked.ts";

const cases: SuiteCase[] = [
  ["s01-marrow-lane", "seattle-temps"],
  ["s02-tollgate-court", "seattle"],
  ["s06-brook-terrace", "seattle-temps"],
  ["s07-wallside", "seattle-temps"],
].map(([name, record]) => ({
  name: name!,
  survey: textOf(`tests/scenarios/${name}.survey.json`),
  record: textOf(`tests/scenarios/${record}.csv`),
}));
cases.push({
  name: "demo",
  survey: textOf("demo/school.survey.json"),
  record: textOf("demo/seattle.csv"),
});

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

/** The suite as one script that puts `engineSuite` on the page. */
async function bundledSuite(): Promise<string> {
  const entry = fileURLToPath(new URL("../helpers/engine-suite.ts", import.meta.url));
  const built = await build({
    configFile: false,
    logLevel: "warn",
    build: { write: false, minify: false, lib: { entry, formats: ["iife"], name: "engineSuite" } },
  });
  const [output] = [built].flat() as Rolldown.RolldownOutput[];
  return output!.output[0].code;
}

test("the engine gives the same figures in a browser as in Node, to 1e-12", async () => {
  const page = await browser.newPage();
  await page.addScriptTag({ content: await bundledSuite() });
  const inBrowser = await page.evaluate(
    (given) =>
      (
        globalThis as unknown as { engineSuite: { runEngineSuite: (c: unknown) => Record<string, number> } }
      ).engineSuite.runEngineSuite(given),
    cases,
  );
  const inNode = runEngineSuite(cases);
  expect(Object.keys(inBrowser)).toEqual(Object.keys(inNode));
  expect(Object.keys(inNode).length).toBeGreaterThan(500);
  const off = Object.entries(inNode).filter(
    ([path, figure]) => Math.abs(inBrowser[path]! - figure) > 1e-12 * Math.abs(figure),
  );
  expect(off).toEqual([]);
});
