import { monthNames } from "./rounds.ts";

const figureNames: Readonly<Record<string, string>> = {
  asked: "Depth that a watering should give",
  minutes: "Minutes of a watering",
  net: "Depth of a watering that the roots get",
  interval: "Days from one watering to the next",
  cycles: "Runs of a watering",
  soak: "Rest between two runs",
  litres: "Water of a watering",
  month: "Water of the month",
  wetted: "How deep a watering wets the soil",
  rain: "Rain after which it is left out",
  times: "When it runs",
  missing: "Water missing from the roots that morning",
};

/** Titles of the rounds' workings. */
export const roundTitles = {
  month: (what: string, bed: string, month: number, isDry: boolean) =>
    `${figureNames[what]!}, ${bed}; ${monthNames[month]!} of ${isDry ? "a dry year" : "a middle year"}`,
  run: (what: string, bed: string, day: string) => `${figureNames[what]!}, ${bed}; ${day}`,
  months: (month: number, isDry: boolean) =>
    `Water of all beds; ${monthNames[month]!} of ${isDry ? "a dry year" : "a middle year"}`,
  water: (bed: string) => `What rounding costs in water, ${bed}`,
  stress: (bed: string) => `What rounding costs in stress, ${bed}`,
  conflict: (bed: string, month: number) => `What the rules cost ${bed}; ${monthNames[month]!}`,
  timerWater: (bed: string) => `What the timer’s programme costs in water, ${bed}`,
  timerStress: (bed: string) => `What the timer’s programme costs in stress, ${bed}`,
  percent: (month: number) => `Seasonal percentage of ${monthNames[month]!}`,
  timer: (bed: string) => `Minutes at 100%, ${bed}`,
  soil: (bed: string) => `Water missing from the roots, ${bed}`,
  soilOf: (bed: string, year: string) => `Water missing from the roots, ${bed}, in the weather of ${year}`,
  week: (bed: string) => `Water of the week, ${bed}`,
  lastWeek: (bed: string) => `Water of last week, ${bed}`,
  done: (bed: string, month: string) => `Water given by the log, ${bed}; ${month}`,
  all: "Water of the week, all beds",
  allTank: "Water of the week from tanks",
  finish: (day: string) => `When the round is done, ${day}`,
  days: (tank: string) => `Days of water left, ${tank}`,
  gives: (tank: string) => `What ${tank} can give the beds this week`,
  keep: (tank: string) => `Mains water that would keep all of the round on ${tank}`,
  ration: (bed: string, tank: string) => `What ${bed} gets of ${tank}`,
  soak: (bed: string, away: string) => `Last soak before ${away}, ${bed}`,
  lasts: (bed: string, away: string) => `Days that ${bed} lasts, ${away}`,
};

/** Words within them. */
export const roundSteps = {
  years: "years that it was made for",
  yearGiven: (year: number) => `${year}, by the table`,
  yearNeeded: (year: number) => `${year}, to need on the very day`,
  year: (year: number) => String(year),
  answer: (year: number, place: number, of: number) =>
    of === 1 ? String(year) : `${year}, ${place === 0 ? "the last round not done" : "the last round done"}`,
  low: "one year in ten has less",
  middle: "half of all years have less",
  high: "one year in ten has more",
  dry: "a dry year: one in ten has less",
  wet: "a wet year: one in ten has more",
  waterings: "waterings of the week",
  logged: "waterings in the log",
  entry: (date: string, place: number) => `${place}: ${date}`,
  beds: "beds",
  gets: (bed: string) => `${bed}: gets of the tank`,
  order: "beds, first those that go first",
  lacks: "what it does not get of the tank",
  lastOf: "the last of these ends",
  oneAfterOther: "its runs one after the other, with their rests",
} as const;

