import { everyDay } from "./every-day.ts";
import type { Draw, Roof, Tank } from "./grounds.ts";
import type { AbsentDays } from "./watering.ts";
import type { WeatherSeries } from "./weather/series.ts";

/** Rain below this on the day before leaves the roof dirty: the first flush is taken off again. */
const cleaningRain_mm = 1;

/** A tank, or linked tanks acting as one. Litres; `usable_L` and what follows lie above the outlet. */
export interface TankGroup {
  id: string;
  members: readonly Tank[];
  inUse: boolean;
  rule: Tank["rule"];
  /** The joint capacity, water below the outlet included. */
  capacity_L: number;
  unusable_L: number;
  usable_L: number;
  topUp: Tank["topUp"];
  /** Surveyed level above the outlet; null where no member has one. */
  surveyed_L: number | null;
  /** Half full, above the outlet. */
  half_L: number;
}

/** Groups tanks by their links; a tank that is not in use stands alone. In the survey's order of first members. */
export function tankGroups(tanks: readonly Tank[]): TankGroup[] {
  const leader = new Map(tanks.map((tank) => [tank.id, tank.id]));
  const find = (id: string): string => {
    const above = leader.get(id)!;
    return above === id ? id : find(above);
  };
  const inUse = new Map(tanks.filter((t) => t.inUse).map((t) => [t.id, t]));
  for (const tank of inUse.values())
    for (const other of tank.linked) if (inUse.has(other)) leader.set(find(other), find(tank.id));
  const groups = new Map<string, Tank[]>();
  for (const tank of tanks) {
    const key = find(tank.id);
    groups.set(key, [...(groups.get(key) ?? []), tank]);
  }
  return [...groups.values()].map(group);
}

function group(members: Tank[]): TankGroup {
  const first = members[0]!;
  const capacity_L = sum(members, (t) => t.capacity_L);
  const unusable_L = sum(members, (t) => t.unusable_L);
  const above = (level_L: number) => Math.max(0, Math.min(capacity_L, level_L) - unusable_L);
  const surveyed = members.some((t) => t.level_L !== null);
  return {
    id: first.id,
    members,
    inUse: first.inUse,
    rule: first.rule,
    capacity_L,
    unusable_L,
    usable_L: Math.max(0, capacity_L - unusable_L),
    topUp: first.topUp,
    surveyed_L: surveyed ? above(sum(members, (t) => t.level_L ?? t.capacity_L / 2)) : null,
    half_L: above(capacity_L / 2),
  };
}

function sum<T>(items: readonly T[], figure: (item: T) => number): number {
  return items.reduce((total, item) => total + figure(item), 0);
}

/** Depth that a first-flush diverter takes off before day i reaches the tank. */
export function firstFlushOfDay_mm(rain_mm: Float64Array, i: number, firstFlush_mm: number): number {
  return i === 0 || rain_mm[i - 1]! < cleaningRain_mm ? firstFlush_mm : 0;
}

/** Water that a roof sends to its tank on day i. 1 mm on 1 m² is 1 L. */
export function roofInflow_L(roof: Roof, rain_mm: Float64Array, i: number): number {
  const left_mm = Math.max(0, rain_mm[i]! - firstFlushOfDay_mm(rain_mm, i, roof.firstFlush_mm));
  return roof.area_m2 * roof.runoff * left_mm * roof.share;
}

/** What a roof sends on each day. */
export function roofByDay_L(roof: Roof, { rain_mm }: WeatherSeries): Float64Array {
  return everyDay(rain_mm.length, (i) => roofInflow_L(roof, rain_mm, i));
}

