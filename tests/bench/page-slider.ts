import type { CDPSession } from "playwright-core";
import { waterRecords, waterSurveys } from "../components/water/sites.ts";
import { launchBrowser } from "../helpers/browser.ts";
import { waterHarness } from "../helpers/water-harness.ts";

/**
 * How long a tank takes from a move of its ruler to the picture of it: part of `npm run bench:page`.
 * The page's own thread runs at a quarter of its speed; its worker is not slowed, as the browser slows no other thread.
 */

const throttle = 4;
const moves = 120;
const goal_ms = 50;

interface Timed {
  site: string;
  moves: number;
  p50_ms: number;
  p95_ms: number;
  most_ms: number;
  /** The page's own thread, by its own clock, a move; not throttled, and the same on a busy machine. */
  thread_ms: number;
}

const quantile = (sorted: readonly number[], share: number) =>
  sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)]!;

/** Runs in the page: moves the first tank's size ruler step by step, and waits for each picture to be painted. */
async function slide(count: number): Promise<number[]> {
  const page = document.querySelector("gwb-tanks")!;
  const tank = page.shadowRoot!.querySelector("gwb-tank")!;
  const state = tank as unknown as { trial: { capacity_L: number } | null };
  const ruler = tank.shadowRoot!.querySelector<HTMLInputElement>("#size")!;
  const plate = tank.shadowRoot!.querySelector("gwb-plate")! as unknown as {
    updateComplete: Promise<unknown>;
  };
  const painted = () =>
    new Promise<void>((done) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => done();
        port2.postMessage(null);
      });
    });
  const times: number[] = [];
  const step = Number(ruler.step);
  for (let i = 0; i < count; i++) {
    const to = step * (5 + ((i * 7) % 130));
    await new Promise((rest) => setTimeout(rest, 40));
    const from = performance.now();
    ruler.value = String(to);
    ruler.dispatchEvent(new Event("input", { bubbles: true }));
    while (state.trial?.capacity_L !== to) await new Promise((soon) => setTimeout(soon, 0));
    await plate.updateComplete;
    await painted();
    times.push(performance.now() - from);
  }
  return times;
}

/** What a thread itself spends on each of some work, ms. */
async function threadTime(session: CDPSession, work: () => Promise<unknown>, times: number): Promise<number> {
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  const spent = async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return 1000 * metrics.find(({ name }) => name === "TaskDuration")!.value;
  };
  const before = await spent();
  await work();
  const after = await spent();
  await session.send("Performance.disable");
  return (after - before) / times;
}

const browser = await launchBrowser();
const harness = await waterHarness(waterSurveys, waterRecords);
const results: Timed[] = [];
try {
  for (const [site, query] of [
    ["the demo, 4 years", "at=tanks"],
    ["60 beds, 30 years", "at=tanks&survey=huge&record=thirty"],
  ] as const) {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    // the runner names the functions that it hands over
    await page.addInitScript("globalThis.__name = (named) => named");
    await page.goto(`${harness.address}?${query}`);
    await page.getByLabel("Tank size").first().waitFor({ timeout: 120_000 });
    await page.waitForTimeout(2000);
    const session = await page.context().newCDPSession(page);
    await page.evaluate(slide, 10);
    const thread_ms = await threadTime(session, () => page.evaluate(slide, moves / 2), moves / 2);
    await session.send("Emulation.setCPUThrottlingRate", { rate: throttle });
    const times = (await page.evaluate(slide, moves)).sort((a, b) => a - b);
    results.push({
      site,
      moves,
      p50_ms: quantile(times, 0.5),
      p95_ms: quantile(times, 0.95),
      most_ms: times.at(-1)!,
      thread_ms,
    });
    await page.close();
  }
} finally {
  await browser.close();
  await harness.stop();
}

if (process.argv.includes("--json")) console.log(JSON.stringify({ throttle, goal_ms, results }));
else
  for (const { site, p50_ms, p95_ms, most_ms, thread_ms } of results)
    console.log(
      `${site}: ruler to paint, ${throttle}× throttled: half in ${p50_ms.toFixed(0)} ms, 95 % in ${p95_ms.toFixed(0)} ms, at most ${most_ms.toFixed(0)} ms (goal ${goal_ms}); the page's thread works ${thread_ms.toFixed(1)} ms a move`,
    );
