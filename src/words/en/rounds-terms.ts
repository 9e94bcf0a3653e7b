/** A letter of the rounds' formulas: what it is, and its unit. */
function term<const U extends string>(symbol: string, name: string, unit: U) {
  return { symbol, name, unit };
}

/** Letters of the formulas of rounds. */
export const roundsTerms = {
  // how much
  mostRun: term("longest run", "net water of the longest run that a day leaves", "mm"),
  comfortNet: term("four runs", "net water of four runs with rests between", "mm"),
  dose: term("dose", "the most that one watering should give", "mm"),
  wanted: term("asked for", "net water that the month asks for, mean of its years", "mm"),
  times: term("times", "waterings that the month’s days leave, mean of its years", "share"),
  netWanted: term("share", "the month’s water shared out over its waterings", "mm"),
  mending: term("mending", "a little more or less, found by running the table through the years", "share"),
  netAsked: term("depth", "depth that a watering should give", "mm"),
  minutesExact: term("t", "minutes before they are made whole", "min"),
  longestDay_min: term("longest", "longest run that method and hours of a day leave", "min"),
  plannedMinutes: term("minutes", "minutes of one watering", "min"),
  netGiven: term("depth given", "depth that whole minutes give the roots", "mm"),
  watering_L: term("water", "water let out in one watering", "L"),
  month_L: term("month", "water let out in the month, mean of its years", "L"),
  netMonth: term("given", "net water given in the month", "mm"),
  netMonthMean: term("given a year", "net water given in the month, mean of its years", "mm"),
  yearsCount: term("years", "years that it was made for", "share"),

  // how often
  etcMonth: term("ETc month", "evapotranspiration of the month, mean of its years", "mm"),
  daysInMonth: term("days", "days of a mean month", "days"),
  etcDay: term("ETc", "evapotranspiration of a mean day of the month", "mm"),
  interval: term("RAW ÷ ETc", "days that the water the plants bear to lose lasts without rain", "days"),
  daysAWeek: term("days a week", "days of the week on which it is watered", "share"),
  timesPlanned: term("times a month", "waterings of a mean month by the table", "share"),
  every: term("every", "days from one watering to the next", "days"),

  // how it goes in
  rateHere: term("rate", "depth an hour where the water falls, or spreads to", "mm/h"),
  intake: term("intake", "rate at which this soil takes water in", "mm/h"),
  storage: term("stands", "water that may stand on the surface before it runs off", "mm"),
  longestRun: term("run", "longest run before water runs off", "min"),
  cycles: term("runs", "runs into which a watering is split", "share"),
  soak: term("rest", "rest between two runs", "min"),
  wetDepth: term("wets", "depth of soil that a watering wets", "m"),

  // after rain
  rainDay: term("rain a day", "rain that reaches the bed on a mean day of the month", "mm"),
  usualRain: term("usual rain", "rain that reaches the bed from one watering to the next", "mm"),
  spares: term(
    "part",
    "part of a watering that rain must bring to spare it, found by running the table",
    "share",
  ),
  leaveAfter: term("leave out after", "rain in the gauge from which a watering is left out", "mm"),

  // what rounding costs
  netYears: term("given", "net water of all years", "mm"),
  needYears: term("asked for", "net water of all years when watered to need on the very day", "mm"),
  over: term("more", "water beyond need, as a share of it", "share"),
  given_L: term("given", "water let out by the programme, a year", "L"),
  need_L: term("asked for", "water let out to need on the very day, a year", "L"),
  stressYear: term("stressed", "days of stress by the programme, a year", "days"),
  stressNeedYear: term("stressed to need", "days of stress when watered to need, a year", "days"),
  stressYears: term("stressed", "days of stress of all years", "days"),
  stressNeed: term("stressed to need", "days of stress of all years when watered to need", "days"),
  stressRules: term(
    "with rules",
    "days of stress in the month on the days that rules leave, mean a year",
    "days",
  ),
  stressFree: term("without", "days of stress in the month when watered on any day, mean a year", "days"),
  stressMore: term("more stress", "days of stress beyond need’s, a year", "days"),

  // timers
  beds_L: term("month", "water that all beds on timers ask for in the month", "L"),
  peak_L: term("most", "water of the month that asks most", "L"),
  percent: term("seasonal", "seasonal percentage of the month", "%"),
  askedMinutes: term("asked for", "minutes of a mean year that the bed asks for", "min"),
  fullDays: term("full days", "days of a mean year, each by its month’s percentage", "days"),

  // this week
  soilStart: term("Dr start", "water missing from the roots when last something was known", "mm"),
  rainSince: term("P", "rain that reached the bed since", "mm"),
  netSince: term("I", "watering that reached the roots since", "mm"),
  etcSince: term("ETc", "evapotranspiration since", "mm"),
  drainedSince: term("DP", "water that drained away since", "mm"),
  gone: term("Dr", "water missing from the roots", "mm"),
  allowedMinutes: term("allowed", "longest run that hours, method, runs and tank leave", "min"),
  gravityMinutes: term("t falling", "minutes for the same litres while the tank’s level falls", "min"),
  runMinutes: term("minutes", "minutes of its runs", "min"),
  week_L: term("week", "water of the week", "L"),

  // tanks
  lastingDays: term("days", "days until the tank cannot meet a day’s draw", "days"),
  levelNow: term("level", "water in the tank today", "L"),
  usableNow: term("usable", "water above the outlet today", "L"),
  inflowDry: term("roofs", "what roofs bring in a dry week of this date", "L"),
  drawsWeek: term("draws", "what other draws take in the week", "L"),
  available: term("to share out", "water that the tank can give the beds this week", "L"),
  asksWeek: term("asks", "what the bed’s round asks for", "L"),
  askedFirst: term("before it", "what beds that go first ask for", "L"),
  fromTank: term("gets", "what the tank gives it", "L"),
  keep_L: term("mains", "mains water that would keep all of the round", "L"),
} as const;
