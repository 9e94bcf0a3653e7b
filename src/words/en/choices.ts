import { allOf } from "./lists.ts";
import { unknownAdvice, unknownName } from "./unknowns.ts";

const whole = new Intl.NumberFormat("en", { maximumFractionDigits: 0 });
const tenth = new Intl.NumberFormat("en", { maximumFractionDigits: 1 });
const percent = new Intl.NumberFormat("en", { style: "percent", maximumFractionDigits: 1 });
const wholePercent = new Intl.NumberFormat("en", { style: "percent", maximumFractionDigits: 0 });

/** 383 kL, 4.2 kL: no finer than such a figure is known. */
function kL(amount: number): string {
  return (Math.abs(amount) < 20 ? tenth : whole).format(amount === 0 ? 0 : amount);
}

function litres(amount: number): string {
  return `${whole.format(amount)} L`;
}

function moneyIn(currency: string | null) {
  return (amount: number): string => {
    const small = Math.abs(amount) < 20 && !Number.isInteger(amount);
    if (currency === null) return small ? amount.toFixed(2) : whole.format(amount);
    return new Intl.NumberFormat("en", {
      style: "currency",
      currency,
      maximumFractionDigits: small ? 2 : 0,
      minimumFractionDigits: small ? 2 : 0,
    }).format(amount);
  };
}

type Worth = "pays" | "does-not-pay" | "saves-nothing" | "not-priced";
type Limit = "tank" | "roof" | "demand" | "nothing-asked";
type Facts = Readonly<Record<string, string | number>>;

const quoted = (names: readonly string[]) => allOf(names.map((name) => `“${name}”`));

