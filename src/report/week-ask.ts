import { flowAtLevel_L_min, type GravityTap } from "../engine/rounds/gravity.ts";
import { type Heat, heatFactor } from "../engine/rounds/heat.ts";
import type { RoundsTap } from "../engine/rounds/site.ts";
import type { Forecast, GaugeReading } from "../engine/rounds/soil-now.ts";
import type { BedNeed, RoundsNeed } from "../engine/rounds/table.ts";
import type { Given, LastRound, WeekFacts } from "../engine/rounds/week-facts.ts";
import { netFromGross_mm } from "../engine/watering.ts";
import { parseIso } from "../engine/weather/dates.ts";
import type { LogEntry } from "../survey/schema/log.ts";

/** What somebody says on the day that a week's round is made. */
export interface WeekAsk {
  firstDay: number;
  log: readonly LogEntry[];
  /** Dips of today by tank; the log's and the survey's stand in. */
  level_L: ReadonlyMap<string, number>;
  lastRound: LastRound;
  heat: Heat;
  forecast: readonly Forecast[];
  /** Chance of a hot spell in the week to come, 0–1; left out where none is forecast. */
  hotSpell?: number | null;
}

/** The waterings of each bed that the log has before the week, in order; minutes by the bed's flow. */
export function givenFromLog({ beds }: RoundsNeed, { log, firstDay }: WeekAsk): Map<string, Given[]> {
  const given = new Map<string, Given[]>();
  for (const entry of log) {
    const day = parseIso(entry.date)!;
    const bed = beds.find(({ rounds }) => rounds.id === entry.id);
    if (entry.kind !== "watering" || !bed || day >= firstDay) continue;
    const { area_m2, watering } = bed.ready.grown.bed;
    const net_mm = netFromGross_mm(litresOf(entry, bed), area_m2, watering.efficiency);
    given.set(bed.rounds.id, [...(given.get(bed.rounds.id) ?? []), { day, net_mm }]);
  }
  for (const rows of given.values()) rows.sort((a, b) => a.day - b.day);
  return given;
}

/** Litres of a logged watering: as written, else its minutes by the bed's flow. */
export function litresOf({ litres, minutes }: LogEntry, { ready }: BedNeed): number {
  return litres ?? (minutes ?? 0) * ready.grown.bed.watering.flow_L_min;
}

function gaugeFromLog({ log, firstDay }: WeekAsk): GaugeReading[] {
  return log
    .filter(({ kind, date }) => kind === "rain" && parseIso(date)! < firstDay)
    .map(({ date, days, rain_mm }) => ({ day: parseIso(date)!, days: days ?? 1, rain_mm: rain_mm! }))
    .sort((a, b) => a.day - b.day);
}

/** Today's level of each tank: as said now, else the log's latest dip, else the survey's; null where none is known. */
export function levelsNow({ ready }: RoundsNeed, ask: WeekAsk): Map<string, number | null> {
  return new Map(
    ready.grounds.tanks.map(({ id, level_L }) => {
      const dips = ask.log.filter(
        (entry) => entry.kind === "dip" && entry.id === id && parseIso(entry.date)! <= ask.firstDay,
      );
      const latest = dips.reduce<LogEntry | null>(
        (last, dip) => (!last || dip.date >= last.date ? dip : last),
        null,
      );
      return [id, ask.level_L.get(id) ?? latest?.level_L ?? level_L];
    }),
  );
}

/** A bed's tap where its tank's level sets the flow; null where it does not. */
export function gravityTapOf(need: RoundsNeed, { rounds }: BedNeed): (GravityTap & { tank: string }) | null {
  const tap = need.site.taps.find(({ id }) => id === rounds.tap);
  const tank = need.ready.grounds.tanks.find(({ id }) => id === tap?.source);
  return tap && tank && tap.flowAt.length > 0
    ? { flowAt: tap.flowAt, unusable_L: tank.unusable_L, tank: tank.id }
    : null;
}

/** The most that a tap lets out at today's dip; Infinity where it was never measured. */
export function tapFlow_L_min(
  need: RoundsNeed,
  tap: RoundsTap,
  levels: ReadonlyMap<string, number | null>,
): number {
  const tank = need.ready.grounds.tanks.find(({ id }) => id === tap.source);
  const level_L = levels.get(tap.source) ?? null;
  if (tank && tap.flowAt.length > 0 && level_L !== null)
    return flowAtLevel_L_min({ flowAt: tap.flowAt, unusable_L: tank.unusable_L }, level_L);
  if (tap.flow_L_min !== null) return tap.flow_L_min;
  return tap.flowAt.length > 0
    ? Math.max(...tap.flowAt.map(({ flow_L_min }) => flow_L_min))
    : Number.POSITIVE_INFINITY;
}

/** Flow of each line: the best measured at any of its taps. Common practice. */
export function lineFlows_L_min(
  need: RoundsNeed,
  levels: ReadonlyMap<string, number | null>,
): Map<string, number> {
  const flows = new Map<string, number>();
  for (const tap of need.site.taps) {
    const flow = tapFlow_L_min(need, tap, levels);
    if (tap.line !== null && Number.isFinite(flow))
      flows.set(tap.line, Math.max(flow, flows.get(tap.line) ?? 0));
  }
  return flows;
}

/** What the engine's week is worked out from. */
export function weekFacts(
  need: RoundsNeed,
  ask: WeekAsk,
  levels: ReadonlyMap<string, number | null>,
): WeekFacts {
  const { hotSpell = null } = ask;
  const lines = lineFlows_L_min(need, levels);
  const flows = need.beds.flatMap((bed): [string, number][] => {
    const tap = need.site.taps.find(({ id }) => id === bed.rounds.tap);
    if (!tap) return [];
    const own = bed.rounds.ownFlow_L_min ?? Number.POSITIVE_INFINITY;
    const line = (tap.line === null ? undefined : lines.get(tap.line)) ?? Number.POSITIVE_INFINITY;
    const flow = Math.min(own, tapFlow_L_min(need, tap, levels), line);
    return Number.isFinite(flow) ? [[bed.rounds.id, flow]] : [];
  });
  return {
    firstDay: ask.firstDay,
    gauge: gaugeFromLog(ask),
    forecast: ask.forecast,
    heat: heatFactor(ask.heat, need.ready.weather, ask.firstDay),
    hotSpell:
      hotSpell === null
        ? null
        : {
            heat: heatFactor("hotter", need.ready.weather, ask.firstDay),
            chance: hotSpell,
          },
    given: givenFromLog(need, ask),
    lastRound: ask.lastRound,
    flow_L_min: new Map(flows),
  };
}
