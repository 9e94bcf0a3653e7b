import { page, thirstWords } from "./page.ts";
import { codeAnswers } from "./walk-aids.ts";
import { mulchWords, roofWords } from "./walk-answers.ts";
import { walkCautions } from "./walk-cautions.ts";
import { soilQuestions, thirstQuestions } from "./walk-keys.ts";
import { choiceWords, habitWords, headsWords, tankUseWords } from "./walk-panels.ts";
import { slotLabel } from "./walk-slots.ts";
import { sprinklerWords } from "./walk-sprinklers.ts";
import { stopWords } from "./walk-stops.ts";
import { pacedWords, wayWords } from "./walk-ways.ts";

const oneOf = (words: Readonly<Record<string, string>>) => Object.values(words).join(" / ");

/** What is seen or told, by part: lines to fill. */
const seen: Readonly<Record<string, readonly { name: string; lines: readonly string[] }[]>> = {
  cover: [
    { name: stopWords.mulch!.ask, lines: [`${oneOf(mulchWords)} / ${choiceWords.bare.toLowerCase()}`] },
  ],
  water: [
    { name: stopWords.habit!.ask, lines: [habitWords.minutes, habitWords.days, habitWords.months] },
    {
      name: stopWords.heads!.ask,
      lines: [
        headsWords.number,
        ...Object.values(sprinklerWords).map(({ seen: fault }) => headsWords.each(fault)),
      ],
    },
  ],
  tanks: [
    { name: stopWords["roof-material"]!.ask, lines: [oneOf(roofWords)] },
    { name: stopWords.downpipe!.ask, lines: [choiceWords.toTank, stopWords["roof-share"]!.ask] },
    {
      name: stopWords["tank-use"]!.ask,
      lines: [
        `${tankUseWords.used} / ${tankUseWords.notUsed.toLowerCase()}`,
        ...Object.values(tankUseWords.notes),
      ],
    },
  ],
};

/** Everything that stands on a blank field sheet. */
export const sheetWords = {
  language: "en",
  title: "Field sheets",
  heading: (part: string) => `${page.title}: ${part}`,
  parts: {
    areas: "Areas",
    thirst: "Plant thirst",
    cover: "Leaf cover and mulch",
    soil: "Soil",
    shade: "Shade",
    water: "Water",
    tanks: "Roofs, tanks and draws",
  } as Readonly<Record<string, string>>,
  group: "Group (a nickname, no real names)",
  date: "Date and time",
  place: "Which bed, roof, tank or tap",
  guess: "Our guess first",
  readings: "Readings",
  unit: "unit",
  notes: "Notes and a sketch",
  take: "Fill the blanks in order, left to right. Write every reading, also those that disagree; cross out nothing.",
  typed: "Typed in",
  cautions: "Before you start",
  key: "follow the letters, write them in the boxes",
  goTo: (question: string) => `go to ${question}`,
  done: (word: string) => `done: ${word}`,
  way: (code: string) => wayWords[code]!,
  paced: pacedWords,
  slot: (way: string, slot: string): string => {
    const answers = codeAnswers[`${way}/${slot}`];
    const label = slotLabel(way, slot);
    return answers ? `${label}: ${answers.map(({ value, words }) => `${value} ${words}`).join(", ")}` : label;
  },
  cautionsOf: (part: string): readonly string[] => walkCautions[part] ?? [],
  seenOf: (part: string): readonly { name: string; lines: readonly string[] }[] => seen[part] ?? [],
  keyQuestion: (key: string, code: string) => (key === "thirst-key" ? thirstQuestions : soilQuestions)[code]!,
  classWord: (word: string) =>
    thirstWords[word] ? `watered ${thirstWords[word]}` : word.replaceAll("-", " "),
};

export type SheetWords = typeof sheetWords;
