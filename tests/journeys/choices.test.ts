import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { faultsByDayAndNight } from "../helpers/axe.ts";
import { launchBrowser } from "../helpers/browser.ts";
import { choicesHarness } from "../helpers/choices-harness.ts";
import type { Harness } from "../helpers/harness.ts";
import { textOf } from "../helpers/worked.ts";

let harness: Harness;
let browser: Browser;
let wrong: string[] = [];

beforeAll(async () => {
  [harness, browser] = await Promise.all([
    choicesHarness(JSON.parse(textOf("demo/school.survey.json")), textOf("demo/seattle.csv")),
    launchBrowser(),
  ]);
}, 120_000);

afterEach(async () => {
  for (const context of browser.contexts()) await context.close();
  expect(wrong).toEqual([]);
  wrong = [];
});

afterAll(async () => {
  await browser?.close();
  await harness?.stop();
});

async function open(options: BrowserContextOptions = {}, at = ""): Promise<Page> {
  const context = await browser.newContext({ locale: "en-US", ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(25_000);
  page.on("pageerror", (error) => wrong.push(error.message));
  page.on("console", (said) => {
    if (said.type() === "error" && !said.location().url.endsWith("favicon.ico")) wrong.push(said.text());
  });
  await page.goto(`${harness.address}${at}`);
  await page.locator(".headline", { hasText: "Watering to need" }).waitFor();
  return page;
}

const drawn = (page: Page) => page.getByText("200 draws made", { exact: true }).first().waitFor();
const line = (page: Page, name: string) =>
  page.getByRole("listitem").filter({ has: page.getByLabel(name, { exact: true }) });

test("a committee member goes from the survey to the printed brief", async () => {
  const page = await open();
  const headline = page.locator(".headline");
  expect(await headline.textContent()).toMatch(
    /^No: of the 3 tanks and roofs quoted none is worth its money/,
  );
  await page
    .getByText(/get less than they need today/)
    .first()
    .waitFor();
  await drawn(page);
  await page
    .getByText(/in eight of ten of 200 draws/)
    .first()
    .waitFor();

  const tank = line(page, "A yard tank of 10,000 L");
  await tank.getByText(/not worth it for the money/).waitFor();
  await tank.getByText("Quote: $4,300").click();
  await tank.getByLabel("Price").fill("12");
  await tank.getByLabel("Upkeep a year").fill("");
  await tank.getByText(/it pays: worth/).waitFor();
  await tank.getByLabel("Price").blur();
  expect(await headline.textContent()).toMatch(/^Yes, at these quotes: “A yard tank of 10,000 L”/);
  expect(
    await page.evaluate(() => window.survey.measures!.find(({ id }) => id === "bigger-yard-tank")!.cost),
  ).toBe(12);
  await drawn(page);

  await page.getByLabel("A yard tank of 20,000 L", { exact: true }).check();
  await page.waitForFunction(() => window.survey.measures!.find(({ id }) => id === "big-yard-tank")!.chosen);
  expect(await page.getByLabel("A yard tank of 10,000 L", { exact: true }).isChecked()).toBe(false);
  await drawn(page);

  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Take it as Markdown" }).click();
  expect((await download).suggestedFilename()).toBe("tarnlow-point-school-invented.md");
  await page.emulateMedia({ media: "print" });
  expect(await page.locator("#measures").isVisible()).toBe(false);
  expect(await page.locator(".paper").textContent()).toMatch(/The answer[\s\S]*What must be licensed/);
  for (const format of ["A4", "Letter"] as const) {
    const pdf = (await page.pdf({ format })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g), format).toHaveLength(2);
  }
  await page.emulateMedia({ media: "screen" });
  await page.evaluate(() => {
    window.print = () => document.body.classList.add("asked-to-print");
  });
  await page.getByRole("button", { name: "Print it with its workings" }).click();
  await page.locator("body.asked-to-print").waitFor();
  const workings = (await page.locator(".workings").textContent())!;
  expect(workings).toMatch(/How these figures came about[\s\S]*Mains water, with the measures chosen/);
  expect(workings).toMatch(/What a kL saved by “A yard tank of 20,000 L” costs/);
}, 90_000);

test("a figure opens below its line or its row, its numbers open further, and Escape closes it", async () => {
  const page = await open();
  await page.locator(".headline gwb-figure button").first().click();
  const sums = page.locator(".headline gwb-figure .sums");
  await sums.getByText("Mains water given up a year: watering to need alone").waitFor();
  await sums.getByRole("button", { name: "1,894 kL" }).click();
  await sums.getByRole("button", { name: /^Back to: Mains water given up/ }).waitFor();
  await page.keyboard.press("Escape");
  await sums.waitFor({ state: "detached" });

  const money = page.locator("#money");
  const cistern = money
    .getByRole("row")
    .filter({ has: page.getByRole("rowheader", { name: "Mend the running cistern" }) });
  await cistern.getByRole("button", { name: "$4,610" }).focus();
  await page.keyboard.press("Enter");
  const opened = money.locator("gwb-opened");
  await opened.getByText("Present value of “Mend the running cistern”").waitFor();
  await opened.getByText(/day one: −\$180\.00/).waitFor();
  await opened
    .getByRole("listitem")
    .filter({ hasText: /^\s*year 8: / })
    .getByRole("button")
    .click();
  await opened.getByText(/money later counts less/).waitFor();
  await opened.getByRole("button", { name: /^Back/ }).click();
  await opened.locator(".sums").press("Escape");
  expect(await opened.count()).toBe(0);
  expect(
    await cistern.getByRole("button", { name: "$4,610" }).evaluate((figure) => figure.matches(":focus")),
  ).toBe(true);

  const weather = page.locator("#weather");
  await weather
    .getByRole("row", { name: /A fifth less rain/ })
    .getByRole("button", { name: /mm$/ })
    .click();
  await weather.getByText("Rain; A fifth less rain").waitFor();
}, 60_000);

test("every figure on the screen leads to a working", async () => {
  const page = await open();
  await drawn(page);
  const figures = page.locator("gwb-figure");
  const nowhere = await figures.evaluateAll(async (all) => {
    const bad: string[] = [];
    for (const figure of all as (HTMLElement & { at: string; explain(at: string): Promise<object | null> })[])
      if ((await figure.explain(figure.at)) === null) bad.push(figure.at);
    return bad;
  });
  expect(nowhere).toEqual([]);
  expect(await figures.count()).toBeGreaterThan(100);
  const cells = page.locator(".opens");
  const count = await cells.count();
  expect(count).toBeGreaterThan(100);
  // a row in five, so that it takes seconds: each kind of cell has many rows
  for (let k = 0; k < count; k += 5) {
    await cells.nth(k).click();
    await page.locator("gwb-opened .sums .title").waitFor();
    await cells.nth(k).click();
    await page.locator("gwb-opened").waitFor({ state: "detached" });
  }
}, 90_000);

test("a quote changed while its working is open changes the working too", async () => {
  const page = await open();
  const money = page.locator("#money");
  const row = money
    .getByRole("row")
    .filter({ has: page.getByRole("rowheader", { name: "Mend the running cistern" }) });
  await row.getByRole("button", { name: "$180", exact: true }).click();
  await money.locator("gwb-opened").getByText("What “Mend the running cistern” costs on day one").waitFor();
  const cistern = line(page, "Mend the running cistern");
  await cistern.getByText("Quote: $180").click();
  await cistern.getByLabel("Price").fill("240");
  await money.locator("gwb-opened .result").getByText("$240.00").first().waitFor();
});

test("gallons and inches where they are wanted, in the brief too", async () => {
  const page = await open({}, "?units=us");
  await page
    .getByText(/gives up 101,000 gallons/)
    .or(page.getByText("101,000 gallons"))
    .first()
    .waitFor();
  const paper = page.locator(".paper");
  await paper
    .getByRole("paragraph")
    .filter({ hasText: /could fall from [\d,]+ to [\d,]+ gallons a year/ })
    .waitFor();
  expect(await paper.filter({ hasText: /\bkL\b/ }).count()).toBe(0);
  const tables = page.getByText("Every table as a CSV file");
  await tables.click();
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "sizes", exact: true }).click();
  const csv = await (await download).createReadStream().then(async (stream) => {
    let text = "";
    for await (const part of stream) text += String(part);
    return text;
  });
  expect(csv.split("\n")[0]).toContain("capacity_gal");
});

