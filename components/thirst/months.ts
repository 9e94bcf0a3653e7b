import { pointOfMonth, valueAt } from "../../src/report/months-of-years.ts";
import type { Thirst, ThirstBed, ThirstView, Weeks } from "../../src/report/thirst-view.ts";
import { shortName } from "../../src/words/en/page.ts";
import { plate } from "../../src/words/en/plates.ts";
import { type Months, type Part, partsOf } from "../charts/months/prepare.ts";

/** Months of one bed, or of all that are watered, between a dry one and a wet one. */
export function monthsOf(view: ThirstView, bed: ThirstBed | null): Months {
  const beds = bed ? [bed] : view.beds.filter(({ supply }) => supply !== "none");
  const of: Thirst = bed ?? view.all!;
  const shown = (thirst: Thirst): Weeks => thirst.ofYears ?? thirst.mean;
  const { need_L_week } = shown(of);
  return {
    name: bed ? shortName(bed.name) : plate.months.gardens,
    one: bed !== null,
    parts: bed ? partsOf([{ supply: bed.supply, ...shown(bed) }]) : partsOfAll(view.all!, beds),
    need_L_week,
    today_L_week: bed?.supply === "none" ? null : of.today_L_week,
    rain_mm_week: of.rain_mm_week,
    rainUsed_mm_week: of.rainUsed_mm_week.map((used, m) => Math.min(used, of.rain_mm_week[m]!)),
    years: of.ofYears,
  };
}

/** Beds' own middles do not add up to the middle of all: what each has in the years of that middle does. */
function partsOfAll(all: Thirst, beds: readonly ThirstBed[]): Part[] {
  if (!all.ofYears) return partsOf(beds.map(({ supply, mean }) => ({ supply, ...mean })));
  const years = Array.from({ length: 12 }, (_, m) => pointOfMonth(all.needRows_L_week, m, 0.5));
  return partsOf(
    beds.map(({ supply, needRows_L_week, tankRows_L_week }) => ({
      supply,
      need_L_week: years.map((parts) => valueAt(needRows_L_week, parts)),
      fromTank_L_week: years.map((parts) => valueAt(tankRows_L_week, parts)),
    })),
  );
}
