import { waterToNeed } from "../survey/measures/chosen.ts";
import { stepsOf } from "./brief-steps.ts";
import type { BriefWords } from "./brief-words.ts";
import type { GroundsChoices } from "./choices-schema.ts";

/** A part of the brief, for whichever form it is written in. */
export type Block =
  | { kind: "title" | "heading" | "question"; text: string }
  | { kind: "paragraph"; text: string }
  | { kind: "list" | "steps"; items: string[] }
  | { kind: "table"; caption: string; columns: readonly string[]; rows: string[][] };

/** Names of beds and tanks, for sentences. */
export interface BriefNames {
  bed(id: string): string;
  /** By its place in the survey. */
  bedAt(place: number): string;
  tank(id: string): string;
}

/** Changes that have to do with a tank. */
const tankChanges: readonly string[] = ["addTank", "resizeTank", "useTank", "connectRoof"];
/** What is not known is told of the largest, no more than these. */
const mostUnknown = 3;
/** A record of fewer whole years says little of a dry decade. */
const fewYears = 10;

/**
 * The two pages for a committee, written from the decision document alone: words before figures, no claim without its
 * number, what is not worth its money said so, and what cannot be told apart said to be a draw.
 */
export function briefOf(choices: GroundsChoices, words: BriefWords, names: BriefNames): Block[] {
  const tankMeasures = choices.measures.filter(({ change }) => tankChanges.includes(change));
  return [
    { kind: "title", text: words.title(choices.survey) },
    { kind: "question", text: words.question(tankMeasures.map(({ name }) => name)) },
    { kind: "heading", text: words.answer },
    ...paragraphs(answer(choices, words, names)),
    ...section(words.tankAnswers, "list", tankAnswers(choices, words)),
    ...section(words.steps, "steps", stepsOf(choices, words, names)),
    ...measureTable(choices, words),
    ...weatherTable(choices, words, names),
    ...section(words.notKnown, "list", notKnown(choices, words, names)),
    ...section(words.licensed, "list", choices.beforeWork),
    { kind: "heading", text: words.sources },
    ...paragraphs(
      [words.published.join(" "), outlookOf(choices, words), madeOf(choices, words)].filter(Boolean),
    ),
  ];
}

function paragraphs(texts: readonly string[]): Block[] {
  return texts.map((text) => ({ kind: "paragraph", text }));
}

function section(heading: string, kind: "list" | "steps", items: string[]): Block[] {
  return items.length === 0
    ? []
    : [
        { kind: "heading", text: heading },
        { kind, items },
      ];
}

/** Where gardens get less than they need, that comes before any saving. */
function answer(choices: GroundsChoices, words: BriefWords, { bed }: BriefNames): string[] {
  const { plans, mains, shares, best, spread, measures, outlook } = choices;
  const { underWatered, overWatered } = plans;
  const said: string[] = [];
  if (underWatered.length > 0) {
    const short = underWatered.reduce((sum, row) => sum + row.need_kL_year - row.habit_kL_year, 0);
    const known = underWatered.length + overWatered.length;
    said.push(
      words.under(
        underWatered.map((row) => bed(row.bed)),
        known,
        short,
      ),
    );
  }
  // where nothing is known of today the need stands in for it, and nothing is claimed from that
  if (mains.todayUnknown.length > 0 && underWatered.length + overWatered.length === 0)
    said.push(words.needOnly(mains.need_kL_year, mains.plan_kL_year));
  else said.push(...againstToday(choices, words));
  const need = shares.find(({ id }) => id === waterToNeed);
  if (need && need.share_kL_year > 0) said.push(words.byNeed(need.share_kL_year, need.saved_money_year));
  const chosen = namesOf(choices, best.measures);
  if (measures.length > 0)
    said.push(
      chosen.length === 0
        ? words.nothingToBuy(best.saved_kL_year)
        : words.bestSet(chosen, best.cost, best.saved_kL_year, best.npv, outlook.horizon_years),
    );
  const [first, second] = spread?.rivals ?? [];
  if (spread?.isDraw && first && second)
    said.push(
      words.draw(namesOf(choices, first.measures), namesOf(choices, second.measures), spread.chance[0]![1]!),
    );
  return said;
}

/** What falls against today, in the middle, in a dry and a wet year, and with all that is not known for sure. */
function againstToday(choices: GroundsChoices, words: BriefWords): string[] {
  const { mains, plans, spread } = choices;
  const said: string[] = [];
  const { today_kL_year: today, plan_kL_year: plan, giveUp_kL_year } = mains;
  said.push(plan < today ? words.give(today, plan, giveUp_kL_year.p50) : words.takesMore(today, plan));
  if (plans.noMoreThanToday) said.push(words.noMore(plans.noMoreThanToday.plan_kL_year, today));
  const [dry, wet] = [mains.dryYear, mains.wetYear].map((year) => yearOf(choices, year));
  if (dry && wet && dry.year !== wet.year) said.push(words.years(dry, wet));
  const drawn = spread?.giveUp_kL_year;
  if (spread && drawn && drawn.p10 !== null && drawn.p90 !== null)
    said.push(words.width(drawn.p10, drawn.p90, spread.draws));
  return said;
}

