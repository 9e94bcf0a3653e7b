import { count } from "./count.ts";
import { plantKinds, thirstSaid } from "./walk-answers.ts";

interface CodeAnswer {
  value: string;
  words: string;
}

/** Blanks that take a number for a word on paper: on screen the words stand to choose from. By way and blank. */
export const codeAnswers: Readonly<Record<string, readonly CodeAnswer[]>> = {
  "offsets/curved": [
    { value: "1", words: "it bends" },
    { value: "0", words: "straight between measures" },
  ],
  "catch-cans/wind": [
    { value: "0", words: "still" },
    { value: "1", words: "leaves move" },
    { value: "2", words: "more than that" },
  ],
};

export const clockWords = {
  title: "Stopwatch",
  start: "Start",
  stop: "Stop",
  again: "Back to 0",
  use: (seconds: string) => `Write down ${seconds} s`,
  running: "Running. It goes on while the screen sleeps.",
  fiveMinutes: "Five minutes",
  minute: "One minute",
  left: (text: string) => `${text} left`,
  over: "Time is up.",
} as const;

export const tallyWords = {
  hits: { leaf: "leaf", "leaf-points": "On a leaf", "mulch-points": "On mulch" } as Readonly<
    Record<string, string>
  >,
  misses: "Not",
  undo: "Undo",
  counted: (hits: number, all: number) => `${count(hits)} of ${count(all)} points`,
  drip: "A drip",
  drips: (n: number) => (n === 1 ? "1 drip" : `${count(n)} drips`),
  points: (n: number) => (n === 1 ? "1 point" : `${count(n)} points`),
  orType: "Or write the counts from your sheet:",
} as const;

export const shapeWords = {
  toScale: "Drawn to scale from what you typed.",
  sketch: "Such a shape. It is drawn to scale once every length is there.",
  gap: "The sides do not meet.",
} as const;

export const litresWords = {
  bedNeeds: (litres: string) => `With that it needs about ${litres} a year.`,
  openSky: (litres: string) => `Under an open sky it would be ${litres}.`,
  aPlant: (litres: string) => `That is ${litres} a plant.`,
  classNeeds: (litres: string) => `about ${litres} a year`,
} as const;

/** What readings come to beside the figure asked for, by the end of its path. */
export const givenWords: Readonly<Record<string, string>> = {
  area_m2: "Area",
  rootDepth_m: "Roots no deeper than",
  canopy_m: "Width of one plant",
  plants: "Plants",
  sand_pct: "Sand",
  clay_pct: "Clay",
  minutes: "Minutes a watering",
  days: "Days",
  texture: "Soil",
  share: "Share",
};

/** What stands at a length on a drawing until it is measured, where the blank's own label is long. */
export const drawnLabels: Readonly<Record<string, string>> = {
  depth: "depth",
  across: "across",
  length: "length",
  width: "width",
  height: "height",
  bottom: "across",
  top: "across",
  girth: "round",
  rise: "rise",
  run: "run",
  slope: "up the slope",
  pitch: "pitch",
  drop: "drop",
  "pipe-length": "length",
  "pipe-across": "across",
};

/** Under the drawing of a tank, by what is asked. */
export const tankAidWords: Readonly<Record<string, string>> = {
  capacity: "Depth: from the floor to the overflow.",
  level: "Depth: the wet length of a stick let down to the floor, by an adult.",
  outlet: "Depth: from the floor to the lower edge of the outlet.",
};

export const dipWords = {
  title: "Dip table: from the depth on the stick to the water in the tank",
  heading: (name: string) => `Dip table: ${name}`,
  how: "Let a clean stick down to the floor of the tank, read where it is wet. An adult does it, from the ground.",
  depth: "Depth",
  litres: "Water",
  print: "Print the dip table",
} as const;

export const roofWordsDrawn = {
  rain: "rain falls straight down",
  plan: "in plan: this counts",
  why: "The roof catches what would fall on the ground below it. Along its slope it is longer, but catches no more.",
} as const;

