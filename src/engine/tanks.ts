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

/** What a tank can give on a day. @source Jenkins et al. 1978; Fewkes and Butler 2000 */
export function yieldOfDay_L(rule: Tank["rule"], draw_L: number, before_L: number, inflow_L: number): number {
  return Math.min(draw_L, rule === "before-spillage" ? before_L + inflow_L : before_L);
}

/**
 * Day i of a tank whose draw is known: yield by its rule, spill, then top-up from the mains.
 * @param before_L level above the outlet at the end of the day before
 * @returns level above the outlet at the end of day i
 * @closes inflow + top-up = yield + spill + change in level, to 1e-6 L
 * @source Fewkes and Butler 2000, Building Services Engineering Research and Technology 21:99–106
 */
export function stepTank(tank: TankGroup, days: TankSeries, i: number, before_L: number): number {
  const inflow_L = days.inflow_L[i]!;
  const yield_L = yieldOfDay_L(tank.rule, days.draw_L[i]!, before_L, inflow_L);
  const most_L = tank.rule === "before-spillage" ? tank.usable_L : tank.usable_L - yield_L;
  const kept_L = Math.min(before_L + inflow_L - yield_L, most_L);
  const topUp_L = topUpOfDay_L(tank, kept_L);
  days.yield_L[i] = yield_L;
  days.spill_L[i] = Math.max(0, before_L + inflow_L - yield_L - kept_L);
  days.topUp_L[i] = topUp_L;
  days.level_L[i] = kept_L + topUp_L;
  return kept_L + topUp_L;
}

/** Mains water let in at the end of a day that ends below the trigger; shares are of the whole capacity. */
function topUpOfDay_L({ topUp, inUse, unusable_L, capacity_L }: TankGroup, kept_L: number): number {
  if (!topUp || !inUse) return 0;
  const level_L = kept_L + unusable_L;
  return level_L < topUp.belowShare * capacity_L ? Math.max(0, topUp.toShare * capacity_L - level_L) : 0;
}

/** Level to begin with on day 1: spun up where the record allows, then as surveyed; else half full. */
export function startLevel_L(group: TankGroup, spunUp_L: number | null): number {
  return group.surveyed_L ?? spunUp_L ?? group.half_L;
}
