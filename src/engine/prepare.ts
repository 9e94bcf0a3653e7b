import { type PreparedBed, prepareBed } from "./bed-day.ts";
import { type Frame, frameOf } from "./frame.ts";
import type { Bed, Draw, Grounds } from "./grounds.ts";
import { drawByDay_L, inflowByDay_L, type TankGroup, tankGroups } from "./tanks.ts";
import { habitByDay_L, openDays } from "./watering.ts";
import type { WeatherSeries } from "./weather/series.ts";

/** A bed with all that its runs need; the establishing one beside it where a planting carries a date. */
export interface ReadyBed {
  grown: PreparedBed;
  establishing: PreparedBed | null;
  open: Uint8Array;
  /** Gross litres of today's habit on each day; null where not known. */
  habit_L: Float64Array | null;
}

export interface ReadyDraw {
  draw: Draw;
  asks_L: Float64Array;
}

/** A tank group with its inflow and the draws and beds that ask it for water, each in the survey's order. */
export interface ReadyTank {
  group: TankGroup;
  inflow_L: Float64Array;
  before: ReadyDraw[];
  beds: ReadyBed[];
  after: ReadyDraw[];
}

/** Grounds made ready for a record: done once, run as often as wanted. */
export interface ReadyGrounds {
  grounds: Grounds;
  weather: WeatherSeries;
  frame: Frame;
  beds: ReadyBed[];
  tanks: ReadyTank[];
  /** Mains water of each day whatever is watered: leaks, and uses that are not on a tank yet. */
  always_L: Float64Array;
}

/**
 * @param frame the record's, where other grounds of the same place were made ready on it before
 * @throws ShadeNeedsSky where a shaded bed's record has neither temperatures nor sun
 */
export function prepareGrounds(
  grounds: Grounds,
  weather: WeatherSeries,
  frame: Frame = frameOf(grounds.absences, weather),
): ReadyGrounds {
  const { absent, shadeOf } = frame;
  const beds = grounds.beds.map((bed) => ({
    grown: prepareBed(bed, weather, false, shadeOf),
    establishing: isEstablishing(bed) ? prepareBed(bed, weather, true, shadeOf) : null,
    open: openDays(bed.watering, weather.calendar, absent),
    habit_L: habitByDay_L(bed, weather.calendar, absent),
  }));
  const tanks = tankGroups(grounds.tanks).map((group) => {
    const ids = new Set(group.members.map((tank) => tank.id));
    const draws = grounds.draws
      .filter((draw) => ids.has(draw.tank))
      .map((draw) => ({ draw, asks_L: drawByDay_L(draw, weather, absent) }));
    return {
      group,
      inflow_L: inflowByDay_L(group, grounds.roofs, weather),
      before: draws.filter(({ draw }) => draw.order === "before-beds"),
      beds: beds.filter(({ grown: { bed } }) => drawsOnTank(bed) && ids.has(bed.watering.tank!)),
      after: draws.filter(({ draw }) => draw.order === "after-beds"),
    };
  });
  return { grounds, weather, frame, beds, tanks, always_L: alwaysByDay_L(grounds, frame) };
}

function alwaysByDay_L({ leaks_L_day, mainsDraws = [] }: Grounds, { weather, absent }: Frame): Float64Array {
  const always_L = new Float64Array(weather.calendar.days).fill(leaks_L_day);
  for (const draw of mainsDraws) {
    const asks_L = drawByDay_L(draw, weather, absent);
    for (let i = 0; i < always_L.length; i++) always_L[i]! += asks_L[i]!;
  }
  return always_L;
}

function isEstablishing(bed: Bed): boolean {
  return bed.plantings.some((planting) => planting.establishing !== null);
}

/** Whether a bed asks a tank for water at all. */
export function drawsOnTank({ watering: { supply, tank } }: Bed): boolean {
  return tank !== null && (supply === "tank-then-mains" || supply === "tank-only");
}
