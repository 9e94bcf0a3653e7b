/** What the first answer asks and says. Figures come in as text, rounded and with their units. */
import type { FirstEntry, Season } from "../../survey/first/entries.ts";
import type { FirstMeasure } from "../../survey/first/lead.ts";
import type { Thirst } from "../../survey/words.ts";

/** Names of the parts that a first answer makes a survey of. */
export const firstNames = {
  garden: "The garden",
  roof: "The roof",
  tank: "The tank",
  addTank: "Put up the tank thought of",
  connectRoof: "Lead the roof to it",
  useTank: "Water the garden from it",
} as const;

export const firstWords = {
  title: "A first answer",
  lead: "Six entries, as well as you know them. Each one narrows the answer; none has to be exact.",
  begin: "Say where the garden is, or anything else below, and the first figure stands here.",
  answer: "Answer",
  notReachedWeather: "The weather of the place could not be looked up: the server was not reached.",
  working: "Working it out …",

  need: (need: string) => `The garden needs about ${need} a year`,
  needPerArea: (area: string, need: string) => `Each ${area} of garden needs about ${need} a year`,
  needNone: "The garden needs hardly any watering",
  between: (low: string, high: string) => `between ${low} and ${high}.`,
  brings: (brings: string, low: string, high: string) =>
    `Roof and tank could bring ${brings} of it, between ${low} and ${high}.`,
  bringsNothing: "Roof and tank could bring next to nothing of it.",
  noSaving: "How it is watered today is not known, so no saving is claimed.",
  short: (short: string, low: string, high: string) =>
    `The garden gets less than it needs: about ${short} a year too little, between ${low} and ${high}.`,
  giveUp: (figure: string) => `The garden could give up about ${figure} of mains water a year`,
  takeMore: (figure: string) =>
    `Watered to need, the garden would take about ${figure} more mains water a year`,
  evenOut: (more: string, less: string) =>
    `Whether mains water can be given up cannot be told yet: it may be ${more} more a year, or ${less} less.`,
  mayTurn: (high: string) => `between nothing and ${high}.`,
  needAfter: (need: string, low: string, high: string) =>
    `It needs about ${need} a year, between ${low} and ${high}.`,
  given: (given: string) => `Today’s watering puts on about ${given}.`,

  howSure: "How sure?",
  howSureWords: (draws: string, years: string) =>
    `Drawn ${draws} times over everything not said yet and over ${years} made-up years like those of the place: eight in ten lie between the two ends.`,
  standIn: "Not said yet.",
  placeStandsIn: (zone: string) =>
    `Until you say where, this is for the place that your clock’s time zone, ${zone}, is named for, and for drier and wetter ones near.`,
  placeUnknownZone:
    "Until you say where, this is for Greenwich, which clocks are set by, and for drier and wetter places.",
  openHead: "Still open.",
  open: (names: string) => `Taken over all that is usual: ${names}.`,
  openNames: {
    place: "where it is",
    garden: "the garden’s size",
    thirst: "how thirsty its plants are",
    mulch: "whether it is mulched",
    roof: "the roof",
    tank: "the tank",
    today: "today’s watering",
  } satisfies Readonly<Record<FirstEntry, string>>,

  narrow: "What would narrow it most:",
  narrowEntry: {
    place: "where the garden is",
    garden: "the garden’s size",
    thirst: "how thirsty its plants are",
    mulch: "whether the ground is mulched",
    roof: "the roof’s area",
    tank: "the tank’s size",
    today: "how it is watered today; only then can a saving be told",
  } satisfies Readonly<Record<FirstEntry, string>>,
  narrowMeasure: {
    plants: "a look at each kind of plant and how much of the ground its leaves cover, bed by bed",
    soil: "the soil, felt by hand or shaken up in a jar",
    sky: "what takes the sun away: walls and trees, measured by fist",
    flow: "the hose, timed with a jug and a watch",
    reach: "how much of the water reaches the roots, caught in cups",
    roof: "the roof: what it is made of, and how much of it drains to the tank",
    mulch: "the mulch: how deep it lies, and how much ground it covers",
    today: "today’s watering, timed with a watch for a week",
  } satisfies Readonly<Record<FirstMeasure, string>>,
  narrowYears: "What is left is mostly the weather of the years, which no measuring narrows.",
  ofWidth: (share: string) => `${share} of the width.`,
  toEntry: "Go to it",
  toMeasure: "Keep this and measure it",

  tape: "How the answer narrowed",
  tapeNames: {
    place: "place",
    garden: "size",
    thirst: "thirst",
    mulch: "mulch",
    roof: "roof",
    tank: "tank",
    today: "today",
  } satisfies Readonly<Record<FirstEntry, string>>,
  tapeEnds: (low: string, high: string) => `${low} to ${high}`,
  tapeUnit: (unit: string) => `${unit} a year that the garden needs`,

  keep: "Keep it and go on",
  keepLead:
    "Kept on this computer, it becomes the survey: nothing has to be typed twice, and every part can be measured and changed.",
  keepName: "Name of the place",
  keepNameHint: "as it will head every page",
  keepButton: "Keep this",
  keepPlace: "To keep it, say where it is first: a survey needs a place.",
  keeping: "Keeping it …",
  again: "Begin anew",
  notKept: (reason: string) => `It could not be kept: ${reason} Everything typed is still here.`,
  notReached: "the server was not reached.",
} as const;

