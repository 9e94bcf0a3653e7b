import { count } from "./count.ts";

/** The walk's other screens: adding, checking, what measuring was worth, for teachers, sheets, the drawing, map files. */

export const addWords = {
  heading: {
    beds: "A bed or lawn",
    roofs: "A roof",
    tanks: "A tank",
    taps: "A tap",
    draws: "Another use of tank water",
    leaks: "A leak",
  } as Readonly<Record<string, string>>,
  name: "What is it called?",
  nameHint: {
    beds: "As people on the spot would say it: front beds, the oval.",
    roofs: "The building, or the part of it with its own downpipe.",
    tanks: "Where it stands: behind the hall.",
    taps: "Where it is: at the gate.",
    draws: "Toilets of the hall, a wash tub, animals to drink.",
    leaks: "Where it drips or runs.",
  } as Readonly<Record<string, string>>,
  kind: "What grows there, most of all?",
  method: "How does water get on to it today?",
  source: "Where does its water come from?",
  from: "From which tank?",
  mains: "The mains",
  other: "Other water: a bore, recycled",
  guess: {
    beds: "How large do you think it is?",
    roofs: "How large is the ground below it, do you think?",
    tanks: "How much does it hold, do you think?",
    draws: "How much does it use a day, do you think?",
    leaks: "How much is lost in a day, do you think?",
  } as Readonly<Record<string, string>>,
  guessHint: "A guess will do: it stands until it is measured.",
  add: "Add it",
  noTank: "There is no tank yet. Add the tank first.",
  wants: { name: "It needs a name.", guess: "Write the guess as a number above 0." },
} as const;

export const readingsWords = {
  heading: (rows: number) => (rows === 1 ? "How it was read" : `How it was read, ${count(rows)} readings`),
  hint: "The figure is worked out from the readings that count. What is left out stays in the notebook.",
  nobody: "no group",
  left: "left out",
  leave: "Leave it out",
  count: "Count it again",
  pressFor: (press: string, group: string) => `${press}: ${group}`,
  joined: (shape: string, isAdded: boolean) => `${isAdded ? " and " : " less "}${shape.toLowerCase()}`,
} as const;

export const checkWords = {
  heading: "Before you walk on",
  complete: (filled: number, asked: number, share: string) =>
    `${count(filled)} of ${count(asked)} things are known: ${share}.`,
  questions: "Worth a second look",
  noQuestions: "Nothing looks unlikely.",
  look: "Look again",
  missing: "Still missing",
  nothingMissing: "Nothing is missing that a walk can fill.",
  of: (thing: string, what: string) => `${thing}: ${what}`,
  site: "The site",
  most: (thing: string, what: string) => `What would move the answer most: ${thing}, ${what}.`,
  usual: (source: string) => `Usual: ${source}`,
} as const;

export const worthWords = {
  heading: "What measuring was worth",
  lead: "Each guess beside what was read, and what the difference is in water.",
  none: "No guess has a reading beside it yet. Guess, then measure.",
  guessed: "guessed",
  read: "read",
  line: (guess: string, figure: string) => `Guessed ${guess}, read ${figure}.`,
  same: "The guess was right.",
  litres: (litres: string, thing: string) => `Left at the guess, ${thing} would be ${litres} a year off.`,
  left: (litres: string) => `What the reading leaves open: ${litres} a year either way.`,
  all: (litres: string, left: string) =>
    `Together the guesses were ${litres} a year off. The readings leave ${left} a year open.`,
  working: "Working it out in water …",
} as const;

export const shapeFileWords = {
  heading: "Outlines from a map file",
  lead: "A GeoJSON file from any map program: its shapes become beds and roofs, with areas on the ellipsoid.",
  choose: "Choose a GeoJSON file",
  stays: "It is read on this machine and not sent.",
  found: (n: number) => (n === 1 ? "One shape is in the file." : `${count(n)} shapes are in the file.`),
  unnamed: (n: number) => `Shape ${count(n)}`,
  is: "What is it?",
  nothing: "leave it out",
  newBed: "a new bed",
  newRoof: "a new roof",
  take: "Take them into the survey",
  taken: (n: number) => (n === 1 ? "One outline was taken in." : `${count(n)} outlines were taken in.`),
  perimeter: (text: string) => `${text} round`,
  save: "Save all outlines as GeoJSON",
  noOutlines: "No bed or roof has an outline yet. Trace one on a plan, or take a file in.",
  faults: {
    "not-json": () => "The file is not GeoJSON: it cannot be read as JSON.",
    "not-geojson": () => "The file is JSON, but not GeoJSON.",
    "no-polygons": () => "The file holds no areas, only points or lines.",
    "too-many-shapes": ({ found, most }) =>
      `The file holds ${count(found!)} shapes; ${count(most!)} are the most.`,
    "not-a-ring": () => "its edge is not a closed ring of places.",
    "outside-the-world": ({ longitude, latitude }) =>
      `a place lies outside the world: longitude ${longitude}, latitude ${latitude}. Longitude comes first.`,
    "sides-cross": ({ one, other }) => `side ${count(one!)} and side ${count(other!)} cross.`,
  } as Readonly<Record<string, (facts: Readonly<Record<string, number>>) => string>>,
  shapeFault: (n: number, fault: string) => `Shape ${count(n)}: ${fault}`,
} as const;

export const drawingWords = {
  heading: "Site drawing to scale",
  caption: (length: string) => `The bar is ${length} long. North is up where the plan has it so.`,
  placed: "Traced outlines lie where they are on the plan.",
  notPlaced: "not placed yet, drawn as squares of their size",
  place: "Place a tank or tap",
  placeHint: "Choose it, then tap the drawing, or move the cross with the arrow keys and press Enter.",
  choose: "choose",
  save: "Save the drawing as SVG",
  empty: "Nothing to draw yet.",
  about: (beds: number, roofs: number, tanks: number, taps: number) =>
    `Site drawing: ${count(beds)} beds, ${count(roofs)} roofs, ${count(tanks)} tanks, ${count(taps)} taps.`,
} as const;

export const sheetScreenWords = {
  heading: "Blank sheets to print",
  lead: "One sheet a part, the blanks in the order in which they are typed in later. Also where the phone stays in the bag.",
  parts: "Which parts?",
  print: "Print",
  all: "All parts",
} as const;

export const typeWords = {
  heading: "Type in a sheet",
  lead: "In the sheet’s order, one block after another. Choose the part that the sheet is of.",
  part: "Which sheet?",
  about: "Which one is it about?",
  choose: "choose",
  guess: "Our guess",
  keep: "Keep and go on",
  kept: (n: number) => (n === 1 ? "1 block kept." : `${count(n)} blocks kept.`),
  skip: "Left blank on the sheet",
  block: (n: number, all: number) => `Block ${count(n)} of ${count(all)}`,
  end: "That was the last block of the sheet.",
  another: "Another sheet",
  seen: "Seen and told",
  seenHint: "What stands on the sheet without readings is typed in at its own stop.",
  same: "The same block for another one",
} as const;

export const laterWords = {
  missing:
    "This part of the page is not on this machine yet, and the server is not reached. What you typed is kept.",
  again: "Try again",
  back: "All stops",
} as const;
