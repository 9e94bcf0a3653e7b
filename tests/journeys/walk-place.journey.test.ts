import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { expect, test, vi } from "vitest";
import type { Survey } from "../../src/survey/survey.ts";
import { faultsByAxe } from "../helpers/axe.ts";
import { hangsOver, journey } from "../helpers/journey.ts";

vi.setConfig({ testTimeout: 120_000 });

const at = journey();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };
const record = readFileSync(fileURLToPath(new URL("../../demo/seattle.csv", import.meta.url)), "utf8");

const survey = {
  format: "grounds-survey",
  version: 1,
  site: { name: "Tollgate Court (invented)", latitude: 47.6, longitude: -122.3 },
  beds: [
    {
      id: "rose-walk",
      name: "Rose walk",
      area_m2: 40,
      plantings: [{ kind: "perennials", thirst: "moderate", share: 1 }],
      watering: { method: "hose", supply: "mains-only" },
    },
  ],
  roofs: [],
  tanks: [],
};

async function keptSite(page: Page): Promise<string> {
  page.setDefaultTimeout(12_000);
  const reply = await page.request.post(`${at.served().address}api/sites`, {
    data: { survey, weather: record },
  });
  return `/site/${(await reply.json()).id}`;
}

async function stateOf(
  page: Page,
  path: string,
): Promise<{ survey: Survey; draft: { survey: Survey } | null }> {
  const reply = await page.request.get(`${at.served().address}api/sites/${path.split("/")[2]}/state`);
  return reply.json();
}

const go = (page: Page, path: string) => page.goto(new URL(path, at.served().address).href);
const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true }).tap();
const write = (page: Page, name: string, text: string) =>
  page.getByRole("textbox", { name, exact: true }).fill(text);
const pathOf = (page: Page) => new URL(page.url()).pathname;

/** A group under way at a stop of a kept site, its cautions read. */
async function walking(page: Page, path: string, stop: string): Promise<void> {
  await go(page, `${path}/walk`);
  await page.getByRole("heading", { name: "Walk the grounds" }).waitFor();
  await write(page, "Your group’s nickname", "Teasel");
  await press(page, "Start");
  await page.getByRole("heading", { name: "The round" }).waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await go(page, `${path}/walk/stop/${stop}`);
  await press(page, "We have read this");
}

test("a reading goes into the kept survey with its group, and is there after a reload", async () => {
  const page = await at.open("", phone);
  const path = await keptSite(page);
  await walking(page, path, "beds/rose-walk/area");
  await page.getByRole("textbox").fill("30");
  await press(page, "That is our guess");
  await press(page, "Rectangle");
  await write(page, "Length", "16");
  await write(page, "Width", "4");
  await press(page, "Keep it");
  await page.getByText(/Your guess: 30/).waitFor();
  await expect.poll(async () => (await stateOf(page, path)).survey.beds[0]!.area_m2).toBeCloseTo(64, 9);
  const { survey: kept } = await stateOf(page, path);
  expect(kept.groups).toMatchObject([{ nickname: "Teasel" }]);
  expect(kept.found).toMatchObject([
    { at: "beds[0].area_m2", how: "rectangle", readings: [16, 4], guess: 30, group: "g1" },
  ]);
  await page.reload();
  await page.getByText(/Your guess: 30/).waitFor();
  expect(await hangsOver(page)).toBeLessThanOrEqual(0);
  expect(await faultsByAxe(page)).toEqual([]);
});

