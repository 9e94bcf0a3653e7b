import { count } from "./count.ts";

/** What needs no measuring, by stop: its words, and what the field then holds. */
export const plainAnswers: Readonly<Record<string, { words: string; value: unknown }>> = {
  shade: { words: "Open sky all round", value: [] },
  "first-flush": { words: "There is no diverter", value: 0 },
};

export const choiceWords = {
  bare: "Nothing: bare soil",
  noTank: "To no tank: drain, street or soil",
  toTank: "To which tank, or to none",
  shares: [
    { value: 1, words: "All of it" },
    { value: 0.75, words: "Three quarters" },
    { value: 0.5, words: "Half" },
    { value: 0.25, words: "A quarter" },
  ],
  shareHint: "Count the downpipes: those that lead to the tank, of all.",
} as const;

export const tankUseWords = {
  used: "It is used",
  notUsed: "It is not used",
  hint: "Tanks stand half full for years because nobody knows whose they are (common practice). Look, and ask.",
  notes: {
    valve: "Which way does the valve stand: tank or mains?",
    pump: "Does the pump start when a tap is opened?",
    who: "Who switches it over, and when last?",
    seen: "Leaks or overflow seen, screens broken?",
  },
} as const;

export const habitWords = {
  told: "As the keeper tells it",
  minutes: "Minutes each time",
  days: "On which days?",
  months: "In which months?",
  dayNames: ["Mo", "Tu", "We", "Th", "Fr", "Sa", "Su"],
  dayLong: ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"],
  none: "It is not watered",
  log: "A week’s log, to check it",
  logHint: "Minutes written down on each day; 0 for none. Leave it blank where there is no log.",
  same: "The log and what was told agree.",
  more: (times: string) => `The log says ${times} times what was told. Which is the usual week?`,
  keepTold: "Keep what was told",
  keepLog: "Keep the log",
} as const;

export const headsWords = {
  lead: "Run the sprinklers and walk along them. Nothing is measured yet: what is broken is mended first.",
  number: "Sprinklers looked at",
  each: (seen: string) => `One that ${seen}`,
  fewer: (seen: string) => `one fewer that ${seen}`,
  more: (seen: string) => `one more that ${seen}`,
  mendFirst: "Mend these first: cans would only measure the faults.",
  cansNow: "Nothing to mend first: cans tell how evenly they spread.",
  summary: (faults: number, sprinklers: number) =>
    faults === 0
      ? `${count(sprinklers)} looked at, none at fault`
      : `${count(faults)} ${faults === 1 ? "fault" : "faults"} on ${count(sprinklers)} looked at`,
} as const;

export const skylineWords = {
  compass: ["N", "NE", "E", "SE", "S", "SW", "W", "NW"],
  bearings: "Bearings in degrees, or as letters: N, NE, E. Left end first, turning to the right.",
  seen: (things: number, taken: string) =>
    things === 0
      ? "Nothing written yet: this is the sky with the sun’s paths."
      : `As seen from the middle of the bed: ${things === 1 ? "one thing" : `${count(things)} things`} in the way, taking ${taken} of the sky’s light.`,
  june: "June",
  december: "December",
  equinox: "March, September",
  hours: "Hours of sun by month",
  hoursSentence: (least: string, leastMonth: string, most: string, mostMonth: string) =>
    `From ${least} a day in ${leastMonth} to ${most} in ${mostMonth}.`,
  month: "Month",
  open: "Sun up",
  sun: "Sun on the bed",
  fist: "A fist at arm’s length is about 10°. Measure yours once: its width, and how far it is from your eye.",
  tilt: {
    start: "Use the phone’s tilt",
    why: "The page asks the phone how it is held, and nothing else. Nothing is sent.",
    denied: "The phone did not let the page read its tilt. Use fists, or heights and distances.",
    absent:
      "This machine does not tell its tilt here. Use fists, or heights and distances; or write angles from a clinometer.",
    now: (angle: string) => `Now ${angle} up`,
    use: (angle: string) => `Write down ${angle}`,
  },
} as const;
