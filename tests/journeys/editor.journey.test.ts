import { readFileSync } from "node:fs";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import type { Editor } from "../../components/editor/editor.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { goTo, type Opened, openEditor, surveyIn } from "../components/editor/harness/browse.ts";
import { screensOf } from "../components/editor/harness/screens.ts";
import { faultsByAxe } from "../helpers/axe.ts";
import { launchBrowser } from "../helpers/browser.ts";
import { editorHarness } from "../helpers/editor-harness.ts";
import { wholeText } from "../survey/whole-survey.ts";

const school = () =>
  JSON.parse(readFileSync(new URL("../../demo/school.survey.json", import.meta.url), "utf8")) as Survey;
const whole = () => JSON.parse(wholeText) as Survey;

let browser: Browser;
let harness: { address: string; stop(): Promise<void> };
let opened: Opened | undefined;

beforeAll(async () => {
  [harness, browser] = await Promise.all([editorHarness(), launchBrowser()]);
}, 120_000);

afterAll(async () => {
  await browser?.close();
  await harness?.stop();
});

afterEach(async () => {
  const wrong = opened?.wrong ?? [];
  await opened?.close();
  opened = undefined;
  expect(wrong, "errors, and requests to elsewhere").toEqual([]);
});

async function open(
  at = "",
  survey: unknown = school(),
  options: BrowserContextOptions = {},
  more: Record<string, unknown> = {},
): Promise<Page> {
  opened = await openEditor(browser, harness.address, survey, at, options, more);
  return opened.page;
}

const heading = (page: Page, name: string | RegExp) =>
  page.getByRole("heading", { level: 3, name, exact: typeof name === "string" }).waitFor();
const told = (page: Page) => page.evaluate(() => window.harness.told.map(({ words }) => words));
const status = (page: Page) => page.getByRole("status");

/** Writes on a line and leaves it. */
async function fill(page: Page, label: string, text: string): Promise<void> {
  const line = page.getByRole("textbox", { name: label, exact: true });
  await line.fill(text);
  await line.press("Tab");
}

test("a bed is added, named, measured and planted, and taken back step by step", async () => {
  const page = await open();
  await page.getByRole("link", { name: /^Beds and lawns/ }).click();
  await page.getByRole("button", { name: "Add a bed" }).click();
  await heading(page, "Bed 10");
  await fill(page, "Bed name", "Rose walk");
  await heading(page, "Rose walk");
  expect(new URL(page.url()).hash).toBe("#beds/rose-walk");
  expect((await surveyIn(page)).right.beds).toHaveLength(9);
  await page.getByText("One entry is still wanted").waitFor();
  await fill(page, "Bed area", "44,5 m2");
  await page.getByText("One entry is still wanted").waitFor({ state: "detached" });
  const added = (await surveyIn(page)).right.beds[9];
  expect(added).toMatchObject({ id: "rose-walk", name: "Rose walk", area_m2: 44.5 });
  await page
    .getByRole("main")
    .getByRole("link", { name: /^Plants/ })
    .last()
    .click();
  await page.getByRole("combobox", { name: "Kind of plants" }).selectOption({ label: "Shrubs" });
  await page.getByRole("radio", { name: "Watered now and then, once grown" }).check({ force: true });
  expect((await surveyIn(page)).right.beds[9]?.plantings).toEqual([
    { kind: "shrubs", thirst: "low", share: 1 },
  ]);
  expect(await told(page)).toEqual([
    "Bed added: Rose walk",
    "Rose walk, planting 1: kind of plants perennials → shrubs",
    "Rose walk, planting 1: thirst watered regularly, once grown → watered now and then, once grown",
  ]);
  const undo = page.getByRole("button", { name: "Undo" });
  for (let i = 0; i < 3; i++) await undo.click();
  expect((await surveyIn(page)).right).toEqual(school());
  const redo = page.getByRole("button", { name: "Redo" });
  while (await redo.isEnabled()) await redo.click();
  expect((await surveyIn(page)).right.beds[9]?.plantings[0]?.thirst).toBe("low");
});

