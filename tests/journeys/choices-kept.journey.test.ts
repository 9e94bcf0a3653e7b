import type { Page } from "playwright-core";
import { expect, test, vi } from "vitest";
import { faultsByAxe } from "../helpers/axe.ts";
import { hangsOver, journey } from "../helpers/journey.ts";
import { textOf } from "../helpers/worked.ts";

vi.setConfig({ testTimeout: 120_000 });

const at = journey();

/** Keeps the demo as a site of its own. @returns the path of its choices */
async function keptSchool(page: Page): Promise<string> {
  const reply = await page.request.post(`${at.served().address}api/sites`, {
    data: { survey: JSON.parse(textOf("demo/school.survey.json")), weather: textOf("demo/seattle.csv") },
  });
  expect(reply.status()).toBe(201);
  return `/site/${(await reply.json()).id}/choices`;
}

async function keptCost(page: Page, path: string, measure: string): Promise<number> {
  const reply = await page.request.get(`${at.served().address}api/sites/${path.split("/")[2]}/state`);
  const { survey } = (await reply.json()) as { survey: { measures: { id: string; cost: number }[] } };
  return survey.measures.find(({ id }) => id === measure)!.cost;
}

test("the choices of a kept site: a quote is kept, the brief says which version it was written from", async () => {
  const page = await at.open();
  const path = await keptSchool(page);
  await page.goto(new URL(path, at.served().address).href);
  await page.locator(".headline", { hasText: "Watering to need" }).waitFor();
  expect(await page.locator(".paper .made").textContent()).toMatch(
    /^Survey: version 1, saved .+; written on /,
  );

  const tank = page
    .getByRole("listitem")
    .filter({ has: page.getByLabel("A yard tank of 10,000 L", { exact: true }) });
  await tank.getByText("Quote: $4,300").click();
  await tank.getByLabel("Price").fill("3900");
  await tank.getByLabel("Price").blur();
  await vi.waitFor(async () => expect(await keptCost(page, path, "bigger-yard-tank")).toBe(3900), 20_000);
  await page.locator(".paper .made", { hasText: "version 2" }).waitFor();
  expect(await hangsOver(page)).toBeLessThanOrEqual(0);
  expect(await faultsByAxe(page)).toEqual([]);
});

test("a working of the choices has a page of its own, and its numbers lead on", async () => {
  const page = await at.open();
  const path = await keptSchool(page);
  await page.goto(new URL(path, at.served().address).href);
  await page.locator(".headline", { hasText: "Watering to need" }).waitFor();
  await page.locator(".headline gwb-figure button").first().click();
  await page.getByRole("link", { name: "This working on a page of its own" }).click();
  await page
    .getByRole("heading", { level: 2, name: "Mains water given up a year: watering to need alone" })
    .waitFor();
  expect(new URL(page.url()).pathname).toBe(path.replace("/choices", "/working/choices/set/none/saved"));
  await page.getByRole("button", { name: /kL/ }).last().click();
  await page.getByRole("heading", { level: 2, name: /^Mains water, watered to need/ }).waitFor();
});

test("a link with its state opens the same plan on a kept site", async () => {
  const page = await at.open();
  const path = await keptSchool(page);
  await page.goto(new URL(`${path}#plan=mend-cistern&budget=200&tank=hall-tank`, at.served().address).href);
  await page.locator(".headline", { hasText: "Watering to need" }).waitFor();
  expect(await page.getByLabel("Bark on the front beds", { exact: true }).isChecked()).toBe(false);
  expect(await page.getByLabel("Mend the running cistern", { exact: true }).isChecked()).toBe(true);
  expect(await page.getByLabel("Budget in all").inputValue()).toBe("200");
  expect(await page.locator("#sizes select").inputValue()).toBe("hall-tank");
});
