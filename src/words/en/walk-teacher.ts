import { count } from "./count.ts";

/** The teacher's page: two lessons, who does what, and how far the groups have come. */
export const teacherWords = {
  heading: "Two lessons on the grounds",
  lead: "Three to five children a group, a phone or a sheet between them. Nobody needs to know anything before.",
  groups: "How many groups?",
  codes:
    "Each group has a nickname to type at the start. It is its code: the same nickname takes up where it left off.",
  before: {
    heading: "The day before",
    lines: [
      "Ask the keeper which taps and zones may be run, where cables and pipes lie, and what sprays were used this week.",
      "Read the water meter, and again at the same hour a day later.",
      "Print the sheets. Fill jars with soil and water: clay needs two days to settle.",
      "Walk the practice school once yourself: ten minutes.",
    ],
  },
  first: {
    heading: "First lesson: sizes and thirst",
    lines: [
      "5 min: cautions, nicknames, who reads and who writes.",
      "10 min: all guess the same bed, then tape it together. Compare guess and tape.",
      "25 min: each group its own beds: area, thirst, leaf cover, mulch.",
      "10 min: compare. Where two groups judged the same bed, the middle one stands and the spread stays.",
    ],
  },
  second: {
    heading: "Second lesson: water, soil and sky",
    lines: [
      "5 min: what the last lesson left open, and what would tell most.",
      "30 min: each group its own stops: flow by jug, soil by feel, skyline, tanks from the ground.",
      "10 min: what measuring was worth: guess against reading, in litres.",
      "5 min: what the grounds could give up, and how sure that is.",
    ],
  },
  share: "Who does what",
  shareHint: "Beds go round, so that two groups judge each large bed; the rest is dealt out.",
  table: { group: "Group", beds: "Beds", also: "And", done: "Taken so far" },
  also: [
    "tanks and roofs, with an adult",
    "taps, with the keeper’s leave",
    "skyline of every bed",
    "soil of every bed",
    "sprinklers, by looking",
    "site drawing",
  ],
  taken: (n: number) => (n === 1 ? "1 reading" : `${count(n)} readings`),
  judged: "Where groups judged the same",
  judgedNone: "No two groups have the same stop yet.",
  judgedLine: (what: string, found: string, middle: string) =>
    `${what}: ${found}. The middle one stands: ${middle}.`,
  // plants and beetles: nobody's name
  nicknames: [
    "Teasel",
    "Sorrel",
    "Fennel",
    "Yarrow",
    "Bracken",
    "Clover",
    "Mallow",
    "Burdock",
    "Sedge",
    "Tansy",
    "Vetch",
    "Thistle",
  ],
  print: "Print this page",
} as const;