test("a wrong entry stays as it was typed, is explained, found from the list, and the last right one counts", async () => {
  const page = await open("beds/front");
  await fill(page, "Bed area", "-4");
  const area = page.getByRole("textbox", { name: "Bed area", exact: true });
  expect(await area.inputValue()).toBe("-4");
  expect(await area.getAttribute("aria-invalid")).toBe("true");
  const sentence = "Bed area must be between 0.1 and 50,000 m². You entered “-4”.";
  await page.getByText(sentence, { exact: true }).waitFor();
  await page.getByText("Until this is right, 64 m² counts.").waitFor();
  expect((await surveyIn(page)).right).toEqual(school());
  await goTo(page, "tanks/yard-tank");
  await fill(page, "Tank level", "6 kL");
  await page.getByRole("heading", { name: "2 entries need another look" }).waitFor();
  await page
    .getByText("Tank level must not be above the tank's capacity, 5,000 L. You entered 6,000 L.")
    .last()
    .waitFor();
  await page.getByText("2 entries need another look").click();
  await page.getByRole("link", { name: `Front beds: ${sentence}` }).click();
  await heading(page, "Front beds");
  await page.waitForFunction(() => {
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at instanceof HTMLInputElement && at.value === "-4";
  });
  await page.keyboard.type("70");
  await page.keyboard.press("Tab");
  await page.getByRole("heading", { name: "One entry needs another look" }).waitFor();
  const now = await surveyIn(page);
  expect(now.right.beds[3]?.area_m2).toBe(70);
  expect(now.right.tanks[1]?.level_L).toBe(4200);
  expect((now.draft.tanks as Survey["tanks"])[1]?.level_L).toBe(6000);
});

test("what is being typed stays while other news comes", async () => {
  const page = await open("beds/front");
  const area = page.getByRole("textbox", { name: "Bed area", exact: true });
  await area.fill("77");
  await page.evaluate(async () => {
    const editor = document.querySelector<Editor>("gwb-editor")!;
    editor.beyond = { undo: "Front beds: area 60 m² → 64 m²", redo: null };
    await editor.updateComplete;
    for (const field of editor.shadowRoot!.querySelectorAll<Editor>("gwb-entry")) {
      field.requestUpdate();
      await field.updateComplete;
    }
  });
  expect(await area.inputValue()).toBe("77");
  await area.press("Tab");
  expect((await surveyIn(page)).right.beds.find(({ id }) => id === "front")?.area_m2).toBe(77);
});

test("a figure that was measured says so, by its line and in words", async () => {
  const page = await open("beds/front");
  await page.getByText("Measured 22 September 2015: tape: length and two widths, m.").waitFor();
  const line = await page
    .getByRole("textbox", { name: "Bed area", exact: true })
    .evaluate((input) => getComputedStyle(input).borderBottomStyle);
  expect(line).toBe("solid");
});

test("what goes together is held back together until it fits", async () => {
  const page = await open("beds/front/plants");
  const share = (at: number) => page.getByRole("textbox", { name: "Share of the planting" }).nth(at);
  await share(0).fill("50 %");
  await share(0).press("Tab");
  await page.getByText("The shares of a bed’s plants must add to 100%. They add to 90%.").last().waitFor();
  await page.getByText("Until this is right, 60% counts.").waitFor();
  expect(await told(page)).toEqual([]);
  await share(1).fill("0,5 share");
  await share(1).press("Tab");
  expect(await told(page)).toHaveLength(1);
  expect((await surveyIn(page)).right.beds[3]?.plantings.map((planting) => planting.share)).toEqual([
    0.5, 0.5,
  ]);
});

