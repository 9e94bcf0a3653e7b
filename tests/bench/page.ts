/**
 * `npm run bench:page`: what the page weighs and how long it takes, in a real Chromium on this machine. `--json`
 * prints one object and nothing else.
 */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { median } from "simple-statistics";
import { formatIso } from "../../src/engine/weather/dates.ts";
import { generateRecord } from "../../src/engine/weather/generator.ts";
import { generatorFactors } from "../../src/tables/weather-generator.ts";
import { launchBrowser } from "../helpers/browser.ts";
import { serve } from "../helpers/served.ts";
import { keepDemo, keepSite } from "./keep-demo.ts";

const runs = 5;
const assets = fileURLToPath(new URL("../../dist/page/assets/", import.meta.url));

interface Timed {
  name: string;
  /** Medians over runs, ms. */
  plain_ms: number;
  /** At a fourth of the processor's speed. */
  slowed_ms: number;
  /** Script that this screen loads, by the page and by its worker, kB gzip. */
  page_kB: number;
  worker_kB: number;
}

/** kB gzip of each script, by file name. */
function weights(): ReadonlyMap<string, number> {
  const scripts = readdirSync(assets).filter((name) => name.endsWith(".js"));
  return new Map(scripts.map((name) => [name, gzipSync(readFileSync(assets + name)).length / 1000]));
}

/** Every script asked for, by the page or by what works beside it. */
function askedBy(page: Page): Set<string> {
  const asked = new Set<string>();
  page.on("request", (request) => {
    const name = request.url().split("/").at(-1) ?? "";
    if (name.endsWith(".js")) asked.add(name);
  });
  return asked;
}

/** Ms from the navigation until the page says it. */
async function time(
  browser: Browser,
  address: string,
  {
    shown,
    before,
    rate,
  }: { shown: string; before?: Readonly<Record<string, string>> | undefined; rate: number },
): Promise<{ ms: number; page: Set<string>; worker: Set<string> }> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: "en-GB" });
  if (before)
    await context.addInitScript((kept) => {
      for (const [key, value] of Object.entries(kept)) localStorage.setItem(key, value);
    }, before);
  const page = await context.newPage();
  const asked = askedBy(page);
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
  await page.goto(address, { waitUntil: "commit" });
  await page.locator(shown).first().waitFor();
  const ms = await page.evaluate(
    () => new Promise<number>((resolve) => requestAnimationFrame(() => resolve(performance.now()))),
  );
  // what a worker loads does not stand among what its page loaded
  const own = await page.evaluate(() => performance.getEntriesByType("resource").map(({ name }) => name));
  await context.close();
  const isOwn = (script: string) => !script.startsWith("worker-") && own.some((url) => url.endsWith(script));
  const scripts = [...asked];
  return { ms, page: new Set(scripts.filter(isOwn)), worker: new Set(scripts.filter((one) => !isOwn(one))) };
}

/** Sixty beds on thirty made-up years. */
function largeSite(): object {
  const months = (mean: number, swing: number) =>
    Array.from({ length: 12 }, (_, m) => mean - swing * Math.cos((Math.PI * (m - 0.5)) / 6));
  const normals = {
    rain_mm: months(60, -30),
    rainDays: months(10, -4),
    tmin_c: months(7, 5),
    tmax_c: months(16, 8),
  };
  const record = generateRecord({ normals, years: 30, seed: 1, factors: generatorFactors });
  const { rain_mm, tmin_c, tmax_c } = record.columns;
  const lines = Array.from(
    { length: record.days },
    (_, i) =>
      `${formatIso(record.firstDay + i)},${rain_mm[i]!.toFixed(1)},${tmin_c![i]!.toFixed(1)},${tmax_c![i]!.toFixed(1)}`,
  );
  const kinds = ["perennials", "shrubs", "lawn-cool", "annuals"] as const;
  const beds = Array.from({ length: 60 }, (_, i) => ({
    id: `bed-${i}`,
    name: `Bed ${i}`,
    area_m2: 20 + 7 * i,
    plantings: [{ kind: kinds[i % 4], thirst: "moderate", share: 1 }],
    watering: {
      method: "spray",
      supply: i % 3 ? "mains-only" : "tank-then-mains",
      ...(i % 3 === 0 && { tank: "tank" }),
    },
  }));
  return {
    survey: {
      format: "grounds-survey",
      version: 1,
      site: { name: "Sixty beds (invented)", latitude: 47, longitude: 8 },
      beds,
      roofs: [{ id: "hall", name: "Hall", area_m2: 400, material: "metal", tank: "tank" }],
      tanks: [{ id: "tank", name: "Tank", capacity_L: 20_000 }],
    },
    weather: ["date,rain_mm,tmin_c,tmax_c", ...lines].join("\n"),
  };
}

