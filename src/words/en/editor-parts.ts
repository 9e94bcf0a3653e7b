/** The parts of a survey as the contents of a notebook: what each is called and what it is for. */
import { count } from "./count.ts";

export interface PartWords {
  name: string;
  /** One entry, with its article. */
  one?: string;
  lead: string;
  /** Name given to a new entry: Bed 4. */
  newName?: string;
}

export const partGroups: Readonly<Record<string, string>> = {
  place: "The place",
  growing: "What grows",
  water: "Where water comes from and goes",
  rules: "When water may run",
  plan: "Money and what could be done",
  proof: "Meters, readings and who took them",
};

export const parts: Readonly<Record<string, PartWords>> = {
  place: {
    name: "The place",
    lead: "Where it is tells how high the sun stands and what the air asks of plants.",
  },
  weather: {
    name: "Monthly means",
    lead: "For a place without a daily weather record. A record of your own, put in elsewhere, comes before them.",
  },
  hours: {
    name: "Watering hours",
    one: "hours",
    lead: "When somebody is there to water. Rounds by hand are planned within them.",
  },
  absences: {
    name: "When nobody is there",
    one: "an absence",
    lead: "Holidays and other times when nobody waters by hand, unless somebody looks after it.",
  },
  beds: {
    name: "Beds and lawns",
    one: "a bed",
    newName: "Bed",
    lead: "Everything that grows and is watered as one: a bed, an oval, a hedge, a row of trees.",
  },
  roofs: {
    name: "Roofs",
    one: "a roof",
    newName: "Roof",
    lead: "Each part of a roof with its own downpipe. From the ground: no ladders, no climbing.",
  },
  tanks: {
    name: "Tanks",
    one: "a tank",
    newName: "Tank",
    lead: "What holds rain. Never climb into one; tank water is not for drinking.",
  },
  taps: {
    name: "Taps",
    one: "a tap",
    newName: "Tap",
    lead: "Taps, hose points and valves of a line, with their flow.",
  },
  draws: {
    name: "Other uses of tank water",
    one: "a use",
    newName: "Use",
    lead: "Toilets, washing down: what else takes water from a tank.",
  },
  leaks: {
    name: "Leaks",
    one: "a leak",
    newName: "Leak",
    lead: "Mains water that is lost until somebody mends it.",
  },
  restrictions: {
    name: "Restrictions",
    one: "a restriction",
    newName: "Restriction",
    lead: "Rules of the town or of the site on when and how watering is allowed. The town’s own words come before what stands here.",
  },
  price: { name: "Price of water", lead: "From a bill. What does not follow the volume is left out." },
  budget: { name: "Budget", lead: "What may be spent, and how far ahead it is looked." },
  measures: {
    name: "Measures",
    one: "a measure",
    newName: "Measure",
    lead: "What could be done. Each changes one thing; what is part of the plan is said on each.",
  },
  meters: {
    name: "Meters",
    one: "a meter",
    newName: "Meter",
    lead: "The meter at the street, and any behind it.",
  },
  readings: {
    name: "Readings",
    one: "a reading",
    lead: "Registers read, bills, tanks dipped: the proof of what watering takes.",
  },
  groups: { name: "Survey groups", one: "a group", newName: "Group", lead: "Who measured. Nicknames only." },
  found: {
    name: "What was measured",
    one: "a finding",
    newName: "Finding",
    lead: "Readings as they were taken, with the field that they led to.",
  },
};