/** What the brief for a committee says; money in the survey's currency. */
export function briefWords(currency: string | null) {
  const money = moneyIn(currency);
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
      `${allOf(beds)} ${beds.length === 1 ? "gets" : "get"} less than ${beds.length === 1 ? "it needs" : "they need"} today (${beds.length} of the ${known} beds whose watering is known), ${kL(short)} kL a year short in all. That comes before any saving.`,
    noMore: (plan: number, today: number) =>
      `If no bed got more than today, the same plan would take ${kL(plan)} kL a year in place of ${kL(today)} kL; those beds would stay short.`,
    give: (today: number, plan: number, middle: number | null) =>
      `Mains water for the grounds could fall from ${kL(today)} to ${kL(plan)} kL a year with the measures chosen and every bed watered to its need${middle === null ? "" : `: ${kL(middle)} kL given up in the middle year`}.`,
    takesMore: (today: number, plan: number) =>
      `To water every bed to its need takes more mains water than today, ${kL(plan)} kL a year in place of ${kL(today)} kL, even with the measures chosen: there is no saving to claim.`,
    years: (dry: { year: number; kL: number }, wet: { year: number; kL: number }) =>
      `In a dry year such as ${dry.year} it would be ${kL(dry.kL)} kL less than today, in a wet one such as ${wet.year} ${kL(wet.kL)} kL less.`,
    width: (low: number, high: number, draws: number) =>
      `What is not known for sure puts it between ${kL(low)} and ${kL(high)} kL in eight of ten of ${whole.format(draws)} draws.`,
    byNeed: (share: number, saved: number | null) =>
      `${kL(share)} kL of it come from watering to need alone, which buys nothing${saved === null ? "" : ` and takes about ${money(saved)} a year off the bill`}.`,
    bestSet: (names: readonly string[], cost: number, saved: number, npv: number | null, years: number) =>
      `The best set for the budget is ${quoted(names)} beside watering to need: ${money(cost)}, ${kL(saved)} kL a year given up${npv === null ? "" : `, worth ${money(npv)} over ${whole.format(years)} years`}.`,
    nothingToBuy: (saved: number) =>
      `Of what is quoted nothing is worth buying at these prices: watering to need alone gives up ${kL(saved)} kL a year.`,
    draw: (one: readonly string[], other: readonly string[], chance: number) =>
      `${orNeed(one)} and ${orNeed(other)} are a draw: the first does better in ${whole.format(100 * chance)} of 100 draws.`,
    tankVerdict: (facts: {
      name: string;
      worth: Worth;
      kL: number;
      cost: number | null;
      npv: number | null;
      years: number;
    }) => tankVerdict(facts, money),
    tankLimit: (
      name: string,
      limit: Limit,
      facts: { capacity_L: number; saved_kL: number; most_kL: number; enough_L: number },
    ) => tankLimit(name, limit, facts),
    stepNeed: (saved: number, worth: number | null) =>
      `Set today’s watering to the need: ${kL(saved)} kL a year${worth === null ? "" : `, about ${money(worth)} a year`}, and nothing to buy.`,
    stepMeasure: (name: string, saved: number, cost: number, npv: number | null, by: string | null) =>
      `${name}: ${kL(saved)} kL a year for ${money(cost)}${by === null ? "" : ` (quote from ${by})`}${npv === null ? "" : `; worth ${money(npv)} more than it costs`}.`,
    stepQuote: (what: string, saved: number, upTo: number | null) =>
      `${what} It would save ${kL(saved)} kL a year${upTo === null ? "" : ` and pays up to a cost of ${money(upTo)}`}: ask for a quote.`,
    stepNoCost: (name: string, saved: number) =>
      `${name}: ${kL(saved)} kL a year. It has no cost yet: ask for a quote.`,
    stepNotWorth: (name: string, saved: number, cost: number, perKL: number | null, top: number | null) =>
      `${name} is not worth its ${money(cost)} for the water: ${kL(saved)} kL a year${perKL === null || top === null ? "" : ` at ${money(perKL)} a kL, where a kL costs ${money(top)} at most`}.`,
    proposal: (code: string, facts: Facts) => proposalSentence(code, facts),
    columns: [
      "Measure",
      "Cost",
      "Saves after the others, kL a year",
      "Its share, kL a year",
      "Cost of a kL",
      "Present value",
      "Worth it?",
    ],
    money: (amount: number | null) => (amount === null ? "–" : money(amount)),
    kL,
    notQuoted: "no quote",
    worth: (worth: Worth) => worthWords[worth],
    weatherColumns: [
      "Weather",
      "Rain, mm a year",
      "Plan, kL a year",
      "Given up, middle year",
      "Best set",
      "Breaks first",
    ],
    weather: (code: string) => weatherNames[code] ?? code,
    mm: (amount: number) => whole.format(amount),
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
      "Present value and cost of a kL after NIST Handbook 135.",
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
): string {
  const price = cost === null ? "" : ` for ${money(cost)}`;
  if (worth === "saves-nothing") return `${name}: not worth it. It saves ${kL(saved)} kL a year${price}.`;
  if (worth === "not-priced")
    return `${name}: saves ${kL(saved)} kL a year; without a quote and a price nobody can say whether it pays.`;
  const over = `over ${whole.format(years)} years`;
  return worth === "pays"
    ? `${name}: worth it. It saves ${kL(saved)} kL a year${price}, worth ${money(npv ?? 0)} more than it costs ${over}.`
    : `${name}: not worth it for the money. It saves ${kL(saved)} kL a year${price} and leaves ${money(-(npv ?? 0))} unpaid ${over}.`;
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
): string {
  const has = `${name} at ${litres(capacity_L)} takes the place of ${kL(saved_kL)} kL of mains water a year`;
  if (limit === "nothing-asked")
    return `${name}: nothing is asked of it, so it saves ${kL(saved_kL)} kL a year at any size.`;
  if (limit === "demand")
    return `${has}, of ${kL(most_kL)} kL at most: what is asked of it is the limit, and a larger one adds little. ${litres(enough_L)} would be enough.`;
  if (limit === "roof")
    return `${has}, of ${kL(most_kL)} kL at most: its roof is the limit now, more than its size.`;
  return `${has}, of ${kL(most_kL)} kL at most: its size is the limit now; ${litres(enough_L)} would be enough.`;
}

