/** The survey's words as answers: what each is called, and one line on what it means. */
import { kindWords } from "./page.ts";

export interface AnswerWords {
  words: string;
  about?: string;
}

type Answers = Readonly<Record<string, AnswerWords>>;

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
const kind = (word: string, about: string): AnswerWords => ({
  words: capital(kindWords[word] ?? word),
  about,
});

const kinds: Answers = {
  "lawn-cool": kind(
    "lawn-cool",
    "Grass that stays green in a mild winter and tires in heat: fescue, rye, bluegrass",
  ),
  "lawn-warm": kind(
    "lawn-warm",
    "Grass that loves heat and browns in winter: couch, buffalo, kikuyu, zoysia",
  ),
  groundcover: kind("groundcover", "Low plants that close over the soil"),
  perennials: kind("perennials", "Soft plants that come again each year"),
  annuals: kind("annuals", "Sown or bedded out for one season"),
  "ornamental-grasses": kind("ornamental-grasses", "Tall grasses in tufts, not mown"),
  shrubs: kind("shrubs", "Woody, branching from the ground"),
  hedge: kind("hedge", "Shrubs in a row, clipped or not"),
  trees: kind("trees", "For shade or looks"),
  "fruit-trees": kind("fruit-trees", "Grown to be picked"),
  vegetables: kind("vegetables", "Herbs and berries too"),
  succulents: kind("succulents", "Fleshy plants that store water: cacti, stonecrop, aloe"),
};

const thirsts: Answers = {
  "very-low": { words: "Watered hardly ever, once grown", about: "Rain is enough, even in a dry year" },
  low: { words: "Watered now and then, once grown", about: "Asks for water in a long dry spell only" },
  moderate: { words: "Watered regularly, once grown", about: "Looks poor after a dry week or two" },
  high: { words: "Watered often, once grown", about: "Droops after a few hot days without water" },
};

const mulches: Answers = {
  "wood-chip": { words: "Wood chip" },
  bark: { words: "Bark" },
  straw: { words: "Straw", about: "Hay, sugar cane, pea straw" },
  "leaf-litter": { words: "Leaf litter", about: "Fallen leaves, left or raked there" },
  compost: { words: "Compost" },
  stone: { words: "Stone", about: "Gravel, pebbles, slate" },
  sheet: { words: "Sheet", about: "Film or cloth with holes for the plants" },
};

const textures: Answers = {
  sand: { words: "Sand", about: "Runs through the fingers; no ball holds" },
  "loamy-sand": { words: "Loamy sand", about: "A ball that falls apart at a touch" },
  "sandy-loam": { words: "Sandy loam", about: "Gritty; a ribbon under 2.5 cm" },
  loam: { words: "Loam", about: "Neither gritty nor smooth; a ribbon under 2.5 cm" },
  "silt-loam": { words: "Silt loam", about: "Smooth as flour; a ribbon under 2.5 cm" },
  silt: { words: "Silt", about: "Smooth as flour, hardly sticky" },
  "sandy-clay-loam": { words: "Sandy clay loam", about: "Gritty; a ribbon of 2.5 to 5 cm" },
  "clay-loam": { words: "Clay loam", about: "A ribbon of 2.5 to 5 cm" },
  "silty-clay-loam": { words: "Silty clay loam", about: "Smooth; a ribbon of 2.5 to 5 cm" },
  "sandy-clay": { words: "Sandy clay", about: "Gritty; a ribbon over 5 cm" },
  "silty-clay": { words: "Silty clay", about: "Smooth; a ribbon over 5 cm" },
  clay: { words: "Clay", about: "Sticky as putty; a ribbon over 5 cm" },
  "potting-mix": { words: "Potting mix", about: "Pots, tubs and planter boxes" },
};

const methods: Answers = {
  drip: { words: "Drip line on the ground", about: "Water comes out drop by drop under the leaves" },
  "subsurface-drip": { words: "Drip line under the ground", about: "The surface stays dry" },
  spray: { words: "Spray heads", about: "Fixed heads that throw a fan of drops; nothing turns" },
  rotor: { words: "Rotors", about: "Heads that turn and throw one or a few jets far" },
  sprinkler: { words: "Sprinkler on a hose", about: "Moved by hand from place to place" },
  hose: { words: "Hose in the hand" },
  can: { words: "Watering can" },
  none: { words: "Nothing", about: "It lives on rain" },
};

