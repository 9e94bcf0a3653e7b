/** Sentences about measures, quotes, sizes and money on the choices screen. */
export const measuresPage = {
  lead: "Tick what belongs to the plan. What a measure saves by itself stands beside what it saves once all the others are done: that is what the next one really brings.",
  none: "The survey holds no measures yet. What the survey itself suggests stands below.",
  saves: (alone: string, after: string) => `Saves ${alone} a year by itself, ${after} after the others.`,
  savesBoth: (kL: string) => `Saves ${kL} a year, by itself and after the others.`,
  takes: (more: string) => `Takes ${more} more a year after the others.`,
  verdict: {
    pays: (npv: string, cost: string) => `At ${cost} it pays: worth ${npv} more than it costs.`,
    "does-not-pay": (short: string, cost: string) =>
      `At ${cost} it is not worth it for the money: ${short} stay unpaid.`,
    "saves-nothing": (cost: string) => `Not worth it: at ${cost} it saves nothing.`,
    "not-priced": "Without a quote and a price of water nobody can say whether it pays.",
  },
  againstNeed: (beds: string) => `How ${beds} is watered today is not known: nothing is claimed from that.`,
  oneOf: (group: string) => `One of the quotes for “${group}”: at most one is chosen.`,
  quote: "Quote",
  quoteOf: (name: string) => `Quote for ${name}`,
  by: (from: string, on: string | null) => `Quoted by ${from}${on === null ? "" : `, ${on}`}.`,
  line: "What",
  price: "Price",
  life: "Lasts, years",
  lineOf: (what: string, field: string) => `${field}: ${what}`,
  add: "Add a line",
  drop: "Leave out",
  dropOf: (what: string) => `Leave out ${what}`,
  newLine: "Another part",
  grant: "Grant, taken off",
  upkeep: "Upkeep a year",
  inWater: "No cost yet: it is counted in water alone.",
  wantAmount: (typed: string) => `It must be a number from 0 to 1,000,000,000. You entered “${typed}”.`,
  wantYears: (typed: string) => `It must be a number of years from 0.5 to 200. You entered “${typed}”.`,
  wantBetween: (low: string, high: string, typed: string) =>
    `It must be a number from ${low} to ${high}. You entered “${typed}”.`,
  proposed: "What the survey suggests",
  proposedLead: "Free things first. Nothing here is bought by looking at it.",
  free: "Nothing to buy.",
  upTo: (money: string) => `It pays up to a cost of ${money}.`,
  neverPays: "At the price of water here it pays at no cost.",
  take: "Put it in the plan",
  takeOf: (what: string) => `Put it in the plan: ${what}`,
  sizes: {
    none: "Neither the plan nor a quote holds a tank in use: there is no size to ask about.",
    which: "Tank",
    why: {
      tank: "Its size is the limit now.",
      roof: "Its roof is the limit: a larger tank would wait for rain that does not come.",
      demand: "What is asked of it is the limit: a larger tank would keep water that nobody draws.",
      "nothing-asked": "Nothing is asked of it.",
    },
    proof: (tank: string, roof: string, demand: string) =>
      `A quarter more of each, run again: more tank brings ${tank} a year, more roof ${roof}, more draw ${demand}.`,
    enough: (size: string) => `${size} comes within 5 % of all that this roof and draw allow.`,
    whyHeading: "Why it flattens",
    roofHeading: "If more or less roof ran into it",
    roofColumns: ["Roof, against the plan", "Saved a year"],
    banHeading: "If mains watering were banned",
    banBed: "Bed",
    banTank: (size: string) => `tank of ${size}`,
    banDays: (short: string, dry: string) => `${short} days short, ${dry} dry in a row`,
    money:
      "What is enough for the water says nothing of the money: each quote is weighed above, under Measures.",
    lives: "lives",
    dies: "dries out",
    banRule:
      "Days short are days a year on which plants get less than they could use. Taken to live where the root zone is never next to dry for more than a fortnight: a rule of ours.",
    rainAlone: "on rain alone",
    weight: (size: string, tonnes: string) =>
      `${size} full weighs ${tonnes} tonnes: its footing is an engineer’s to say.`,
  },
  budget: {
    field: "Budget in all",
    perYear: "Budget a year",
    hint: "Blank: no limit",
    perYearHint: "Blank: all at once",
    orderHeading: "What first, year by year",
    order: (year: string, names: string, spent: string, saved: string) =>
      `Year ${year}: ${names}. ${spent} spent by then, ${saved} a year given up.`,
    noOrder: "Say what may be spent in a year, and the order of the best set is worked out.",
    orderEmpty: "Nothing in the best set waits for money: it can begin in the first year.",
    stepsHeading: "Step by step",
    worthHeading: "Where money decides",
    step: (cost: string, words: string, saved: string) => `${cost}: ${words}; ${saved} a year`,
    worth: (cost: string, words: string, saved: string, npv: string) =>
      `${cost}: ${words}; ${saved} a year, worth ${npv}`,
    proven: "Every set was run by itself: no better one exists at any budget.",
    notProven: "Too many measures to run every set: better sets than these may exist.",
    leftOut: (names: string) => `Without a quote, and so in no budget: ${names}.`,
  },
  shares: {
    what: "Some measures do the same work twice, so what each one brings hangs on which comes first. Its share here is the mean over every order in which they could come, and the shares add up to the whole.",
    orders: "Done first, and done last",
    order: (name: string, first: string, last: string) =>
      `${name}: ${first} if done first, ${last} if done last`,
  },
  money: {
    lead: (top: string | null) =>
      top === null
        ? "The survey has no price of water, so money is left out."
        : `The dearest kL on a bill costs ${top} here; savings come off the dearest first. Fixed charges are never saved.`,
    caption: "Each measure in money",
    columns: [
      "Measure",
      "Cost",
      "Saves a year",
      "Off the bill a year",
      "Paid back in",
      "Present value",
      "A kL saved costs",
      "Pays from, a kL",
      "Pays up to a quote of",
    ],
    years: (n: string) => `${n} years`,
    never: "never",
    notChosen: "not in the plan",
    howHeading: "How this is worked out",
    outlook: (discount: string, rise: string, years: string) =>
      `Money later counts ${discount} less for each year; water gets ${rise} a year dearer; ${years} years are looked ahead, and what wears out before is bought again.`,
    inPlan:
      "Measures of the plan carry their share of the saving; those outside it what they would save after the others.",
  },
} as const;
