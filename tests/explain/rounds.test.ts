import { describe, expect, test } from "vitest";
import { formatIso, parseIso } from "../../src/engine/weather/dates.ts";
import { explain } from "../../src/explain/explain.ts";
import { explainRound } from "../../src/explain/rounds/explain-round.ts";
import { workedLines } from "../../src/explain/rounds/on-paper.ts";
import { plainSay } from "../../src/explain/say.ts";
import type { Step, Working } from "../../src/explain/working.ts";
import { roundsDocument } from "../../src/report/rounds.ts";
import { workOutRounds } from "../../src/report/rounds-work.ts";
import { weekDocument } from "../../src/report/week.ts";
import type { WeekAsk } from "../../src/report/week-ask.ts";
import { workOutWeek } from "../../src/report/week-work.ts";
import { roundsWords } from "../../src/words/en/rounds.ts";
import {
  isRoundAddress,
  type MonthFigure,
  monthFigures,
  roundAt,
  runFigures,
} from "../../src/words/round-at.ts";
import { weekWordsIn } from "../../src/words/rounds-said.ts";
import { demoRecord, demoSurvey } from "../helpers/demo-rounds.ts";
import { workFiles } from "../helpers/worked.ts";
import { evaluate } from "./evaluate.ts";
import { isSame } from "./walk.ts";

const worked = workOutRounds(demoSurvey(), demoRecord());
const site = workFiles("demo/school.survey.json", "demo/seattle.csv", { keepDays: true });
const ask: WeekAsk = {
  firstDay: parseIso("2026-07-20")!,
  log: [
    { date: "2026-07-16", kind: "watering", id: "oval", minutes: 200 },
    { date: "2026-07-17", kind: "watering", id: "oval", minutes: 20 },
    { date: "2026-07-17", kind: "rain", rain_mm: 4, days: 5 },
  ],
  level_L: new Map([
    ["yard-tank", 900],
    ["hall-tank", 9000],
  ]),
  lastRound: "some",
  heat: "hotter",
  forecast: [],
};
const week = workOutWeek(worked, ask);
const say = plainSay("metric", "en");
const book = { worked, week, say };
const words = weekWordsIn("metric");
const document = roundsDocument(worked, roundsWords, { week: weekDocument(worked, week, words) });
const open = (at: string) => explainRound(book, at);

/** What the screens show, with the address that each figure opens at. */
const shown: [string, number][] = [
  ...document.months.flatMap(({ month, beds }) =>
    beds.flatMap((row): [string, number][] => [
      ...ofRow(row.id, month - 1, row, false),
      ...(row.dry ? ofRow(row.id, month - 1, row.dry, true) : []),
    ]),
  ),
  ...document.months.map(({ month, beds }): [string, number] => [
    roundAt.months(month - 1),
    beds.reduce((sum, { month_L }) => sum + month_L, 0),
  ]),
  ...document.rounding.flatMap(({ id, allYears: cost }): [string, number][] => [
    [roundAt.rounding(id, "water"), cost.given_L_year / cost.need_L_year - 1],
    [roundAt.rounding(id, "stress"), cost.stressDays_year - cost.needStressDays_year],
  ]),
  ...document.programme!.percentByMonth.map((percent, m): [string, number] => [roundAt.percent(m), percent]),
  ...document.programme!.beds.flatMap(({ id, minutes, cost }): [string, number][] => [
    [roundAt.timer(id, "minutes"), minutes],
    [roundAt.timer(id, "water"), cost.given_L_year / cost.need_L_year - 1],
    [roundAt.timer(id, "stress"), cost.stressDays_year - cost.needStressDays_year],
  ]),
  ...document.week!.beds.flatMap(({ id, missing_mm, waterings, litres }): [string, number][] => [
    [roundAt.soil(id), missing_mm.middle],
    [roundAt.week(id), litres],
    ...waterings.flatMap((run): [string, number][] => [
      [roundAt.run(id, run.date, "minutes"), run.minutes],
      [roundAt.run(id, run.date, "litres"), run.litres],
      [roundAt.run(id, run.date, "cycles"), run.cycles],
      [roundAt.run(id, run.date, "soak"), run.soak_min],
    ]),
  ]),
  ...document.week!.tanks.flatMap(({ id, daysLeft, rations, mainsToKeepAll_L }): [string, number][] => [
    [roundAt.tank(id, "days"), daysLeft!.middle],
    [roundAt.tank(id, "keep"), mainsToKeepAll_L],
    ...rations.map((row): [string, number] => [roundAt.ration(id, row.id), row.fromTank_L]),
  ]),
  ...document.week!.holidays.flatMap(({ beds }, place) =>
    beds.flatMap(({ id, minutes, lasts_days }): [string, number][] => [
      [roundAt.away(place, id, "soak"), minutes],
      [roundAt.away(place, id, "lasts"), lasts_days.low],
    ]),
  ),
  ...document.conflicts.map(({ id, month, stressDays_year }): [string, number] => [
    roundAt.conflict(id, month - 1),
    stressDays_year,
  ]),
  [roundAt.lastWeek("oval"), 33_000],
  [roundAt.done("oval", "2026-07"), 33_000],
];

