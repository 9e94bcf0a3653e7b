import type { PreparedBed } from "../bed-day.ts";
import type { Calendar } from "../weather/series.ts";
import { daysOfPattern, type FixedMonth } from "./fixed-run.ts";
import type { NeedOfBed, YearOfMonths } from "./month-need.ts";
import { type Pattern, timesInMonth } from "./pattern.ts";
import { minutesFor, netOf_mm } from "./run-time.ts";

/** What a month leaves to choose from: patterns the rarest first, and the longest run of one day. */
export interface MonthChoices {
  patterns: readonly Pattern[];
  mostMinutes: number;
  /** Run beyond which it takes more cycles than anybody likes to keep. */
  comfortable_min: number;
}

/** All that fitting a bed's table runs on. */
export interface FitInput {
  bed: PreparedBed;
  open: Uint8Array;
  calendar: Calendar;
  years: readonly YearOfMonths[];
  need: NeedOfBed;
  choices: readonly MonthChoices[];
  /** Rain that reaches the bed on a mean day of each month: a watering counts on it already. */
  rain_mm_day: readonly number[];
  /** Scratch, as long as the record. */
  scratch_mm: Float64Array;
}

/** Least share of a full dose that is worth a watering. Ours. */
const leastDose = 0.25;
/** Rain below this is not worth a rule, nor is what little reaches a bed under a roof. Ours. */
const leastRain_mm = 3;
const leastRainShare = 0.1;

const month_days = 365.25 / 12;

/** A month while it is fitted: minutes unrounded. */
export interface MonthFit {
  choices: MonthChoices;
  /** Place of the pattern among the choices; −1 for no watering. */
  at: number;
  minutes: number;
  /** Part of a watering's water beyond the usual rain that spares one. */
  spares: number;
}

/** The rarest days that keep a watering within a full dose, and the minutes that give the month what it needs. */
export function chooseMonth(
  input: FitInput,
  group: readonly number[],
  month: number,
  wanted_mm: number,
): MonthFit {
  const choices = input.choices[month]!;
  const none = { choices, at: -1, minutes: 0, spares: 1 };
  const dose_mm = mostDose_mm(input.bed, choices);
  if (wanted_mm < leastDose * dose_mm || choices.patterns[0]!.kind === "none") return none;
  const enough = choices.patterns.findIndex((pattern) => wanted_mm <= dose_mm * timesInMonth(pattern));
  const at = enough < 0 ? choices.patterns.length - 1 : enough;
  const times = timesOpen(input, group, month, choices.patterns[at]!);
  if (times === 0) return none;
  const minutes = minutesFor(input.bed.bed, Math.min(dose_mm, wanted_mm / times));
  return { choices, at, minutes: Math.min(minutes, choices.mostMinutes), spares: 1 };
}

/** Least part of a full dose that many cycles may bring a watering down to. Ours. */
const leastOfFull = 1 / 3;

/** The most that one watering should give: what the roots may lose, what the method can, in not too many cycles. */
export function mostDose_mm(
  { bed, trigger_mm }: PreparedBed,
  { mostMinutes, comfortable_min }: MonthChoices,
): number {
  const comfortable_mm = Math.max(leastOfFull * trigger_mm, netOf_mm(bed, comfortable_min));
  return Math.min(trigger_mm, netOf_mm(bed, mostMinutes), comfortable_mm);
}

/** Days of a month on which a pattern can be kept, mean over a group of years. */
export function timesOpen(
  { open, calendar, years }: FitInput,
  group: readonly number[],
  month: number,
  pattern: Pattern,
): number {
  const falls = daysOfPattern(pattern);
  let times = 0;
  for (const k of group)
    for (const span of years[k]!.months)
      if (span.month === month)
        for (let i = span.from; i < span.to; i++)
          if (open[i] && falls[calendar.dayOfMonth[i]! * 7 + calendar.weekday[i]!]) times++;
  return times / group.length;
}

const noWatering: FixedMonth = {
  pattern: { kind: "none" },
  minutes: 0,
  exact_min: 0,
  spares: 1,
  net_mm: 0,
  leaveAfterRain_mm: null,
};

