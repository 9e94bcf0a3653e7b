import { readFileSync } from "node:fs";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { waterRecords, waterSurveys } from "../components/water/sites.ts";
import { faultsByAxe } from "../helpers/axe.ts";
import { launchBrowser } from "../helpers/browser.ts";
import type { Harness } from "../helpers/harness.ts";
import { waterHarness } from "../helpers/water-harness.ts";

let harness: Harness;
let browser: Browser;
let context: BrowserContext | undefined;
let asked: string[] = [];
let wrong: string[] = [];

beforeAll(async () => {
  [harness, browser] = await Promise.all([waterHarness(waterSurveys, waterRecords), launchBrowser()]);
}, 180_000);

afterAll(async () => {
  await browser?.close();
  await harness?.stop();
});

afterEach(async () => {
  await context?.close();
  context = undefined;
  const elsewhere = asked.filter((url) => !url.startsWith(harness.address) && !url.startsWith("data:"));
  const faults = wrong;
  asked = [];
  wrong = [];
  expect(elsewhere, "requests that left the host").toEqual([]);
  expect(faults, "errors in the page").toEqual([]);
});

async function open(query: string, options: BrowserContextOptions = {}): Promise<Page> {
  context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: "en-GB", ...options });
  context.on("request", (request) => asked.push(request.url()));
  const page = await context.newPage();
  page.on("pageerror", (error) => wrong.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") wrong.push(message.text());
  });
  await page.goto(`${harness.address}?${query}`);
  await page.locator(".headline").first().waitFor({ timeout: 60_000 });
  return page;
}

const heading = (page: Page, name: RegExp) => page.getByRole("heading", { level: 3, name }).first().waitFor();
const hallSize = (page: Page) => page.getByRole("slider", { name: "Tank size" }).first();

test("beds are put in the other order, and another bed is looked at", async () => {
  const page = await open("at=thirst");
  await heading(page, /^Thirstiest by the square metre, and most in all: Oval/);
  await page.getByRole("radio", { name: "in all" }).check({ force: true });
  await page.getByLabel("Show").selectOption({ label: "Front beds" });
  await heading(page, /^Front beds: most in July/);
  await heading(page, /^Front beds: too much in September/);
  await heading(page, /^Its shade saves Front beds/);
  await heading(page, /^Front beds in 2015: watered \d+ times/);
});

test("a year is drawn to need, as today and by rain alone, and read day by day with the keyboard", async () => {
  const page = await open("at=thirst");
  await heading(page, /^Oval in 2015: watered/);
  await page.getByRole("radio", { name: "by rain alone" }).check({ force: true });
  await heading(page, /^Oval in 2015, never watered; thirsty on \d+ days$/);
  await page.getByRole("radio", { name: "as today" }).check({ force: true });
  await heading(page, /^Oval in 2015, as today: watered/);
  await page.getByRole("button", { name: "Earlier year" }).click();
  await heading(page, /^Oval in 2014, as today: watered/);
  const ruler = page.getByRole("slider", { name: /^Ruler\. Oval through 2014/ });
  await ruler.focus();
  await page.keyboard.press("Home");
  expect(await ruler.getAttribute("aria-valuetext")).toMatch(
    /^1 January 2014: [\d.]+ of [\d.]+\smm within reach/,
  );
});

test("a figure opens its sum, a part of it opens further, down to the engine's own working", async () => {
  const page = await open("at=thirst");
  const figure = page.getByRole("button", { name: "1,480 kL" });
  await figure.click();
  const sums = page.getByRole("group", { name: /^What watering has to bring to all beds/ });
  await sums.waitFor();
  await sums.getByRole("button", { name: /1,351,780/ }).click();
  await page.getByRole("group", { name: /Oval/ }).first().waitFor();
  await page.keyboard.press("Escape");
  expect(await figure.getAttribute("aria-expanded")).toBe("false");
});

test("a class guesses the order by number and by keys, then sees it with the litres between", async () => {
  const page = await open("at=thirst");
  await page.getByRole("button", { name: "Guess the order first" }).click();
  await page.getByLabel("Place of Oval").selectOption("1");
  const grip = page.getByRole("button", { name: "Move Kitchen garden" });
  await grip.focus();
  await page.keyboard.press("ArrowUp");
  await page.getByText(/^Kitchen garden is now \d of 8$/).waitFor();
  await page.keyboard.press("2");
  const rows = await page.getByRole("listitem").allInnerTexts();
  expect(rows[0]).toContain("Oval");
  expect(rows[1]).toContain("Kitchen garden");
  await page.getByRole("button", { name: "See the order" }).click();
  await heading(page, /of 8 in their place/);
  await page.getByText("more on each m²").first().waitFor();
  await page.getByRole("button", { name: "Leave it" }).click();
  await heading(page, /^Thirstiest by/);
});

test("a bed is dragged to its place", async () => {
  const page = await open("at=thirst");
  await page.getByRole("button", { name: "Guess the order first" }).click();
  await page.getByRole("button", { name: "See the order" }).scrollIntoViewIfNeeded();
  const from = (await page.getByRole("button", { name: "Move Oval" }).boundingBox())!;
  const to = (await page.getByRole("listitem").first().boundingBox())!;
  await page.mouse.move(from.x + 10, from.y + 10);
  await page.mouse.down();
  await page.mouse.move(from.x + 10, from.y - 40, { steps: 4 });
  await page.mouse.move(to.x + 10, to.y + 6, { steps: 8 });
  await page.mouse.up();
  expect((await page.getByRole("listitem").allInnerTexts())[0]).toContain("Oval");
});