export const placeEntry = {
  label: "Where is the garden?",
  hint: "a town near it, or latitude and longitude",
  device: "Use this device’s position",
  deviceHint:
    "Your browser asks you first, and may ask its maker’s service where you are. Typing a town asks nobody.",
  looking: "Looking …",
  which: "Which one?",
  none: (typed: string) =>
    `No place called ${typed} was found. Another spelling, a larger town, or coordinates will do.`,
  deviceRefused: "The device’s position was not given. Type a town or coordinates instead.",
  notReached: "Places could not be looked up: the server was not reached. Coordinates can be typed.",
  wanted: "Latitude must be between −90 and 90 and longitude between −180 and 180, such as −34.93, 138.6.",
  chosen: (name: string) => `${name}.`,
  line: (name: string, region: string) => (region ? `${name}, ${region}` : name),
  position: (latitude: string, longitude: string) => `${latitude}, ${longitude}`,
  deviceName: "where this device is",
  change: "Change the place",
} as const;

export const gardenEntry = {
  label: "How large is the garden?",
  hint: "all that is or could be watered; paced out is enough",
  wanted: (low: string, high: string) => `The garden must be between ${low} and ${high}.`,
  grass: "Mown grass for the most part",
} as const;

export const thirstEntry = {
  label: "What do its plants look like?",
  hint: "watered so often once grown, to look well",
  classes: {
    "very-low": { words: "hardly ever", about: "fleshy or grey, tough and far apart; bare ground between" },
    low: { words: "now and then", about: "woody, with small hard leaves; scented shrubs, dry meadow" },
    moderate: { words: "regularly", about: "soft green leaves and flowers; most garden beds, a plain lawn" },
    high: { words: "often", about: "large, thin, juicy leaves; vegetables, bedding, a sports field" },
  } satisfies Readonly<Record<Thirst, { words: string; about: string }>>,
} as const;

export const mulchEntry = {
  label: "Is the ground mulched?",
  hint: "covered with chips, bark, straw or leaves",
  yes: "mulched",
  no: "none, or hardly any",
} as const;

export const roofEntry = {
  label: "How large is the roof?",
  hint: "the part that could drain to a tank, in plan; 0 for none",
  wanted: (low: string, high: string) => `The roof must be 0 or between ${low} and ${high}.`,
} as const;

export const tankEntry = {
  label: "How large is the tank?",
  hint: "0 for none",
  which: "Which tank?",
  there: "one you have",
  thought: "one you think of",
  wanted: (high: string) => `The tank must be between 0 and ${high}.`,
} as const;

export const todayEntry = {
  label: "How is it watered today?",
  hint: "the seventh entry: with it the answer can speak of a saving",
  ways: {
    minutes: "minutes a week",
    bills: "by two water bills",
    "not-watered": "not watered",
    unknown: "don’t know",
  },
  minutes: "Minutes a week, with the hose running",
  season: "When in the year",
  seasons: {
    "all-year": "all year",
    "warm-half": "in the warm half",
    "hottest-three": "in the three hottest months",
  } satisfies Readonly<Record<Season, string>>,
  summer: "A summer bill",
  winter: "A winter bill",
  months: "Months in a bill",
  billsHint:
    "What summer has above winter goes outdoors for the most part: common practice, and a first guess only.",
  minutesWanted: "Minutes a week must be between 0 and 10,080.",
  billWanted: (high: string) => `A bill must be between 0 and ${high}.`,
  monthsWanted: "Months in a bill must be between 1 and 12.",
  unknownSaid: "Not known is an answer: need is shown, and no saving is claimed.",
} as const;

export const entryWords = {
  entered: (text: string) => `You entered ${text}.`,
  unreadable: "No number could be read here.",
  cautions: "Mind.",
  tankCaution:
    "Tank water is not for drinking unless treated and approved. A full tank weighs a tonne for each 1,000 L: its footing, its pump’s electrics, the roof, and any join with the mains are for those licensed for them.",
  measureCaution: "Pace and tape with an adult in sight; no ladders, no roofs.",
} as const;
