import { and, type Sentence, type Slot, shortName, someNames } from "./page.ts";

/** Words of the page on roofs and tanks: sentences, findings, labels, asides. Numbers come in as text with their units. */
export const tanks = {
  page: "Roofs and tanks",
  roofs: "What the roofs send",
  noTank: (could: Slot | null): Sentence =>
    could
      ? ["No tank in this survey yet. Its roofs could send one ", could, " of rain a year."]
      : ["No roof and no tank in this survey yet. Once one is measured, what it brings stands here."],
  headline: (sent: Slot, given: Slot, spilled: Slot): Sentence => [
    "In a mean year the roofs send ",
    sent,
    " to the tanks. They give ",
    given,
    " of it; ",
    spilled,
    " spill over.",
  ],
  headlineOne: (sent: Slot, given: Slot, spilled: Slot): Sentence => [
    "In a mean year the roofs send ",
    sent,
    " to the tank. It gives ",
    given,
    " of it; ",
    spilled,
    " spill over.",
  ],
  headlineDry: "No rain reaches a tank: no roof is connected to one that is in use.",
  drawsTake: (names: readonly string[], got: Slot): Sentence => [
    got,
    ` of that goes to ${and(names.map(shortName))}. `,
  ],
  bedsTake: (got: Slot): Sentence => ["The beds get ", got, " of it. "],
  flush: (litres: Slot): Sentence => [
    "The first flush, let go so that the tank stays clean, costs ",
    litres,
    " a year. ",
  ],
  unconnected: (names: readonly string[], could: Slot): Sentence => [
    `Not connected yet: ${someRoofs(names)}, which could send `,
    could,
    " more. ",
  ],
  roofPlate: {
    finding: (name: string, share: string) => `${shortName(name)} sends ${share} of what the tanks get`,
    findingOne: (name: string, litres: string) => `${shortName(name)} sends its tank ${litres} a year`,
    findingNone: "No roof sends water to a tank that is in use",
    findingNoRoof: "No roofs yet",
    about:
      "Each roof’s rain in a mean year: what reaches its tank, what the first flush takes, and what never runs in.",
    to: (tank: string) => `to ${shortName(tank)}`,
    toIdle: (tank: string) => `to ${shortName(tank)}, which is not in use`,
    unconnected: "not connected",
    could: (litres: string) => `could send ${litres}`,
    sends: "into the tank",
    flush: "first flush",
    other: "elsewhere, or never runs off",
    axis: (unit: string) => `${unit} of rain on it in a mean year`,
    columns: [
      "Roof",
      "Area",
      "Tank",
      "Falls on it",
      "Into the tank",
      "First flush",
      "Elsewhere",
      "Never runs off",
    ],
    none: "none",
  },
  tank: {
    notUsed: (name: string): Sentence => [
      `${shortName(name)} is not in use: nothing runs in and nothing is drawn. `,
    ],
    noSize: (name: string): Sentence => [
      `${shortName(name)} holds nothing: its size is 0. Move the ruler to give it one. `,
    ],
    nothingAsked: (name: string): Sentence => [
      `Nothing is asked of ${shortName(name)}: what runs in spills. `,
    ],
    flows: (inflow: Slot, given: Slot, spilled: Slot): Sentence => [
      inflow,
      " run in during a mean year. It gives ",
      given,
      " and spills ",
      spilled,
      ". ",
    ],
    topUp: (litres: Slot): Sentence => ["The mains top it up with ", litres, " of that. "],
    /** Both ways of saying how reliable it is, in words. */
    reliable: (days: Slot, unit: string, litres: Slot): Sentence => [
      "Of 100 days on which water is asked of it, all is there on ",
      days,
      `; of 100 ${unit} asked for, it gives `,
      litres,
      ". ",
    ],
    always: "Whenever water is asked of it, all of it is there. ",
    shortDays: (days: Slot): Sentence => ["It runs short on ", days, " a year. "],
    oneDay: "one day",
    days: (count: string) => `${count} days`,
    inTrade: "In the words of the trade",
    trade: (byDays: string, byVolume: string) =>
      `Reliability by time ${byDays}: days on which all of the draw was met, of the days with a draw. Volumetric reliability ${byVolume}: water given, of the water asked for. Rule: `,
    rules: {
      "after-spillage":
        "yield after spillage, the cautious one: a day’s rain can be drawn from the next day on.",
      "before-spillage": "yield before spillage: a day’s rain can be drawn on that day.",
    },
  },
  trial: {
    size: "Tank size",
    roof: "Roof on it",
    back: "Back to as it is",
    heading: (name: string) => `Try ${shortName(name)} at another size`,
    asIs: "As it is. Move a ruler to try another size.",
    gives: (size: string, roof: string, litres: string) =>
      `${size} under ${roof} of roof would give ${litres} a year`,
    more: (litres: string) => `, ${litres} more`,
    less: (litres: string) => `, ${litres} less`,
    same: ", as now",
    short: (days: string, before: string) => `; short on ${days} instead of ${before}`,
    neverShort: (before: string) => `; never short instead of on ${before}`,
    shortSame: (days: string) => `; short on ${days} as now`,
    neverAsNow: "; never short, as now",
    found: (size: string, days: string, year: string) =>
      `At ${size}: short on ${days}${year && ` of ${year}`}`,
    foundNever: (size: string, year: string) => `At ${size}: never short${year && ` in ${year}`}`,
  },
  years: {
    finding: (name: string, years: string, worst: string, days: string) =>
      `${shortName(name)} ran short in ${years}, longest in ${worst}: ${days}`,
    findingNever: (name: string) => `${shortName(name)} was never short in any of its years`,
    ofYears: (short: string, all: string) => `${short} of ${all} years`,
    legend: "Year shown above",
    short: (days: string) => `short ${days}`,
    never: "never short",
    dry: "dry year",
    wet: "wet year",
    columns: ["Year", "Ran in", "Given", "Spilled", "Topped up", "Short days"],
    of: (year: string, words: string) => `${year}, ${words}`,
  },
  claims: {
    finding: (name: string, litres: string) => `Most of it goes to ${shortName(name)}: ${litres} a year`,
    findingNone: "Nobody asks it for water",
    about: "What each asks of the tank in a mean year, and what of it the tank gives.",
    given: "given",
    mains: "from the mains instead",
    lacks: "lacking",
    columns: ["Who asks", "Asked for", "Given by the tank", "Share given"],
    share: (share: string) => `${share} of what it asks`,
  },
  limit: {
    finding: {
      tank: (name: string) => `To give more of what is asked, ${shortName(name)} would have to be larger`,
      roof: (name: string) => `To give more of what is asked, ${shortName(name)} needs more roof`,
      demand: (name: string) =>
        `${shortName(name)} gives nearly all that is asked: more could be asked of it`,
      "nothing-asked": (name: string) => `${shortName(name)} could give water, but nothing is asked of it`,
    },
    about: (name: string) =>
      `What ${name} would give more in a mean year with a quarter more tank, a quarter more roof, and a quarter more asked of it: the same tank run again.`,
    tank: "a quarter more tank",
    roof: "a quarter more roof",
    demand: "a quarter more asked of it",
    more: (litres: string) => `+${litres}`,
    none: "no more",
    columns: ["With", "Gives more a year"],
    enough: (size: string, share: string, now: string) =>
      `A tank of ${size} would give within 5% of all that this roof and this draw allow; today’s gives ${share} of it (${now}).`,
    enoughNow: (size: string, share: string) =>
      `From ${size} on a larger tank would give hardly more; today’s gives ${share} of all that this roof and this draw allow.`,
  },
  aside: {
    roofs: "Read this figure.",
    roofsWords:
      "Each bar is all the rain that falls on a roof in a mean year: solid reaches the tank, thin hatching is the first flush that is let go, the empty rest runs elsewhere or never runs off. A dotted bar is a roof without a tank.",
    flush: "First flush.",
    flushWords: (depth: string) =>
      `The first rain after dry days carries dust and droppings. It is let go before water reaches the tank; a day before with less than ${depth} of rain counts as dry.`,
    trial: "Try it.",
    trialWords:
      "Only this tank is run again as a ruler moves; beds and draws ask as they do now. The dotted line is the tank as it is. More roof means more of the same roof.",
    years: "All years.",
    yearsWords:
      "One small picture a year, on one scale, so that a dry one shows. Choose one to see it large.",
    claims: "Who comes first.",
    claimsWords:
      "On a short day the list is served from the top. What the mains give instead is hatched; a bed on the tank alone goes without.",
    limit: "How this is told.",
    limitWords:
      "The tank is run three more times over the same days, each time with a quarter more of one thing. Of tank and roof, the one that adds more is the limit; where the tank gives within 5% of all that its roof and its draw allow, it is what is asked of it.",
    needed: "Watered to need.",
    neededWords: "The beds here ask for what they need, not for what habit gives today.",
  },
  working: {
    sum: "sum over the tanks",
    sumRoofs: "sum over the roofs",
    sent: "What roofs send to the tanks in a mean year",
    given: "What the tanks give in a mean year",
    spilled: "What the tanks spill in a mean year",
    draws: "What the tanks give to draws in a mean year",
    beds: "What the tanks give to beds in a mean year",
    flush: "What the first flush takes in a mean year",
    could: "What roofs without a tank could send in a mean year",
    sumClaims: "sum over those who ask",
  },
} as const;

function someRoofs(names: readonly string[]): string {
  return names.length === 1
    ? `the roof “${shortName(names[0]!)}”`
    : `the roofs ${someNames(names).replace("other beds", "others")}`;
}
