import { type Box, openBox, passingBox } from "../kept/box.ts";
import { SitesApi } from "../kept/sites-api.ts";
import { holdTab, type Tabs } from "../kept/tabs.ts";

/** What sites are kept with: the server's addresses, this browser's box, this tab's name. */
export interface Keeping {
  api: SitesApi;
  box: Box;
  tabs: Tabs;
  freshWord(): string;
  wait(ms: number): Promise<void>;
}

let ready: Promise<Keeping> | null = null;

/** Ready once for the page. A browser that keeps nothing still works as long as the page is open. */
export function keeping(): Promise<Keeping> {
  ready ??= makeReady();
  return ready;
}

async function makeReady(): Promise<Keeping> {
  const box = await openBox().catch(() => passingBox());
  const freshWord = () => crypto.randomUUID();
  return {
    api: new SitesApi(),
    box,
    tabs: holdTab(navigator.locks, freshWord()),
    freshWord,
    wait: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
  };
}