/** Inflow of each day from all roofs that drain to the group; none while it is not in use. */
export function inflowByDay_L(
  group: TankGroup,
  roofs: readonly Roof[],
  weather: WeatherSeries,
): Float64Array {
  const inflow_L = new Float64Array(weather.calendar.days);
  if (!group.inUse) return inflow_L;
  const ids = new Set(group.members.map((t) => t.id));
  for (const roof of roofs) {
    if (roof.tank === null || !ids.has(roof.tank)) continue;
    for (let i = 0; i < inflow_L.length; i++) inflow_L[i]! += roofInflow_L(roof, weather.rain_mm, i);
  }
  return inflow_L;
}

/** Litres that a draw asks for on each day; a draw that pauses does so in every absence. */
export function drawByDay_L(draw: Draw, { calendar }: WeatherSeries, absent: AbsentDays): Float64Array {
  const { weekdays, months, pausesWhenAbsent, litresPerDay } = draw;
  const asks_L = new Float64Array(calendar.days);
  for (let i = 0; i < asks_L.length; i++)
    if (weekdays[calendar.weekday[i]!] && months[calendar.month[i]!] && !(pausesWhenAbsent && absent.any[i]))
      asks_L[i] = litresPerDay;
  return asks_L;
}

/** A tank's days. Levels here are above the outlet. */
export interface TankSeries {
  inflow_L: Float64Array;
  draw_L: Float64Array;
  yield_L: Float64Array;
  spill_L: Float64Array;
  topUp_L: Float64Array;
  level_L: Float64Array;
}

/** Allocates a tank's days once. */
export function tankSeries(inflow_L: Float64Array, draw_L = new Float64Array(inflow_L.length)): TankSeries {
  const days = inflow_L.length;
  return {
    inflow_L,
    draw_L,
    yield_L: new Float64Array(days),
    spill_L: new Float64Array(days),
    topUp_L: new Float64Array(days),
    level_L: new Float64Array(days),
  };
}

/**
 * Days `from` to `to` of a tank whose draw is known: each day's yield by its rule, spill, then top-up from the
 * mains. Numbers stay in local variables and arrays, since a call a day would box them.
 * @param before_L level above the outlet at the end of the day before
 * @returns level above the outlet at the end of the last day
 * @closes inflow + top-up = yield + spill + change in level, to 1e-6 L
 * @source Fewkes and Butler 2000, Building Services Engineering Research and Technology 21:99–106
 */
export function runTankDays(
  tank: TankGroup,
  series: TankSeries,
  from: number,
  to: number,
  before_L: number,
): number {
  const { inflow_L, draw_L, yield_L, spill_L, topUp_L, level_L } = series;
  const { usable_L, unusable_L, capacity_L, topUp } = tank;
  const beforeSpillage = tank.rule === "before-spillage";
  const trigger_L = topUp ? topUp.belowShare * capacity_L - unusable_L : 0;
  const target_L = topUp ? topUp.toShare * capacity_L - unusable_L : 0;
  let held_L = before_L;
  for (let i = from; i < to; i++) {
    const comes_L = inflow_L[i]!;
    const gives_L = Math.min(draw_L[i]!, beforeSpillage ? held_L + comes_L : held_L);
    const left_L = held_L + comes_L - gives_L;
    const kept_L = Math.min(left_L, beforeSpillage ? usable_L : usable_L - gives_L);
    const added_L = topUp && kept_L < trigger_L ? Math.max(0, target_L - kept_L) : 0;
    held_L = kept_L + added_L;
    yield_L[i] = gives_L;
    spill_L[i] = Math.max(0, left_L - kept_L);
    topUp_L[i] = added_L;
    level_L[i] = held_L;
  }
  return held_L;
}

/** Day i alone; see `runTankDays`. */
export function stepTank(tank: TankGroup, series: TankSeries, i: number, before_L: number): number {
  return runTankDays(tank, series, i, i + 1, before_L);
}

/** Level to begin with on day 1: spun up where the record allows, then as surveyed; else half full. */
export function startLevel_L(group: TankGroup, spunUp_L: number | null): number {
  return group.surveyed_L ?? spunUp_L ?? group.half_L;
}
