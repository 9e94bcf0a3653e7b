import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Stop, stopsOf } from "../../components/walk/stops.ts";
import { readHow } from "../../src/survey/measuring/how.ts";
import { type Slot, walkParts } from "../../src/survey/measuring/way.ts";
import { wayOf, waysOf } from "../../src/survey/measuring/ways.ts";
import { codeAnswers } from "../../src/words/en/walk-aids.ts";
import { sheetWords } from "../../src/words/en/walk-sheets.ts";
import { stopWords } from "../../src/words/en/walk-stops.ts";
import { launchBrowser } from "../helpers/browser.ts";
import type { Harness } from "../helpers/harness.ts";
import { walkHarness } from "../helpers/walk-harness.ts";
import {
  differences,
  emptiedSchool,
  reportOn,
  schoolRecord,
  surveyOf,
  typedSchool,
} from "../survey/measuring/emptied-school.ts";
import { type SheetRow, sheetRows } from "../survey/measuring/school-readings.ts";

let harness: Harness;
let browser: Browser;
let context: BrowserContext;
const wrong: string[] = [];

beforeAll(async () => {
  const start = JSON.parse(JSON.stringify(emptiedSchool()));
  [harness, browser] = await Promise.all([walkHarness(start, schoolRecord), launchBrowser()]);
}, 120_000);

afterAll(async () => {
  await context?.close();
  await browser?.close();
  await harness?.stop();
});

/** A block of a sheet as it was filled: what it is about, and its readings. */
interface Block {
  stop: Stop;
  way: string;
  counts: number[] | null;
  paced: boolean;
  readings: readonly number[];
}

/** One block for each measuring, though it may fill several fields; several shapes are measured on the walk itself. */
function blocksOf(rows: readonly SheetRow[]): Block[] {
  const stops = stopsOf(typedSchool);
  const blocks = rows.flatMap(([at, how, readings]): Block[] => {
    const { paced, terms } = readHow(how)!;
    const [first] = terms;
    const stop = stops.find((one) => [one.at, ...one.also].includes(at) && one.ways.includes(first!.way));
    return stop && terms.length === 1
      ? [{ stop, way: first!.way, counts: first!.counts, paced, readings }]
      : [];
  });
  return blocks.filter(
    (block, i) =>
      blocks.findIndex(
        (one) => one.stop.key === block.stop.key && one.way === block.way && one.paced === block.paced,
      ) === i,
  );
}

const order = (part: (typeof walkParts)[number]) =>
  waysOf(part)
    .map(({ code }) => code)
    .filter((code) => code !== "plan" && code !== "leaf-photograph");

/** How a reading is written on paper and typed: shares in percent, answers of a key by their letters. */
function written(reading: number, slot: Slot): string {
  if (slot.unit === "share") return `${Number((100 * reading).toPrecision(12))} %`;
  return slot.unit === "code" && slot.list ? String.fromCharCode(65 + reading) : String(reading);
}

async function fillTerm(
  page: Page,
  form: string,
  slots: readonly Slot[],
  counts: number[] | null,
  readings: number[],
  way: string,
) {
  for (const [s, slot] of slots.entries()) {
    const isLast = s === slots.length - 1;
    const mine = readings.splice(0, counts?.[s] ?? (slot.list && isLast ? readings.length : 1));
    // counts are added up on paper
    if (!slot.by && !slot.list)
      mine.splice(
        0,
        mine.length,
        mine.reduce((sum, one) => sum + one),
      );
    const choices = codeAnswers[`${way}/${slot.name}`];
    if (choices) {
      const words = choices.find(({ value }) => value === String(mine[0]))!.words;
      await page.getByRole("button", { name: words, exact: true }).tap();
      continue;
    }
    for (const [r, reading] of mine.entries()) {
      const blank = page.locator(`${form} input#b${s}-${r}`);
      if (r > 0 && (await blank.count()) === 0)
        await page.locator(`${form} .blank:has(#b${s}-0) .more`).tap();
      await blank.fill(written(reading, slot));
    }
  }
}

