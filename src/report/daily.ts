import type { BedRun } from "../engine/site-run.ts";
import { formatIso } from "../engine/weather/dates.ts";
import type { WorkedOut } from "./work-out.ts";

export interface DailyTable {
  header: string[];
  rows: string[][];
}

/** Digits kept of every figure. */
const significant = 12;

/**
 * The day-by-day table of a survey worked out with `keepDays`, watered to need: weather, then each bed, then
 * each tank, then mains water. A bed that only a tank or only rain waters stands as it was supplied.
 */
export function dailyTable(worked: WorkedOut): DailyTable {
  const { weather, need, ready } = worked;
  const columns: [string, ArrayLike<number>][] = [
    ["rain_mm", weather.rain_mm],
    ["et0_mm", weather.et0_mm],
    ...need.beds.flatMap(bedColumns),
    ...need.tanks.flatMap(({ series }, k): [string, Float64Array][] => {
      const { id } = ready.tanks[k]!.group;
      return [
        [`${id}.inflow_L`, series.inflow_L],
        [`${id}.draw_L`, series.draw_L],
        [`${id}.yield_L`, series.yield_L],
        [`${id}.spill_L`, series.spill_L],
        [`${id}.topup_L`, series.topUp_L],
        [`${id}.level_L`, series.level_L],
      ];
    }),
    ["mains_L", need.mains_L],
  ];
  const rows = Array.from({ length: weather.calendar.days }, (_, i) => [
    formatIso(weather.calendar.firstDay + i),
    ...columns.map(([, values]) => String(Number(values[i]!.toPrecision(significant)))),
  ]);
  return { header: ["date", ...columns.map(([name]) => name)], rows };
}

function bedColumns({ ready: { grown }, days, suppliedByDay_L }: BedRun): [string, Float64Array][] {
  if (!days) return [];
  const { id, area_m2, watering } = grown.bed;
  const columns = {
    et0_mm: grown.et0_mm,
    kcb: days.kcb,
    ke: days.ke,
    ks: days.ks,
    etc_mm: days.etc_mm,
    net_mm: suppliedByDay_L.map((litres) => (litres / area_m2) * watering.efficiency),
    gross_L: suppliedByDay_L,
    drainage_mm: days.drainage_mm,
    root_depletion_mm: days.rootDepletion_mm,
    surface_depletion_mm: days.surfaceDepletion_mm,
  };
  return Object.entries(columns).map(([name, values]) => [`${id}.${name}`, values]);
}
