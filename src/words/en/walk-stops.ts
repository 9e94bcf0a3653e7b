/** What each stop of a walk asks, in a few words and as a question. */
interface StopWords {
  /** In a list: "Area". */
  name: string;
  /** At the head of its screen. */
  ask: string;
  /** What the group guesses before it measures; none where there is nothing to guess. */
  guess?: string;
}

export const stopWords: Readonly<Record<string, StopWords>> = {
  area: {
    name: "Area",
    ask: "How large is it?",
    guess: "Look at it. How large do you think it is?",
  },
  thirst: {
    name: "Thirst",
    ask: "How thirsty are its plants?",
    guess: "Look at the plants. How often do you think they need water?",
  },
  shares: { name: "What grows how much", ask: "How much of it is each planting?" },
  cover: {
    name: "Leaf cover",
    ask: "How much of the ground do leaves hide?",
    guess: "Look straight down. How much of the ground do leaves hide, do you think?",
  },
  mulch: { name: "Mulch", ask: "What lies on the soil?" },
  "mulch-cover": {
    name: "Mulch, how much of the ground",
    ask: "How much of the ground does mulch hide?",
    guess: "How much of the ground does mulch hide, do you think?",
  },
  "mulch-depth": {
    name: "Mulch, how deep",
    ask: "How deep is the mulch?",
    guess: "How deep is the mulch, do you think?",
  },
  soil: { name: "Soil", ask: "What is the soil like?" },
  slope: {
    name: "Slope",
    ask: "How steep is it?",
    guess: "How steep is it, do you think? Level ground is 0%, stairs are about 60%.",
  },
  intake: {
    name: "How fast water goes in",
    ask: "How fast does the soil drink?",
    guess: "How much water can the soil drink in an hour, do you think?",
  },
  shade: { name: "Shade", ask: "What takes the sun?" },
  flow: {
    name: "Flow",
    ask: "How much water comes?",
    guess: "How much water comes in a minute, do you think?",
  },
  habit: { name: "Watering today", ask: "How is it watered now?" },
  heads: { name: "Sprinklers, by looking", ask: "Are the sprinklers in order?" },
  cans: {
    name: "Sprinklers, by cans",
    ask: "Do the sprinklers spread evenly?",
    guess: "100% is quite even. How even are the sprinklers, do you think?",
  },
  "roof-area": {
    name: "Area in plan",
    ask: "How much sky does the roof catch?",
    guess: "How large is the ground that the roof stands over, do you think?",
  },
  "roof-material": { name: "What it is made of", ask: "What is the roof made of?" },
  downpipe: { name: "Where its water goes", ask: "Where do its downpipes lead?" },
  "roof-share": { name: "How much of it drains there", ask: "How much of the roof drains to the tank?" },
  "first-flush": {
    name: "First-flush diverter",
    ask: "How much of the first rain is let away?",
  },
  capacity: {
    name: "What it holds",
    ask: "How much does the tank hold?",
    guess: "How much does the tank hold, do you think?",
  },
  level: {
    name: "Water in it now",
    ask: "How much is in it now?",
    guess: "How much is in it now, do you think?",
  },
  outlet: {
    name: "Water below the outlet",
    ask: "How much lies below the outlet?",
    guess: "How much stays below the outlet, do you think?",
  },
  "tank-use": { name: "How it is used", ask: "Is the tank used?" },
  "tap-flow": {
    name: "Flow",
    ask: "How much water comes?",
    guess: "How much water comes in a minute, do you think?",
  },
  "hose-flow": { name: "Flow, from full to low", ask: "How much comes as the tank falls?" },
  cistern: {
    name: "A day’s use",
    ask: "How much does it use a day?",
    guess: "How much does it use a day, do you think?",
  },
  leak: { name: "A day’s loss", ask: "How much is lost?", guess: "How much is lost in a day, do you think?" },
};

export const listWords: Readonly<Record<string, string>> = {
  beds: "Beds and lawns",
  roofs: "Roofs",
  tanks: "Tanks",
  taps: "Taps",
  draws: "Other uses of tank water",
  leaks: "Leaks",
};
