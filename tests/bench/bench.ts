/**
 * Times the engine on this machine, in one run, so that its ratios can be compared anywhere.
 * `--json` prints one object with fullAnswer_ms, bedDay_ns and tankDay_ns and nothing else.
 */
import { runBed } from "../../src/engine/bed-run.ts";
import { runReady } from "../../src/engine/estimate.ts";
import { prepareGrounds } from "../../src/engine/prepare.ts";
import { stepTank, tankGroups, tankSeries } from "../../src/engine/tanks.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { tank } from "../helpers/plain-grounds.ts";
import { decisionTimes } from "./decisions.ts";
import { estimateOverHttp_ms, importOf100Years_ms } from "./edges.ts";
import { fiftyYears_days, longRecord, twelveBeds } from "./grounds.ts";
import { median_ms } from "./median.ts";
import { roundsTimes } from "./rounds.ts";

const asJson = process.argv.includes("--json");
const grounds = twelveBeds();
const weather = prepareWeather(longRecord(fiftyYears_days), grounds.place);
const ready = prepareGrounds(grounds, weather);

const fullAnswer_ms = median_ms(60, () => {
  runReady(ready);
});
const net_mm = new Float64Array(fiftyYears_days);
const beds_ms = median_ms(60, () => {
  for (const { grown, open } of ready.beds) runBed(grown, open, net_mm);
});
const sizes = 60;
const series = tankSeries(
  ready.tanks[0]!.inflow_L,
  Float64Array.from(runReady(ready).need.tanks[0]!.series.draw_L),
);

const tanks_ms = median_ms(30, () => {
  for (let k = 0; k < sizes; k++) runSize(1000 * (k + 1));
});

const figures = {
  fullAnswer_ms,
  bedDay_ns: (beds_ms * 1e6) / (12 * fiftyYears_days),
  tankDay_ns: (tanks_ms * 1e6) / (sizes * fiftyYears_days),
};

if (asJson) {
  console.log(JSON.stringify(figures));
} else {
  console.log(`A full answer, 12 beds × 50 years, weather derived once:  ${fullAnswer_ms.toFixed(2)} ms`);
  console.log(
    `  a bed's day ${figures.bedDay_ns.toFixed(1)} ns, a tank's day ${figures.tankDay_ns.toFixed(1)} ns`,
  );
  console.log(`  share of the answer in the beds' runs: ${(beds_ms / fullAnswer_ms).toFixed(2)}`);
  const before = process.memoryUsage().rss;
  for (let k = 0; k < 1000; k++) runReady(ready);
  const grown_MB = (process.memoryUsage().rss - before) / 2 ** 20;
  console.log(`1,000 full answers in a row: memory ${grown_MB >= 0 ? "+" : ""}${grown_MB.toFixed(0)} MB`);
  const prepare_ms = median_ms(5, () => {
    prepareGrounds(grounds, prepareWeather(longRecord(fiftyYears_days), grounds.place));
  });
  console.log(
    `Weather and shade derived: ${prepare_ms.toFixed(0)} ms, ${(prepare_ms / fullAnswer_ms).toFixed(1)} answers`,
  );
  console.log(`Import of 100 years of daily rows: ${importOf100Years_ms().toFixed(0)} ms`);
  const times = decisionTimes();
  console.log(
    `Best sets for every budget: of 10 measures ${times.frontierOf10_ms.toFixed(0)} ms, of 15 ${times.frontierOf15_ms.toFixed(0)} ms`,
  );
  console.log(`1,000 draws of the demo's plan: ${times.thousandDraws_ms.toFixed(0)} ms`);
  console.log(`60 sizes of a tank over 50 years: ${times.sixtySizes_ms.toFixed(1)} ms`);
  const rounds = roundsTimes();
  console.log(
    `Rounds of 40 beds: month table with its rerun over 30 years ${rounds.tableOf40_ms.toFixed(0)} ms, a day packed ${rounds.packingOf40_ms.toFixed(0)} ms`,
  );
  console.log(`One estimate through HTTP: ${(await estimateOverHttp_ms()).toFixed(0)} ms`);
}

/** A tank of one size over the record, its draw known. */
function runSize(capacity_L: number): void {
  const [group] = tankGroups([tank("t", { capacity_L })]);
  let level_L = group!.half_L;
  for (let i = 0; i < fiftyYears_days; i++) level_L = stepTank(group!, series, i, level_L);
}
