import { readFileSync } from "node:fs";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { faultsByDayAndNight } from "../helpers/axe.ts";
import { launchBrowser } from "../helpers/browser.ts";
import type { Harness } from "../helpers/harness.ts";
import { roundsHarness } from "../helpers/rounds-harness.ts";

const demo = (name: string) => readFileSync(new URL(`../../demo/${name}`, import.meta.url), "utf8");

let browser: Browser;
let harness: Harness;
let context: BrowserContext | undefined;
let wrong: string[] = [];

beforeAll(async () => {
  [harness, browser] = await Promise.all([
    roundsHarness(JSON.parse(demo("school.survey.json")), demo("seattle.csv")),
    launchBrowser(),
  ]);
}, 120_000);

afterAll(async () => {
  await browser?.close();
  await harness?.stop();
});

afterEach(async () => {
  await context?.close();
  context = undefined;
  expect(wrong, "errors, and requests to elsewhere").toEqual([]);
  wrong = [];
});

const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;

async function open(query = "", options: BrowserContextOptions = {}): Promise<Page> {
  context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: "en-GB", ...options });
  context.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(harness.address) && !/^(data|blob):/.test(url)) wrong.push(`request to ${url}`);
  });
  const page = await context.newPage();
  page.on("pageerror", (error) => wrong.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") wrong.push(message.text());
  });
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute("data-printed", "");
  });
  await page.goto(`${harness.address}?${query}`);
  await page.getByRole("heading", { level: 2 }).first().waitFor();
  return page;
}

const settled = async (page: Page) => {
  await page.waitForTimeout(400);
  await page.locator(".measured-sheet[aria-busy=false]").waitFor();
};
const entry = (page: Page, name: string) => page.getByRole("textbox", { name, exact: true });
const headline = (page: Page) => page.locator("h2.headline").textContent();