test("units: what is typed stays as typed, what is shown follows the system", async () => {
  const page = await open("beds/front");
  await fill(page, "Bed area", "700 sq ft");
  const area = page.getByRole("textbox", { name: "Bed area", exact: true });
  expect(await area.inputValue()).toBe("700 sq ft");
  await page.getByText("That is 65.03 m².").waitFor();
  expect((await surveyIn(page)).right.beds[3]?.area_m2).toBeCloseTo(65.0321, 4);
  await goTo(page, "beds/oval");
  await goTo(page, "beds/front");
  expect(await area.inputValue()).toBe("700 sq ft");
  const [kept] = await page.evaluate(() =>
    window.harness.told.map(({ survey, typed }) => ({ survey, typed })),
  );
  await opened?.close();
  const later = await open("beds/front", kept?.survey, {}, { typed: kept?.typed });
  const laterArea = later.getByRole("textbox", { name: "Bed area", exact: true });
  expect(await laterArea.inputValue()).toBe("700 sq ft");
  await fill(later, "Bed area", "3 furlongs");
  await later
    .getByText(/^Bed area can be given in m², ha, ft², yd², or acre\. “furlongs” is no unit for it\.$/)
    .waitFor();
  await opened?.close();
  const inFeet = await open("tanks/hall-tank", school(), {}, { system: "us" });
  expect(await inFeet.getByRole("textbox", { name: "Tank capacity", exact: true }).inputValue()).toBe(
    "5,811.8",
  );
  await fill(inFeet, "Tank capacity", "6000");
  expect((await surveyIn(inFeet)).right.tanks[0]?.capacity_L).toBeCloseTo(22712.47, 1);
  await fill(inFeet, "Tank capacity", "0.5 in");
  await inFeet
    .getByText(/“in” is no unit for it/)
    .last()
    .waitFor();
});

test("not known is an answer, and says what stands in", async () => {
  const page = await open("beds/hedge/habit");
  expect(await page.getByRole("radio", { name: "Not known" }).isChecked()).toBe(true);
  await page.getByRole("radio", { name: "It is not watered" }).check({ force: true });
  expect((await surveyIn(page)).right.beds[5]?.watering.habit).toEqual({ minutes: 0, days: [], months: [] });
  await page.getByRole("radio", { name: "So many minutes at a time" }).check({ force: true });
  await fill(page, "Minutes of watering", "half an hour");
  await page
    .getByText("Minutes of watering must be a number between 0 and 1,440 min. You entered “half an hour”.")
    .last()
    .waitFor();
  await fill(page, "Minutes of watering", "0,5 h");
  await page.getByRole("checkbox", { name: "Tuesday" }).check({ force: true });
  await page.getByRole("checkbox", { name: "July" }).check({ force: true });
  expect((await surveyIn(page)).right.beds[5]?.watering.habit).toEqual({
    minutes: 30,
    days: ["tue"],
    months: [7],
  });
  await goTo(page, "beds/front/shade");
  await page.getByText("100% stands in.").waitFor();
  await page.getByText("Where from").click();
  await page.getByText(/open sky unless the survey says/).waitFor();
});

test("a tank is taken out with every mention of it, which is said, and comes back whole", async () => {
  const page = await open("tanks/yard-tank");
  await page.getByRole("button", { name: "Take out Yard tank" }).click();
  await heading(page, "Tanks");
  const said = await status(page).textContent();
  expect(said).toContain("Yard tank is taken out.");
  expect(said).toContain("Front beds is now watered from the mains alone.");
  expect(said).toContain("Orchard, which only it watered, is now not watered.");
  expect(said).toContain("1 reading went with it.");
  expect((await surveyIn(page)).right.tanks.map(({ id }) => id)).toEqual(["hall-tank"]);
  await page.keyboard.press("Control+z");
  expect((await surveyIn(page)).right).toEqual(school());
});