const supplies: Answers = {
  "tank-then-mains": {
    words: "A tank, then the mains",
    about: "The mains make up what the tank is short of",
  },
  "tank-only": { words: "A tank alone", about: "When it is empty the bed waits" },
  "mains-only": { words: "The mains alone" },
  other: { words: "Other water", about: "A bore, recycled or carted water; counted apart" },
  none: { words: "None", about: "Rain only" },
};

const roofs: Answers = {
  metal: { words: "Metal" },
  tile: { words: "Tile", about: "Clay or concrete tiles, slate" },
  concrete: { words: "Concrete" },
  membrane: { words: "Membrane", about: "A flat roof of bitumen or plastic sheet" },
  shingle: { words: "Shingle", about: "Bitumen or wood" },
  green: { words: "Green roof", about: "Planted: it keeps much of the rain" },
};

const rest: Readonly<Record<string, Answers>> = {
  runBy: { hand: { words: "Somebody turns it on" }, timer: { words: "A timer" } },
  rule: {
    "after-spillage": {
      words: "After the rain has spilled",
      about: "The cautious count: a day’s draw sees only what was there the evening before",
    },
    "before-spillage": {
      words: "Before the rain spills",
      about: "A day’s draw makes room for that day’s rain",
    },
  },
  order: {
    "before-beds": { words: "Before the beds" },
    "after-beds": { words: "After the beds", about: "It gets what they leave" },
  },
  parity: { odd: { words: "Odd dates" }, even: { words: "Even dates" } },
  unit: {
    kL: { words: "kL", about: "Thousands of litres" },
    m3: { words: "m³", about: "The same as kL" },
    L: { words: "L" },
    ft3: { words: "ft³" },
    "100ft3": { words: "100 ft³" },
    gal: { words: "gal", about: "US gallons" },
    "1000gal": { words: "1000 gal" },
  },
};

const byField: Readonly<Record<string, Answers>> = {
  kind: kinds,
  thirst: thirsts,
  texture: textures,
  method: methods,
  methods,
  supply: supplies,
  supplies,
  ...rest,
};

/** The words of an answer; the word itself where it has none of its own. */
export function answerWords(path: string, word: string): AnswerWords {
  const field = path.slice(path.lastIndexOf(".") + 1);
  const answers = field === "material" ? (/roofs\[/.test(path) ? roofs : mulches) : byField[field];
  return answers?.[word] ?? { words: word };
}

/** Yes and no, and a tap's sources that are no tank. */
export const plainAnswers = {
  yes: "Yes",
  no: "No",
  mains: "The mains",
  other: "Other water",
} as const;

/** Answers that are a form of several fields, or of none. */
export const formWords: Readonly<Record<string, Readonly<Record<string, AnswerWords>>>> = {
  soil: {
    label: { words: "How the soil is known" },
    texture: { words: "By feel", about: "Its texture class, or potting mix" },
    parts: { words: "By sand and clay", about: "From a jar test or a laboratory" },
    figures: { words: "By its water", about: "Four figures from a laboratory or a soil map" },
    none: { words: "Not known" },
  },
  habit: {
    label: { words: "How it is watered now" },
    minutes: { words: "So many minutes at a time" },
    never: { words: "It is not watered" },
    none: { words: "Not known", about: "Then no saving is claimed from this bed" },
  },
  mulch: {
    label: { words: "What lies on the soil" },
    some: { words: "Mulch" },
    none: { words: "No mulch", about: "Bare soil between the plants" },
  },
  price: {
    label: { words: "How water is priced" },
    perKL: { words: "One price" },
    steps: { words: "A price in steps", about: "Dearer, or cheaper, the more is used" },
  },
  reading: {
    label: { words: "What was read" },
    register: { words: "A register read" },
    bill: { words: "A bill" },
    dip: { words: "A tank dipped" },
  },
};
