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
  onward: {
    thirst: "All of it, bed by bed and day by day: Thirst",
    tanks: "All of it, with sizes to try: Roofs and tanks",
  },
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

/** Names in a row: a, b and c. */
export function and(names: readonly string[]): string {
  if (names.length <= 1) return names[0] ?? "";
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

const LONG_NAME = 42;

/** A name short enough for a heading or a sentence; cut with an ellipsis where it goes on. */
export function shortName(name: string): string {
  const letters = Array.from(name);
  return letters.length <= LONG_NAME
    ? name
    : `${letters
        .slice(0, LONG_NAME - 1)
        .join("")
        .trimEnd()}…`;
}

/** At most three names; the rest counted. */
export function someNames(names: readonly string[]): string {
  if (names.length <= 3) return and(names.map(shortName));
  return `${names.slice(0, 2).map(shortName).join(", ")} and ${names.length - 2} other beds`;
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
  howSureMade: (years: number) =>
    `Seen over ${years} made-up years like those of the place. Half of all years lie on either side of the middle year.`,
  spread: (low: string, high: string) => `Eight years in ten lie between ${low} and ${high}.`,
  factors: "Only the weather varies here: thirst, soil and flows are taken at their middle values.",
  drawn: {
    saving: (low: string, high: string, draws: string) =>
      `With what is not measured drawn from its published range as well (${draws} draws), the saving lies between ${low} and ${high} eight times in ten.`,
    need: (low: string, high: string, draws: string) =>
      `With what is not measured drawn from its published range (${draws} draws), the mains water that need would take lies between ${low} and ${high} eight times in ten.`,
  },
  widest: (unknown: string, share: string, advice: string) =>
    `The widest unknown beside the weather: ${unknown.charAt(0).toLowerCase()}${unknown.slice(1)}, ${share} of the width. ${advice}`,
  narrowYears: "What is left of it is mostly the weather of the years, which no measuring narrows.",
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
    "Strokes hanging from the top are rain. The ink line is what the plants need from watering in a mean year; below it, hatching is mains water and solid is tank water. Dots are what today’s watering gives; thin hatching is more than the plants can use.",
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
  back: (title: string) => (title ? `Back to: ${title}` : "Back"),
  ownPage: "This working on a page of its own",
  toAnswer: "To the answer",
  noFigure: (at: string) => `No figure of this site has the address ${at}.`,
  given: "What went in",
  sources: "Sources",
  key: { measured: "measured", "worked-out": "chosen or worked out", assumed: "assumed, from a table" },
} as const;
