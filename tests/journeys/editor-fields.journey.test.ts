import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Editor } from "../../components/editor/editor.ts";
import { namedLists } from "../../src/survey/edit/ids.ts";
import { fieldPatterns, sortAt } from "../../src/survey/edit/sorts.ts";
import type { Path } from "../../src/survey/path.ts";
import { goTo, openEditor } from "../components/editor/harness/browse.ts";
import { screensOf } from "../components/editor/harness/screens.ts";
import { launchBrowser } from "../helpers/browser.ts";
import { editorHarness } from "../helpers/editor-harness.ts";
import { edited } from "../survey/whole-survey.ts";

let browser: Browser;
let harness: { address: string; stop(): Promise<void> };

beforeAll(async () => {
  [harness, browser] = await Promise.all([editorHarness(), launchBrowser()]);
}, 120_000);

afterAll(async () => {
  await browser?.close();
  await harness?.stop();
});

/** Fields that only one form of their entry has, put where the whole survey has another; and none left out. */
const inOtherForms = {
  "tariff.perKL": 2.5,
  "tariff.steps": undefined,
  "measures[2].changeWatering": {
    beds: ["oval"],
    method: "rotor",
    supply: "tank-only",
    habit: { minutes: 10, days: ["mon"], months: [7] },
  },
  "measures[3].addTank.topUp": { belowShare: 0.1, toShare: 0.2 },
  "measures[1].replant.plantings[0].count": { plants: 3, canopy_m: 1 },
} as const;

const pathOf = (pattern: string): Path =>
  pattern.split(/\.|(?=\[)/).map((step) => (step === "[]" ? 0 : step));

/** The pattern of a control's key: ids and places in lists become []. */
function patternOf(key: string): string {
  const [list = "", ...steps] = key.split("/");
  const isNamed = (namedLists as readonly string[]).includes(list);
  const marked = steps.map((step, at) => ((isNamed && at === 0) || /^\d+$/.test(step) ? "[]" : `.${step}`));
  return `${list}${marked.join("")}`;
}

/** What is written into a field that is written: another value that its sort takes. */
function textFor(pattern: string): string {
  const sort = sortAt(pathOf(pattern));
  const name = pattern.slice(pattern.lastIndexOf(".") + 1);
  if (name === "timeZone") return "Europe/Paris";
  switch (sort?.sort) {
    case "number": {
      const middle = sort.min + (Math.min(sort.max, 1e6) - sort.min) * 0.37;
      return sort.isWhole ? String(Math.ceil(middle)) : String(Number(middle.toPrecision(3)));
    }
    case "numbers":
      return "7; 8.5";
    case "point":
      return "3; 4";
    case "points":
      return "0 0\n5 0\n5 5";
    case "loose":
      return "17";
    default: {
      const form = sort?.sort === "text" ? sort.form : "";
      if (form.startsWith("date")) return "3 April 2025";
      return { "clock-time": "05:15", currency: "NZD", id: "another-id" }[form] ?? "Changed words";
    }
  }
}

interface Tried {
  key: string;
  isChanged: boolean;
}

/** Opens everything on the screen, then changes every control, each on the survey as it was. */
async function tryAll(page: Page, texts: Record<string, string>): Promise<Tried[]> {
  return page.evaluate(async (write) => {
    const editor = document.querySelector<Editor>("gwb-editor")!;
    const root = editor.shadowRoot!;
    const settle = async () => {
      await editor.updateComplete;
      await new Promise((resolve) => setTimeout(resolve));
      await editor.updateComplete;
    };
    for (let depth = 0; depth < 3; depth++) {
      for (const summary of root.querySelectorAll<HTMLElement>("details:not([open]) > summary"))
        summary.click();
      await settle();
    }
    const keys = [...root.querySelectorAll<HTMLElement>("[data-at]")].map((field) => field.dataset.at!);
    const tried: Tried[] = [];
    for (const key of keys) {
      const field = root.querySelector<HTMLElement>(`[data-at="${CSS.escape(key)}"]`);
      const inner = field?.shadowRoot;
      if (!inner) continue;
      const before = editor.session!;
      const line = inner.querySelector<HTMLInputElement | HTMLTextAreaElement>("input[type=text], textarea");
      const boxes = [...inner.querySelectorAll<HTMLInputElement>("input[type=radio], input[type=checkbox]")];
      const list = inner.querySelector("select");
      if (line) {
        line.value = write[key] ?? "12";
        line.dispatchEvent(new Event("change", { bubbles: true }));
      } else if (list) {
        list.value = [...list.options]
          .map(({ value }) => value)
          .find((value) => value !== list.value && value !== "-1")!;
        list.dispatchEvent(new Event("change", { bubbles: true }));
      } else (boxes.find(({ checked }) => !checked) ?? boxes[0])?.click();
      await settle();
      const isChanged = JSON.stringify(editor.session!.draft) !== JSON.stringify(before.draft);
      tried.push({ key, isChanged });
      editor.session = before;
      await settle();
    }
    return tried;
  }, texts);
}

test("every field of the contract is reached on a screen, and changed there", async () => {
  const surveys = [edited({}), edited(inOtherForms)];
  const changed = new Set<string>();
  for (const survey of surveys) {
    const { page, wrong, close } = await openEditor(browser, harness.address, survey, "");
    for (const at of screensOf(survey as Record<string, unknown>)) {
      await goTo(page, at);
      const keys = await keysOn(page);
      const texts = Object.fromEntries(keys.map((key) => [key, textFor(patternOf(key))]));
      for (const { key, isChanged } of await tryAll(page, texts)) if (isChanged) changed.add(patternOf(key));
    }
    await close();
    expect(wrong).toEqual([]);
  }
  const wanted = fieldPatterns().filter((pattern) => pattern !== "format" && pattern !== "version");
  expect(wanted.filter((pattern) => !changed.has(pattern))).toEqual([]);
}, 400_000);

async function keysOn(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const editor = document.querySelector<Editor>("gwb-editor")!;
    const root = editor.shadowRoot!;
    for (let depth = 0; depth < 3; depth++) {
      for (const summary of root.querySelectorAll<HTMLElement>("details:not([open]) > summary"))
        summary.click();
      await editor.updateComplete;
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    return [...root.querySelectorAll<HTMLElement>("[data-at]")].map((field) => field.dataset.at!);
  });
}
