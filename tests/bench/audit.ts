/**
 * `npm run audit`: Lighthouse over the program's screens in a real Chromium, median of five runs each; ends with 1
 * where a score is below 100. The server speaks to its own machine only, so the desktop profile is the one that
 * counts; `--phone` tells of a slow phone on a slow network. `--once` runs each once, `--json` prints one object.
 */
import { createServer } from "node:net";
import lighthouse, { desktopConfig, type Flags } from "lighthouse";
import { median } from "simple-statistics";
import { launchBrowser } from "../helpers/browser.ts";
import { serve } from "../helpers/served.ts";
import { keepDemo } from "./keep-demo.ts";

const runs = process.argv.includes("--once") ? 1 : 5;
const isPhone = process.argv.includes("--phone");
const categories = ["performance", "accessibility", "best-practices", "seo"] as const;
type Scores = Record<(typeof categories)[number], number>;

/** A port that nobody listens on. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() => (address && typeof address === "object" ? resolve(address.port) : reject()));
    });
  });
}

interface Audited {
  scores: Scores;
  /** What kept a score below full marks. */
  lost: string[];
}

/** Of a page, and once more where Lighthouse lost its thread: on a busy machine its own trace may go missing. */
async function audit(url: string, port: number, tries = 2): Promise<Audited> {
  const options: Flags = { port, output: "json", logLevel: "error", onlyCategories: [...categories] };
  const result = await lighthouse(url, options, isPhone ? undefined : desktopConfig);
  if (!result) throw new Error(`Lighthouse said nothing of ${url}.`);
  const { lhr } = result;
  if (lhr.runtimeError && tries > 1) return audit(url, port, tries - 1);
  if (lhr.runtimeError) throw new Error(`${url}: ${lhr.runtimeError.message}`);
  const score = (id: (typeof categories)[number]) => Math.round(100 * (lhr.categories[id]?.score ?? 0));
  const lost = categories.flatMap((id) =>
    (lhr.categories[id]?.auditRefs ?? [])
      .filter(({ weight, id: ref }) => weight > 0 && (lhr.audits[ref]?.score ?? 1) < 0.995)
      .map(({ id: ref }) => `${ref} ${lhr.audits[ref]?.displayValue ?? ""}`.trim()),
  );
  return {
    scores: {
      performance: score("performance"),
      accessibility: score("accessibility"),
      "best-practices": score("best-practices"),
      seo: score("seo"),
    },
    lost,
  };
}

const served = await serve();
const port = await freePort();
const browser = await launchBrowser([`--remote-debugging-port=${port}`]);
const results: { screen: string; scores: Scores; lost: string[] }[] = [];
try {
  const site = `site/${await keepDemo(served.address)}`;
  const paths = [
    "",
    "first",
    "demo",
    site,
    ...["walk", "survey", "thirst", "tanks"].map((place) => `${site}/${place}`),
  ];
  for (const path of [...paths, `${site}/rounds`, `${site}/choices`, `${site}/weather`, `${site}/kept`]) {
    const all: Audited[] = [];
    for (let k = 0; k < runs; k++) all.push(await audit(served.address + path, port));
    const scores = Object.fromEntries(
      categories.map((id) => [id, median(all.map((one) => one.scores[id]))]),
    ) as Scores;
    const lost = [...new Set(all.flatMap((one) => one.lost))];
    results.push({ screen: path.replace(site, "site/…") || "start", scores, lost });
  }
} finally {
  await browser.close();
  await served.stop();
}

if (process.argv.includes("--json")) console.log(JSON.stringify({ runs, results }, null, 1));
else
  for (const { screen, scores, lost } of results) {
    console.log(`${screen.padEnd(16)} ${categories.map((id) => `${id} ${scores[id]}`).join("  ")}`);
    for (const line of lost) console.log(`    ${line}`);
  }
process.exitCode = results.every(({ scores }) => categories.every((id) => scores[id] === 100)) ? 0 : 1;