function ofRow(
  id: string,
  month: number,
  row: (typeof document.months)[number]["beds"][number]["dry"] & object,
  isDry: boolean,
): [string, number][] {
  const at = (what: MonthFigure) => roundAt.month(id, month, what, isDry);
  const always: [string, number][] = [[at("month"), row.month_L]];
  if (row.minutes === 0) return always;
  return [
    ...always,
    [at("minutes"), row.minutes],
    [at("net"), row.net_mm],
    [at("interval"), row.everyDays!],
    [at("cycles"), row.cycles],
    [at("soak"), row.soak_min],
    [at("litres"), row.litres],
    [at("wetted"), row.wetted_m],
    ...(row.leaveAfterRain_mm === null ? [] : [[at("rain"), row.leaveAfterRain_mm] as [string, number]]),
  ];
}

test("every figure that is shown opens to a working that ends in it", () => {
  const wrong = shown.flatMap(([at, value]) => {
    const found = open(at)?.value;
    return found !== undefined && isSame(found, value) ? [] : [`${at}: ${found} beside ${value}`];
  });
  expect(wrong).toEqual([]);
  expect(shown.length).toBeGreaterThan(500);
});

test("each step can be worked out again from its numbers, and each number says where it came from", () => {
  const spoken = Object.values(words.aloud).flatMap((sentence) =>
    sentence.flatMap((part) => (typeof part === "string" ? [] : [part.at])),
  );
  const finishes = document
    .week!.days.filter(({ finish }) => finish !== null)
    .map(({ date }) => roundAt.finish(date));
  const times = document.week!.beds.flatMap(({ id, waterings }) =>
    waterings.filter(({ runs }) => runs.length > 0).map(({ date }) => roundAt.run(id, date, "times")),
  );
  const all = [roundAt.all("litres"), roundAt.all("tank")];
  const queue = [...shown.map(([at]) => at), ...spoken, ...finishes, ...times, ...all];
  const seen = new Set<string>();
  const faults: string[] = [];
  for (const at of queue) {
    if (seen.has(at)) continue;
    seen.add(at);
    const working = isRoundAddress(at) ? open(at) : explain(site, at, say);
    if (!working) {
      faults.push(`${at} leads nowhere`);
      continue;
    }
    if (!isRoundAddress(at)) continue;
    faults.push(...faultsOf(at, working));
    for (const given of working.given) {
      if (given.at === undefined) continue;
      if (given.value !== undefined && !given.at.endsWith("/keep")) {
        const below = isRoundAddress(given.at) ? open(given.at) : explain(site, given.at, say);
        if (!below || !isSame(below.value!, given.value))
          faults.push(`${at}: ${given.name} is ${given.value}, ${given.at} gives ${below?.value}`);
      }
      queue.push(given.at);
    }
  }
  expect(faults.slice(0, 20)).toEqual([]);
  expect(seen.size).toBeGreaterThan(700);
});

function faultsOf(at: string, working: Working): string[] {
  const faults: string[] = [];
  if (working.at !== at) faults.push(`${at}: says that it is ${working.at}`);
  if (!working.steps.every((step) => isRight(step)))
    faults.push(`${at}: ${JSON.stringify(working.steps.find((step) => !isRight(step)))}`);
  if (working.title.includes("undefined")) faults.push(`${at}: ${working.title}`);
  for (const { name, text, source, at: further } of working.given)
    if (/NaN|undefined|∞/.test(`${name}${text}${source}`) && (source !== undefined || further === undefined))
      faults.push(`${at}: ${name}: ${text} (${source})`);
  return faults;
}

function isRight({ expression, value, withNumbers, result }: Step): boolean {
  if (!expression || value === undefined) return false;
  return isSame(evaluate(expression), value) && !/NaN|undefined|∞|[{}]/.test(`${withNumbers}${result}`);
}

describe("where there is nothing to open", () => {
  test.each([
    "round/month/oval/13/minutes",
    "round/month/oval/01/minutes",
    "round/month/nowhere/07/minutes",
    "round/month/oval/07/colour",
    "round/soil/nowhere",
    "round/soil/oval/999",
    "round/run/oval/2026-01-01/minutes",
    "round/tank/nowhere/days",
    "round/away/9/quad/lasts",
    "round/toString/oval",
    "bed/oval/need",
    "round",
  ])("%s", (at) => {
    expect(open(at)).toBeNull();
  });

  test("no week was asked for", () => {
    const alone = { worked, week: null, say };
    for (const at of [roundAt.soil("oval"), roundAt.all("litres"), roundAt.tank("yard-tank", "days")])
      expect(explainRound(alone, at)).toBeNull();
    for (const what of runFigures)
      expect(explainRound(alone, roundAt.run("oval", formatIso(ask.firstDay), what))).toBeNull();
  });
});

test("the interval is RAW ÷ ETc by FAO-56, and minutes come from depth, area, flow and efficiency", () => {
  const interval = open(roundAt.month("oval", 6, "interval"))!;
  expect(interval.sources.join()).toMatch(/FAO-56.*Eq\. 83 with Eq\. 80: RAW ÷ ETc/);
  const minutes = open(roundAt.month("oval", 6, "minutes"))!;
  const links = minutes.given.map(({ at }) => at);
  for (const at of ["bed/oval/area", "bed/oval/efficiency", "bed/oval/flow"]) expect(links).toContain(at);
  expect(monthFigures).toContain("asked");
});

test("on paper a line a bed says how its minutes came about", () => {
  const lines = workedLines({ worked, week: null, say }, 7);
  expect(lines.length).toBeGreaterThan(4);
  expect(lines.find((line) => line.startsWith("Oval"))).toMatch(
    /\smm ÷ .* × .*\sm² ÷ .*\sL\/min = .*\smin, so \d+/,
  );
});