const wholePercent = new Intl.NumberFormat("en", { style: "percent", maximumFractionDigits: 0 });
const percent = (share: number) => wholePercent.format(share);

export const coverAidWords = {
  ofLeaves: "Dark is leaves. Press the picture that is nearest to what you see, at three spots or more.",
  ofMulch: "Dark is mulch. Press the picture that is nearest to what you see, at three spots or more.",
  percent,
  picture: (share: number) => `Nearest to ${percent(share)}`,
  spots: (chosen: readonly string[]) =>
    chosen.length === 0
      ? "No spot yet."
      : `${chosen.length === 1 ? "One spot" : `${count(chosen.length)} spots`}: ${chosen.join(", ")}`,
  undo: "Undo",
  planting: (n: number, kind: string, thirst: string) => `${count(n)}: ${plantingWords(kind, thirst)}`,
  plantingAs: (kind: string, thirst: string) => plantingWords(kind, thirst),
} as const;

function plantingWords(kind: string, thirst: string): string {
  return `${plantKinds[kind] ?? kind}, ${thirstSaid(thirst)}`;
}

export const photoWords = {
  choose: "Choose or take a photograph",
  another: "Another photograph",
  stays:
    "It stays on this machine and is not kept. Where and with what it was taken is left behind. The ground only: no faces.",
  about: "The photograph, with all that is not counted as leaf faded.",
  marked: "Fade what is not counted",
  unmarked: "Show it as it is",
  why: {
    "too-large": "That file is larger than 40 MB. Choose a smaller photograph.",
    "no-picture": "That file holds no JPEG, PNG or WebP picture, whatever its name says.",
    unread: "That picture cannot be opened: it may be cut short.",
  },
} as const;

export const soilAidWords = {
  sand: "sand",
  silt: "silt",
  clay: "clay",
  corners: { sand: "all sand", silt: "all silt", clay: "all clay" },
  triangle: "The USDA triangle: every soil has its place between sand, silt and clay.",
  circle: "The dot is your soil; within the circle a jar cannot tell.",
  holds: (full: string, dry: string) =>
    `By Saxton and Rawls such a soil holds ${full} water when it has drained, and still ${dry} when plants wilt.`,
  fill: "Time for one fill to go in",
} as const;

export const keyWords = {
  change: (question: string) => `Answer again: ${question}`,
  sure: (certainty: number) =>
    certainty >= 0.7
      ? "Fairly sure."
      : certainty >= 0.5
        ? "More likely than not."
        : "A guess: look again after a dry spell.",
} as const;

export const thirstPanelWords = {
  guess: "Look at grown plants. How often do you think they need water, beside rain?",
  byName: "By name",
  byNameHow: "Where somebody knows what it is called: a list of garden plants.",
  planting: (kind: string, n: number, all: number) =>
    all > 1 ? `Planting ${count(n)} of ${count(all)}: ${kind}` : `What grows there: ${kind}`,
} as const;

export const searchWords = {
  label: "What is it called?",
  hint: "A common name or the botanical one. Spell it as you can.",
  none: "Not in the list. Try another name, or judge it by looking.",
  found: (n: number) =>
    n === 1 ? "One that fits. Press it to keep it." : `${count(n)} that fit. Press one to keep it.`,
  spelled: "(spelled a little otherwise)",
  range: (from: string, to: string) => `; some ${thirstSaid(from)}, some ${thirstSaid(to)}`,
  speaksFor: (climate: string) => `The list speaks for gardens ${climate}.`,
  fromMemory: "From memory: check with somebody who knows.",
  noList: "The list of plants is not on this machine yet, and the server is not reached.",
  again: "Try again",
} as const;

export const waterAidWords = {
  meter:
    "Turn everything else off: taps, toilets, drinking fountains. Wait until the meter stands still, then read it.",
  hose: { head: "height", level: "water in the tank" },
  driven: "What drives the hose is how far the water’s surface is above the hose’s end.",
  curve: "Dots are your timings; the line is the square root of the height.",
  cans: "As they stand. Those drawn strongly are the driest quarter.",
  noCans: "Write the cans row by row, as they stand on the grid.",
} as const;