/** A month as a person keeps it, in whole minutes. */
export function fixedMonth(
  input: FitInput,
  { choices, at, minutes, spares }: MonthFit,
  month: number,
): FixedMonth {
  const { bed } = input.bed;
  const most = Math.max(1, Math.floor(choices.mostMinutes));
  const whole = Math.min(most, Math.max(1, Math.round(minutes)));
  if (at < 0) return noWatering;
  const net_mm = netOf_mm(bed, whole);
  const pattern = choices.patterns[at]!;
  if (at === 0 && net_mm < leastDose * mostDose_mm(input.bed, choices)) return noWatering;
  const usual_mm = usualRain_mm(input, month, pattern);
  const leaveAfterRain_mm =
    bed.rainShare < leastRainShare
      ? null
      : Math.max(leastRain_mm, Math.round((spares * net_mm + usual_mm) / bed.rainShare));
  return { pattern, minutes: whole, exact_min: minutes, net_mm, spares, leaveAfterRain_mm };
}

/** Rain that reaches a bed from one watering to the next on average. */
export function usualRain_mm({ rain_mm_day }: FitInput, month: number, pattern: Pattern): number {
  return (rain_mm_day[month]! * month_days) / timesInMonth(pattern);
}

/** Least and most part of a watering that rain must bring to spare it. Ours. */
const leastSpares = 0.5;
const mostSpares = 1.5;

/**
 * A month with a little less, a little more, left out after less rain or more, oftener, rarer, or none.
 * @param part of a watering by which its minutes change
 */
export function neighbours(input: FitInput, fit: MonthFit, part: number): MonthFit[] {
  const { bed } = input.bed;
  const { at, minutes, choices, spares } = fit;
  if (at < 0) return [];
  const step = Math.max(1, part * minutes);
  const longest = Math.min(
    choices.mostMinutes,
    Math.max(minutes, minutesFor(bed, mostDose_mm(input.bed, choices))),
  );
  const turned = (to: number): MonthFit[] => {
    const pattern = choices.patterns[to];
    if (!pattern) return [];
    const same = (minutes * timesInMonth(choices.patterns[at]!)) / timesInMonth(pattern);
    return netOf_mm(bed, same) > 0 && same <= longest ? [{ ...fit, at: to, minutes: same }] : [];
  };
  const spared = (to: number): MonthFit[] =>
    to >= leastSpares && to <= mostSpares ? [{ ...fit, spares: to }] : [];
  return [
    { ...fit, minutes: Math.max(1, minutes - step) },
    { ...fit, minutes: Math.min(longest, minutes + step) },
    ...spared(spares - 0.25),
    ...spared(spares + 0.25),
    ...turned(at + 1),
    ...(at === 0 ? [{ ...fit, at: -1, minutes: 0 }] : turned(at - 1)),
  ];
}

/** Longer waterings while they stay within a full dose, else more days. */
export function giveMore(
  input: FitInput,
  group: readonly number[],
  fits: MonthFit[],
  month: number,
  factor: number,
): boolean {
  const fit = fits[month]!;
  const { choices } = fit;
  const most = Math.min(choices.mostMinutes, minutesFor(input.bed.bed, mostDose_mm(input.bed, choices)));
  if (fit.at < 0) {
    if (choices.patterns[0]!.kind === "none" || timesOpen(input, group, month, choices.patterns[0]!) === 0)
      return false;
    fits[month] = { choices, at: 0, minutes: Math.max(1, most * leastDose), spares: 1 };
    return true;
  }
  if (fit.minutes * factor <= most || fit.at === choices.patterns.length - 1) {
    if (fit.minutes >= choices.mostMinutes) return false;
    fit.minutes = Math.min(choices.mostMinutes, Math.max(fit.minutes * factor, fit.minutes + 0.5));
    return true;
  }
  const before = timesOpen(input, group, month, choices.patterns[fit.at]!);
  const after = timesOpen(input, group, month, choices.patterns[fit.at + 1]!);
  fit.at++;
  fit.minutes = Math.max(1, after > 0 ? (fit.minutes * factor * before) / after : fit.minutes);
  return true;
}
