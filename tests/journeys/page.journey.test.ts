import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { faultsByDayAndNight } from "../helpers/axe.ts";
import { launchBrowser } from "../helpers/browser.ts";
import { type Served, serve } from "../helpers/served.ts";

const file = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const surveyFile = file("tests/scenarios/s06-brook-terrace.survey.json");
const recordFile = file("tests/scenarios/seattle-temps.csv");

let served: Served;
let browser: Browser;
let context: BrowserContext | undefined;
/** Every address asked for, and everything that went wrong, in the page under test. */
let asked: string[] = [];
let wrong: string[] = [];

beforeAll(async () => {
  [served, browser] = await Promise.all([serve(), launchBrowser()]);
}, 120_000);

afterAll(async () => {
  await browser?.close();
  await served?.stop();
});

afterEach(async () => {
  await context?.close();
  context = undefined;
  const elsewhere = asked.filter((url) => !url.startsWith(served.address) && !url.startsWith("blob:"));
  const faults = wrong;
  asked = [];
  wrong = [];
  expect(elsewhere, "requests that left the host").toEqual([]);
  expect(faults, "errors in the page").toEqual([]);
});

async function open(options: BrowserContextOptions = {}, path = "demo"): Promise<Page> {
  context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: "en-GB", ...options });
  context.on("request", (request) => asked.push(request.url()));
  const page = await context.newPage();
  page.on("pageerror", (error) => wrong.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") wrong.push(message.text());
  });
  await page.goto(served.address + path);
  return page;
}

const answer = (page: Page) => page.getByRole("region", { name: "Answer" });

