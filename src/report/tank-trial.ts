import { type Claimant, type KnownClaimant, runTank, thirstyBed } from "../engine/tank-run.ts";
import { roofByDay_L, type TankGroup, tankSeries } from "../engine/tanks.ts";
import { perYear, wholeYears, type YearSpan } from "../engine/years.ts";
import { roofMaterial } from "../tables/roofs.ts";
import { everySeventh } from "./level-steps.ts";
import type { WorkedOut } from "./work-out.ts";

/** A tank as it might be: of another size, under more roof or less, all else as it is. Litres a year are of a mean year. */
export interface Trial {
  tank: string;
  capacity_L: number;
  roof_m2: number;
  inflow_L_year: number;
  yield_L_year: number;
  spill_L_year: number;
  /** What claimants are short of and the mains give, and top-up. */
  mains_L_year: number;
  shortDays_year: number;
  reliability: number;
  volumetricReliability: number;
  /** The days of the year asked for. */
  year: number | null;
  firstDay: number;
  level_L: Float64Array;
  spill_L: Float64Array;
  short: Uint8Array;
  /** Short days and spill of each whole year, and its level every seventh day. */
  years: readonly { year: number; shortDays: number; spill_L: number; level_L: Float32Array }[];
}

/** What a trial is of, made ready once: only the tank itself is run again. */
export interface TrialBench {
  worked: WorkedOut;
  group: TankGroup;
  inflow_L: Float64Array;
  /** m² of roof that send the inflow: of those connected, or one m² of a roof that could be. */
  roof_m2: number;
  claimants: () => Claimant[];
  spans: readonly YearSpan[];
}

const benches = new WeakMap<WorkedOut, Map<string, TrialBench>>();

/** @returns null where there is no such tank */
export function trialBench(worked: WorkedOut, tankId: string): TrialBench | null {
  const ofSite = benches.get(worked) ?? new Map<string, TrialBench>();
  benches.set(worked, ofSite);
  const bench = ofSite.get(tankId) ?? newBench(worked, tankId);
  if (bench) ofSite.set(tankId, bench);
  return bench;
}

function newBench(worked: WorkedOut, tankId: string): TrialBench | null {
  const { ready, need, weather } = worked;
  const tank = ready.tanks.find(({ group }) => group.id === tankId);
  if (!tank) return null;
  const runOf = new Map(need.beds.map((run) => [run.ready, run]));
  const known = (asks_L: Float64Array): KnownClaimant => ({ kind: "known", asks_L, restFromMains: true });
  const draws = {
    before: tank.before.map((d) => known(d.asks_L)),
    after: tank.after.map((d) => known(d.asks_L)),
  };
  const ids = new Set(tank.group.members.map(({ id }) => id));
  const roofs = ready.grounds.roofs.filter((roof) => roof.tank !== null && ids.has(roof.tank));
  const roof_m2 = roofs.reduce((sum, { area_m2 }) => sum + area_m2, 0);
  return {
    worked,
    // as one tank that is there, whether linked, or not in use yet
    group: alone(tank.group),
    inflow_L: roof_m2 > 0 ? inflowFrom(roofs, worked) : roofByDay_L(anyRoof(worked), weather),
    roof_m2: roof_m2 > 0 ? roof_m2 : 1,
    claimants: () => [
      ...draws.before,
      ...tank.beds.map((bed) =>
        bed.grown.bed.watering.supply === "tank-only"
          ? thirstyBed(bed.grown, bed.open, null)
          : known(runOf.get(bed)!.needByDay_L),
      ),
      ...draws.after,
    ],
    spans: wholeYears(weather.calendar),
  };
}

function inflowFrom(
  roofs: readonly Parameters<typeof roofByDay_L>[0][],
  { weather }: WorkedOut,
): Float64Array {
  const inflow_L = new Float64Array(weather.calendar.days);
  for (const roof of roofs)
    roofByDay_L(roof, weather).forEach((litres, i) => {
      inflow_L[i]! += litres;
    });
  return inflow_L;
}

/** One m² of the largest roof that no tank has yet, or of metal where there is none. */
function anyRoof({ ready }: WorkedOut) {
  const free = ready.grounds.roofs
    .filter(({ tank }) => tank === null)
    .sort((a, b) => b.area_m2 - a.area_m2)[0];
  const metal = roofMaterial("metal");
  const { runoff, firstFlush_mm } = free ?? {
    runoff: metal.runoff.middle,
    firstFlush_mm: metal.firstFlush_mm.middle,
  };
  return { id: "", area_m2: 1, share: 1, tank: null, runoff, firstFlush_mm };
}

/** A linked group as the one tank that it acts as. */
function alone(group: TankGroup): TankGroup {
  const { capacity_L, unusable_L } = group;
  const level_L = group.surveyed_L === null ? null : group.surveyed_L + unusable_L;
  const first = group.members[0]!;
  return {
    ...group,
    inUse: true,
    members: [{ ...first, capacity_L, unusable_L, level_L, inUse: true, linked: [] }],
  };
}

/** The same tank at another size. */
export function sized(group: TankGroup, capacity_L: number): TankGroup {
  const usable_L = Math.max(0, capacity_L - group.unusable_L);
  const surveyed_L = group.surveyed_L === null ? null : Math.min(group.surveyed_L, usable_L);
  return {
    ...group,
    capacity_L,
    usable_L,
    surveyed_L,
    half_L: Math.max(0, capacity_L / 2 - group.unusable_L),
  };
}

/** Runs the tank once at a size and under a roof; everything else stays as it was worked out. */
export function tryTank(bench: TrialBench, capacity_L: number, roof_m2: number, year: number | null): Trial {
  const { worked, spans } = bench;
  const { days, firstDay } = worked.weather.calendar;
  const more = roof_m2 / bench.roof_m2;
  const inflow_L = more === 1 ? bench.inflow_L : bench.inflow_L.map((litres) => litres * more);
  const mains_L = new Float64Array(days);
  const run = runTank(sized(bench.group, capacity_L), bench.claimants(), tankSeries(inflow_L), mains_L);
  const { draw_L, yield_L, spill_L, level_L } = run.series;
  const short = Uint8Array.from(draw_L, (asks, i) => (asks > yield_L[i]! ? 1 : 0));
  const inYear = (series: Float64Array) => perYear(sum(series, 0, days), days);
  const yield_L_year = inYear(yield_L);
  const shown = spans.find((span) => span.year === year) ?? { from: 0, to: Math.min(days, 366) };
  return {
    tank: bench.group.id,
    capacity_L,
    roof_m2,
    inflow_L_year: inYear(inflow_L),
    yield_L_year,
    spill_L_year: inYear(spill_L),
    mains_L_year: inYear(mains_L),
    shortDays_year: perYear(run.shortDays, days),
    reliability: run.drawDays > 0 ? 1 - run.shortDays / run.drawDays : 1,
    volumetricReliability: run.newDraw_L > 0 ? yield_L_year / perYear(run.newDraw_L, days) : 1,
    year,
    firstDay: firstDay + shown.from,
    level_L: level_L.slice(shown.from, shown.to),
    spill_L: spill_L.slice(shown.from, shown.to),
    short: short.slice(shown.from, shown.to),
    years: spans.map(({ year, from, to }) => ({
      year,
      shortDays: sum(short, from, to),
      spill_L: sum(spill_L, from, to),
      level_L: everySeventh(level_L, from, to),
    })),
  };
}

function sum(values: Float64Array | Uint8Array, from: number, to: number): number {
  let all = 0;
  for (let i = from; i < to; i++) all += values[i]!;
  return all;
}
