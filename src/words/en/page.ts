/** Sentences of the page. Numbers come in as text, already rounded and with their units. */

/** A figure in a sentence; `at` names the working that opens below it. */
export interface Slot {
  at: string;
  text: string;
}

export type Sentence = readonly (string | Slot)[];

export const page = {
  title: "Grounds Water Balance",
  wordsForHeader: (from: string, to: string) =>
    from === to ? `grounds water, weather of ${from}` : `grounds water, weather of ${from} to ${to}`,
  places: { answer: "Answer", thirst: "Thirst", tanks: "Roofs and tanks", own: "Your own grounds" },
  navigation: "On this page",
  skip: "Skip to the answer",
  units: "Units",
  metric: "Metric",
  us: "US customary",
  invented: "An invented school, to show what an answer looks like.",
  putInOwn: "Put in your own",
  ruler: (about: string) => `Ruler. ${about}`,
  foot: "Worked out on this computer. Nothing was sent anywhere.",
} as const;

export const thirstWords: Readonly<Record<string, string>> = {
  "very-low": "hardly ever once grown",
  low: "now and then once grown",
  moderate: "regularly once grown",
  high: "often once grown",
};

export const kindWords: Readonly<Record<string, string>> = {
  "lawn-cool": "cool-season lawn",
  "lawn-warm": "warm-season lawn",
  groundcover: "groundcover",
  perennials: "perennials",
  annuals: "annuals",
  "ornamental-grasses": "ornamental grasses",
  shrubs: "shrubs",
  hedge: "hedge",
  trees: "trees",
  "fruit-trees": "fruit trees",
  vegetables: "vegetables",
  succulents: "succulents",
};

const fraction: readonly (readonly [number, string])[] = [
  [0.1, "a tenth"],
  [0.2, "a fifth"],
  [0.25, "a quarter"],
  [1 / 3, "a third"],
  [0.4, "two fifths"],
  [0.5, "half"],
  [0.6, "three fifths"],
  [2 / 3, "two thirds"],
  [0.75, "three quarters"],
  [0.9, "nine tenths"],
];

/** A share in words: "about a third"; null where no plain fraction is near. */
export function fractionWords(share: number): string | null {
  if (share < 0.07 || share > 0.95) return null;
  let best = fraction[0]!;
  for (const f of fraction) if (Math.abs(f[0] - share) < Math.abs(best[0] - share)) best = f;
  return `about ${best[1]}`;
}