/** What is read there, figures in their own elements too, as one line. */
async function said(page: Page): Promise<string> {
  const lines = await answer(page).ariaSnapshot();
  return lines.replace(/^\s*- (text: |button |paragraph:)?/gm, "").replace(/["\s]+/g, " ");
}

async function demo(options: BrowserContextOptions = {}, path = "demo"): Promise<Page> {
  const page = await open(options, path);
  await answer(page).waitFor();
  return page;
}

/** Drops files anywhere on the page, as from a folder. */
async function drop(page: Page, files: readonly { name: string; text: string }[]): Promise<void> {
  const data = await page.evaluateHandle((list) => {
    const transfer = new DataTransfer();
    for (const { name, text } of list) transfer.items.add(new File([text], name));
    return transfer;
  }, files);
  await page.dispatchEvent("h1", "dragover", { dataTransfer: data });
  await page.dispatchEvent("h1", "drop", { dataTransfer: data });
}

const ownFiles = () => [
  { name: "brook.json", text: readFileSync(surveyFile, "utf8") },
  { name: "seattle.csv", text: readFileSync(recordFile, "utf8") },
];

test("the demo's answer is there: the sentence, the beds and the tanks", async () => {
  const page = await demo();
  expect(await said(page)).toMatch(/could give up [\d,]+ kL.* of mains water/);
  await page.getByRole("heading", { name: /^Bed by bed, from thirsty to frugal/ }).waitFor();
  await page.getByRole("heading", { name: /^Tank behind the hall:/ }).waitFor();
  await page.getByText("invented school", { exact: false }).first().waitFor();
});

test("what the page says is what the server reports", async () => {
  const page = await demo();
  const given = await page.request.get(`${served.address}api/demo`);
  const { survey, weather } = await given.json();
  const reply = await page.request.post(`${served.address}api/estimate`, { data: { survey, weather } });
  const { mains } = await reply.json();
  await page.getByText("The numbers behind it").first().click();
  const cells = await page
    .getByRole("row", { name: /^A mean year/ })
    .getByRole("cell")
    .allInnerTexts();
  const numbers = cells.map((text) => Number(text.replaceAll(",", "")));
  expect(numbers.slice(0, 2)).toEqual([
    Math.round(mains.today_kL_year * 1000),
    Math.round(mains.need_kL_year * 1000),
  ]);
});

test("a survey and a record dropped on the page are worked out there", async () => {
  const page = await demo();
  const before = asked.length;
  await drop(page, ownFiles());
  await page.getByRole("heading", { level: 1, name: "Brook Terrace" }).waitFor();
  expect(await said(page)).toMatch(/[\d,.]+\skL/);
  expect(asked.slice(before).filter((url) => url.includes("/api/"))).toEqual([]);
  await page.getByRole("button", { name: "Back to the demo" }).click();
  await page.getByRole("heading", { level: 1, name: /invented/ }).waitFor();
});

test("the two may be chosen one after the other", async () => {
  const page = await demo();
  await page.getByLabel("Survey").setInputFiles(surveyFile);
  await page.getByText("Now the weather record.", { exact: true }).first().waitFor();
  await page.getByLabel("Weather record").setInputFiles(recordFile);
  await page.getByRole("heading", { level: 1, name: "Brook Terrace" }).waitFor();
});

test("every fault of broken files is listed with its path, and the answer before stays", async () => {
  const page = await demo();
  const survey = JSON.parse(readFileSync(surveyFile, "utf8"));
  survey.beds[0].area_m2 = -4;
  survey.site.latitude = 95;
  const record = readFileSync(recordFile, "utf8").split("\n").slice(0, 400);
  record[3] = record[2]!;
  await drop(page, [
    { name: "brook.json", text: JSON.stringify(survey) },
    { name: "seattle.csv", text: record.join("\n") },
  ]);
  const region = page.getByRole("region", { name: "Your own grounds" });
  await region.getByRole("heading", { name: "2 things stand in the way in brook.json" }).waitFor();
  await region.getByText("Bed area must be between 0.1 and 50,000 m². You entered -4.").waitFor();
  const text = await region.ariaSnapshot();
  expect(text).toContain("beds[0].area_m2");
  expect(text).toContain("site.latitude");
  expect(text).toMatch(/stands in the way in seattle\.csv/);
  expect(text).toContain("row 4");
  expect(await said(page)).toMatch(/mains water/);
});

test("a file that is neither is refused by name", async () => {
  const page = await demo();
  await drop(page, [{ name: "letter.txt", text: "Dear gardener" }]);
  await page.getByRole("heading", { name: /^letter\.txt is neither a survey/ }).waitFor();
});

test("the table behind a figure opens, and comes as a file", async () => {
  const page = await demo();
  const plate = page.getByRole("figure", { name: /^Bed by bed/ });
  await plate.getByText("The numbers behind it").click();
  const row = plate.getByRole("row", { name: /^Kitchen garden/ });
  await row.waitFor();
  const coming = page.waitForEvent("download");
  await plate.getByRole("button", { name: "Take this table as a CSV file" }).click();
  const saved = readFileSync(await (await coming).path(), "utf8").split("\n");
  expect(saved[0]).toMatch(/^Bed,/);
  expect(saved.find((line) => line.startsWith("Kitchen garden"))?.split(",")).toHaveLength(14);
});

test("a figure opens its working below it, nothing above moves, Escape closes it", async () => {
  const page = await demo();
  const figure = answer(page).getByRole("button", { name: /kL$/ }).last();
  const before = await figure.boundingBox();
  await figure.click();
  expect(await figure.getAttribute("aria-expanded")).toBe("true");
  const sums = page.getByRole("group", { name: /came about$/ });
  await sums.waitFor();
  expect((await sums.boundingBox())!.y).toBeGreaterThan(before!.y);
  expect(await figure.boundingBox()).toEqual(before);
  await page.keyboard.press("Escape");
  await sums.waitFor({ state: "detached" });
  expect(await figure.getAttribute("aria-expanded")).toBe("false");
});

test("by keyboard alone: to the answer, along a year, and into the numbers", async () => {
  const page = await demo();
  await page.keyboard.press("Tab");
  await page.getByRole("button", { name: "Skip to the answer" }).press("Enter");
  const seen: string[] = [];
  for (let i = 0; i < 40; i++) {
    await page.keyboard.press("Tab");
    const at = await page.evaluate(() => {
      let element = document.activeElement;
      while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
      return `${element?.localName} ${element?.getAttribute("aria-valuetext") ?? element?.textContent?.trim() ?? ""}`;
    });
    seen.push(at);
    if (at.startsWith("input")) break;
  }
  expect(seen.some((at) => at.startsWith("button") && /\d\skL/.test(at))).toBe(true);
  expect(seen.at(-1)).toMatch(/^input July: need /);
  await page.keyboard.press("ArrowRight");
  const ruler = page.getByRole("slider").first();
  expect(await ruler.getAttribute("aria-valuetext")).toMatch(/^August: need /);
  await page.keyboard.press("Home");
  expect(await ruler.getAttribute("aria-valuetext")).toMatch(/^January: need /);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await page.getByRole("row", { name: /^July/ }).first().waitFor();
});

test("another year and another bed are drawn when they are chosen", async () => {
  const page = await demo();
  await page.getByLabel("Year").first().selectOption("2012");
  await page.getByRole("heading", { name: /^Tank behind the hall: .*2012/ }).waitFor();
  await page.getByLabel("Show").selectOption({ label: "Kitchen garden" });
  await page.getByRole("heading", { name: /^Kitchen garden needs most in/ }).waitFor();
});

test("units are chosen once, and stay", async () => {
  const page = await demo();
  await page.getByRole("radio", { name: "US customary" }).check({ force: true });
  expect(await said(page)).toMatch(/gallons/);
  expect(page.url()).toContain("units=us");
  await page.goto(`${served.address}demo`);
  await answer(page).waitFor();
  expect(await said(page)).toMatch(/gallons/);
});

test("without the demo the page still takes files", async () => {
  const page = await open();
  await page.route("**/api/demo", (route) => route.abort());
  await page.reload();
  await page.getByRole("heading", { name: /^The demo could not be fetched/ }).waitFor();
  await drop(page, ownFiles());
  await page.getByRole("heading", { level: 1, name: "Brook Terrace" }).waitFor();
  wrong = wrong.filter((text) => !text.includes("ERR_FAILED"));
});

test.each([360, 1280])(
  "axe finds nothing by day and by night at %i px, opened and closed, and nothing hangs over",
  async (width) => {
    const page = await demo({ viewport: { width, height: 900 } });
    expect(await faultsByDayAndNight(page)).toEqual([]);
    await answer(page).getByRole("button", { name: /kL$/ }).first().click();
    // a day-by-day table is the same table longer: axe takes a minute over each
    for (const summary of (await page.getByText("The numbers behind it").all()).slice(0, 3))
      await summary.click();
    await drop(page, [
      { name: "broken.json", text: '{"format":"grounds-survey","version":1}' },
      ownFiles()[1]!,
    ]);
    await page.getByRole("heading", { name: /broken\.json$/ }).waitFor();
    expect(await faultsByDayAndNight(page)).toEqual([]);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over).toBeLessThanOrEqual(0);
  },
  60_000,
);

test("nothing hangs over at 320 px", async () => {
  const page = await demo({ viewport: { width: 320, height: 700 } });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
});

test("it prints, with every figure within the sheet", async () => {
  const page = await demo();
  const pdf = await page.pdf({ format: "A4" });
  expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
  await page.emulateMedia({ media: "print" });
  await page.setViewportSize({ width: 680, height: 900 });
  const widths = await page
    .locator("gwb-plate svg")
    .evaluateAll((all) => all.map((svg) => svg.getBoundingClientRect().right));
  expect(widths.length).toBeGreaterThan(3);
  for (const right of widths) expect(right).toBeLessThanOrEqual(681);
});
