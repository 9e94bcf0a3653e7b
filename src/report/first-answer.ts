import { runReady } from "../engine/estimate.ts";
import { type Frame, frameOf } from "../engine/frame.ts";
import { type Points, points } from "../engine/give-up.ts";
import { namedStreams } from "../engine/named-streams.ts";
import { prepareGrounds } from "../engine/prepare.ts";
import { pooledPoints, sharesOfWidth, type UnknownShare } from "../engine/spread.ts";
import { fillGaps } from "../engine/weather/gaps.ts";
import type { WeatherRecord } from "../engine/weather/record.ts";
import { prepareWeather, type WeatherSeries } from "../engine/weather/series.ts";
import { perYear, sumOver, wholeYears } from "../engine/years.ts";
import type { FirstNames } from "../survey/first/document.ts";
import { drawnSurvey, openGarden_m2, type PlaceFactors } from "../survey/first/drawn.ts";
import { type FirstEntries, type FirstPlace, knowsToday } from "../survey/first/entries.ts";
import { type FirstLead, leadOf } from "../survey/first/lead.ts";
import { applyMeasures } from "../survey/measures/apply.ts";
import { chosenMeasures } from "../survey/measures/chosen.ts";
import { resolve } from "../survey/resolve.ts";
import { middleOf } from "../survey/resolve-assumed.ts";
import { drawsOf } from "../survey/sample.ts";

export interface FirstRequest {
  entries: FirstEntries;
  /** Said, or the one that stands in. */
  place: FirstPlace;
  names: FirstNames;
  record: WeatherRecord;
  seed: number;
}

/** The first answer over what was drawn so far; kL a year. */
export interface FirstOutcome {
  draws: number;
  seed: number;
  /** Area that the figures are of: the garden's, or a hundred square metres while that was not said. */
  area_m2: number;
  isPerArea: boolean;
  years: number;
  rain_mm_year: number;
  et0_mm_year: number;
  need_kL: Points;
  /** What roof and tank bring of the need; null where neither was said. */
  brings_kL: Points | null;
  /** What runs off the roof; null where there is none. */
  roof_kL: Points | null;
  /** Where today's watering is known: what it puts on, what it is above need, and mains water given up. */
  today: { given_kL: Points; beyond_kL: Points; giveUp_kL: Points } | null;
  byUnknown: UnknownShare[];
  lead: FirstLead | null;
}

export interface FirstRun {
  draw(): void;
  done(): number;
  /** At least one draw must have been made. */
  outcome(): FirstOutcome;
}

/** Draws surveys that the entries may mean and works each out on the same years. The same request gives the same draws. */
export function firstRun({ entries, place, names, record, seed }: FirstRequest): FirstRun {
  const draws = drawsOf(namedStreams(seed));
  const filled = fillGaps(record);
  const columns = Object.keys(filled.columns);
  const plain = resolve(drawnSurvey(entries, place, names, middleOf).survey, columns);
  const weather = prepareWeather(filled, plain.grounds.place);
  const frame = frameOf([], weather);
  const years = wholeYears(weather.calendar);
  const isKnown = knowsToday(entries);
  const series = {
    need: [] as number[][],
    brings: [] as number[][],
    roof: [] as number[][],
    given: [] as number[][],
    beyond: [] as number[][],
    giveUp: [] as number[][],
  };

  const draw = () => {
    draws.next();
    const { survey, place: factors } = drawnSurvey(entries, place, names, draws.pick);
    const here = factors ? scaledFrame(weather, factors) : frame;
    const ready = (of: typeof survey) =>
      prepareGrounds(resolve(of, columns, draws.pick).grounds, here.weather, here);
    const ids = chosenMeasures(survey).map(({ id }) => id);
    const planned = ids.length > 0 ? ready(applyMeasures(survey, ids)) : null;
    const runs = runReady(ready(survey), {}, planned);
    const byYear = (litres: Float64Array) => years.map((span) => sumOver(litres, span) / 1000);
    const [bed] = runs.need.beds;
    const [tank] = runs.plan.tanks;
    const need = byYear(bed!.needByDay_L);
    series.need.push(need);
    if (tank) series.brings.push(byYear(tank.series.yield_L));
    if (tank) series.roof.push(byYear(tank.series.inflow_L));
    if (!isKnown) return;
    const given = byYear(bed!.ready.habit_L!);
    const plan = byYear(runs.plan.mains_L);
    series.given.push(given);
    series.beyond.push(given.map((kL, k) => kL - need[k]!));
    series.giveUp.push(byYear(runs.today.mains_L).map((kL, k) => kL - plan[k]!));
  };

  const pooled = (byDraw: number[][]) => pooledPoints({ byDraw }) ?? { p10: 0, p50: 0, p90: 0 };
  const meanOf = (daily: Float64Array) =>
    perYear(sumOver(daily, { from: 0, to: daily.length }), daily.length);
  return {
    draw,
    done: () => series.need.length,
    outcome: () => {
      const byUnknown = sharesOfWidth({ byDraw: isKnown ? series.giveUp : series.need }, draws.places());
      return {
        draws: series.need.length,
        seed,
        area_m2: entries.garden_m2 ?? openGarden_m2,
        isPerArea: entries.garden_m2 === undefined,
        years: years.length,
        rain_mm_year: meanOf(weather.rain_mm),
        et0_mm_year: meanOf(weather.et0_mm),
        need_kL: pooled(series.need),
        brings_kL: series.brings.length > 0 ? points(series.brings.flat()) : null,
        roof_kL: series.roof.length > 0 ? points(series.roof.flat()) : null,
        today: isKnown
          ? {
              given_kL: pooled(series.given),
              beyond_kL: pooled(series.beyond),
              giveUp_kL: pooled(series.giveUp),
            }
          : null,
        byUnknown,
        lead: leadOf(entries, byUnknown),
      };
    },
  };
}

/** The weather of another place near the one that stands in. */
function scaledFrame(weather: WeatherSeries, { rain, et0 }: PlaceFactors): Frame {
  return frameOf([], {
    ...weather,
    rain_mm: weather.rain_mm.map((mm) => mm * rain),
    et0_mm: weather.et0_mm.map((mm) => mm * et0),
  });
}
