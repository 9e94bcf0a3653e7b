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

/** What the dark can break that the light at the same width does not: colours, and nothing else. */
export function rulesIn(colorScheme: "light" | "dark"): AxeRules {
  return colorScheme === "dark" ? { only: ["color-contrast"] } : {};
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
