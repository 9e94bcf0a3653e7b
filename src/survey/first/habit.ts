import { openEntry } from "../../tables/first-answer.ts";
import type { SurveyHabit } from "../survey.ts";
import type { FirstToday, Season } from "./entries.ts";

/** Waterings a week that minutes told by the week are shared among: ours. */
const waterings: SurveyHabit["days"] = ["mon", "wed", "fri"];
const everyDay: SurveyHabit["days"] = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];

const weeksPerMonth = 365.25 / 7 / 12;

/** Length of a watering that bills are turned into; the flow follows from it. */
const billed_minutes = 60;

const leastFlow_L_min = 0.01;

/** What today's watering comes to in the survey; null where it is not known. */
export interface FirstHabit {
  habit: SurveyHabit;
  /** Only where bills say how much: the flow that brings it. */
  flow_L_min?: number;
}

/**
 * @param latitude degrees: which months are warm
 * @param factor of minutes told, or the share of the bills' difference that the garden gets, 0–1
 */
export function habitOf(today: FirstToday, latitude: number, factor?: number): FirstHabit | null {
  switch (today.is) {
    case "unknown":
      return null;
    case "not-watered":
      return { habit: { minutes: 0, days: waterings, months: monthsOf("all-year", latitude) } };
    case "minutes":
      return told(today.minutesPerWeek * (factor ?? 1), monthsOf(today.season, latitude));
    case "bills":
      return billed(today, latitude, factor ?? openEntry("bills.outdoors").middle);
  }
}

function told(minutesPerWeek: number, months: number[]): FirstHabit {
  const days = minutesPerWeek / waterings.length > 1_440 ? everyDay : waterings;
  return { habit: { minutes: Math.min(1_440, minutesPerWeek / days.length), days, months } };
}

/** Summer's bill less winter's, put on in the warmest months that a bill holds. */
function billed(
  { summer_kL, winter_kL, months }: Extract<FirstToday, { is: "bills" }>,
  latitude: number,
  share: number,
): FirstHabit {
  const outdoors_L = Math.max(0, summer_kL - winter_kL) * 1000 * share;
  const inMonths = warmestMonths(Math.min(12, Math.max(1, Math.round(months))), latitude);
  const perWatering_L = outdoors_L / (months * weeksPerMonth * waterings.length);
  const flow_L_min = perWatering_L / billed_minutes;
  if (flow_L_min < leastFlow_L_min) return { habit: { minutes: 0, days: waterings, months: inMonths } };
  return { habit: { minutes: billed_minutes, days: waterings, months: inMonths }, flow_L_min };
}

export function monthsOf(season: Season, latitude: number): number[] {
  return warmestMonths(season === "all-year" ? 12 : season === "warm-half" ? 6 : 3, latitude);
}

/** Months of the year from the warmest on, by hemisphere; January and July are taken as the warmest. */
function warmestMonths(count: number, latitude: number): number[] {
  const north = [7, 8, 6, 9, 5, 4, 10, 3, 11, 2, 12, 1];
  const opposite = (month: number) => ((month + 5) % 12) + 1;
  const inOrder = latitude < 0 ? north.map(opposite) : north;
  return inOrder.slice(0, count).sort((a, b) => a - b);
}
