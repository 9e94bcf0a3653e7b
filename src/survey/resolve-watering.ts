import type { Watering } from "../engine/grounds.ts";
import { efficiencyFromUniformity } from "../engine/uniformity.ts";
import { defaultChoice } from "../tables/defaults.ts";
import { type Method, method as methodRow, standInFlow } from "../tables/methods.ts";
import type { Stands } from "./resolve-assumed.ts";
import { monthFlags, weekdayFlags } from "./resolve-days.ts";
import type { SurveyBed, SurveyTap, SurveyWatering } from "./survey.ts";

/** How a bed is watered, its blanks filled from the methods table. */
export function resolveWatering(
  { watering, area_m2 }: SurveyBed,
  where: string,
  taps: readonly SurveyTap[],
  stands: Stands,
): Watering {
  const method = methodRow(watering.method);
  const { habit } = watering;
  const fromTank = watering.supply === "tank-then-mains" || watering.supply === "tank-only";
  return {
    drip: method.drip,
    efficiency: resolveEfficiency(watering, method, where, stands),
    wettedShare: stands.number(
      watering.wettedShare,
      `${where}.wettedShare`,
      method.wettedShare,
      `methods.${watering.method}.wettedShare`,
    ),
    flow_L_min: resolveFlow(watering, area_m2, where, taps, stands),
    maxMinutes: watering.maxMinutes ?? Number.POSITIVE_INFINITY,
    supply: watering.supply,
    tank: fromTank ? (watering.tank ?? null) : null,
    byHand: resolveByHand(watering, method, where, stands),
    allowedWeekdays: weekdayFlags(watering.allowedDays),
    habit: habit
      ? { minutes: habit.minutes, weekdays: weekdayFlags(habit.days), months: monthFlags(habit.months) }
      : null,
  };
}

/** Own, else from a catch-can test, else the method's. */
function resolveEfficiency(watering: SurveyWatering, method: Method, where: string, stands: Stands): number {
  const { efficiency, distributionUniformity } = watering;
  const path = `${where}.efficiency`;
  if (efficiency !== undefined || distributionUniformity === undefined)
    return stands.number(efficiency, path, method.efficiency, `methods.${watering.method}.efficiency`);
  const { source } = defaultChoice("bed.watering.efficiency");
  return stands.list(path, efficiencyFromUniformity(distributionUniformity), source);
}

/** Own, else the tap's, else what the method usually brings. */
function resolveFlow(
  watering: SurveyWatering,
  area_m2: number,
  where: string,
  taps: readonly SurveyTap[],
  stands: Stands,
): number {
  const path = `${where}.flow_L_min`;
  const tap = taps.find(({ id }) => id === watering.tap);
  const measured = watering.flow_L_min ?? tap?.flow_L_min;
  if (measured !== undefined) return measured;
  if (tap?.flowAt) {
    const mean = tap.flowAt.reduce((sum, at) => sum + at.flow_L_min, 0) / tap.flowAt.length;
    return stands.list(path, mean, defaultChoice("bed.watering.flow_L_min").source);
  }
  return stands.number(undefined, path, standInFlow(watering.method, area_m2));
}

function resolveByHand(
  { runBy }: SurveyWatering,
  { byHand }: Method,
  where: string,
  stands: Stands,
): boolean {
  if (runBy !== undefined) return runBy === "hand";
  stands.list(`${where}.runBy`, byHand ? "hand" : "timer", defaultChoice("bed.watering.runBy").source);
  return byHand;
}