test("without the server in the middle of an entry: opened anew, measured on, and saved when it is back", async () => {
  at.forgive(/ERR_INTERNET_DISCONNECTED|Failed to load resource/);
  const page = await at.open("", phone);
  const path = await keptSite(page);
  await walking(page, path, "beds/rose-walk/area");
  await press(page, "No guess");
  await press(page, "Rectangle");
  await write(page, "Length", "16");
  await page.context().setOffline(true);
  await write(page, "Width", "4");
  await page.reload();
  expect(await page.getByRole("textbox", { name: "Length" }).inputValue()).toBe("16");
  expect(await page.getByRole("textbox", { name: "Width" }).inputValue()).toBe("4");
  await page.getByText(/With that it needs about .* a year/).waitFor();
  await press(page, "Keep it");
  await page.getByText("The server is not reached.", { exact: false }).waitFor();
  await press(page, "Next stop");
  await press(page, "We have read this");
  await press(page, "No guess");
  await page.getByRole("button", { name: /^By name/ }).tap();
  await write(page, "What is it called?", "lavendar");
  await page.getByRole("button", { name: /^Lavandula/ }).tap();
  await page.getByRole("button", { name: "Next stop" }).waitFor();
  await page.reload();
  await page.getByRole("button", { name: "Next stop" }).waitFor();
  await page.context().setOffline(false);
  await expect.poll(async () => (await stateOf(page, path)).survey.found?.length ?? 0).toBe(2);
  expect((await stateOf(page, path)).survey.beds[0]).toMatchObject({ area_m2: 64 });
});

test("what is typed with a fault in the survey is still there after something was measured", async () => {
  at.forgive(/422/);
  const page = await at.open("", { ...phone, viewport: { width: 800, height: 900 } });
  const path = await keptSite(page);
  await go(page, `${path}/survey/beds/rose-walk`);
  await page.getByLabel(/area/i).first().fill("-4");
  await page.keyboard.press("Tab");
  await page.getByText(/Saved as a draft/).waitFor();
  await walking(page, path, "beds/rose-walk/mulch");
  await press(page, "Nothing: bare soil");
  await page.getByRole("button", { name: "Next stop" }).waitFor();
  await expect.poll(async () => (await stateOf(page, path)).draft?.survey.found?.length ?? 0).toBe(1);
  const { draft } = await stateOf(page, path);
  expect(draft!.survey.beds[0]!.area_m2).toBe(-4);
  await page.reload();
  await page.getByRole("button", { name: "Next stop" }).waitFor();
  await go(page, `${path}/survey/beds/rose-walk`);
  expect(await page.getByLabel(/area/i).first().inputValue()).toBe("-4");
});

test("walk and fields lead to each other, a fault’s path to its field, and old addresses there too", async () => {
  const page = await at.open("", phone);
  const path = await keptSite(page);
  await go(page, `${path}/survey/at/${encodeURIComponent("beds[0].area_m2")}`);
  await page.getByLabel(/area/i).first().waitFor();
  await expect.poll(() => pathOf(page)).toBe(`${path}/survey/beds/rose-walk`);
  await page.getByRole("link", { name: "Measure it on the walk" }).tap();
  await write(page, "Your group’s nickname", "Teasel");
  await press(page, "Start");
  await page.getByRole("heading", { name: "Rose walk" }).waitFor();
  expect(pathOf(page)).toBe(`${path}/walk/thing/beds/rose-walk`);
  await page.getByRole("link", { name: "Every field of it, to be typed" }).tap();
  await page.getByLabel(/area/i).first().waitFor();
  expect(pathOf(page)).toBe(`${path}/survey/beds/rose-walk`);
  await go(page, `${path}/walk/beds/rose-walk/soil`);
  await page.getByRole("heading", { name: "Soil" }).waitFor();
  expect(pathOf(page)).toBe(`${path}/survey/beds/rose-walk/soil`);
  await page.goBack();
  await page.getByLabel(/area/i).first().waitFor();
});

test("what tells most is said on the round, from the answer’s own width", async () => {
  const page = await at.open("", phone);
  const path = await keptSite(page);
  await go(page, `${path}/walk`);
  await write(page, "Your group’s nickname", "Teasel");
  await press(page, "Start");
  const most = page.getByRole("button", { name: "What would tell most now: Rose walk, watering today." });
  await most.waitFor({ timeout: 30_000 });
});
