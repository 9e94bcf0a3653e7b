import { and } from "./page.ts";

/** Words of the drawings: findings, axes, labels, readings, columns. */
export const plate = {
  numbers: "The numbers behind it",
  csv: "Take this table as a CSV file",
  readHint: "Move along the ruler to read a value.",
  show: "Show",
  allBeds: "all beds together",
  year: "Year",
  earlier: "Earlier year",
  later: "Later year",
  bar: {
    more: (share: string | null, today: string, need: string) =>
      share
        ? `In a mean year the gardens take ${share} more mains water than they need`
        : `In a mean year the gardens take ${today} of mains water and need ${need}`,
    less: (today: string, need: string) =>
      `In a mean year the gardens get ${today} of mains water and need ${need}`,
    planned: (today: string, plan: string) =>
      `In a mean year the gardens take ${today} of mains water, as planned ${plan}`,
    needAlone: (need: string) => `In a mean year the gardens need ${need} of mains water`,
    withTanks: (tanks: string) => `, beside ${tanks} from the tanks`,
    about: "Two bars: mains water taken today, and what the same gardens take watered to need.",
    today: "today",
    need: "to need",
    label: (which: string, volume: string) => `${which}, mains: ${volume}`,
    tanks: (volume: string) => `tanks: ${volume}`,
    lessBy: (volume: string) => `${volume} less`,
    moreBy: (volume: string) => `${volume} more`,
    plan: "as planned",
    dry: "dry year",
    wet: "wet year",
    columns: ["Year", "Today", "Watered to need", "As planned", "Given up"],
    mean: "A mean year",
  },
  months: {
    peak: (name: string, month: string, volume: string) =>
      `${name} ${name === "The gardens" ? "need" : "needs"} most in ${month}: ${volume} a week`,
    gardens: "The gardens",
    quiet: (from: string, to: string) => `; from ${from} to ${to} rain does the work`,
    beyond: (months: string) => `, and get more than they can use in ${months}`,
    none: (name: string) => `${name}: rain is enough all year`,
    rainAxis: (unit: string) => `${unit} of rain a week`,
    axis: (unit: string) => `${unit} a week`,
    need: "what the plants need",
    today: "what they get today",
    todayOne: "what it gets today",
    beyondLabel: "more than the plants can use",
    wetToDry: "from a wet year to a dry one",
    columns: {
      month: "Month",
      need: "Needed a week",
      fromTank: "Of it from the tank",
      dry: "In a dry year",
      wet: "In a wet year",
      today: "Given today a week",
      rain: "Rain a week",
      rainUsed: "Of it used",
    },
    peakYears: (name: string, month: string, volume: string) => `${name}: most in ${month}, ${volume} a week`,
    beyondYears: (months: string) => `; too much today in ${months}`,
    inDry: (month: string, volume: string) => `, in a dry ${month} ${volume}`,
    about: (name: string) =>
      `${name}, month by month in a mean year: watering needed, watering given today, and rain.`,
    aboutYears: (name: string) =>
      `${name}, month by month, of half of all years and from a wet year to a dry one: watering needed, watering given today, and rain.`,
    reading: (
      month: string,
      of: {
        need: string;
        years: { dry: string; wet: string } | null;
        today: string | null;
        rain: string;
        used: string | null;
        unit: string;
      },
    ) =>
      `${month}: need ${of.need}${of.years ? `, in dry years ${of.years.dry}, in wet ones ${of.years.wet}` : ""}${
        of.today === null ? "" : `, today ${of.today}`
      } ${of.unit} a week; rain ${of.rain}${of.used === null ? "" : `, used ${of.used}`}`,
  },
  staves: {
    finding: (thirsty: string, frugal: string) =>
      `Bed by bed, from thirsty to frugal: ${thirsty} first, ${frugal} last`,
    findingOne: (name: string) => `${name} through the year`,
    findingNone: "No beds yet",
    about: "Each bed’s litres a week by month, under the rain of the same months.",
    rain: "Rain",
    bed: "Bed",
    never: "rain is enough",
    unit: (unit: string) => `${unit} a week`,
    year: "In a year",
    inMonth: (month: string) => `a week in ${month}`,
    rainUnit: "a week, by month",
    wateredWords: (thirst: string) => `watered ${thirst}`,
    todayUnknown: "today not known",
    rainReading: (month: string, rain: string) => `${month}: rain ${rain} a week`,
    reading: (month: string, rain: string, beds: string) => `${month}: rain ${rain} a week. ${beds}`,
  },
  tank: {
    short: (name: string, days: string, year: string) => `${name}: short on ${days} days of ${year}`,
    shortOne: (name: string, year: string) => `${name}: short on one day of ${year}`,
    never: (name: string, year: string) => `${name}: never short in ${year}`,
    andSpills: (volume: string) => `, and spills ${volume}`,
    notUsed: (name: string) => `${name} is not in use`,
    noCapacity: (name: string) => `${name} holds nothing: its size is 0`,
    noDraw: (name: string, year: string) => `${name}: nothing was asked of it in ${year}`,
    theRecord: "the record",
    outlet: "outlet",
    spilled: "spilled",
    shortDays: (n: string) => `short on ${n} days`,
    shortDay: "short on one day",
    axis: (unit: string) => unit,
    about: (name: string, year: string) =>
      `${name} in section, and its level at the end of each day of ${year}, watered to need.`,
    reading: (day: string, level: string, share: string, spill: string | null, short: boolean) =>
      `${day}: ${level}, ${share} full${spill === null ? "" : `; ${spill} spilled`}${short ? "; short" : ""}`,
    columns: ["Date", "Level at the end of the day", "Spilled", "Short"],
    yes: "yes",
    no: "no",
    serves: (names: readonly string[]) => `It serves ${and(names)}.`,
    meanYear: (inflow: string, drawn: string, spilled: string) =>
      `In a mean year ${inflow} run in, ${drawn} are drawn and ${spilled} spill.`,
    term: (share: string) =>
      `Trade term: volumetric reliability ${share}, the share of what was asked for that the tank gave.`,
  },
  none: "No tank in this survey.",
} as const;