test("a link opens the same plan, budget and tank", async () => {
  const page = await open();
  await page.getByLabel("Budget in all").fill("100");
  await page.locator("#sizes select").selectOption({ label: "Tank behind the hall" });
  // where a browser keeps the clipboard to itself, the address is there to copy by hand
  await page.evaluate(() => Object.defineProperty(navigator, "clipboard", { value: undefined }));
  await page.getByRole("button", { name: "Copy a link" }).click();
  const said = page.getByText("Copy it from here");
  await said.waitFor();
  const [hash = ""] = /#\S+/.exec((await said.textContent())!) ?? [];
  const other = await open({}, hash);
  expect(await other.getByLabel("Budget in all").inputValue()).toBe("100");
  expect(await other.locator("#sizes select").inputValue()).toBe("hall-tank");
  expect(await other.locator(".headline").textContent()).toContain("nothing that is quoted is worth buying");
}, 60_000);

test("what is no number stays as typed, with what is wanted beside it", async () => {
  const page = await open();
  const tank = line(page, "Mend the running cistern");
  await tank.getByText("Quote: $180").click();
  const price = tank.getByLabel("Price");
  await price.fill("two hundred");
  await tank.getByText("You entered “two hundred”.").waitFor();
  await price.blur();
  expect(await price.inputValue()).toBe("two hundred");
  expect(await price.getAttribute("aria-invalid")).toBe("true");
  expect(await page.evaluate(() => window.changes)).toBe(0);
  await price.fill("$200");
  await tank.getByText(/At \$200 it pays/).waitFor();
});

