import "fake-indexeddb/auto";
import type { Hono } from "hono";
import { afterEach } from "vitest";
import { type Box, openBox } from "../../../components/kept/box.ts";
import { KeptSite } from "../../../components/kept/kept-site.ts";
import { SitesApi } from "../../../components/kept/sites-api.ts";
import { ask } from "../../server/stand-in.ts";

/** What the network does to a request. */
export type Weather = "up" | "down" | "answers-lost" | { status: number; detail: string };

/** A network between a page and a server. */
export class Wire {
  weather: Weather = "up";
  /** Every request that was tried: method and address. */
  readonly requests: string[] = [];
  readonly #app: Hono;
  #held: Promise<void> | null = null;

  constructor(app: Hono) {
    this.#app = app;
  }

  /** Holds answers back until what it returns is called. */
  hold(): () => void {
    let letGo = () => {};
    this.#held = new Promise((resolve) => {
      letGo = resolve;
    });
    return () => {
      this.#held = null;
      letGo();
    };
  }

  fetch = async (address: string, init: RequestInit = {}): Promise<Response> => {
    this.requests.push(`${init.method ?? "GET"} ${address}`);
    if (this.weather === "down") throw new TypeError("Failed to fetch");
    if (typeof this.weather === "object") return problem(this.weather);
    const answer = await ask(this.#app, address, init);
    if (this.#held) await this.#held;
    if (this.weather === "answers-lost") throw new TypeError("Failed to fetch");
    return answer;
  };
}

function problem({ status, detail }: { status: number; detail: string }): Response {
  return new Response(JSON.stringify({ status, detail, faults: [] }), { status });
}

const open: KeptSite[] = [];

afterEach(() => {
  for (const kept of open.splice(0)) kept.close();
});

let names = 0;

export interface Browser {
  box: Box;
  openTabs: Set<string>;
}

/** A browser of its own: its box, and the tabs open in it. */
export async function browser(): Promise<Browser> {
  return { box: await openBox(`box-${++names}`), openTabs: new Set() };
}

/** A tab of a browser with the site open; waits between tries last until the tab is told to try. */
export async function openTab(wire: Wire, id: string, { box, openTabs }: Browser): Promise<KeptSite> {
  const own = `tab-${++names}`;
  openTabs.add(own);
  const kept = new KeptSite({
    id,
    api: new SitesApi(wire.fetch),
    box,
    tabs: { own, isOpen: async (tab) => openTabs.has(tab) },
    freshWord: () => `key-${++names}`,
    wait: () => new Promise(() => {}),
  });
  open.push(kept);
  await kept.open();
  await kept.settled();
  return kept;
}

/** As when a browser closes a tab: nothing is run any more. */
export function closeAll(kept: KeptSite, { openTabs }: Browser): void {
  openTabs.clear();
  kept.close();
}
