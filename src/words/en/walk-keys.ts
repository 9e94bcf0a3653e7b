/** Questions of the thirst key and of soil by feel, their answers and reasons. */

interface QuestionWords {
  question: string;
  answers: Readonly<Record<string, string>>;
}

const leaf: QuestionWords["answers"] = {
  fleshy: "Fat with water, like a cactus or a stonecrop",
  "grey-or-hairy": "Grey, white, woolly, hairy, or with a bloom that rubs off",
  "small-and-hard": "Small, narrow or like needles, hard or leathery",
  "large-and-thin": "Large, thin and soft",
  "none-of-these": "None of these",
};

const wild: QuestionWords["answers"] = {
  "dry-hills-or-sand": "On dry hills, rocks or sand, or where summers are dry",
  woodland: "In woods",
  meadow: "In meadows and on field edges",
  "wet-ground": "Beside water or on wet ground",
  "not-known": "Nobody knows",
};

const leafQuestion = "What are its leaves like?";
const wildQuestion = "Where does it grow wild? The label or a book may say.";

export const thirstQuestions: Readonly<Record<string, QuestionWords>> = {
  "dry-fortnight": {
    question: "What did it look like after two warm weeks without rain or watering?",
    answers: {
      untouched: "As if nothing had happened",
      duller: "Duller, a few leaves yellow or dropped",
      "drooped-and-came-back": "It drooped, and stood up again once watered",
      browned: "Leaves went brown or it died back",
      "not-seen": "Nobody saw it",
    },
  },
  "leaf-untouched": { question: leafQuestion, answers: leaf },
  "leaf-duller": { question: leafQuestion, answers: leaf },
  "leaf-droops": { question: leafQuestion, answers: leaf },
  "leaf-not-seen": { question: leafQuestion, answers: leaf },
  "wild-small-hard": { question: wildQuestion, answers: wild },
  "wild-browned": { question: wildQuestion, answers: wild },
  "wild-large-thin": { question: wildQuestion, answers: wild },
  "wild-not-seen": { question: wildQuestion, answers: wild },
  afternoon: {
    question: "Does it hang its leaves on warm afternoons even when the soil is moist?",
    answers: {
      "by-afternoon": "Yes, by the afternoon",
      "only-when-dry": "Only when the soil is dry",
      "not-seen": "Nobody saw it",
    },
  },
};

export const soilQuestions: Readonly<Record<string, QuestionWords>> = {
  ball: {
    question: "Squeeze a wet handful. Does it stay a ball?",
    answers: { "falls-apart": "It falls apart", stays: "It stays a ball" },
  },
  ribbon: {
    question: "Press it out between thumb and finger into a ribbon. How long is it when it breaks?",
    answers: {
      none: "It makes no ribbon",
      "under-25": "Shorter than 25 mm (1 inch)",
      "25-to-50": "25 to 50 mm (1 to 2 inches)",
      "over-50": "Longer than 50 mm (2 inches)",
    },
  },
  ...Object.fromEntries(
    ["grit-short", "grit-middle", "grit-long"].map((code): [string, QuestionWords] => [
      code,
      {
        question: "Rub a very wet pinch in your palm. How does it feel?",
        answers: { gritty: "Gritty above all", smooth: "Smooth above all", neither: "Some of both" },
      },
    ]),
  ),
  flour: {
    question: "Is it like wet flour, or does it stick a little to the fingers?",
    answers: { "like-flour-not-sticky": "Like flour, hardly sticky", "a-little-sticky": "A little sticky" },
  },
};

/** Why a key ends where it does. */
export const reasonWords: Readonly<Record<string, string>> = {
  "stores-water": "Fat leaves or stems store their own water.",
  "grey-or-hairy": "Grey or hairy leaves lose little water.",
  "small-and-hard": "Small, hard leaves lose little water.",
  "dry-home-and-hard-leaf": "It grows wild where it is dry, and its leaves are made for it.",
  "hard-leaf-but-wet-home": "Its leaves are small and hard, yet it grows wild on wet ground.",
  "untouched-though-thin":
    "Two dry weeks did nothing to it, though its leaves are thin: its roots may reach deep.",
  untouched: "Two dry weeks did nothing to it.",
  duller: "Two dry weeks dulled it, no more.",
  "droops-when-dry": "It droops when dry and comes back.",
  "large-thin-and-droops": "Large thin leaves that droop lose much water.",
  browned: "Two dry weeks burnt it.",
  "browned-and-wet-home": "Two dry weeks burnt it, and it grows wild on wet ground.",
  "browned-though-dry-home":
    "Two dry weeks burnt it though it grows wild where it is dry: it may be new or have shallow roots.",
  "large-and-thin": "Large thin leaves lose more water than most.",
  "thin-leaf-dry-home": "Its leaves are thin, yet it grows wild where it is dry.",
  "thin-leaf-wet-home": "Its leaves are thin and it grows wild on wet ground.",
  "dry-home": "It grows wild where it is dry.",
  "wet-home": "It grows wild on wet ground.",
  middling: "Nothing about it is made for dry ground or for wet.",
  "nothing-told": "Nothing seen tells, so the middle is taken.",
  "no-ball": "Sand does not hold together.",
  "ball-but-no-ribbon": "It holds together but makes no ribbon: a little silt and clay in sand.",
  "short-and-gritty": "A short ribbon, gritty.",
  "short-and-smooth": "A short ribbon, smooth.",
  "short-and-neither": "A short ribbon, neither gritty nor smooth.",
  flour: "Smooth as flour and hardly sticky.",
  "middle-and-gritty": "A middling ribbon, gritty.",
  "middle-and-smooth": "A middling ribbon, smooth.",
  "middle-and-neither": "A middling ribbon, neither gritty nor smooth.",
  "long-and-gritty": "A long ribbon, gritty.",
  "long-and-smooth": "A long ribbon, smooth.",
  "long-and-neither": "A long ribbon, neither gritty nor smooth.",
};

/** The climate that a list of plants speaks for. */
export const climateWords: Readonly<Record<string, string>> = {
  "dry-summer": "where summers are dry and winters mild",
  "rainy-summer": "where it rains through the summer",
  "dry-warm": "inland where it is warm and dry",
  "dry-cold": "where winters are cold and summers dry",
  "warm-wet": "where it is warm and wet",
  any: "in most climates",
};
