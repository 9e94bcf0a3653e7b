import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import type { Editor } from "../../../../components/editor/editor.ts";
import type { Survey } from "../../../../src/survey/survey.ts";

export interface Opened {
  page: Page;
  /** Addresses asked for beyond the harness, and errors. */
  wrong: string[];
  close(): Promise<void>;
}

/** Opens the editor alone in a browser, with a survey, at a screen. */
export async function openEditor(
  browser: Browser,
  address: string,
  survey: unknown,
  at: string,
  options: BrowserContextOptions = {},
  more: Record<string, unknown> = {},
): Promise<Opened> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    locale: "en-GB",
    ...options,
  });
  const wrong: string[] = [];
  const { origin } = new URL(address);
  context.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !url.startsWith("data:")) wrong.push(`request to ${url}`);
  });
  const page = await context.newPage();
  page.on("pageerror", (error) => wrong.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error" && !message.text().includes("WebSocket")) wrong.push(message.text());
  });
  await page.goto(`${address}#${at}`);
  await page.waitForFunction(() => "harness" in window, null, { timeout: 60_000 });
  await page.evaluate(([document, extra]) => window.harness.start(document as Survey, extra), [
    survey,
    more,
  ] as const);
  await page.locator("gwb-editor h2").waitFor();
  return { page, wrong, close: () => context.close() };
}

/** Goes to another screen as the address bar does. */
export async function goTo(page: Page, at: string): Promise<void> {
  await page.evaluate(async (place) => {
    const editor = document.querySelector<Editor>("gwb-editor")!;
    editor.at = place;
    await editor.updateComplete;
  }, at);
}

/** The survey as it counts, and as it is typed. */
export async function surveyIn(page: Page): Promise<{ right: Survey; draft: Record<string, unknown> }> {
  return page.evaluate(() => {
    const { right, draft } = document.querySelector<Editor>("gwb-editor")!.session!;
    return { right, draft } as { right: Survey; draft: Record<string, unknown> };
  });
}
