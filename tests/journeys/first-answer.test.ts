import type { Page } from "playwright-core";
import { expect, test, vi } from "vitest";
import { faultsByAxe, faultsByDayAndNight } from "../helpers/axe.ts";
import { hangsOver, journey, readOut } from "../helpers/journey.ts";

// axe takes its time over a page, and two cores may have other work
vi.setConfig({ testTimeout: 90_000 });

const at = journey();

/** The answer once it is worked out to the end: as many draws as are made. */
async function answer(page: Page, pattern: RegExp): Promise<string> {
  const region = page.getByRole("region", { name: "Answer", exact: true });
  await expect.poll(() => readOut(page, "Answer"), { timeout: 20_000 }).toMatch(pattern);
  await expect.poll(() => region.getAttribute("aria-busy"), { timeout: 20_000 }).toBe("false");
  return readOut(page, "Answer");
}

/** Low and high end of what the sentence says. */
function ends(sentence: string): [number, number] {
  const [, low, high] = /between ([\d.,]+) and ([\d.,]+)/.exec(sentence) ?? [];
  return [Number(low?.replaceAll(",", "")), Number(high?.replaceAll(",", ""))];
}

async function choosePlace(page: Page, typed: string): Promise<void> {
  await page.getByRole("combobox", { name: "Where is the garden?" }).fill(typed);
  await page.getByRole("option").first().click();
}

async function write(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).fill(text);
  await page.keyboard.press("Tab");
}

async function choose(page: Page, name: string): Promise<void> {
  await page.getByRole("radio", { name, exact: true }).check({ force: true });
}

async function sixEntries(page: Page): Promise<void> {
  await choosePlace(page, "Adelaide");
  await write(page, "How large is the garden?", "300");
  await choose(page, "regularly");
  await choose(page, "mulched");
  await write(page, "How large is the roof?", "200");
  await write(page, "How large is the tank?", "10 kL");
}

test("six entries: an answer from the first one on, that narrows as they come", async () => {
  const page = await at.open();
  await page.getByRole("link", { name: "Begin a first answer" }).click();
  await choosePlace(page, "Adelaide");
  const first = await answer(page, /^Each 100 m² of garden needs about [\d.,]+ kL a year/);
  expect(first).toContain("no saving is claimed");
  await write(page, "How large is the garden?", "300");
  const sized = await answer(page, /^The garden needs about/);
  await choose(page, "regularly");
  await expect
    .poll(async () => ends(await readOut(page, "Answer"))[0], { timeout: 20_000 })
    .toBeGreaterThan(20);
  const thirsty = await answer(page, /^The garden needs about/);
  const width = (text: string) => ends(text)[1] - ends(text)[0];
  expect(width(thirsty)).toBeLessThan(0.8 * width(sized));
  await choose(page, "mulched");
  await write(page, "How large is the roof?", "200");
  await write(page, "How large is the tank?", "10 kL");
  await answer(page, /Roof and tank could bring [\d.,]+ kL of it/);
  await page
    .getByRole("figure", { name: /^How the answer narrowed/ })
    .getByText("thirst")
    .waitFor();
  await page.getByText("how it is watered today; only then can a saving be told").waitFor();
});

test("today's watering brings the saving; not known claims none; too little is said first", async () => {
  const page = await at.open("first");
  await sixEntries(page);
  await choose(page, "don’t know");
  expect(await answer(page, /^The garden needs/)).toContain("no saving is claimed");
  await choose(page, "minutes a week");
  await write(page, "Minutes a week, with the hose running", "900");
  expect(await answer(page, /could give up about [\d.,]+ kL of mains water a year/)).not.toContain(
    "no saving",
  );
  await page.getByText(/the hose, timed with a jug and a watch/).waitFor();
  await choose(page, "not watered");
  await answer(page, /^The garden gets less than it needs: about [\d.,]+ kL a year too little/);
  await choose(page, "by two water bills");
  await write(page, "A summer bill", "260");
  await write(page, "A winter bill", "40");
  await answer(page, /mains water a year/);
});

