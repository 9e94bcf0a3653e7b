import type { GroundsChoices } from "./choices-schema.ts";

type Money = number;

/** What the brief says, each sentence from the figures that it needs; the wording is in words. */
export interface BriefWords {
  title(site: string): string;
  /** @param tanks names of the measures that build, resize or feed a tank */
  question(tanks: readonly string[]): string;
  answer: string;
  tankAnswers: string;
  steps: string;
  table: string;
  otherWeather: string;
  notKnown: string;
  licensed: string;
  sources: string;
  under(beds: readonly string[], known: number, short_kL: number): string;
  noMore(plan_kL: number, today_kL: number): string;
  give(today_kL: number, plan_kL: number, middle_kL: number | null): string;
  /** Where nothing is known of how beds are watered today. */
  needOnly(need_kL: number, plan_kL: number): string;
  takesMore(today_kL: number, plan_kL: number): string;
  years(dry: { year: number; kL: number }, wet: { year: number; kL: number }): string;
  width(low_kL: number, high_kL: number, draws: number): string;
  byNeed(share_kL: number, money: Money | null): string;
  bestSet(names: readonly string[], cost: Money, saved_kL: number, npv: Money | null, years: number): string;
  nothingToBuy(saved_kL: number): string;
  draw(one: readonly string[], other: readonly string[], chance: number): string;
  tankVerdict(facts: {
    name: string;
    worth: GroundsChoices["measures"][number]["worth"];
    kL: number;
    cost: Money | null;
    npv: Money | null;
    years: number;
  }): string;
  tankLimit(name: string, limit: GroundsChoices["tanks"][number]["limit"], facts: TankFacts): string;
  stepNeed(kL: number, money: Money | null): string;
  stepMeasure(name: string, kL: number, cost: Money, npv: Money | null, quotedBy: string | null): string;
  stepQuote(what: string, kL: number, worthUpTo: Money | null): string;
  stepNoCost(name: string, kL: number): string;
  stepNotWorth(
    name: string,
    kL: number,
    cost: Money,
    costPerKL: Money | null,
    topPerKL: Money | null,
  ): string;
  proposal(code: string, facts: Readonly<Record<string, string | number>>): string;
  columns: readonly string[];
  money(amount: Money | null): string;
  /** What a kL costs, as a price of what water is bought by. */
  price(perKL: Money | null): string;
  kL(amount: number): string;
  notQuoted: string;
  worth(worth: GroundsChoices["measures"][number]["worth"]): string;
  weatherColumns: readonly string[];
  weather(code: string): string;
  mm(amount: number): string;
  choiceStays: string;
  choiceChanges(names: readonly string[]): string;
  toNeed: string;
  breaks(tank: string): string;
  habitUnknown(beds: readonly string[]): string;
  fewYears(years: number): string;
  noCost(names: readonly string[]): string;
  unknown(at: string, share: number, bed: string | null): string;
  notDrawn: string;
  outlook(discountShare: number, riseShare: number, years: number): string;
  published: readonly string[];
  made(facts: {
    survey: string;
    from: string;
    to: string;
    engine: string;
    draws: number | null;
    seed: number | null;
  }): string;
}

export interface TankFacts {
  capacity_L: number;
  saved_kL: number;
  most_kL: number;
  enough_L: number;
}
