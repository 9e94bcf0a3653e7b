import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type axe from "axe-core";
import type { Page } from "playwright-core";

declare global {
  interface Window {
    axe?: typeof axe;
  }
}

/** Evaluated, as a page lets no script in that is not its own. */
const script = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

export interface AxeRules {
  /** These alone. */
  only?: readonly string[];
  /** All but these. */
  without?: readonly string[];
}

/** What axe finds on the page as it stands, a line for each rule that is broken. */
export async function faultsByAxe(page: Page, { only, without = [] }: AxeRules = {}): Promise<string[]> {
  if (!(await page.evaluate(() => window.axe !== undefined))) await page.evaluate(script);
  const options: axe.RunOptions = {
    resultTypes: ["violations"],
    rules: Object.fromEntries(without.map((rule) => [rule, { enabled: false }])),
    ...(only && { runOnly: [...only] }),
  };
  return page.evaluate(async (asked) => {
    const { violations } = await window.axe!.run(document, asked);
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  }, options);
}

/** The same by day and by night: in the dark colours can break, and nothing else does. */
export async function faultsByDayAndNight(page: Page, rules: AxeRules = {}): Promise<string[]> {
  const day = await faultsByAxe(page, rules);
  await page.emulateMedia({ colorScheme: "dark" });
  const night = await faultsByAxe(page, { only: ["color-contrast"] });
  await page.emulateMedia({ colorScheme: "light" });
  return [...day, ...night.map((fault) => `in the dark, ${fault}`)];
}