test("by keyboard alone: a roof added and led to a tank, beds put in another order", async () => {
  const page = await open("roofs");
  const focused = () =>
    page.evaluate(() => {
      let at = document.activeElement;
      while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
      return `${at?.localName} ${at?.getAttribute("aria-label") ?? at?.textContent?.trim() ?? ""}`;
    });
  const tabTo = async (wanted: RegExp) => {
    for (let i = 0; i < 80; i++) {
      if (wanted.test(await focused())) return;
      await page.keyboard.press("Tab");
    }
    throw new Error(`${wanted} was not reached by Tab.`);
  };
  await tabTo(/^button Add a roof/);
  await page.keyboard.press("Enter");
  await heading(page, "Roof 4");
  await tabTo(/^input/);
  await page.keyboard.press("Control+a");
  await page.keyboard.type("Bicycle shed");
  await page.keyboard.press("Tab");
  await heading(page, "Bicycle shed");
  await page.keyboard.type("18.5");
  await page.keyboard.press("Tab");
  await tabTo(/^input Metal/);
  await page.keyboard.press("ArrowDown");
  await tabTo(/^input Nowhere/);
  await page.keyboard.press("ArrowUp");
  expect((await surveyIn(page)).right.roofs[3]).toEqual({
    id: "bicycle-shed",
    name: "Bicycle shed",
    area_m2: 18.5,
    material: "tile",
    tank: "yard-tank",
  });
  await goTo(page, "beds");
  await tabTo(/^button Change the order/);
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Move Kitchen garden" }).focus();
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowUp");
  await page.waitForFunction(() => {
    const at = document.querySelector("gwb-editor")?.shadowRoot?.activeElement;
    return at?.getAttribute("aria-label") === "Move Kitchen garden";
  });
  expect(await status(page).textContent()).toBe("Kitchen garden: 1 of 9");
  expect((await surveyIn(page)).right.beds.slice(0, 3).map(({ id }) => id)).toEqual([
    "kitchen",
    "oval",
    "quad",
  ]);
  expect((await surveyIn(page)).right.found?.map(({ at }) => at)).toEqual([
    "beds[4].watering.flow_L_min",
    "beds[3].area_m2",
  ]);
});

test("a line dragged by its handle moves", async () => {
  const page = await open("beds");
  await page.getByRole("button", { name: "Change the order" }).click();
  const from = (await page.getByRole("button", { name: "Move Oval" }).boundingBox())!;
  const to = (await page.getByRole("button", { name: "Move Front beds" }).boundingBox())!;
  await page.mouse.move(from.x + 10, from.y + 10);
  await page.mouse.down();
  await page.mouse.move(from.x + 10, to.y - 20, { steps: 5 });
  await page.mouse.move(from.x + 10, to.y + 20, { steps: 5 });
  await page.mouse.up();
  expect((await surveyIn(page)).right.beds.slice(0, 4).map(({ id }) => id)).toEqual([
    "quad",
    "kitchen",
    "front",
    "oval",
  ]);
});

test("by touch at 360 px: one part a screen, every target 44 px high, a reading written down", async () => {
  const page = await open("", school(), {
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    isMobile: true,
  });
  await page.getByRole("link", { name: /^Readings/ }).tap();
  await heading(page, "Readings");
  expect(await page.getByRole("navigation").count()).toBe(0);
  await page.getByRole("button", { name: "Add a reading" }).tap();
  await page.getByRole("radio", { name: "A bill" }).tap();
  await page.getByRole("radio", { name: "Meter at the street" }).tap();
  await fill(page, "First day of the bill", "1 Nov 2015");
  await fill(page, "Last day of the bill", "31.12.2015");
  await fill(page, "Water billed", "212");
  expect((await surveyIn(page)).right.readings?.at(-1)).toEqual({
    meter: "main",
    from: "2015-11-01",
    to: "2015-12-31",
    kL: 212,
  });
  for (const at of [
    "",
    "beds",
    "beds/front",
    "beds/front/plants",
    "beds/front/habit",
    "place",
    "readings",
    "tanks/hall-tank",
  ]) {
    await goTo(page, at);
    const small = await page.evaluate(smallTargets);
    expect(small, at).toEqual([]);
  }
});

/** What is tapped and is less than 44 px high, but for links within a sentence. Runs in the page. */
function smallTargets(): string[] {
  const roots: (Document | ShadowRoot)[] = [document];
  const small: string[] = [];
  for (const root of roots) {
    for (const element of root.querySelectorAll<HTMLElement>("*")) {
      if (element.shadowRoot) roots.push(element.shadowRoot);
      if (!element.matches("a, button, select, summary, label:has(input), input[type=text]")) continue;
      if (element.closest(".unknown, .of, details .standing, .standing")) continue;
      const { height, width } = element.getBoundingClientRect();
      if (width > 0 && height > 0 && height < 43.5 && !element.closest(".month"))
        small.push(`${element.localName} ${element.textContent?.trim().slice(0, 30)} ${height}`);
    }
  }
  return small;
}