test("Monday's five entries become a printed round in under two minutes", async () => {
  const start = Date.now();
  const page = await open();
  const before = await headline(page);
  await entry(page, "Rain in the gauge").fill("2,5");
  await page.getByRole("radio", { name: "all", exact: true }).check({ force: true });
  await entry(page, "Dip of Tank behind the hall").fill("1500");
  await entry(page, "Dip of Yard tank").fill("900");
  await page.getByRole("radio", { name: "hotter" }).check({ force: true });
  await page.getByRole("radio", { name: "rain", exact: true }).check({ force: true });
  await entry(page, "How much").fill("4");
  await settled(page);
  expect(before).toMatch(/^Water /);
  await page.getByText(/Yard tank holds 900 L/).waitFor();
  await page
    .getByText(/from the mains would keep all/)
    .first()
    .waitFor();
  await page.getByRole("button", { name: "Print this week’s round" }).click();
  await page.waitForSelector("html[data-printed]");
  expect(Date.now() - start).toBeLessThan(120_000);
  await page.emulateMedia({ media: "print" });
  const sheet = page.locator(".pages-to-print");
  await sheet.getByRole("heading", { name: "The round from Monday 6 July to Sunday 12 July" }).waitFor();
  expect(await page.getByRole("heading", { name: "Monday’s five entries" }).isVisible()).toBe(false);
  expect(await sheet.getByText("Rain in the gauge (mm)").isVisible()).toBe(true);
  const pdf = await page.pdf({ preferCSSPageSize: true });
  expect(pdf.toString("latin1").match(/\/MediaBox\s*\[\s*0 0 59[45]\.\d* 84[12]/)).not.toBeNull();
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  expect(await sheet.count()).toBe(0);
});

test("what cannot be read is said at its line, and the round stays", async () => {
  const page = await open();
  await entry(page, "Rain in the gauge").fill("lots");
  await page.getByText("This must be a number, as 12 or 12.5. You entered lots.").waitFor();
  expect(await entry(page, "Rain in the gauge").getAttribute("aria-invalid")).toBe("true");
  await settled(page);
  expect(await headline(page)).toMatch(/^Water /);
});

test("rain and dips go into the log at a press, once", async () => {
  const page = await open();
  await entry(page, "Rain in the gauge").fill("12");
  await entry(page, "Dip of Yard tank").fill("2000");
  await page.getByRole("button", { name: "Write rain and dips into the log" }).click();
  await page.getByText("Written into the log.").waitFor();
  expect(await page.evaluate(() => window.told.entries)).toEqual([
    { date: "2026-07-05", kind: "rain", rain_mm: 12, days: 7 },
    { date: "2026-07-06", kind: "dip", id: "yard-tank", level_L: 2000 },
  ]);
  expect(await page.getByRole("button", { name: "Write rain and dips into the log" }).count()).toBe(0);
});

describe("on a phone", () => {
  test("a watering is written down with one tap, without a signal, and is there when the page comes back", async () => {
    const page = await open("part=log", phone);
    const oval = page.getByRole("button", { name: /^Oval: \d+ min done$/ });
    const box = (await oval.boundingBox())!;
    expect(box.height).toBeGreaterThanOrEqual(44);
    await page.context().setOffline(true);
    await oval.tap();
    await page.getByText(/written down: \d+ min/).waitFor();
    expect(await page.evaluate(() => window.told.entries)).toMatchObject([{ kind: "watering", id: "oval" }]);
    await page.context().setOffline(false);
    await page.reload();
    await page.getByText(/written down: \d+ min/).waitFor();
    await page.getByText("One line waits on this device for the site’s log.").waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  });

  test("rain and a dip are written down too, a blank line is asked for", async () => {
    const page = await open("part=log", phone);
    await page.getByRole("radio", { name: "rain in the gauge" }).check({ force: true });
    await page.getByRole("button", { name: "Write it down" }).tap();
    await page.getByText("Rain must be a number, 0 or more. You entered nothing.").waitFor();
    await entry(page, "Rain").fill("7.5");
    await page.getByRole("button", { name: "Write it down" }).tap();
    await page.getByText("Rain: 7.5 mm in a day").waitFor();
    expect(await page.evaluate(() => window.told.entries)).toEqual([
      { date: "2026-07-06", kind: "rain", rain_mm: 7.5, days: 1 },
    ]);
  });
});

test("the keyboard alone writes a dip, opens the months and comes back", async () => {
  const page = await open();
  await entry(page, "Dip of Yard tank").focus();
  await page.keyboard.type("1200");
  await settled(page);
  await page.getByText(/Yard tank holds 1,200 L/).waitFor();
  await page.getByRole("button", { name: "The months" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: /^July asks .* more than any other month/ }).waitFor();
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Monday’s five entries" }).waitFor();
  expect(await entry(page, "Dip of Yard tank").inputValue()).toBe("1200");
});

test("a bed goes earlier when water is short, a restriction is added, and the site is told of both", async () => {
  const page = await open();
  await page.getByRole("button", { name: "Oval: earlier" }).click();
  await page.getByText("Add a restriction").click();
  await page.getByRole("button", { name: "Keep it with the site" }).click();
  await page.getByText("Choose at least one day.").waitFor();
  await page.getByRole("textbox", { name: "Its name" }).fill("Council rule");
  await page.getByRole("checkbox", { name: "Mon" }).check({ force: true });
  await page.getByRole("button", { name: "Keep it with the site" }).click();
  await page.getByText("Council rule", { exact: true }).waitFor();
  const told = await page.evaluate(() => window.told.surveys);
  expect(told.map(({ words }) => words)).toEqual([
    "Changed where Oval stands when water is short",
    "Added the restriction Council rule",
  ]);
  await settled(page);
  await page.getByRole("heading", { level: 4, name: /^Monday 6 July/ }).waitFor({ state: "detached" });
});

describe("a figure opens to its working", () => {
  test("from the week to the engine's own numbers, back, and shut again by Escape", async () => {
    const page = await open("today=2026-07-20");
    const line = page.locator(".stops li").filter({ hasText: "Front beds" }).first();
    const minutes = line.getByRole("button", { name: /^\d+ min$/ }).first();
    await minutes.click();
    const sums = line.getByRole("group", { name: /^Minutes of a watering, Front beds; 20 July 2026$/ });
    await sums.getByText("t = Dr ÷ Ea × A ÷ flow").waitFor();
    await sums.getByRole("button", { name: /^64\sm²$/ }).click();
    await line.getByRole("group", { name: "Area, Front beds" }).waitFor();
    await line.getByRole("button", { name: /Minutes of a watering/ }).click();
    await sums.getByRole("button", { name: /^[\d.]+\smm$/ }).click();
    await line.getByRole("group", { name: /^Water missing from the roots/ }).waitFor();
    await page.keyboard.press("Escape");
    expect(await line.getByRole("group").count()).toBe(0);
    expect(await minutes.evaluate((button) => button.matches(":focus"))).toBe(true);
  });

  test("in the month table below its row, as wide as the table, and on a phone", async () => {
    for (const options of [{}, phone]) {
      const page = await open("part=months&today=2026-07-20", options);
      const table = page.getByRole("table").first();
      const row = table.getByRole("row").filter({ hasText: "Oval" }).first();
      await row
        .getByRole("button", { name: /^Mon, / })
        .first()
        .click();
      const sums = row.getByRole("group", { name: /^Days from one watering to the next, Oval/ });
      await sums.getByText("RAW ÷ ETc = trigger ÷ ETc").waitFor();
      const [wide, whole] = await Promise.all([sums.boundingBox(), table.boundingBox()]);
      expect(wide!.width).toBeGreaterThan(0.95 * whole!.width);
      const { width } = page.viewportSize()!;
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      await context?.close();
    }
  });
});

test("in US units sentences, entries and sheets are in gallons and inches", async () => {
  const page = await open("units=us&today=2026-07-20");
  await entry(page, "Dip of Yard tank").fill("240");
  await settled(page);
  await page.getByText(/Yard tank holds 240 gal/).waitFor();
  expect(await page.locator(".stops .why").first().textContent()).not.toMatch(/\d mm/);
  await page.getByRole("button", { name: "Print this week’s round" }).click();
  await page.waitForSelector("html[data-printed]");
  const sheet = page.locator(".pages-to-print");
  expect(await sheet.getByText("Rain in the gauge (in)").count()).toBe(1);
  expect(await sheet.locator(".ticks .number").first().textContent()).toMatch(/^[\d,.]+ gal$/);
});

test("a hot spell that is forecast asks for how likely it is, and the round follows", async () => {
  const page = await open();
  await page.getByRole("radio", { name: "a hot spell" }).check({ force: true });
  await page.getByLabel("How likely").selectOption({ label: "9 in 10" });
  await settled(page);
  expect(await headline(page)).toMatch(/^Water /);
});

test("calendar, table and log are saved as files", async () => {
  const page = await open("part=paper");
  const saved = async (name: string) => {
    const coming = page.waitForEvent("download");
    await page.getByRole("button", { name, exact: true }).click();
    const file = await coming;
    return { name: file.suggestedFilename(), text: readFileSync(await file.path(), "utf8") };
  };
  const week = await saved("Save this week’s waterings");
  expect(week.name).toBe("rounds-week.ics");
  expect(week.text).toMatch(/^BEGIN:VCALENDAR\r\n/);
  expect(week.text).toContain("TZID:America/Los_Angeles");
  expect((await saved("Save the month table (CSV)")).text.split(/\r?\n/)[0]).toMatch(/^month,id,minutes,/);
  expect((await saved("Save all sheets (HTML)")).text).toContain("Watering in July 2026");
});

describe.each(["week", "months", "paper", "log"])("the sheet “%s”", (part) => {
  test.each([1280, 360])("has nothing that axe finds wrong by day and by night, at %i px", async (width) => {
    const page = await open(`part=${part}`, { viewport: { width, height: 900 } });
    await page.waitForTimeout(500);
    expect(await faultsByDayAndNight(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
});
