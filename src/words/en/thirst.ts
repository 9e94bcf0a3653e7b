import { type Sentence, type Slot, shortName, someNames } from "./page.ts";

/** Words of the page on thirst: sentences, findings, labels, asides. Numbers come in as text with their units. */
export const thirst = {
  page: "Thirst",
  order: "Who is thirstiest",
  oneBed: "One bed at a time",
  years: "A year, day by day",
  noBeds: ["There are no beds in this survey yet. Once one is measured, its thirst stands here."] as Sentence,
  noNeed: ["On this weather no bed needs watering: rain is enough."] as Sentence,
  headline: (rain: Slot, hose: Slot): Sentence => [
    "Rain gives the gardens ",
    rain,
    " a year that they can use. Watering has to bring ",
    hose,
    " more.",
  ],
  dryAndWet: (dryYear: string, dry: Slot, wetYear: string, wet: Slot): Sentence => [
    `In a dry year like ${dryYear} it is `,
    dry,
    `, in a wet one like ${wetYear} `,
    wet,
    ". ",
  ],
  most: (name: string, share: string): Sentence => [`${share} of it goes on ${shortName(name)}. `],
  thirstiest: (name: string, perArea: Slot): Sentence => [
    `The thirstiest ground is ${shortName(name)}, with `,
    perArea,
    " a year. ",
  ],
  perArea: (litres: string, area: string) => `${litres} on each ${area}`,
  rainOnly: (names: readonly string[]): Sentence => [
    `${someNames(names)} ${names.length === 1 ? "lives" : "live"} on rain alone. `,
  ],
  short: (names: readonly string[], short: Slot): Sentence => [
    `${someNames(names)} ${names.length === 1 ? "gets" : "get"} less than the plants need: `,
    short,
    " short in a mean year.",
  ],
  bed: {
    needs: (name: string, month: string, litres: Slot, minutes: Slot | null): Sentence => [
      `${shortName(name)}: in ${month} `,
      litres,
      ...(minutes ? [" a week, ", minutes, " of watering. "] : [" a week. "]),
    ],
    allNeed: (month: string, litres: Slot): Sentence => [
      `In ${month} all beds together need `,
      litres,
      " a week. ",
    ],
    never: (name: string): Sentence => [`${shortName(name)}: no watering is needed, rain is enough. `],
    rain: (share: string, used: Slot): Sentence => [
      `Of the year’s rain on it the plants use ${share}, `,
      used,
      "; the rest drains past the roots. ",
    ],
    allRain: "Nearly all of the year’s rain on it is used. ",
    habitEven: "Over the year today’s watering comes close to the need. ",
    habit: (beyond: Slot | null, short: Slot | null): Sentence => {
      if (beyond && short)
        return ["Today some months get too much, ", beyond, " a year, and some too little, ", short, ". "];
      if (beyond) return ["Today it gets ", beyond, " a year more than it can use. "];
      return short ? ["Today it gets ", short, " a year less than it needs. "] : [];
    },
    habitUnknown: (name: string) =>
      `How ${shortName(name)} is watered today is not known, so nothing is said of too much or too little. `,
    stress: (days: Slot): Sentence => ["Watered to need, its plants go thirsty on ", days, " a year"],
    noStress: "Watered to need, its plants never go thirsty",
    stressToday: (days: Slot): Sentence => ["; as today they do on ", days],
    noStressToday: "; nor as today",
    stop: ". ",
    establishing: (litres: Slot): Sentence => [
      "While its new plants establish they take ",
      litres,
      " a year instead. ",
    ],
    tankOnly: "Only its tank waters it; what the tank lacks, the plants feel. ",
    rainOnly: (litres: Slot): Sentence => [
      "It is never watered. To keep its plants from any thirst would take ",
      litres,
      " a year. ",
    ],
    days: (count: string) => `${count} days`,
    oneDay: "one day",
    minutes: (count: string) => `${count} minutes`,
  },
  orderPlate: {
    finding: (thirsty: string, most: string, isSame: boolean) =>
      isSame
        ? `Thirstiest by the square metre, and most in all: ${shortName(thirsty)}`
        : `Thirstiest by the square metre: ${shortName(thirsty)}; most in all: ${shortName(most)}`,
    findingOne: (name: string) => `What ${shortName(name)} takes`,
    findingNone: "No bed needs watering",
    about:
      "Beds in order of thirst: rain used and watering needed on each square metre, and watering needed in all.",
    perArea: (unit: string, area: string) => `${unit} on each ${area} a year`,
    inAll: (unit: string) => `${unit} in all a year`,
    watering: "watering",
    rain: "rain used",
    tank: "tank water",
    mains: "mains water",
    columns: [
      "Bed",
      "Area",
      "Watering on each",
      "Rain used on each",
      "Watering in all",
      "Of it from the tank",
    ],
    by: "Order",
    byArea: "by the square metre",
    byAreaUs: "by the square foot",
    byAll: "in all",
    more: (count: number) => `Show all ${count} beds`,
    fewer: "Show the thirstiest only",
    rainOnly: "rain only",
  },
  balance: {
    even: (name: string) => `${name}: today’s watering keeps close to the need`,
    over: (name: string, month: string, litres: string, minutes: string | null) =>
      `${name}: too much in ${month}, ${litres} a week${minutes ? ` or ${minutes}` : ""}`,
    under: (name: string, month: string, litres: string, minutes: string | null) =>
      `${name}: too little in ${month}, ${litres} a week${minutes ? ` or ${minutes}` : ""}`,
    both: (over: string, under: string) => `${over}; too little in ${under}`,
    about: (name: string) => `${name}: what today’s watering gives above or below the need, week by month.`,
    axis: (unit: string) => `${unit} a week`,
    minutesAxis: "minutes a week",
    beyond: "too much",
    lacks: "too little",
    columns: ["Month", "Needed a week", "Given today a week", "More or less", "Minutes more or less"],
    reading: (month: string, words: string) => `${month}: ${words}`,
    more: (litres: string, minutes: string | null) =>
      `${litres} too much${minutes ? `, ${minutes}` : ""} a week`,
    less: (litres: string, minutes: string | null) =>
      `${litres} too little${minutes ? `, ${minutes}` : ""} a week`,
    right: "about what it needs",
    allYear: "every month",
    run: (from: string, to: string) => `${from} to ${to}`,
    minutes: "minutes",
  },
  changes: {
    finding: (what: string, name: string, litres: string) =>
      `${what} saves ${shortName(name)} ${litres} a year`,
    findingCost: (what: string, name: string, litres: string) =>
      `${what} costs ${shortName(name)} ${litres} a year`,
    findingCould: (what: string, name: string, litres: string) =>
      `${shortName(name)} with ${what} would take ${litres} a year less`,
    findingNone: (name: string) => `Nothing about ${shortName(name)} changes its thirst much`,
    about: (name: string) =>
      `What ${name} would take in a mean year without its shade or mulch, on other soil, or with plants of another thirst: the same bed run again.`,
    asIs: "as it is",
    "no-shade": "without its shade",
    "no-mulch": "without its mulch",
    soil: (texture: string) => `on ${texture.replaceAll("-", " ")}`,
    thirst: (words: string) => `plants watered ${words}`,
    saves: {
      "no-shade": "Its shade",
      "no-mulch": "Its mulch",
      soil: "Its soil",
    },
    more: (litres: string) => `+${litres}`,
    less: (litres: string) => `−${litres}`,
    none: "no change",
    columns: ["The same bed", "Takes a year", "More or less"],
  },
  year: {
    finding: (name: string, times: string, year: string, litres: string) =>
      `${name} in ${year}: watered ${times}, ${litres} at a time`,
    findingToday: (name: string, times: string, year: string) =>
      `${name} in ${year}, as today: watered ${times}`,
    findingNever: (name: string, year: string) => `${name} in ${year}, never watered`,
    thirsty: (days: string) => `; thirsty on ${days}`,
    neverThirsty: "; never thirsty",
    times: (count: string) => `${count} times`,
    once: "once",
    days: (count: string) => `${count} days`,
    oneDay: "one day",
    about: (name: string, year: string) =>
      `${name} through ${year}: rain from above, the water that its roots can reach, waterings that refill it, and what drains below.`,
    rainAxis: (unit: string) => `rain, ${unit}`,
    soilAxis: (unit: string) => `${unit} within reach of the roots`,
    trigger: "watered from here on",
    drained: "drained past the roots",
    thirstyMark: "thirsty",
    as: "Watered",
    asNeed: "to need",
    asToday: "as today",
    asRain: "by rain alone",
    middle: "middle year",
    columns: [
      "Date",
      "Rain",
      "Watered",
      "Of it from the tank",
      "Used by plants and soil",
      "Drained",
      "Within reach",
      "Thirsty",
    ],
    reading: (day: string, parts: readonly string[]) => `${day}: ${parts.join(", ")}`,
    within: (stored: string, all: string) => `${stored} of ${all} within reach`,
    rained: (depth: string) => `rain ${depth}`,
    watered: (litres: string, from: string) => `watered ${litres}${from}`,
    fromTank: " from the tank",
    fromBoth: " from tank and mains",
    drainedReading: (depth: string) => `${depth} drained`,
    isThirsty: "plants thirsty",
  },
  guess: {
    begin: "Guess the order first",
    heading: "Which bed drinks most on each square metre?",
    headingUs: "Which bed drinks most on each square foot?",
    lead: "Put the thirstiest first. Drag a bed, or give it its place by number; then look.",
    place: (name: string) => `Place of ${name}`,
    move: (name: string) => `Move ${name}`,
    keys: "arrow keys move it by one place, a digit to that place",
    about:
      "Beds as guessed on the left and as found on the right, thirstiest first, with the litres between them.",
    columns: ["Bed", "Guessed place", "Found place", "Watering on each"],
    thirstiest: "thirstiest",
    frugal: "most frugal",
    see: "See the order",
    again: "Guess again",
    leave: "Leave it",
    moved: (name: string, place: number, of: number) => `${name} is now ${place} of ${of}`,
    score: (right: number, of: number) =>
      right === of
        ? "Every bed in its place."
        : `${right === 0 ? "None" : right} of ${of} in ${right === 1 ? "its" : "their"} place.`,
    near: (near: number, of: number) => `${near} of ${of} no more than one place away.`,
    farthest: (name: string, places: number, isUp: boolean) =>
      `${shortName(name)} surprised most: ${places} places ${isUp ? "thirstier" : "more frugal"} than guessed.`,
    guessed: "Your order",
    found: "As worked out",
    between: (litres: string, area: string) => `${litres} more on each ${area}`,
    betweenShort: (litres: string, area: string) => `+${litres}/${area}`,
    largest: (count: number) => `The ${count} largest beds.`,
  },
  forClass: {
    name: "For a class",
    words:
      "One bed and its most telling week, worked by hand: blanks to fill in on the first sheet, the answers on the second.",
    print: (bed: string) => `Print the worked example: ${bed}`,
    none: (bed: string) => `The record holds no whole week of ${bed}.`,
  },
  aside: {
    rainUsed: "Rain that is used.",
    rainUsedWords:
      "Rain counts once it has stayed within reach of the roots. What falls on full soil drains past them; that part is in no figure of what the plants got.",
    watering: "What watering means here.",
    wateringWords:
      "Litres let out of the hose, the losses of its method included: what the keeper has to run, not only what the roots take.",
    order: "Why two orders?",
    orderWords:
      "By the square metre says how thirsty the plants, soil and sun make a bed. In all says where the water goes: a large frugal lawn can take more than a small thirsty garden.",
    months: "Read this figure.",
    monthsWords: (hasToday: boolean) =>
      `From the top hangs rain: close strokes were used, thin ones drained away. The ink line is what the plants need from watering, half of all years more and half less: solid from the tank, hatched from the mains. The upright strokes reach from a wet year, one in ten, to a dry one.${
        hasToday ? " Dots are what today’s watering gives." : ""
      }`,
    changes: "Run, not guessed.",
    changesWords:
      "Each line is the same bed over the same days with one thing changed. Changes do not simply add up: a mulch saves less where there is shade.",
    year: "Read this figure.",
    yearWords:
      "The line is the water that the roots can still reach. It falls as plants drink and sun dries the soil, and jumps with rain and watering. The dashed line is where watering falls due. Marks below the ground line are days of thirst.",
    thirst: "Days of thirst",
    thirstWords:
      "are days on which the roots cannot take up as fast as sun and wind ask. Some are harmless, and for lawns in late summer they are a choice; many in a row are not.",
  },
  working: {
    allNeed: "What watering has to bring to all beds, mean of a year",
    allNeedOf: (year: string) => `What watering has to bring to all beds in ${year}`,
    allRain: "Rain that all beds use, mean of a year",
    short: "What beds that get too little lack in a mean year",
    sum: "sum over the beds",
    perArea: (name: string) => `Watering of each square metre of ${name}`,
    perAreaFormula: "need of a mean year ÷ area",
    peak: (name: string, month: string) => `A week of ${month} on ${name}, in half of all years no more`,
    peakFormula: "middle of the years’ weeks (the month’s need ÷ its days × 7)",
    weekOf: (month: string, year: string) => `a week of ${month} ${year}`,
    minutes: (name: string) => `Minutes of watering ${name} in its thirstiest week`,
    minutesFormula: "litres of the week ÷ flow",
    beyond: (name: string) => `What ${name} gets beyond its need in a mean year`,
    lacks: (name: string) => `What ${name} lacks in a mean year`,
    beyondFormula: "sum, over the months with too much, of today’s watering less the need",
    lacksFormula: "sum, over the months with too little, of the need less today’s watering",
    habit: "today’s watering in a mean year",
    need: "need in a mean year",
    area: "area",
    flow: "flow",
  },
} as const;
