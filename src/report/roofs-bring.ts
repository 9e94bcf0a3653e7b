import type { Roof } from "../engine/grounds.ts";
import { firstFlushOfDay_mm, roofInflow_L } from "../engine/tanks.ts";
import { perYear } from "../engine/years.ts";
import { daysByMonth, weekly } from "./to-view.ts";
import type { WorkedOut } from "./work-out.ts";

/**
 * Where the rain on one roof goes, litres of a mean year. What falls is what the tank gets, what the first flush takes,
 * what runs elsewhere and what never runs off.
 */
export interface RoofBrings {
  id: string;
  name: string;
  area_m2: number;
  material: string;
  /** The name of its tank; null where it is not connected. */
  tank: string | null;
  tankId: string | null;
  /** Its tank is not in use: what is sent is not kept. */
  idle: boolean;
  firstFlush_mm: number;
  falls_L_year: number;
  /** What reaches the tank; of a roof that is not connected, what would. */
  sends_L_year: number;
  firstFlush_L_year: number;
  elsewhere_L_year: number;
  staysBehind_L_year: number;
  sends_L_week: readonly number[];
}

/** Every roof of the survey, in its order. */
export function roofsBring(worked: WorkedOut): RoofBrings[] {
  const { ready, survey, weather, outcome } = worked;
  const { rain_mm, calendar } = weather;
  const days = daysByMonth(calendar);
  const inYear = (litres: number) => perYear(litres, outcome.days);
  return ready.grounds.roofs.map((roof, k) => {
    const group = ready.tanks.find(({ group: { members } }) =>
      members.some(({ id }) => id === roof.tank),
    )?.group;
    const sends = new Float64Array(12);
    const sums = { falls: 0, sends: 0, flush: 0 };
    for (let i = 0; i < calendar.days; i++) {
      const sends_L = roofInflow_L(roof, rain_mm, i);
      sends[calendar.month[i]!]! += sends_L;
      sums.sends += sends_L;
      sums.flush += flush_L(roof, rain_mm, i);
      sums.falls += roof.area_m2 * rain_mm[i]!;
    }
    const runsOff_L = sums.falls * roof.runoff;
    return {
      id: roof.id,
      name: survey.roofs[k]!.name,
      area_m2: roof.area_m2,
      material: survey.roofs[k]!.material,
      tank: survey.tanks.find(({ id }) => id === roof.tank)?.name ?? null,
      tankId: group?.id ?? null,
      idle: group !== undefined && !group.inUse,
      firstFlush_mm: roof.firstFlush_mm,
      falls_L_year: inYear(sums.falls),
      sends_L_year: inYear(sums.sends),
      firstFlush_L_year: inYear(sums.flush),
      elsewhere_L_year: inYear(runsOff_L * (1 - roof.share)),
      staysBehind_L_year: inYear(sums.falls - runsOff_L),
      sends_L_week: weekly(sends, days),
    };
  });
}

/** What the first flush of day i takes of what would have gone to the tank. */
function flush_L({ area_m2, runoff, share, firstFlush_mm }: Roof, rain_mm: Float64Array, i: number): number {
  return area_m2 * runoff * share * Math.min(rain_mm[i]!, firstFlushOfDay_mm(rain_mm, i, firstFlush_mm));
}
