import { allOf } from "./lists.ts";

const quoted = (names: readonly string[]) => allOf(names.map((name) => `“${name}”`));

/** What is said of tanks and roofs that were quoted. */
export interface TankFacts {
  name: string;
  worth: "pays" | "does-not-pay" | "saves-nothing" | "not-priced";
  saved: string;
  cost: string;
}

/** Sentences of the choices screen. Figures come in as text, with their units. */
export const choicesPage = {
  name: "Choices",
  question: "Is another tank worth it, or what else first?",
  reading:
    "What a measure brings depends on what is done beside it, so every set of measures is run by itself through the whole record; nothing is added up. A tank is judged like every other measure: by the mains water that it takes the place of, and by its money.",
  yes: (pays: readonly TankFacts[], others: number) =>
    `Yes, at these quotes: ${allOf(pays.map(({ name, saved, cost }) => `“${name}” saves ${saved} a year for ${cost} and pays`))}${
      others === 0
        ? ""
        : `; ${others === 1 ? "the other tank or roof does not" : `the other ${others} do not`}`
    }.`,
  no: (tanks: readonly TankFacts[]) =>
    tanks.length === 1
      ? `No: “${tanks[0]!.name}” is not worth it at this quote. It saves ${tanks[0]!.saved} a year for ${tanks[0]!.cost}.`
      : `No: of the ${tanks.length} tanks and roofs quoted none is worth its money.`,
  unpriced: (names: readonly string[]) =>
    `Nobody can say yet whether ${quoted(names)} ${names.length === 1 ? "is" : "are"} worth it: a quote or the price of water is missing.`,
  draw: (one: string, other: string, chance: string) =>
    `It is a draw: ${one} does better than ${other} in ${chance} of 100 draws, too close to tell apart.`,
  noTanks: "No tank is quoted here, and none is needed to begin.",
  needUnknown: "How the beds are watered today is not known, so no saving is claimed from it",
  needGives: (saved: string) => `Watering to need gives up ${saved} of mains water a year and buys nothing`,
  needTakes: (more: string) =>
    `Watering every bed to its need takes ${more} more mains water a year than today`,
  bestAdds: (names: readonly string[], cost: string, saved: string) =>
    `; with ${quoted(names)} for ${cost} it is ${saved}.`,
  bestStill: (names: readonly string[], cost: string, saved: string) =>
    `; ${quoted(names)} for ${cost} bring it to ${saved}.`,
  bestByItself: (names: readonly string[], cost: string, saved: string) =>
    `; ${quoted(names)} for ${cost} gives up ${saved} a year in any case.`,
  bestNone: "; nothing that is quoted is worth buying beside it at these prices.",
  bestNoMeasures: ".",
  planAsChosen: "the plan as chosen",
  needAlone: "watering to need alone",
  waterToNeed: "Watering to need",
  working: "Working out what each measure does, together and apart …",
  faults: (n: number) =>
    n === 1 ? "One entry stands in the way of a decision" : `${n} entries stand in the way of a decision`,
  crashed: "The calculation stopped. This is a fault of the program, not of your survey.",
  noBeds: "There are no beds in this survey yet. Once one is measured, its choices stand here.",
  noSurvey: "There is no survey here yet.",
  under: (beds: readonly string[], short: string) =>
    `${allOf(beds)} ${beds.length === 1 ? "gets" : "get"} less than ${beds.length === 1 ? "it needs" : "they need"} today, ${short} a year short in all. That comes before any saving.`,
  sides: {
    name: "Two ways to water, side by side",
    columns: ["How it is watered", "Mains water a year", "Given up in the middle year"],
    today: "As watered today",
    need: "The plan, every bed to its need",
    least: "The plan, no bed more than today",
    leastNote: "Beds that are short today stay short.",
  },
  years: (low: string, high: string) =>
    `By the record’s years alone the plan as chosen gives up between ${low} and ${high} in eight years of ten.`,
  width: (low: string, middle: string, high: string, draws: string) =>
    `With all that is not known for sure, the plan as chosen gives up between ${low} and ${high} a year in eight of ten of ${draws} draws, ${middle} in the middle.`,
  dryWet: (dry: string, dryYear: string, wet: string, wetYear: string) =>
    `In a dry year such as ${dryYear} it is ${dry}, in a wet one such as ${wetYear} it is ${wet}.`,
  contents: "On this page",
  parts: {
    answer: "The answer",
    measures: "Measures",
    sizes: "How large a tank",
    budget: "For each budget",
    shares: "What each saves",
    money: "Money",
    sure: "How sure",
    weather: "Drier and warmer years",
    brief: "The brief",
  },
  cautions: "Before work is ordered",
  stale: "Being worked out again with the changed quotes.",
  draws: {
    going: (done: string, of: string) => `${done} of ${of} draws made`,
    done: (done: string) => `${done} draws made`,
    stop: "Stop drawing",
    more: (n: string) => `Draw on to ${n}`,
    none: "Nothing is drawn yet: how wide these figures are is not known.",
    partial: "These are the draws made so far; more of them move the edges a little.",
    what: "Each draw takes every factor and every measured entry anew from the range that it is known to, works the whole record out again, and compares the sets on the same terms.",
    columns: [
      "What is done",
      "Saved a year, eight of ten",
      "Present value, eight of ten",
      "Does better than the best in",
    ],
    rivals: "Sets told apart under the same draws",
    ofHundred: (n: string) => `${n} of 100`,
    to: "to",
    itself: "the best for the budget",
    choice: "What the choice hangs on",
    width: "What makes the saving wide",
    unknown: (name: string, share: string, advice: string) => `${name}: ${share} of it. ${advice}`,
    isDraw: (one: string, other: string) => `${one} and ${other} cannot be told apart: a draw.`,
    notDraw: (one: string, other: string, n: string) =>
      `${one} does better than ${other} in ${n} of 100 draws.`,
    one: "Only one set is worth comparing here.",
  },
  weather: {
    lead: "Each line asks the same of other weather. These are questions, no forecasts.",
    caption: "The plan and the best set under other weather",
    columns: [
      "Weather",
      "Rain a year",
      "Mains water, as planned",
      "Given up, middle year",
      "Best set for the budget",
      "Breaks first",
    ],
    ask: "Ask of your own weather",
    rain: [
      "Rain, December to February",
      "Rain, March to May",
      "Rain, June to August",
      "Rain, September to November",
    ],
    rainUnit: "% of what fell",
    warmer: "Warmer by",
    warmerUnit: { metric: "°C", us: "°F" },
    spells: "Dry spells longer",
    spellsUnit: "times as long",
    stays: "stays",
    nothingBreaks: "nothing falls",
    breaks: (tank: string, from: string, to: string) =>
      `${tank}: all met on ${to} of days, ${from} as recorded`,
    dearer: (name: string, names: string, isChange: boolean) =>
      isChange
        ? `With the quote of “${name}” a fifth dearer, the best set is ${names}.`
        : `A quote of “${name}” a fifth dearer changes nothing in the choice.`,
    dearerHeading: "What would change the choice",
  },
  brief: {
    lead: "Two pages to print or to project, written from the figures above. Words come before figures.",
    print: "Print the brief",
    printWorkings: "Print it with its workings",
    workings: "How these figures came about",
    given: (name: string, text: string, source: string | null) =>
      `${name}: ${text}${source === null ? "" : ` (${source})`}.`,
    markdown: "Take it as Markdown",
    link: "Copy a link that opens this",
    copied: "The link is copied.",
    notCopied: (address: string) => `Copy it from here: ${address}`,
    tables: "Every table as a CSV file",
    csv: (name: string) => name.replaceAll("-", " "),
    savedAs: (version: number, when: string) => `version ${version}, saved ${when}`,
    state: (version: string | null, day: string) =>
      version === null ? `Written on ${day}.` : `Survey: ${version}; written on ${day}.`,
  },
} as const;
