import { parseIso } from "../../src/engine/weather/dates.ts";
import type { RoundsWeek, RoundsWeekBed } from "../../src/report/week-schema.ts";

/** A run of water on the day's clock. */
export interface Run {
  from_min: number;
  to_min: number;
}

/** A bed's stop on a day's round. */
export interface Stop {
  id: string;
  name: string;
  /** Place in the walk, 1 first; null where a timer runs it or no time fits. */
  step: number | null;
  runs: readonly Run[];
  /** The part of its water that a tank gives, 0–1; the rest is from the mains or water of its own. */
  tankShare: number;
  minutes: number;
  cycles: number;
  soak_min: number;
  litres: number;
  /** "07:00–10:00", a run each. */
  times: readonly { from: string; to: string }[];
  sentence: string;
  checkFirst: boolean;
}

export interface WeekDayDrawn {
  day: number;
  stops: readonly Stop[];
  sunrise_min: number | null;
  sunset_min: number | null;
  dawn: string | null;
  dusk: string | null;
  finish: string | null;
  hoseMoves: number;
  walk_m: number;
  /** Names of beds that do not fit into the day. */
  left: readonly string[];
  help: string | null;
}

/** What the drawing needs of a bed beyond the round. */
export interface BedFacts {
  name: string;
  byHand: boolean;
  supply: string;
}

export interface WeekDrawn {
  days: readonly WeekDayDrawn[];
  /** The clock that all days are drawn on, whole hours. */
  from_min: number;
  to_min: number;
}

/** The week as rounds on foot: each day's beds in the order in which they begin, on one clock. */
export function weekDrawn(week: RoundsWeek, beds: ReadonlyMap<string, BedFacts>): WeekDrawn {
  const shares = tankShares(week, beds);
  const days = week.days.map((day): WeekDayDrawn => {
    const stops = week.beds.flatMap((bed) =>
      bed.waterings
        .filter(({ date }) => date === day.date)
        .map((watering) => stopOf(bed, watering, beds.get(bed.id)!, shares.get(bed.id) ?? 0)),
    );
    stops.sort((a, b) => begins(a) - begins(b));
    let step = 0;
    return {
      day: parseIso(day.date)!,
      stops: stops.map((stop) =>
        beds.get(stop.id)!.byHand && stop.runs.length > 0 ? { ...stop, step: ++step } : stop,
      ),
      sunrise_min: minutesOf(day.sunrise),
      sunset_min: minutesOf(day.sunset),
      dawn: day.dawn,
      dusk: day.dusk,
      finish: day.finish,
      hoseMoves: day.hoseMoves,
      walk_m: day.walk_m,
      left: day.left.map((id) => beds.get(id)?.name ?? id),
      help: day.help,
    };
  });
  const runs = days.flatMap(({ stops }) => stops.flatMap((stop) => stop.runs));
  const first = Math.min(...runs.map(({ from_min }) => from_min));
  const last = Math.max(...runs.map(({ to_min }) => to_min));
  if (runs.length === 0) return { days, from_min: 360, to_min: 600 };
  return { days, from_min: 60 * Math.floor(first / 60), to_min: 60 * Math.ceil(last / 60) };
}

function begins({ runs }: Stop): number {
  return runs[0]?.from_min ?? Number.POSITIVE_INFINITY;
}

function stopOf(
  { id }: RoundsWeekBed,
  watering: RoundsWeekBed["waterings"][number],
  { name }: BedFacts,
  tankShare: number,
): Stop {
  const { minutes, cycles, soak_min, litres, sentence, code } = watering;
  const runs = watering.runs.map(({ from, to }) => ({ from_min: minutesOf(from)!, to_min: minutesOf(to)! }));
  return {
    id,
    name,
    step: null,
    runs,
    tankShare,
    minutes,
    cycles,
    soak_min,
    litres,
    times: watering.runs,
    sentence,
    checkFirst: code === "check-first",
  };
}

/** How much of each bed's water of the week a tank gives; a tank that was not dipped is taken to give all. */
function tankShares(week: RoundsWeek, beds: ReadonlyMap<string, BedFacts>): Map<string, number> {
  const rations = new Map(
    week.tanks.flatMap((tank) => tank.rations.map((ration) => [ration.id, ration] as const)),
  );
  return new Map(
    [...beds].map(([id, { supply }]) => {
      const ration = rations.get(id);
      if (ration) {
        const given_L = ration.fromTank_L + ration.fromMains_L;
        return [id, given_L > 0 ? ration.fromTank_L / given_L : 1];
      }
      return [id, supply.startsWith("tank") ? 1 : 0];
    }),
  );
}

/** "05:30" as minutes from midnight. */
export function minutesOf(clock: string | null): number | null {
  const [, hours, minutes] = /^(\d\d):(\d\d)$/.exec(clock ?? "") ?? [];
  return hours === undefined ? null : 60 * Number(hours) + Number(minutes);
}