test("a tank is tried at another size while its ruler moves, and put back", async () => {
  const page = await open("at=tanks");
  await heading(page, /^Tank behind the hall: short on 15 days of 2015/);
  const size = hallSize(page);
  await size.focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press("ArrowRight");
  expect(await size.getAttribute("aria-valuetext")).toMatch(/litres$/);
  await page.keyboard.press("End");
  await heading(page, /^At 88,000\slitres: never short in 2015$/);
  await page
    .getByText(/88,000\slitres under 420\sm² of roof would give/)
    .first()
    .waitFor();
  await heading(page, /^Tank behind the hall was never short in any of its years$/);
  await page.getByRole("button", { name: "Back to as it is" }).click();
  await heading(page, /^Tank behind the hall: short on 15 days of 2015/);
  await heading(page, /^Tank behind the hall ran short in 3 of 4 years/);
});

test("more roof fills a tank more; all years follow the year chosen", async () => {
  const page = await open("at=tanks");
  const roof = page.getByRole("slider", { name: "Roof on it" }).nth(1);
  await roof.focus();
  await page.keyboard.press("End");
  await page
    .getByText(/5,000\slitres under 1,190\sm² of roof would give [\d,]+\slitres a year, [\d,.]+\slitres more/)
    .first()
    .waitFor();
  await page.getByRole("radio", { name: /^2012/ }).first().press("Space");
  await heading(page, /^Tank behind the hall: short on 20 days of 2012/);
  await heading(page, /^At 5,000\slitres: short on \d+ days of 2012/);
});

test("what holds a tank back is told with its runs, and the words of the trade are one click away", async () => {
  const page = await open("at=tanks");
  await heading(page, /^To give more of what is asked, Tank behind the hall would have to be larger/);
  await heading(page, /^To give more of what is asked, Yard tank needs more roof/);
  await page.getByText("In the words of the trade").first().click();
  await page
    .getByText(/Volumetric reliability 95%/)
    .first()
    .waitFor();
});

test("cautions stand where they matter", async () => {
  const page = await open("at=tanks");
  const roofs = page.getByRole("region", { name: "What the roofs send" });
  await roofs.getByText("Work on roofs and ladders").waitFor();
  const tank = page.getByRole("region", { name: "Tank behind the hall" });
  for (const words of [
    /not for drinking/,
    /backflow protection/,
    /Never enter a tank/,
    /mosquitoes/,
    /legionella/,
  ])
    await tank.getByText(words).waitFor();
});

test("the table behind a figure comes as a file", async () => {
  const page = await open("at=tanks");
  const figure = page.getByRole("figure", { name: /^Hall sends/ });
  await figure.getByText("The numbers behind it").click();
  const coming = page.waitForEvent("download");
  await figure.getByRole("button", { name: "Take this table as a CSV file" }).click();
  const saved = readFileSync(await (await coming).path(), "utf8").split("\n");
  expect(saved[0]).toMatch(/^Roof,/);
  expect(saved).toHaveLength(5);
});

test.each(["thirst", "tanks"])("%s in US customary units has no metric left", async (at) => {
  const page = await open(`at=${at}&units=us`);
  await page.waitForTimeout(1500);
  const lines = await page.getByRole("main").ariaSnapshot();
  expect(lines).toMatch(/gallons/);
  // a caution weighs water in tonnes wherever it is read
  const own = lines.replace(/A full tank weighs a tonne for each 1,000 L/g, "");
  expect(own).not.toMatch(/\d\s(litres|kL|L|mm|m²)(?!\w)/);
});

test.each([
  ["thirst", "no-beds", /no beds in this survey/],
  ["tanks", "no-beds", /No roof and no tank/],
  ["tanks", "idle", /No rain reaches a tank/],
] as const)("%s of a site with nothing in it says so", async (at, survey, words) => {
  const page = await open(`at=${at}&survey=${survey}`);
  await page.getByText(words).first().waitFor();
});

test.each([
  ["thirst", "light", 360],
  ["thirst", "dark", 1280],
  ["tanks", "light", 1280],
  ["tanks", "dark", 360],
] as const)(
  "axe finds nothing on %s in %s at %i px, and nothing hangs over",
  async (at, colorScheme, width) => {
    const page = await open(`at=${at}`, { colorScheme, viewport: { width, height: 900 } });
    await page.waitForTimeout(1500);
    await page.getByText("The numbers behind it").first().click();
    if (at === "thirst") await page.getByRole("button", { name: "Guess the order first" }).click();
    expect(await faultsByAxe(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  },
  60_000,
);

test.each(["thirst", "tanks"])(
  "%s of 60 beds over 30 years stands at 360 px, within the page",
  async (at) => {
    const page = await open(`at=${at}&survey=huge&record=thirty`, { viewport: { width: 360, height: 800 } });
    await page.waitForTimeout(2500);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  },
  90_000,
);

test.each(["thirst", "tanks"])("%s prints with every figure within the sheet", async (at) => {
  const page = await open(`at=${at}`);
  await page.waitForTimeout(1500);
  const pdf = await page.pdf({ format: "A4" });
  expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
  await page.emulateMedia({ media: "print" });
  await page.setViewportSize({ width: 680, height: 900 });
  await page.waitForTimeout(500);
  const rights = await page
    .locator("gwb-plate svg")
    .evaluateAll((all) =>
      all.flatMap((svg) =>
        [svg, ...svg.querySelectorAll("text")].map((part) => part.getBoundingClientRect().right),
      ),
    );
  expect(rights.length).toBeGreaterThan(50);
  for (const right of rights) expect(right).toBeLessThanOrEqual(682);
});
