/** Words of the tanks, the order and the rules on the page of the rounds. */
import type { Formatter } from "../format.ts";
import { said } from "../said.ts";
import { count } from "./count.ts";
import { allOf } from "./lists.ts";
import type { Slot } from "./page.ts";
import { shortDayNames } from "./rounds.ts";

export const tankPage = {
  heading: "Tanks",
  about: (name: string, share: number) => `${name}, ${Math.round(100 * share)} in 100 full, cut open`,
  undipped: "not dipped",
  days: "Days of water left",
  daysAbout: (low: number, middle: number, high: number) =>
    `From ${count(low)} days in a dry year over ${count(middle)} in a middle one to ${count(high)} in a wet one`,
  dry: "dry year",
  middle: "middle",
  wet: "wet year",
  who: "Who gets what of it this week",
  ration: (
    { fromTank_L, fromMains_L, short_L }: { fromTank_L: number; fromMains_L: number; short_L: number },
    say: Formatter,
  ) =>
    [
      ...(fromTank_L >= 1 ? [`${say.litres(fromTank_L)} from the tank`] : ["nothing from the tank"]),
      ...(fromMains_L >= 1 ? [`${say.litres(fromMains_L)} from the mains`] : []),
      ...(short_L >= 1 ? [`${say.litres(short_L)} short`] : []),
    ].join(", "),
  rationAbout: (bed: string) => `${bed}: tank water solid, mains water hatched, what is short left blank`,
  keepAll: (litres: Slot) => said`${litres} from the mains would keep all beds that this tank serves.`,
} as const;

export const orderWords = {
  heading: "Who goes first when water is short",
  lead: "The first bed gets its whole round before the next gets any. Ours, where you set none: young plants, food, trees, shrubs, flowers, lawn last.",
  earlier: (bed: string) => `${bed}: earlier`,
  later: (bed: string) => `${bed}: later`,
  earlierShort: "earlier",
  laterShort: "later",
  ours: "Go back to our order",
  changed: (bed: string) => `Changed where ${bed} stands when water is short`,
  backToOurs: "Set no order of its own for when water is short",
} as const;

const days = (list: readonly string[] | undefined) =>
  list === undefined || list.length === 7 ? "every day" : allOf(list.map((day) => shortDayNames[day]!));

interface Rule {
  name: string;
  from?: string | undefined;
  to?: string | undefined;
  days?: readonly string[] | undefined;
  fromTime?: string | undefined;
  toTime?: string | undefined;
  methods?: readonly string[] | undefined;
  parity?: "odd" | "even" | undefined;
}

export const ruleWords = {
  heading: "Hours, rules and absences",
  hours: "Somebody is there to water by hand",
  anyHour: "The survey names no hours, so the round takes the cool ones.",
  hour: ({ days: list, fromTime, toTime }: { days: readonly string[]; fromTime: string; toTime: string }) =>
    `${days(list)}, ${fromTime} to ${toTime}`,
  cool: (dawn: string, dusk: string | null) =>
    dusk === null
      ? `Least evaporates and the wind is lowest ${dawn}.`
      : `Least evaporates and the wind is lowest about dawn, ${dawn}, then about dusk, ${dusk}.`,
  window: (from: string, to: string) => `${from} to ${to}`,
  useDawn: "Water by hand in the hours about dawn",
  useDusk: "Water by hand in the hours about dusk",
  usedHours: "Changed the hours in which somebody waters",
  rules: "Restrictions, kept by every table here",
  noRules: "None in the survey.",
  rule: ({ from, to, days: list, fromTime, toTime, methods, parity }: Rule) =>
    [
      from === undefined && to === undefined ? "all year" : `${from ?? "01-01"} to ${to ?? "12-31"}`,
      ...(list === undefined ? [] : [days(list)]),
      ...(parity === undefined ? [] : [`${parity} dates`]),
      ...(fromTime === undefined ? [] : [`${fromTime} to ${toTime ?? "24:00"}`]),
      ...(methods === undefined ? [] : [allOf(methods)]),
    ].join("; "),
  remove: (name: string) => `Take “${name}” away`,
  removeShort: "take away",
  removed: (name: string) => `Took the restriction ${name} away`,
  add: "Add a restriction",
  name: "Its name",
  nameDefault: "Restriction",
  forbidden: "Watering forbidden on",
  from: "From",
  to: "To",
  timesHint: "as 10:00; leave blank for the whole day",
  parity: "Dates",
  parities: { any: "all", odd: "odd", even: "even" },
  addIt: "Keep it with the site",
  added: (name: string) => `Added the restriction ${name}`,
  needsDay: "Choose at least one day.",
  needsTimes: "Times must be written as 10:00, both or neither.",
  absences: "Absences",
  noAbsences: "None in the survey.",
  absence: ({ from, to, carer }: { from: string; to: string; carer?: string | undefined }) =>
    carer === undefined
      ? `${from} to ${to}: nobody waters by hand.`
      : `${from} to ${to}: ${carer} waters by hand.`,
  conflicts: "Where the rules stand against the need",
} as const;