async function typeBlock(page: Page, { stop, way, counts, paced, readings }: Block): Promise<void> {
  const what = `${stop.name}: ${stopWords[stop.kind]!.name.toLowerCase()}`;
  const index = (await page.locator("select#about option").allTextContents()).indexOf(what);
  expect(index, `${what} stands in the list of ${way}`).toBeGreaterThan(0);
  await page.getByRole("combobox").selectOption({ value: stop.key });
  const rest = [...readings];
  const forms = page.locator("gwb-walk-form");
  if (paced) {
    await page.getByRole("button", { name: "We paced it" }).tap();
    await forms.nth(1).waitFor();
    const [known = 0, paces = 0] = rest.splice(0, 2);
    await fillTerm(
      page,
      "gwb-walk-form >> nth=0 >>",
      [
        { name: "known", unit: "m" },
        { name: "paces", unit: "count" },
      ],
      null,
      [known, paces],
      "pacing",
    );
  }
  await fillTerm(
    page,
    paced ? "gwb-walk-form >> nth=1 >>" : "gwb-walk-form",
    wayOf(way)!.slots,
    counts,
    rest,
    way,
  );
  await page.getByRole("button", { name: "Keep and go on" }).tap();
  await expect.poll(() => page.locator("select#about").inputValue()).toBe("");
}

async function typeSheets(page: Page, nickname: string, rows: readonly SheetRow[]): Promise<void> {
  await page.goto(`${harness.address}?${nickname}#round`);
  const another = page.getByRole("button", { name: "Another group takes this machine" });
  await page.getByRole("heading", { level: 2 }).waitFor();
  if (await another.isVisible()) await another.tap();
  await page.getByRole("heading", { name: "Walk the grounds" }).waitFor();
  await page.getByRole("textbox", { name: "Your group’s nickname" }).fill(nickname);
  await page.getByRole("button", { name: /^(Start|Go on)/ }).tap();
  await page.getByRole("button", { name: "Type in a sheet" }).tap();
  const blocks = blocksOf(rows);
  for (const part of walkParts) {
    const codes = order(part);
    const mine = blocks.filter(({ way }) => codes.includes(way));
    if (mine.length === 0) continue;
    await page.getByRole("button", { name: sheetWords.parts[part]!, exact: true }).tap();
    for (const [k, code] of codes.entries()) {
      await page.getByText(`Block ${k + 1} of ${codes.length}`, { exact: false }).waitFor();
      for (const block of mine.filter(({ way }) => way === code)) await typeBlock(page, block);
      await page.getByRole("button", { name: "Left blank on the sheet" }).tap();
    }
    await page.getByRole("button", { name: "Another sheet" }).tap();
  }
}

/** The same survey typed as numbers: with the depth of the raised beds, which bounds their roots. */
const typed = {
  ...typedSchool,
  beds: typedSchool.beds.map((bed, i) => (i === 2 ? { ...bed, rootDepth_m: 0.5 } : bed)),
};

test("a whole invented school, from field sheets to the survey, gives to 0.1 % the report of the same typed as numbers", async () => {
  context = await browser.newContext({
    locale: "en-GB",
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    isMobile: true,
  });
  context.setDefaultTimeout(8_000);
  const page = await context.newPage();
  page.on("pageerror", (error) => wrong.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") wrong.push(message.text());
  });
  const isSecond = ([at, how]: SheetRow, i: number) =>
    how.startsWith("paced") || sheetRows.findIndex(([other, way]) => other === at && way === how) !== i;
  await typeSheets(
    page,
    "Teasel",
    sheetRows.filter((row, i) => !isSecond(row, i)),
  );
  await typeSheets(page, "Sorrel", sheetRows.filter(isSecond));
  // a roof of two rectangles, measured on the walk
  const [, , [a, b, c, d]] = sheetRows.find(([, how]) => how === "rectangle + rectangle")! as unknown as [
    string,
    string,
    number[],
  ];
  await page.goto(`${harness.address}?roof#stop/roofs/${typedSchool.roofs[2]!.id}/roof-area`);
  await page.getByRole("button", { name: "We have read this" }).tap();
  await page.getByRole("button", { name: "No guess" }).tap();
  await page.getByRole("button", { name: "Rectangle", exact: true }).tap();
  await page.getByRole("button", { name: "Add a shape" }).tap();
  await page.getByRole("button", { name: "Rectangle", exact: true }).tap();
  for (const [i, reading] of [a, b, c, d].entries())
    await page.locator("gwb-walk-form input").nth(i).fill(String(reading));
  await page.getByRole("button", { name: "Keep it" }).tap();
  await page.getByRole("button", { name: "Next stop" }).waitFor();
  const measured = surveyOf(await page.evaluate(() => window.survey));
  expect(differences(reportOn(measured), reportOn(typed))).toEqual([]);
  expect(differences(reportOn(emptiedSchool()), reportOn(typed)).length).toBeGreaterThan(50);
  expect(wrong, "errors in the page").toEqual([]);
}, 300_000);