const served = await serve();
const browser = await launchBrowser();
const size = weights();
const { address } = served;
const demoId = await keepDemo(address);
const largeId = await keepSite(address, largeSite());
const place = { name: "An invented place", latitude: -34.9, longitude: 138.6 };
const begun = {
  "grounds-water-balance.first": JSON.stringify({
    entries: { place, garden_m2: 300, thirst: "moderate" },
    typed: {},
  }),
};
// the server's own first look at its tables is no matter of the page
await fetch(`${address}api/normals?latitude=-34.9&longitude=138.6`);

const screens: { name: string; path: string; shown: string; before?: Readonly<Record<string, string>> }[] = [
  { name: "start", path: "", shown: "gwb-start h2" },
  { name: "first answer", path: "first", shown: "gwb-first .answer .figure", before: begun },
  { name: "the demo, kept", path: `site/${demoId}`, shown: "gwb-answer .headline" },
  { name: "its walk", path: `site/${demoId}/walk`, shown: "gwb-walk h2" },
  { name: "its survey", path: `site/${demoId}/survey`, shown: "gwb-editor h2" },
  { name: "60 beds × 30 years", path: `site/${largeId}`, shown: "gwb-answer .headline" },
];

const timed: Timed[] = [];
for (const { name, path, shown, before } of screens) {
  const all: Record<1 | 4, number[]> = { 1: [], 4: [] };
  const loaded = { page: new Set<string>(), worker: new Set<string>() };
  for (const rate of [1, 4] as const)
    for (let k = 0; k < runs; k++) {
      const { ms, page, worker } = await time(browser, address + path, { shown, before, rate });
      all[rate].push(ms);
      for (const script of page) loaded.page.add(script);
      for (const script of worker) loaded.worker.add(script);
    }
  const sum = (scripts: Set<string>) => [...scripts].reduce((kB, script) => kB + (size.get(script) ?? 0), 0);
  timed.push({
    name,
    plain_ms: median(all[1]),
    slowed_ms: median(all[4]),
    page_kB: sum(loaded.page),
    worker_kB: sum(loaded.worker),
  });
}
await browser.close();
await served.stop();

const parts = [...size].map(([script, kB]) => ({ script, kB })).sort((a, b) => b.kB - a.kB);
if (process.argv.includes("--json")) console.log(JSON.stringify({ screens: timed, parts }, null, 1));
else {
  console.log("From navigation to what is read, median of five; script of the page and its worker, gzip\n");
  for (const { name, plain_ms, slowed_ms, page_kB, worker_kB } of timed)
    console.log(
      `${name.padEnd(20)} ${plain_ms.toFixed(0).padStart(6)} ms   at 4× slower ${slowed_ms.toFixed(0).padStart(6)} ms   page ${page_kB.toFixed(0).padStart(4)} kB   worker ${worker_kB.toFixed(0).padStart(4)} kB`,
    );
  console.log("\nScript by part, gzip");
  for (const { script, kB } of parts) console.log(`${kB.toFixed(1).padStart(7)} kB  ${script}`);
}
