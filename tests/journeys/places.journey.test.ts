import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { faultsByAxe } from "../helpers/axe.ts";
import { hangsOver, journey } from "../helpers/journey.ts";

const at = journey();

declare global {
  interface Window {
    /** What went to the printer. */
    printed?: string;
  }
}

/** The demo, kept as a site. @returns its path */
async function keptDemo(page: Page): Promise<string> {
  await page.getByRole("button", { name: "Keep this invented school, to try everything on it" }).click();
  await page.waitForURL(/\/site\//);
  return new URL(page.url()).pathname.slice(1);
}

const pathOf = (page: Page) => new URL(page.url()).pathname;

test("the answer says how far it may be out, and what would narrow it", async () => {
  const page = await at.open("demo");
  await keptDemo(page);
  await page
    .getByText(/With what is not measured drawn .* between [\d,]+ and [\d,]+\skL eight times in ten/)
    .waitFor({ timeout: 60_000 });
  await page.getByText(/The widest unknown beside the weather: .*, \d+% of the width\./).waitFor();
});

test("thirst: the address names the bed and the year, and both come back from it", async () => {
  const page = await at.open("demo");
  const site = await keptDemo(page);
  await page.getByRole("link", { name: "Thirst", exact: true }).click();
  await page.getByText(/^Rain gives the gardens/).waitFor();
  await page.getByLabel("Show").selectOption({ label: "Front beds" });
  await page.getByRole("heading", { name: /^Front beds: most in July/ }).waitFor();
  await page.getByRole("button", { name: "Earlier year" }).click();
  await page.getByRole("heading", { name: /^Front beds in 2014: watered/ }).waitFor();
  expect(pathOf(page)).toBe(`/${site}/thirst/front/2014`);
  await page.evaluate(() => {
    window.print = () => {
      window.printed = document.querySelector(".pages-to-print")?.shadowRoot?.textContent ?? "";
    };
  });
  await page.getByRole("button", { name: "Print the worked example: Front beds" }).click();
  await expect
    .poll(() => page.evaluate(() => window.printed))
    .toMatch(/Sheet 1: fill in the blanks[\s\S]*Sheet 2: the answers/);
  await page.reload();
  await page.getByRole("heading", { name: /^Front beds in 2014: watered/ }).waitFor();
  await page.goBack();
  await page.getByRole("region", { name: "Answer", exact: true }).waitFor();
});

test("roofs and tanks: another size is tried while the ruler moves", async () => {
  const page = await at.open("demo");
  await keptDemo(page);
  await page.getByRole("link", { name: "Roofs and tanks", exact: true }).click();
  const size = page.getByRole("slider", { name: "Tank size" }).first();
  await size.focus();
  await page.keyboard.press("ArrowRight");
  await page
    .getByText(/ of roof would give [\d,]+\slitres a year, [\d,]+\slitres more; /)
    .first()
    .waitFor();
  await page.getByRole("heading", { name: /^At [\d,]+\slitres: short on / }).waitFor();
  expect(await faultsByAxe(page)).toEqual([]);
});

test("a figure's working has a page of its own, from which one walks to a day and to FAO-56", async () => {
  const page = await at.open("demo");
  const site = await keptDemo(page);
  await page.getByRole("link", { name: "Thirst", exact: true }).click();
  await page.getByRole("button", { name: /^1,480\skL$/ }).click();
  await page
    .getByRole("button", { name: /^1,[\d,]+\sL$/ })
    .first()
    .click();
  await page.getByRole("link", { name: "This working on a page of its own" }).click();
  await page.getByRole("heading", { level: 2, name: "Water let out to give the need, Oval" }).waitFor();
  expect(pathOf(page)).toBe(`/${site}/working/bed/oval/need`);
  await page.goto(`${at.served().address}${site}/working/bed/oval/ks/2015-07-14`);
  await page
    .getByText(/FAO-56.*84/)
    .first()
    .waitFor();
  expect(await faultsByAxe(page)).toEqual([]);
  await page.setViewportSize({ width: 360, height: 780 });
  expect(await hangsOver(page)).toBe(0);
  await page.goto(`${at.served().address}${site}/working/bed/nowhere/need`);
  await page.getByText("No figure of this site has the address bed/nowhere/need.").waitFor();
});

test("no part of the page's script is heavier than 120 kB, compressed", async () => {
  const page = await at.open();
  const { address } = at.served();
  const files = (await (await page.request.get(`${address}kept.json`)).json()) as string[];
  const scripts = files.filter((file) => file.endsWith(".js"));
  expect(scripts.length).toBeGreaterThan(20);
  for (const script of scripts) {
    const text = await (await page.request.get(address + script)).body();
    expect(gzipSync(text).length / 1000, script).toBeLessThan(120);
  }
});