function yearOf({ mains }: GroundsChoices, year: number | null): { year: number; kL: number } | null {
  const row = mains.byYear.find((each) => each.year === year);
  return row ? { year: row.year, kL: row.today_kL - row.plan_kL } : null;
}

/** Names of the measures of a set, watering to need left out. */
export function namesOf({ measures }: GroundsChoices, ids: readonly string[]): string[] {
  return measures.filter(({ id }) => ids.includes(id)).map(({ name }) => name);
}

function tankAnswers({ measures, tanks, outlook }: GroundsChoices, words: BriefWords): string[] {
  const verdicts = measures
    .filter(({ change }) => tankChanges.includes(change))
    .map(({ name, worth, after_kL_year, cost, npv }) =>
      words.tankVerdict({ name, worth, kL: after_kL_year, cost, npv, years: outlook.horizon_years }),
    );
  const limits = tanks.map(({ name, limit, capacity_L, saved_kL_year, most_kL_year, enough_L }) =>
    words.tankLimit(name, limit, {
      capacity_L,
      saved_kL: saved_kL_year,
      most_kL: most_kL_year,
      enough_L,
    }),
  );
  return [...verdicts, ...limits];
}

function measureTable({ measures, shares }: GroundsChoices, words: BriefWords): Block[] {
  if (measures.length === 0) return [];
  const rows = measures.map(({ id, name, cost, after_kL_year, costPerKL, npv, worth }) => {
    const share = shares.find((row) => row.id === id);
    return [
      name,
      cost === null ? words.notQuoted : words.money(cost),
      words.kL(after_kL_year),
      share ? words.kL(share.share_kL_year) : "",
      words.price(costPerKL),
      words.money(npv),
      words.worth(worth),
    ];
  });
  return [{ kind: "table", caption: words.table, columns: words.columns, rows }];
}

function weatherTable(choices: GroundsChoices, words: BriefWords, { tank }: BriefNames): Block[] {
  const [asIs, ...others] = choices.scenarios;
  if (!asIs || others.length === 0) return [];
  const rows = [asIs, ...others].map((row) => {
    const change = choices.wouldChange.find(({ what, of }) => what === "weather" && of === row.code);
    const then = namesOf(choices, row.measures);
    return [
      words.weather(row.code),
      words.mm(row.rain_mm_year),
      words.kL(row.plan_kL_year),
      row.giveUp_kL_year.p50 === null ? "" : words.kL(row.giveUp_kL_year.p50),
      change?.isChange ? words.choiceChanges(then.length > 0 ? then : [words.toNeed]) : words.choiceStays,
      row.breaksFirst === null ? "" : words.breaks(tank(row.breaksFirst)),
    ];
  });
  return [{ kind: "table", caption: words.otherWeather, columns: words.weatherColumns, rows }];
}

function notKnown(choices: GroundsChoices, words: BriefWords, names: BriefNames): string[] {
  const { mains, leftOut, spread } = choices;
  const said: string[] = [];
  if (mains.todayUnknown.length > 0) said.push(words.habitUnknown(mains.todayUnknown.map(names.bed)));
  if (leftOut.length > 0) said.push(words.noCost(namesOf(choices, leftOut)));
  if (mains.byYear.length < fewYears) said.push(words.fewYears(mains.byYear.length));
  if (!spread) return [...said, words.notDrawn];
  const largest = spread.byUnknown.slice(0, mostUnknown);
  return [...said, ...largest.map(({ at, share }) => words.unknown(at, share, bedOf(at, names)))];
}

/** The name of the bed that a path speaks of. */
function bedOf(at: string, { bedAt }: BriefNames): string | null {
  const place = /^beds\[(\d+)\]/.exec(at)?.[1];
  return place === undefined ? null : bedAt(Number(place));
}

function outlookOf({ outlook, currency }: GroundsChoices, words: BriefWords): string {
  return currency === null
    ? ""
    : words.outlook(outlook.discountShare, outlook.riseShare, outlook.horizon_years);
}

function madeOf({ survey, weather, engine, spread }: GroundsChoices, words: BriefWords): string {
  const { from, to } = weather;
  return words.made({ survey, from, to, engine, draws: spread?.draws ?? null, seed: spread?.seed ?? null });
}
