import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect } from "vitest";
import { launchBrowser } from "./browser.ts";
import { type Served, serve } from "./served.ts";

export interface Journey {
  /** The program served, anew after `again`. */
  served(): Served;
  /** A page of its own context at a path. */
  open(path?: string, options?: BrowserContextOptions): Promise<Page>;
  /** Another tab beside a page: same context. */
  beside(page: Page, path: string): Promise<Page>;
  /** Errors of the page that are meant to be there: the server is gone, a file is refused. */
  forgive(pattern: RegExp): void;
}

/**
 * Serves the program and opens a real browser for a file of journeys; after each, every request must have stayed on
 * this host and nothing have gone wrong in the page.
 */
export function journey(): Journey {
  let served: Served;
  let browser: Browser;
  let contexts: BrowserContext[] = [];
  let asked: string[] = [];
  let wrong: string[] = [];
  let forgiven: RegExp[] = [];

  beforeAll(async () => {
    [served, browser] = await Promise.all([serve(), launchBrowser()]);
  }, 120_000);

  afterAll(async () => {
    await browser?.close();
    await served?.stop();
  });

  afterEach(async () => {
    for (const context of contexts) await context.close();
    const elsewhere = asked.filter((url) => !/^(blob|data):/.test(url) && !url.startsWith(served.address));
    const faults = wrong.filter((text) => !forgiven.some((pattern) => pattern.test(text)));
    [contexts, asked, wrong, forgiven] = [[], [], [], []];
    expect(elsewhere, "requests that left the host").toEqual([]);
    expect(faults, "errors in the page").toEqual([]);
  });

  const watch = (page: Page) => {
    page.on("pageerror", (error) => wrong.push(String(error)));
    page.on("console", (message) => {
      if (message.type() === "error") wrong.push(message.text());
    });
    return page;
  };

  return {
    served: () => served,
    open: async (path = "", options = {}) => {
      const context = await browser.newContext({
        viewport: { width: 1280, height: 900 },
        locale: "en-GB",
        timezoneId: "Australia/Adelaide",
        // a page that is still gliding is pressed beside what was meant
        reducedMotion: "reduce",
        ...options,
      });
      contexts.push(context);
      // some of what the page's policy stops says nothing of itself
      await context.addInitScript(() =>
        addEventListener("securitypolicyviolation", (event) =>
          console.error(`${event.violatedDirective}: ${event.blockedURI} ${event.sourceFile}`),
        ),
      );
      context.on("request", (request) => asked.push(request.url()));
      const page = watch(await context.newPage());
      await page.goto(served.address + path);
      return page;
    },
    beside: async (page, path) => {
      const other = watch(await page.context().newPage());
      await other.goto(new URL(path, served.address).href);
      return other;
    },
    forgive: (pattern) => {
      forgiven.push(pattern);
    },
  };
}

/** Pixels that hang over the right edge. */
export function hangsOver(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

/** A region as it is read, on one line. */
export async function readOut(page: Page, region: string): Promise<string> {
  const text = await page.getByRole("region", { name: region, exact: true }).textContent();
  return (text ?? "").trim().replace(/\s+/g, " ");
}