const weatherNames: Readonly<Record<string, string>> = {
  record: "As recorded",
  "driest-years": "Its driest years again and again",
  "less-rain": "A fifth less rain",
  warmer: "2 °C warmer",
  "longer-dry-spells": "Dry spells half as long again",
  "own-rain": "Rain as entered",
  "own-warmer": "Warmer as entered",
  "own-dry-spells": "Dry spells as entered",
};

/** Why something is proposed, and what it is. */
export function proposalSentence(code: string, facts: Facts): string {
  return proposalWords[code]?.(facts) ?? code;
}

const figure = (value: string | number | undefined) => kL(Number(value));

const proposalWords: Readonly<Record<string, (facts: Facts) => string>> = {
  "tank-idle": ({ tank, capacity_L }) =>
    `${tank} (${litres(Number(capacity_L))}) is there and not used: open its valve, or see to its pump and changeover.`,
  leak: ({ litresPerDay }) => `A leak of ${litres(Number(litresPerDay))} a day runs on: mend it.`,
  bare: ({ bed, area_m2 }) =>
    `${bed} has ${whole.format(Number(area_m2))} m² of bare soil: lay 75 mm of wood chip.`,
  thirsty: ({ bed, thirst, instead }) =>
    `${bed} holds plants of ${thirst} thirst; ${instead} ones would do for 1 class less.`,
  sprays: ({ bed, method }) =>
    `${bed} is watered by ${method} from above, 1 bed that could have a drip line.`,
  uneven: ({ bed, uniformity }) =>
    `The sprinklers of ${bed} water unevenly (uniformity ${wholePercent.format(Number(uniformity))}): set heads and pressure right, to 70%.`,
  "roof-unconnected": ({ roof, tank, area_m2 }) =>
    `A roof of ${whole.format(Number(area_m2))} m² (${roof}) drains away: lead it to ${tank}.`,
  "first-flush": ({ roof, firstFlush_mm }) =>
    `The first flush of ${roof} takes ${tenth.format(Number(firstFlush_mm))} mm off each rain: 0.5 mm is usual.`,
  "tank-small": ({ tank, capacity_L, enough_L }) =>
    `${tank} (${litres(Number(capacity_L))}) is small for its roof and draw: ${litres(Number(enough_L))} would be enough.`,
  "tank-large": ({ tank, capacity_L, enough_L }) =>
    `${tank} (${litres(Number(capacity_L))}) is larger than its roof and draw can use: ${litres(Number(enough_L))} would do.`,
  "over-need": ({ bed, habit_kL_year, need_kL_year }) =>
    `${bed} gets ${figure(habit_kL_year)} kL a year and needs ${figure(need_kL_year)}.`,
  spills: ({ tank, spill_kL_year }) =>
    `${tank} spills ${figure(spill_kL_year)} kL a year and nothing but beds draws on it: toilets or washing could.`,
};

/** Every reason that has a sentence. */
export const proposalsWithWords = Object.keys(proposalWords);

const cautionWords = {
  footing:
    "A full tank weighs 1 tonne for each 1,000 L: its footing, and anything that it stands on, is an engineer’s to say.",
  planning: "Ask before ordering whether the tank’s size and place need a permit.",
  backflow: "Any join of tank and mains, with its backflow protection, is a licensed plumber’s work.",
  electrics: "A pump’s power supply is a licensed electrician’s work.",
  overflow: "Overflow must run to where it harms no footing, path or neighbour.",
  "old-roof":
    "Old roofs may hold asbestos or lead: have them looked at first, and keep everybody off them who is not equipped for it.",
  "eaten-raw": "Ask the health authority before tank water goes on vegetables or fruit eaten raw.",
} as const;

/** The sentence of a caution that a committee should read before it orders work. */
export function choiceCautionSentence(code: keyof typeof cautionWords): string {
  return cautionWords[code];
}