test("nothing is typed twice: kept, it is the survey, and what was typed in feet stays", async () => {
  const page = await at.open("first?units=us");
  await choosePlace(page, "Adelaide");
  await write(page, "How large is the garden?", "3000");
  await choose(page, "now and then");
  await write(page, "How large is the tank?", "500 gal");
  await answer(page, /gallons a year/);
  await page.getByLabel("Name of the place").fill("Marrow Hill (invented)");
  await page.getByRole("button", { name: "Keep this" }).click();
  await page.getByRole("heading", { level: 1, name: "Marrow Hill (invented)" }).waitFor();
  await page.getByText(/Saved \d/).waitFor();
  const id = new URL(page.url()).pathname.split("/")[2];
  const reply = await page.request.get(`${at.served().address}api/sites/${id}/state`);
  const { survey, draft } = await reply.json();
  expect(draft).toBeNull();
  expect(survey.beds[0].area_m2).toBeCloseTo(3000 * 0.3048 ** 2, 6);
  expect(survey.tanks[0].capacity_L).toBeCloseTo(500 * 3.785411784, 6);
  await page.getByRole("link", { name: "The survey, field by field" }).click();
  await page.getByText(/1 bed of/).waitFor();
});

test("what is entered is still there after a reload, and can be begun anew", async () => {
  const page = await at.open("first");
  await choosePlace(page, "Adelaide");
  await write(page, "How large is the garden?", "80");
  await answer(page, /^The garden needs/);
  await page.reload();
  await answer(page, /^The garden needs/);
  expect(await page.getByLabel("How large is the garden?").inputValue()).toBe("80");
  await page.getByRole("button", { name: "Begin anew" }).click();
  await page.getByText("the first figure stands here", { exact: false }).waitFor();
  expect(await page.getByLabel("How large is the garden?").inputValue()).toBe("");
});

test("coordinates and the device's position do as well as a name", async () => {
  const page = await at.open("first", {
    geolocation: { latitude: 47.60621, longitude: -122.33207 },
    permissions: ["geolocation"],
  });
  await page.getByRole("combobox", { name: "Where is the garden?" }).fill("34.93 S, 138.6 E");
  await page.keyboard.press("Tab");
  await answer(page, /^Each 100 m² of garden needs/);
  await page.getByRole("button", { name: "Use this device’s position" }).click();
  await expect
    .poll(() => page.getByRole("combobox", { name: "Where is the garden?" }).inputValue())
    .toBe("47.606° N, 122.332° W");
  await answer(page, /^Each 100 m² of garden needs/);
});

test("what cannot be is told beside its field, and what was typed stays", async () => {
  const page = await at.open("first");
  await write(page, "How large is the garden?", "wide");
  await page.getByText("No number could be read here.", { exact: false }).waitFor();
  expect(await page.getByLabel("How large is the garden?").inputValue()).toBe("wide");
  await page.getByRole("combobox", { name: "Where is the garden?" }).fill("95, 10");
  await page.keyboard.press("Tab");
  await page.getByText("Latitude must be between −90 and 90", { exact: false }).waitFor();
  at.forgive(/422/);
  await page.getByRole("combobox", { name: "Where is the garden?" }).fill("0, -30");
  await page.keyboard.press("Tab");
  await answer(page, /No land lies within/);
});