/** The parts of one bed. */
export const bedParts: Readonly<Record<string, PartWords>> = {
  plants: { name: "Plants", lead: "What grows there, and how it takes to going dry." },
  cover: { name: "Leaf cover", lead: "How much of the ground leaves hide, seen from above." },
  mulch: { name: "Mulch", lead: "What lies on the soil between the plants." },
  soil: { name: "Soil", lead: "How much water it holds and how fast it takes it in." },
  shade: { name: "Shade", lead: "Walls, buildings and trees as seen from the middle of the bed." },
  watering: { name: "How it is watered", lead: "What puts the water on, and where it comes from." },
  habit: {
    name: "Watering today",
    lead: "As it is done now, not as it should be. “Not known” is an answer: then nothing is claimed.",
  },
  days: {
    name: "Days and limits",
    lead: "When it may be watered, when it must be dry, and what comes first.",
  },
  plan: { name: "Outline", lead: "Its corners on a plan, for a drawing to scale and for rounds on foot." },
};

/** Rows within a part. */
export const rowWords: Readonly<Record<string, { one: string; name: string }>> = {
  plantings: { one: "more plants", name: "Plants" },
  obstructions: { one: "something that takes sun", name: "In the way" },
  hours: { one: "hours", name: "Hours" },
  absences: { one: "an absence", name: "Absence" },
  flowAt: { one: "a level", name: "Level" },
  steps: { one: "a step", name: "Step" },
  perKLAlso: { one: "a charge", name: "Charge" },
  lines: { one: "a line", name: "Line" },
  readings: { one: "a reading", name: "Reading" },
};

/** Groups of fields that may be there or not. */
export const groupWords: Readonly<Record<string, { name: string; add: string; one: string }>> = {
  normals: { name: "Monthly means", add: "Type in monthly means", one: "the monthly means" },
  count: { name: "Plants counted", add: "Count the plants instead", one: "the count" },
  initial: { name: "Soil on the first day", add: "Say how dry the soil was", one: "the first day’s state" },
  topUp: { name: "Filled up from the mains", add: "The mains fill it up", one: "the filling up" },
  quote: { name: "A quote in lines", add: "Enter a quote", one: "the quote" },
  tariff: { name: "Price of water", add: "Enter the price of water", one: "the price of water" },
  money: { name: "Budget", add: "Enter a budget", one: "the budget" },
  habit: { name: "Watering after the change", add: "Say how it is watered then", one: "that" },
};

export const changeNames: Readonly<Record<string, { words: string; about: string }>> = {
  mulch: { words: "Lay mulch", about: "On beds that have none, or too little" },
  replant: { words: "Plant something else", about: "Plants that ask for less" },
  changeWatering: { words: "Water otherwise", about: "Another method, supply, tap or flow" },
  addTank: { words: "Add a tank", about: "A tank that is not there yet" },
  resizeTank: { words: "A tank of another size", about: "In place of one that is there" },
  useTank: { words: "Use a tank", about: "Put one that stands idle to work, or lead it to more beds" },
  connectRoof: { words: "Lead a roof to a tank", about: "A roof that runs to waste today" },
  firstFlush: { words: "Change the first flush", about: "Throw less, or more, of the first rain away" },
  addDraw: { words: "Move a use on to a tank", about: "A use that is all mains water today" },
  mendLeak: { words: "Mend leaks", about: "The plainest of all" },
};

/** Words of a measure's change, and what is called a new tank or use at first. */
export const partWordsOfChange = {
  label: "What changes",
  newTank: "New tank",
  newDraw: "New use",
} as const;

/** Short lines on parts, in lists and contents. */
export const partSummary = {
  none: "none yet",
  count: (n: number) => count(n),
  notSaid: "not said yet",
  typedIn: "typed in",
  inIt: (litres: string) => `${litres} in it`,
  notKnown: "not known",
  notWatered: "not watered",
  notPlanned: "not part of the plan",
  openSky: "open sky",
  inTheWay: (n: number) => (n === 1 ? "one thing in the way" : `${count(n)} things in the way`),
  anyDay: "any day",
  corners: (n: number) => `${count(n)} corners`,
  notDrawn: "not drawn",
  sandAndClay: (sand: string, clay: string) => `${sand} sand, ${clay} clay`,
  ownFigures: "figures of its own",
  estimated: "estimated",
} as const;
