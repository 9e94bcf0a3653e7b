import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { expect, test, vi } from "vitest";
import { faultsByAxe } from "../helpers/axe.ts";
import { hangsOver, journey } from "../helpers/journey.ts";

vi.setConfig({ testTimeout: 120_000 });

const at = journey();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };
const demo = (name: string) =>
  readFileSync(fileURLToPath(new URL(`../../demo/${name}`, import.meta.url)), "utf8");

/** The demo kept as a site, its rounds open. @returns its id */
async function roundsOfSite(page: Page): Promise<string> {
  page.setDefaultTimeout(20_000);
  const data = { survey: JSON.parse(demo("school.survey.json")), weather: demo("seattle.csv") };
  const reply = await page.request.post(`${at.served().address}api/sites`, { data });
  const { id } = await reply.json();
  await page.goto(`${at.served().address}site/${id}/rounds`);
  await page.getByRole("heading", { name: "Monday’s five entries" }).waitFor();
  return id;
}

async function logOf(page: Page, id: string): Promise<string> {
  return (await page.request.get(`${at.served().address}api/sites/${id}/log`)).text();
}

test("the log is written without the server, opened anew without it, and taken when it is back", async () => {
  at.forgive(/ERR_INTERNET_DISCONNECTED|Failed to load resource/);
  const page = await at.open("", phone);
  const id = await roundsOfSite(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await page.getByRole("heading", { name: "Monday’s five entries" }).waitFor();
  await page.context().setOffline(true);
  await page.reload();
  await page.getByRole("button", { name: "The log" }).tap();
  await page.getByRole("textbox", { name: "Minutes" }).fill("25");
  await page.getByRole("button", { name: "Write it down" }).tap();
  await page.getByText("One line waits on this device for the site’s log.").waitFor();
  await page.reload();
  await page.getByRole("button", { name: "The log" }).tap();
  await page.getByText("Oval: 25 min").waitFor();
  expect(await hangsOver(page)).toBeLessThanOrEqual(0);
  await page.context().setOffline(false);
  await expect.poll(() => logOf(page, id), { timeout: 30_000 }).toContain("watering,oval,25");
});

test("units chosen for the site are those of the round, and a figure opens to a page of its own", async () => {
  const page = await at.open("");
  await roundsOfSite(page);
  await page.getByRole("radio", { name: "US customary" }).check({ force: true });
  await page.getByText(/Yard tank holds 1,110 gal/).waitFor();
  const bears = page.getByRole("button", { name: /^[\d.]+ in$/ }).first();
  await bears.click();
  await page
    .getByRole("link", { name: /page of its own/ })
    .first()
    .waitFor();
  expect(await faultsByAxe(page)).toEqual([]);
});
