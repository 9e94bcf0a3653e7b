import type { UnitSystem } from "../../units.ts";
import { amountsIn } from "../amounts.ts";
import { moneyIn } from "../money.ts";
import { proposalSentence, weatherName } from "./choices-reasons.ts";
import { allOf } from "./lists.ts";
import { unknownAdvice, unknownName } from "./unknowns.ts";

const whole = new Intl.NumberFormat("en", { maximumFractionDigits: 0 });
const percent = new Intl.NumberFormat("en", { style: "percent", maximumFractionDigits: 1 });
const wholePercent = new Intl.NumberFormat("en", { style: "percent", maximumFractionDigits: 0 });

type Worth = "pays" | "does-not-pay" | "saves-nothing" | "not-priced";
type Limit = "tank" | "roof" | "demand" | "nothing-asked";
type Facts = Readonly<Record<string, string | number>>;

const quoted = (names: readonly string[]) => allOf(names.map((name) => `“${name}”`));

/** What kind of amount a figure of the brief is. */
export type FigureKind = "water" | "money" | "price" | "size";

/** Marks a figure where it opens to its working. */
export type MarkFigure = (text: string, value: number, kind: FigureKind) => string;

/** What the brief for a committee says; money in the survey's currency, water in the reader's units. */
export function briefWords(
  currency: string | null,
  units: UnitSystem = "metric",
  mark: MarkFigure = (text) => text,
) {
  const plainMoney = moneyIn(currency);
  const amounts = amountsIn(units);
  const { unit, depthUnit, depth, perVolume, volume } = amounts;
  const money = (amount: number) => mark(plainMoney(amount), amount, "money");
  const priced = (perKL: number) => mark(plainMoney(perVolume(perKL)), perKL, "price");
  const water = (kL: number) => mark(amounts.water(kL), kL, "water");
  const bare = (kL: number) => mark(amounts.bare(kL), kL, "water");
  const size = (litres: number) => mark(amounts.size(litres), litres, "size");
  return {
    title: (site: string) => `${site}: watering and mains water`,
    question: (tanks: readonly string[]) =>
      tanks.length === 0
        ? "What could be done first to give up mains water?"
        : `Is ${tanks.length === 1 ? quoted(tanks) : "one of the tanks or roofs quoted"} worth it, or what else first?`,
    answer: "The answer",
    tankAnswers: "Tanks and roofs",
    steps: "The best next steps",
    table: "What each measure saves and costs",
    otherWeather: "In other weather: a question, no forecast",
    notKnown: "What this does not know",
    licensed: "What must be licensed, permitted or minded",
    sources: "Sources",
    under: (beds: readonly string[], known: number, short: number) =>
      `${allOf(beds)} ${beds.length === 1 ? "gets" : "get"} less than ${beds.length === 1 ? "it needs" : "they need"} today (${beds.length} of the ${known} beds whose watering is known), ${water(short)} a year short in all. That comes before any saving.`,
    noMore: (plan: number, today: number) =>
      `If no bed got more than today, the same plan would take ${water(plan)} a year in place of ${water(today)}; those beds would stay short.`,
    give: (today: number, plan: number, middle: number | null) =>
      `Mains water for the grounds could fall from ${bare(today)} to ${water(plan)} a year with the measures chosen and every bed watered to its need${middle === null ? "" : `: ${water(middle)} given up in the middle year`}.`,
    needOnly: (need: number, plan: number) =>
      `How the grounds are watered today is not known, so no saving is claimed: watered to need they take ${water(need)} of mains water a year, with the measures chosen ${water(plan)}.`,
    takesMore: (today: number, plan: number) =>
      `To water every bed to its need takes more mains water than today, ${water(plan)} a year in place of ${water(today)}, even with the measures chosen: there is no saving to claim.`,
    years: (dry: { year: number; kL: number }, wet: { year: number; kL: number }) =>
      `In a dry year such as ${dry.year} it would be ${water(dry.kL)} less than today, in a wet one such as ${wet.year} it would be ${water(wet.kL)} less.`,
    width: (low: number, high: number, draws: number) =>
      `What is not known for sure puts it between ${bare(low)} and ${water(high)} in eight of ten of ${whole.format(draws)} draws.`,
    byNeed: (share: number, saved: number | null) =>
      `${water(share)} of it come from watering to need alone, which buys nothing${saved === null ? "" : ` and takes about ${money(saved)} a year off the bill`}.`,
    bestSet: (names: readonly string[], cost: number, saved: number, npv: number | null, years: number) =>
      `The best set for the budget is ${quoted(names)} beside watering to need: ${money(cost)}, ${water(saved)} a year given up${npv === null ? "" : `, worth ${money(npv)} over ${whole.format(years)} years`}.`,
    nothingToBuy: (saved: number) =>
      `Of what is quoted nothing is worth buying at these prices: watering to need alone gives up ${water(saved)} a year.`,
    draw: (one: readonly string[], other: readonly string[], chance: number) =>
      `${orNeed(one)} and ${orNeed(other)} are a draw: the first does better in ${whole.format(100 * chance)} of 100 draws.`,
    tankVerdict: (facts: {
      name: string;
      worth: Worth;
      kL: number;
      cost: number | null;
      npv: number | null;
      years: number;
    }) => tankVerdict(facts, money, water),
    tankLimit: (
      name: string,
      limit: Limit,
      facts: { capacity_L: number; saved_kL: number; most_kL: number; enough_L: number },
    ) => tankLimit(name, limit, facts, { water, size }),
    stepNeed: (saved: number, worth: number | null) =>
      `Set today’s watering to the need: ${water(saved)} a year${worth === null ? "" : `, about ${money(worth)} a year`}, and nothing to buy.`,
    stepMeasure: (name: string, saved: number, cost: number, npv: number | null, by: string | null) =>
      `${name}: ${water(saved)} a year for ${money(cost)}${by === null ? "" : ` (quote from ${by})`}${npv === null ? "" : `; worth ${money(npv)} more than it costs`}.`,
    stepQuote: (what: string, saved: number, upTo: number | null) =>
      `${what} It would save ${water(saved)} a year${upTo === null ? "" : ` and pays up to a cost of ${money(upTo)}`}: ask for a quote.`,
    stepNoCost: (name: string, saved: number) =>
      `${name}: ${water(saved)} a year. It has no cost yet: ask for a quote.`,
    stepNotWorth: (name: string, saved: number, cost: number, perKL: number | null, top: number | null) =>
      `${name} is not worth its ${money(cost)} for the water: ${water(saved)} a year${perKL === null || top === null ? "" : ` at ${priced(perKL)} for ${volume}, where that costs ${priced(top)} at most`}.`,
    proposal: (code: string, facts: Facts) => proposalSentence(code, facts, units),
    columns: [
      "Measure",
      "Cost",
      `Saves after the others, ${unit} a year`,
      `Its share, ${unit} a year`,
      `Cost of ${volume}`,
      "Present value",
      "Worth it?",
    ],
    money: (amount: number | null) => (amount === null ? "–" : money(amount)),
    price: (perKL: number | null) => (perKL === null ? "–" : priced(perKL)),
    kL: bare,
    water,
    volume,
    notQuoted: "no quote",
    worth: (worth: Worth) => worthWords[worth],
    weatherColumns: [
      "Weather",
      `Rain, ${depthUnit} a year`,
      `Plan, ${unit} a year`,
      `Given up, middle year, ${unit}`,
      "Best set",
      "Breaks first",
    ],
    weather: (code: string) => weatherName(code, units),
    mm: depth,
    choiceStays: "stays",
    choiceChanges: (names: readonly string[]) => allOf(names),
    toNeed: "watering to need alone",
    breaks: (tank: string) => tank,
    habitUnknown: (beds: readonly string[]) =>
      `How ${allOf(beds)} ${beds.length === 1 ? "is" : "are"} watered today (${beds.length} ${beds.length === 1 ? "bed" : "beds"}): no saving is claimed from ${beds.length === 1 ? "it" : "them"}.`,
    fewYears: (years: number) =>
      `What a dry decade brings: the record has ${years} whole ${years === 1 ? "year" : "years"}.`,
    noCost: (names: readonly string[]) =>
      `What ${quoted(names)} would cost: ${names.length} without a quote, counted in water only.`,
    unknown: (at: string, share: number, bed: string | null) =>
      `${unknownName(at, bed)}: ${wholePercent.format(share)} of the width. ${unknownAdvice(at)}`,
    notDrawn: "How wide these figures are: nothing was drawn (0 draws). Ask for draws to see.",
    outlook: (discount: number, rise: number, years: number) =>
      `Money: ${percent.format(discount)} real discount a year, water ${percent.format(rise)} a year dearer, ${whole.format(years)} years ahead; a quote is bought again when its life ends.`,
    published: [
      "Plants, soil and watering after FAO Irrigation and Drainage Paper 56; tanks by yield after spillage (Fewkes and Butler 2000).",
      "Each measure’s share is the mean of what it adds over every order in which the measures could come (Shapley 1953).",
      "Present value and cost of water after NIST Handbook 135.",
    ],
    made: (facts: {
      survey: string;
      from: string;
      to: string;
      engine: string;
      draws: number | null;
      seed: number | null;
    }) =>
      `Survey of ${facts.survey}; weather of ${facts.from} to ${facts.to}; program version ${facts.engine}${facts.draws === null ? "" : `; ${whole.format(facts.draws)} draws, seed ${facts.seed}`}.`,
  };
}