test("by keyboard alone", async () => {
  const page = await at.open("first");
  const focused = () =>
    page.evaluate(() => {
      let element = document.activeElement;
      while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
      const label =
        element?.getAttribute("aria-label") ?? (element as HTMLInputElement)?.labels?.[0]?.textContent;
      return `${label ?? ""} ${element?.textContent ?? ""}`.replace(/\s+/g, " ").trim();
    });
  const tabTo = async (pattern: RegExp) => {
    for (let i = 0; i < 30 && !pattern.test(await focused()); i++) await page.keyboard.press("Tab");
    expect(await focused()).toMatch(pattern);
  };
  await tabTo(/^Where is the garden/);
  await page.keyboard.type("adelaide");
  await page.getByRole("option").first().waitFor();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("Enter");
  await tabTo(/^How large is the garden/);
  await page.keyboard.type("300");
  await tabTo(/^hardly ever/);
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  expect(await focused()).toMatch(/^regularly/);
  await answer(page, /^The garden needs about/);
  await tabTo(/^Keep this/);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { level: 1, name: /Adelaide/ }).waitFor();
  await page.keyboard.press("Tab");
});

test("by touch at 360 px: nothing hangs over, and everything is large enough for a thumb", async () => {
  const page = await at.open("first", {
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    isMobile: true,
  });
  await page.getByRole("combobox", { name: "Where is the garden?" }).tap();
  await page.getByRole("combobox", { name: "Where is the garden?" }).fill("Adelaide");
  await page.getByRole("option").first().tap();
  await page.getByRole("radio", { name: "often", exact: true }).tap({ force: true });
  await answer(page, /^Each 100 m²/);
  expect(await hangsOver(page)).toBeLessThanOrEqual(0);
  const small = await page.evaluate(() => {
    const found: string[] = [];
    const look = (root: ParentNode) => {
      for (const element of root.querySelectorAll("*")) {
        if (element.shadowRoot) look(element.shadowRoot);
        if (!element.matches("a, button, select, input[type=text]")) continue;
        const { width, height } = element.getBoundingClientRect();
        if (width > 0 && height > 0 && height < 43.5)
          found.push(`${element.textContent?.trim() || element.id} ${height}`);
      }
    };
    look(document);
    return found.filter((words) => !words.startsWith("Skip"));
  });
  expect(small).toEqual([]);
});

test("a screen reader hears the answer, not every step to it", async () => {
  const page = await at.open("first");
  await page.evaluate(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    const region = document.querySelector("gwb-frame")!.shadowRoot!.querySelector("[role=status]")!;
    new MutationObserver(() => said.push(region.textContent ?? "")).observe(region, {
      childList: true,
      characterData: true,
      subtree: true,
    });
  });
  await choosePlace(page, "Adelaide");
  await choose(page, "regularly");
  await choose(page, "often");
  await answer(page, /^Each 100 m²/);
  await page.waitForTimeout(1500);
  const said = await page.evaluate(() => (window as unknown as { said: string[] }).said);
  expect(said.length).toBeGreaterThan(0);
  expect(said.length).toBeLessThanOrEqual(2);
  expect(said.at(-1)).toMatch(/garden needs about/);
});

test.each([360, 1280])("axe finds nothing by day and by night at %i px, empty and filled", async (width) => {
  const page = await at.open("", { viewport: { width, height: 900 } });
  await page.getByRole("link", { name: "Begin a first answer" }).waitFor();
  expect(await faultsByDayAndNight(page)).toEqual([]);
  await page.getByRole("link", { name: "Begin a first answer" }).click();
  await page.getByLabel("How large is the garden?").waitFor();
  expect(await faultsByDayAndNight(page)).toEqual([]);
  await sixEntries(page);
  await choose(page, "minutes a week");
  await answer(page, /Roof and tank could bring/);
  expect(await faultsByDayAndNight(page)).toEqual([]);
  expect(await hangsOver(page)).toBeLessThanOrEqual(0);
});

test("an address that is not there is said, and leads back", async () => {
  at.forgive(/404/);
  const page = await at.open("nowhere");
  await page.getByRole("heading", { name: "There is nothing at this address" }).waitFor();
  expect(await faultsByAxe(page)).toEqual([]);
  await page.getByRole("link", { name: "Go to the sites that are kept here" }).click();
  await page.getByRole("heading", { name: /^How much water do your grounds need/ }).waitFor();
  await page.goBack();
  await page.getByRole("heading", { name: "There is nothing at this address" }).waitFor();
});