function and(names: readonly string[]): string {
  if (names.length <= 1) return names[0] ?? "";
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/** At most three names; the rest counted. */
export function someNames(names: readonly string[]): string {
  if (names.length <= 3) return and(names);
  return `${names.slice(0, 2).join(", ")} and ${names.length - 2} other beds`;
}

/** How a year is called: the middle one of whole years, or what a part of one lets guess. */
export const yearWords = {
  middle: "in a middle\u00A0year",
  partial: "a year, by the part of one that the record holds",
} as const;

export const answer = {
  noBeds: ["There are no beds in this survey yet, so there is nothing to water."] as Sentence,
  noNeed: ["On this weather the gardens need no watering at all: rain is enough."] as Sentence,
  saving: (giveUp: Slot, share: string | null, year: string): Sentence => [
    "The gardens could give up ",
    giveUp,
    share ? ` of mains water ${year}, ${share} of what they take today.` : ` of mains water ${year}.`,
  ],
  years: (dry: Slot | null, wet: Slot | null): Sentence =>
    dry && wet
      ? dry.text === wet.text
        ? ["Dry year or wet, it is near ", dry, ". "]
        : ["In a dry year it is ", dry, ", in a wet one ", wet, ". "]
      : [],
  todayAndNeed: (today: Slot, need: Slot): Sentence => [
    "Today they take ",
    today,
    " a year; watered to need, from the roofs and tanks there are, they would take ",
    need,
    ". ",
  ],
  withMeasures: (count: number, plan: Slot): Sentence => [
    count === 1 ? "With the measure chosen it would be " : `With the ${count} measures chosen it would be `,
    plan,
    ".",
  ],
  short: (short: Slot, year: string): Sentence => [
    "The gardens get less than they need. Watering them to need would take ",
    short,
    ` more mains water ${year}.`,
  ],
  shortYears: (dry: Slot | null, wet: Slot | null): Sentence =>
    dry && wet ? ["In a dry year it is ", dry, " more, in a wet one ", wet, ". "] : [],
  even: (need: Slot): Sentence => ["The gardens get about what they need: ", need, " of mains water a year."],
  need: (need: Slot): Sentence => ["The gardens need ", need, " of mains water in a mean year."],
  needYears: (dry: Slot | null, wet: Slot | null): Sentence =>
    dry && wet ? ["In a dry year they need ", dry, ", in a wet one ", wet, ". "] : [],
  tanksBring: (tanks: Slot): Sentence => ["The roofs and tanks there are bring ", tanks, " on top of that."],
  partly: (giveUp: Slot, year: string): Sentence => [
    "Where today’s watering is known, the gardens could give up ",
    giveUp,
    ` of mains water ${year}.`,
  ],
  partlyShort: (short: Slot, year: string): Sentence => [
    "Where today’s watering is known, the gardens get less than they need: it would take ",
    short,
    ` more mains water ${year}.`,
  ],
  unknown: (names: readonly string[], need: Slot): Sentence => [
    `How ${someNames(names)} ${names.length === 1 ? "is" : "are"} watered is not known: what ${names.length === 1 ? "it needs" : "they need"}, `,
    need,
    " a year, stands in, and nothing is claimed from it. ",
  ],
  toNeed: (need: Slot): Sentence => [
    "Watered to need, from the roofs and tanks there are, all of it would take ",
    need,
    " a year. ",
  ],
  noSaving: "How the gardens are watered today is not known, so no saving is claimed.",
  bedsShort: (names: readonly string[], short: Slot): Sentence => [
    `${someNames(names)} ${names.length === 1 ? "gets" : "get"} less than the plants need: `,
    short,
    " short in a mean year.",
  ],
} as const;

export const aside = {
  howSure: "How sure?",
  howSureYears: (years: number, from: string, to: string) =>
    years === 0
      ? "The record holds no whole year, so these are means over what there is."
      : `Seen over ${years === 1 ? "one whole year" : `${years} whole years`} of weather, ${from} to ${to}. Half of all years lie on either side of the middle year.`,
  spread: (low: string, high: string) => `Eight years in ten lie between ${low} and ${high}.`,
  factors: "Only the weather varies here: thirst, soil and flows are taken at their middle values.",
  filled: (filled: string, days: string) =>
    `${filled} of ${days} days had a gap in the record and were filled from their neighbours or other years.`,
  notKnown: "Not known yet.",
  notKnownBeds: (names: readonly string[]) =>
    `How ${someNames(names)} ${names.length === 1 ? "is" : "are"} watered today. Nothing is claimed from ${names.length === 1 ? "it" : "them"}.`,
  counted: "What is counted.",
  countedWords: (draws: readonly string[], leaks: readonly string[], leak: string) =>
    [
      "Mains water for the beds",
      draws.length > 0 ? `, for what ${and(draws)} cannot get from a tank` : "",
      leaks.length > 0 ? `, and ${leak} a year that leaks away (${and(leaks)})` : "",
      ".",
    ].join(""),
  readMonths: "Read this figure.",
  readMonthsWords:
    "Strokes hanging from the top are rain. The ink line is what the plants need from watering; below it, hatching is mains water and solid is tank water. Dots are what today’s watering gives; thin hatching is more than the plants can use.",
  readMonthsNeedOnly:
    "Strokes hanging from the top are rain. The ink line is what the plants need from watering, in a mean year.",
  readStaves: "Each line is a bed.",
  readStavesWords:
    "Dark bars are what it needs a week, by its own measure; its thirstiest month is written out. Dots show what it gets today. The square is its size beside the largest. The thirstiest square metre comes first.",
  readTank: "Read this figure.",
  readTankWords:
    "The section shows the tank on the day under the ruler. Thin strokes above the rim are water that spilled; marks below the line are days when not all that was asked for was there.",
  cautions: "Mind.",
  assumed: "Taken from tables.",
  assumedWords: (count: number) =>
    count === 1
      ? "One value that the survey leaves out was taken from a table."
      : `${count} values that the survey leaves out were taken from tables.`,
  assumedList: "Which, and from where",
} as const;

export const plate = {
  numbers: "The numbers behind it",
  csv: "Take this table as a CSV file",
  readHint: "Move along the ruler to read a value.",
  show: "Show",
  allBeds: "all beds together",
  year: "Year",
  earlier: "Earlier year",
  later: "Later year",
  bar: {
    more: (share: string | null, today: string, need: string) =>
      share
        ? `In a mean year the gardens take ${share} more mains water than they need`
        : `In a mean year the gardens take ${today} of mains water and need ${need}`,
    less: (today: string, need: string) =>
      `In a mean year the gardens get ${today} of mains water and need ${need}`,
    planned: (today: string, plan: string) =>
      `In a mean year the gardens take ${today} of mains water, as planned ${plan}`,
    only: (need: string) => `In a mean year the gardens need ${need} of mains water`,
    withTanks: (tanks: string) => `, beside ${tanks} from the tanks`,
    about: "Two bars: mains water taken today, and what the same gardens take watered to need.",
    today: "today",
    need: "to need",
    label: (which: string, volume: string) => `${which}, mains: ${volume}`,
    tanks: (volume: string) => `tanks: ${volume}`,
    lessBy: (volume: string) => `${volume} less`,
    moreBy: (volume: string) => `${volume} more`,
    plan: "as planned",
    dry: "dry year",
    wet: "wet year",
    columns: ["Year", "Today", "Watered to need", "As planned", "Given up"],
    mean: "A mean year",
  },
  months: {
    peak: (name: string, month: string, volume: string) =>
      `${name} ${name === "The gardens" ? "need" : "needs"} most in ${month}: ${volume} a week`,
    gardens: "The gardens",
    quiet: (from: string, to: string) => `; from ${from} to ${to} rain does the work`,
    beyond: (months: string) => `, and get more than they can use in ${months}`,
    none: (name: string) => `${name}: rain is enough all year`,
    rainAxis: (unit: string) => `${unit} of rain a week`,
    axis: (unit: string) => `${unit} a week`,
    need: "what the plants need",
    today: "what they get today",
    todayOne: "what it gets today",
    beyondLabel: "more than the plants can use",
    columns: ["Month", "Needed a week", "Given today a week", "Rain a week"],
    about: (name: string) =>
      `${name}, month by month in a mean year: watering needed, watering given today, and rain.`,
    reading: (month: string, need: string, today: string | null, rain: string, unit: string) =>
      `${month}: need ${need}${today === null ? "" : `, today ${today}`} ${unit} a week; rain ${rain}`,
  },
  staves: {
    finding: (thirsty: string, frugal: string) =>
      `Bed by bed, from thirsty to frugal: ${thirsty} first, ${frugal} last`,
    findingOne: (name: string) => `${name} through the year`,
    findingNone: "No beds yet",
    about: "Each bed’s litres a week by month, under the rain of the same months.",
    rain: "Rain",
    bed: "Bed",
    never: "rain is enough",
    unit: (unit: string) => `${unit} a week`,
    year: "In a year",
    inMonth: (month: string) => `a week in ${month}`,
    rainUnit: "a week, by month",
    wateredWords: (thirst: string) => `watered ${thirst}`,
    todayUnknown: "today not known",
    rainReading: (month: string, rain: string) => `${month}: rain ${rain} a week`,
    reading: (month: string, rain: string, beds: string) => `${month}: rain ${rain} a week. ${beds}`,
  },
  tank: {
    short: (name: string, days: string, year: string) => `${name}: short on ${days} days of ${year}`,
    shortOne: (name: string, year: string) => `${name}: short on one day of ${year}`,
    never: (name: string, year: string) => `${name}: never short in ${year}`,
    andSpills: (volume: string) => `, and spills ${volume}`,
    notUsed: (name: string) => `${name} is not in use`,
    noCapacity: (name: string) => `${name} holds nothing: its size is 0`,
    noDraw: (name: string, year: string) => `${name}: nothing was asked of it in ${year}`,
    theRecord: "the record",
    outlet: "outlet",
    spilled: "spilled",
    shortDays: (n: string) => `short on ${n} days`,
    shortDay: "short on one day",
    axis: (unit: string) => unit,
    about: (name: string, year: string) =>
      `${name} in section, and its level at the end of each day of ${year}, watered to need.`,
    reading: (day: string, level: string, share: string, spill: string | null, short: boolean) =>
      `${day}: ${level}, ${share} full${spill === null ? "" : `; ${spill} spilled`}${short ? "; short" : ""}`,
    columns: ["Date", "Level at the end of the day", "Spilled", "Short"],
    yes: "yes",
    no: "no",
    serves: (names: readonly string[]) => `It serves ${and(names)}.`,
    meanYear: (inflow: string, drawn: string, spilled: string) =>
      `In a mean year ${inflow} run in, ${drawn} are drawn and ${spilled} spill.`,
    term: (share: string) =>
      `Trade term: volumetric reliability ${share}, the share of what was asked for that the tank gave.`,
  },
  none: "No tank in this survey.",
} as const;

export const own = {
  heading: "Your own grounds",
  lead: "Drop a survey and a weather record anywhere on this page, or choose them here. They are read and worked out in this browser; they are not sent anywhere and not kept.",
  survey: "Survey",
  surveyHint: "a JSON file, format grounds-survey",
  weather: "Weather record",
  weatherHint: "a CSV file with a date and rain_mm a day, and et0_mm or tmin_c and tmax_c",
  choose: "Choose a file",
  dropHere: "Let go to read these files",
  have: (name: string) => `${name} is here.`,
  stillSurvey: "Now the survey.",
  stillWeather: "Now the weather record.",
  again: "Back to the demo",
  working: "Working it out, day by day …",
  reading: "Reading the files …",
  done: (site: string) => `Worked out: ${site}.`,
  faults: (count: number, file: string) =>
    count === 1 ? `One thing stands in the way in ${file}` : `${count} things stand in the way in ${file}`,
  faultsBoth: (count: number) =>
    count === 1 ? "One thing stands in the way" : `${count} things stand in the way`,
  faultsHelp:
    "Mend the file and drop it again. The answer shown is still that of the last files that could be read.",
  unread: (name: string) => `${name} could not be read.`,
  notText: (name: string) => `${name} is neither a survey (JSON) nor a weather record (CSV).`,
  tooLarge: (name: string, limit: string) =>
    `${name} is larger than ${limit}; a survey or record is far smaller.`,
  noDemo: "The demo could not be fetched from the server. Your own files still work.",
  failed: "The calculation stopped. This is a fault of the program, not of your files:",
} as const;

export const figureWords = {
  open: "how this came about",
  close: "close",
  given: "What went in",
  sources: "Sources",
  key: { measured: "measured", "worked-out": "chosen or worked out", assumed: "assumed, from a table" },
} as const;

/** A measure's name; watering to need has one of its own. */
export function measureName(name: string): string {
  return name === "water-to-need" ? "Watering to need" : name;
}

export const working = {
  giveUp: "How the middle year came about",
  middleFormula: "middle year: half of all years give up more, half less",
  year: (year: string) => `How ${year} came about`,
  yearFormula: "given up = today − watered to need",
  shortFormula: "short = watered to need − today",
  needYear: (year: string) => `What was needed in ${year}`,
  today: "How today’s mains water came about",
  mainsFormula: "mains = asked by beds, draws, top-up and leaks − what tanks give in their place",
  habitFormula: "habit of a bed = minutes × litres a minute, on its days",
  asked: (all: string, tanks: string) => `${all} − ${tanks}`,
  draws: "draws on tanks, all that they ask",
  topUp: "filled up from the mains",
  yearPlanFormula: "given up = today − as planned",
  shortPlanFormula: "short = as planned − today",
  plan: "How the plan’s mains water came about",
  planFormula: "planned = today − Σ of what each measure gives up, mean a year",
  planSource: "Each measure’s share is the same whatever order they are done in (Shapley value)",
  need: "How the need came about",
  tanks: "what tanks give in place of mains",
  always: "leaks, and uses not on a tank yet",
  habit: (name: string) => `${name}, by today’s habit`,
  bedNeed: (name: string) => `${name}, to need`,
  tanksTitle: "How the tanks’ part came about",
  tanksFormula: "yield of a day = the lesser of what is asked and what was in the tank the evening before",
  unknownTitle: "What stands in where today is not known",
  unknownFormula: "Σ of what these beds take, watered to need",
  shortTitle: "How the shortfall came about",
  shortBedFormula: "short = need − given today, a mean year",
  standsIn: "need stands in: today is not known",
  sources: {
    kc: "FAO Irrigation and Drainage Paper 56, chapters 3, 6, 7, 8 (dual crop coefficient)",
    tank: "Yield after spillage: Jenkins et al. 1978; Fewkes and Butler 2000",
    quantile: "10, 50 and 90 % points linear between order statistics",
  },
} as const;