function orNeed(names: readonly string[]): string {
  return names.length === 0 ? "Watering to need alone" : quoted(names);
}

const worthWords: Readonly<Record<Worth, string>> = {
  pays: "pays",
  "does-not-pay": "does not pay",
  "saves-nothing": "saves nothing",
  "not-priced": "no price or quote",
};

function tankVerdict(
  {
    name,
    worth,
    kL: saved,
    cost,
    npv,
    years,
  }: { name: string; worth: Worth; kL: number; cost: number | null; npv: number | null; years: number },
  money: (amount: number) => string,
  water: (kL: number) => string,
): string {
  const price = cost === null ? "" : ` for ${money(cost)}`;
  if (worth === "saves-nothing") return `${name}: not worth it. It saves ${water(saved)} a year${price}.`;
  if (worth === "not-priced")
    return `${name}: saves ${water(saved)} a year; without a quote and a price nobody can say whether it pays.`;
  const over = `over ${whole.format(years)} years`;
  return worth === "pays"
    ? `${name}: worth it. It saves ${water(saved)} a year${price}, worth ${money(npv ?? 0)} more than it costs ${over}.`
    : `${name}: not worth it for the money. It saves ${water(saved)} a year${price} and leaves ${money(-(npv ?? 0))} unpaid ${over}.`;
}

function tankLimit(
  name: string,
  limit: Limit,
  {
    capacity_L,
    saved_kL,
    most_kL,
    enough_L,
  }: { capacity_L: number; saved_kL: number; most_kL: number; enough_L: number },
  { water, size }: { water(kL: number): string; size(litres: number): string },
): string {
  const has = `${name} at ${size(capacity_L)} takes the place of ${water(saved_kL)} of mains water a year`;
  if (limit === "nothing-asked")
    return `${name}: nothing is asked of it, so it saves ${water(saved_kL)} a year at any size.`;
  if (limit === "demand")
    return `${has}, of ${water(most_kL)} at most: what is asked of it is the limit, and a larger one adds little. ${size(enough_L)} would be enough.`;
  if (limit === "roof")
    return `${has}, of ${water(most_kL)} at most: its roof is the limit now, more than its size.`;
  return `${has}, of ${water(most_kL)} at most: its size is the limit now; ${size(enough_L)} would be enough.`;
}