const names = [
  "The long border between the old gymnasium and the bicycle stands behind the canteen",
  "حديقة المطبخ خلف قاعة الرياضة القديمة",
  "Supercalifragilisticexpialidocious-und-noch-mehr-ohne-jede-Luecke-zum-Umbrechen-hier",
];

/** Sixty beds with long names, some from right to left. */
function huge(): Survey {
  const survey = school();
  const beds = Array.from({ length: 60 }, (_, at) => {
    const bed = structuredClone(survey.beds[at % survey.beds.length]!);
    return { ...bed, id: `bed-${at}`, name: `${names[at % names.length]} ${at}` };
  });
  const { found: _, measures: _m, meters: _e, readings: _r, ...rest } = survey;
  return { ...rest, beds };
}

const empty = (): Survey => ({
  format: "grounds-survey",
  version: 1,
  site: { name: "Nowhere yet", latitude: 0, longitude: 0 },
  beds: [],
  roofs: [],
  tanks: [],
});

test.each([
  ["nothing surveyed yet", empty],
  ["sixty beds with long names", huge],
] as const)("with %s, nothing hangs over at 320 px", async (_name, survey) => {
  const page = await open("", survey(), { viewport: { width: 320, height: 700 } });
  const screens = screensOf(survey() as Record<string, unknown>).slice(0, 40);
  for (const at of ["", ...screens]) {
    await goTo(page, at);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width, at).toBe(320);
  }
});

test("sixty beds open, and an edit is taken in, without a wait", async () => {
  const page = await open("beds", huge());
  expect(await page.getByRole("link", { name: /long border/ }).count()).toBe(20);
  await goTo(page, "beds/bed-7");
  await fill(page, "Bed area", "12");
  expect((await surveyIn(page)).right.beds[7]?.area_m2).toBe(12);
});

/** A screen of every kind: one bed with everything, the first entry of each list, every sort of measure. */
function kinds(withMeasures: boolean): string[] {
  const seen = new Set<string>();
  return ["", ...screensOf(whole() as Record<string, unknown>)].filter((at) => {
    const [slug, id, sheet] = at.split("/");
    if (slug === "beds" && id !== undefined) return id === "kitchen";
    if (id === undefined || (slug === "measures" && withMeasures)) return true;
    const kind = `${slug}/${sheet}`;
    return !seen.has(kind) && seen.add(kind);
  });
}

/** Unfolds everything, then asks axe. */
async function violationsIn(page: Page): Promise<string[]> {
  await page.evaluate(async () => {
    const editor = document.querySelector<Editor>("gwb-editor")!;
    for (const summary of editor.shadowRoot!.querySelectorAll<HTMLElement>("details:not([open]) > summary"))
      summary.click();
    await editor.updateComplete;
  });
  return faultsByAxe(page);
}

test.each([
  ["light", 1280],
  ["dark", 360],
] as const)(
  "axe finds nothing on any screen in %s at %i px",
  async (colorScheme, width) => {
    const page = await open("", whole(), { colorScheme, viewport: { width, height: 900 } });
    for (const at of kinds(width > 1000)) {
      await goTo(page, at);
      expect(await violationsIn(page), at).toEqual([]);
    }
  },
  300_000,
);

test("axe finds nothing where entries are wrong and where they are put in order", async () => {
  const page = await open("beds/front", school(), { colorScheme: "dark" });
  await fill(page, "Bed area", "far");
  await fill(page, "Bed name", "");
  expect(await violationsIn(page)).toEqual([]);
  await goTo(page, "beds");
  await page.getByRole("button", { name: "Change the order" }).click();
  expect(await violationsIn(page)).toEqual([]);
});

test("entries with faults are told beside the survey, and come back from there", async () => {
  const page = await open("beds/front");
  await fill(page, "Bed area", "far");
  const draft = await page.evaluate(() => window.harness.drafts.at(-1));
  expect(draft).toMatchObject({ beds: { 3: { area_m2: "far" } } });
  await opened?.close();
  const again = await open("beds/front", school(), {}, { draft: draft as Record<string, unknown> });
  expect(await again.getByRole("textbox", { name: "Bed area", exact: true }).inputValue()).toBe("far");
  await fill(again, "Bed area", "65");
  expect(await again.evaluate(() => window.harness.drafts.at(-1))).toBeNull();
});