test("draws can be stopped, and what there is says how many", async () => {
  const page = await open();
  await drawn(page);
  await page
    .getByRole("button", { name: /Draw on to 1,000/ })
    .first()
    .click();
  await page.getByRole("button", { name: "Stop drawing" }).first().click();
  const made = page.locator("#answer .draws");
  await made.getByRole("button", { name: /Draw on/ }).waitFor();
  const n = Number(/([\d,]+) draws made/.exec((await made.textContent())!.trim())![1]!.replace(",", ""));
  expect(n).toBeGreaterThanOrEqual(200);
  expect(n).toBeLessThan(1000);
  await page
    .getByText(new RegExp(`in eight of ten of ${n} draws`))
    .first()
    .waitFor();
}, 60_000);

test("the keyboard alone chooses a measure and reads the sizes", async () => {
  const page = await open();
  const tick = page.getByLabel("Drip line under the hedge", { exact: true });
  await tick.focus();
  await page.keyboard.press("Space");
  await page.waitForFunction(() => window.survey.measures!.find(({ id }) => id === "hedge-drip")!.chosen);
  await drawn(page);
  const ruler = page.getByRole("slider", { name: /against its size/ });
  await ruler.focus();
  const before = await ruler.getAttribute("aria-valuetext");
  await page.keyboard.press("ArrowRight");
  expect(await ruler.getAttribute("aria-valuetext")).not.toBe(before);
  expect(await ruler.getAttribute("aria-valuetext")).toMatch(/^[\d,]+\sL: [\d.]+\skL a year/);
}, 60_000);

test("own weather is asked with the rest", async () => {
  const page = await open();
  await page.getByText("Ask of your own weather").click();
  await page.getByLabel("Warmer by").fill("3");
  await page.getByLabel("Warmer by").blur();
  await page.locator("#weather").getByRole("rowheader", { name: "Warmer as entered" }).waitFor();
  expect(new URL(page.url()).hash).toBe("#warmer=3");
});

test.each([360, 1280])(
  "axe finds nothing by day and by night at %i px, and nothing hangs over",
  async (width) => {
    const page = await open({ viewport: { width, height: 900 } });
    await drawn(page);
    await page.getByText("Quote: $2,950").click();
    await page.getByText("Step by step").click();
    await page.getByText("Ask of your own weather").click();
    expect(await faultsByDayAndNight(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  },
  60_000,
);
