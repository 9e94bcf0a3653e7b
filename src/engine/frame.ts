import { type ShadeOf, shadeIn } from "./bed-day.ts";
import type { Absence, Obstruction } from "./grounds.ts";
import type { ShadedEt0 } from "./shade.ts";
import { type AbsentDays, absentDays } from "./watering.ts";
import type { Calendar, WeatherSeries } from "./weather/series.ts";
import { wholeYears } from "./years.ts";

/** Days of a record in one calendar month, by index, `to` not included. */
export interface MonthStretch {
  from: number;
  to: number;
  /** 0–11 */
  month: number;
  /** Place of its year among the whole years; −1 where its year is not whole. */
  year: number;
}

/** What every run on one record at one place shares, whatever is planted, watered or stored there. */
export interface Frame {
  weather: WeatherSeries;
  absent: AbsentDays;
  /** Shade worked out once for each skyline: the sun's path is by far the dearest thing here. */
  shadeOf: ShadeOf;
  stretches: MonthStretch[];
  /** The whole calendar years. */
  years: number[];
}

export function frameOf(absences: readonly Absence[], weather: WeatherSeries): Frame {
  const years = wholeYears(weather.calendar);
  const stretches = monthStretches(weather.calendar).map(({ from, to, month }) => ({
    from,
    to,
    month,
    year: years.findIndex((span) => span.from <= from && to <= span.to),
  }));
  return {
    weather,
    absent: absentDays(absences, weather.calendar),
    shadeOf: shadeOnce(weather),
    stretches,
    years: years.map(({ year }) => year),
  };
}

function shadeOnce(weather: WeatherSeries): ShadeOf {
  const work = shadeIn(weather);
  const known = new Map<readonly Obstruction[], ShadedEt0 | null>();
  return (bed) => {
    const found = known.get(bed.obstructions);
    if (found !== undefined) return found;
    const shade = work(bed);
    known.set(bed.obstructions, shade);
    return shade;
  };
}

function monthStretches({ month, days }: Calendar): { from: number; to: number; month: number }[] {
  const stretches = [];
  for (let from = 0, to = 0; from < days; from = to) {
    while (to < days && month[to] === month[from] && to - from < 31) to++;
    stretches.push({ from, to, month: month[from]! });
  }
  return stretches;
}