/** What a watering's time is reckoned from. */
export const roundSymbols = {
  from: { symbol: "from", name: "its turn comes" },
  minutes: { symbol: "minutes", name: "minutes of its runs" },
  restsCount: { symbol: "rests", name: "rests between its runs" },
  rest: { symbol: "rest", name: "length of a rest" },
  waits: { symbol: "waits", name: "waits for others on its tap" },
} as const;

/** Workings in a line, on paper. */
export const onPaper = {
  quotient: (depth: string, efficiency: string, area: string, flow: string) =>
    `${depth} ÷ ${efficiency} × ${area} ÷ ${flow}`,
  minutes: (bed: string, numbers: string, exact: string, whole: string) =>
    `${bed}: ${numbers} = ${exact}, so ${whole}.`,
} as const;

/** Where their numbers come from. */
export const roundSources = {
  quantile: "Hyndman and Fan 1996, type 7: linear between the figures in order",
  rerun: "the table run through the engine over its years: see what rounding costs",
  needRun: "the bed watered to need on the days that its rules leave, through the engine",
  freeRun: "the same bed watered to need on any day, through the engine",
  tableRun: "the table run through the engine",
  timerRun: "the timer’s programme run through the engine",
  hours: "hours, restrictions and the method’s longest run",
  shortened: "cut to what hours, its method, its runs or its tank leave",
  tapToday: "the tap’s flow today, no more than its line’s",
  intakeTable: "intake table by the soil’s texture and slope",
  intakeSurveyed: "survey, intake of the soil",
  intakeName: "rate at which this soil takes water in",
  calendar: "365.25 days ÷ 12",
  rainShare: "share of the rain that reaches the bed: survey, or open ground",
  rainHelps: "makes it longer: the table counts the rain of its years",
  storage: "intake table by slope",
  pattern: "the days of the month table",
  rain: "mean of the weather record",
  middleOf: "middle of the years",
  tankDry: "driest tenth of the years of this date",
  dip: "today’s dip, the log’s latest, or the survey’s",
  unusable: "survey, water below the outlet",
  memberStart: "the record’s own soil that day, watered to need until then",
  gauge: "that year’s rain, with what the gauge and the forecast say put in its place",
  log: "the log, and what was said of the last round",
  engineDays: "the engine, day by day in that year’s weather",
  packing: "the round packed: no tap beyond its flow, earliest finish first",
  counted: "counted",
  percents: "days of the programme in a mean year, each by its month’s percentage",
  daysTried: "one to seven days a week were tried, and the cheapest kept",
  heat: "as said of the week, beside the record’s weeks about this date (FAO-56, Eq. 52 for temperatures)",
  atDip: "minutes before the tank’s fall is reckoned with",
  tankShort: "cut to what its tank can give it",
  cool: "least evaporates and the wind is lowest about dawn and dusk: common practice",
  sun: "the sun’s path that day (suncalc)",
  claim: "this week’s round",
  torricelli: "worked out from the flows measured at levels",
  drain: "the engine’s tank from today’s level, in that year’s weather",
  dryDown: "the engine’s soil from a full one, in that year’s weather",
  logFlow: "the log’s litres, else its minutes by the flow surveyed",
} as const;

export const roundNotes = {
  since: "days since something was last known",
  atDip: "minutes at the flow of today’s dip",
  figures: "figures in order",
  rains: "rain",
  search: "how the days and minutes were found",
  hours: "open",
  cool: "cool hours",
  sun: "dawn, sunrise, sunset, dusk",
  tap: "shares a tap or line with",
  proven: "a better round",
  isProven: "none: every order was tried, or shown to be no better",
  notProven: (bound: string) => `not looked for among all; none can be done before ${bound}`,
  flow: "taps",
  moves: (hoses: number, walked: string | null) =>
    `${hoses} ${hoses === 1 ? "hose" : "hoses"} to lay${walked === null ? "" : `, ${walked} on foot`}`,
  walk: "hoses and walk",
  heat: "the week’s heat: ET0 times",
  reruns: "weather",
  firstAndLast: (from: number, to: number) => `the record’s years ${from} to ${to}`,
} as const;
