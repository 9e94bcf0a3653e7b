import { spinUpDays } from "./bed-run.ts";
import type { Frame } from "./frame.ts";
import { addStretch, blankTally, type Tally } from "./tally.ts";
import { startLevel_L, type TankGroup } from "./tanks.ts";

/** What a tank whose draw is known does over a record, without its days. */
export interface TankSum {
  /** What the draw is short of, and top-up. */
  mains: Tally;
  yield_L: number;
  spill_L: number;
  topUp_L: number;
  drawDays: number;
  shortDays: number;
  /** Days that end with nothing above the outlet. */
  emptyDays: number;
}

/**
 * Runs a tank over a record by the same rule as `stepTank`, keeping sums only: many sizes and many sets of measures
 * are asked for at once. A test holds the two to each other.
 * @param inflow_L from roofs by day
 * @param draw_L asked for by day; all that it is short of comes from the mains
 * @source Fewkes and Butler 2000, Building Services Engineering Research and Technology 21:99–106
 */
export function sumTank(
  tank: TankGroup,
  inflow_L: Float64Array,
  draw_L: Float64Array,
  frame: Frame,
): TankSum {
  const sum: TankSum = {
    mains: blankTally(frame),
    yield_L: 0,
    spill_L: 0,
    topUp_L: 0,
    drawDays: 0,
    shortDays: 0,
    emptyDays: 0,
  };
  const spunUp = inflow_L.length >= spinUpDays;
  let level_L = tank.half_L;
  if (spunUp && tank.inUse)
    level_L = runStretch(
      tank,
      inflow_L,
      draw_L,
      0,
      spinUpDays,
      level_L,
      { ...sum, mains: blankTally(frame) },
      0,
      -1,
    );
  level_L = startLevel_L(tank, spunUp ? level_L : null);
  for (const { from, to, month, year } of frame.stretches)
    level_L = runStretch(tank, inflow_L, draw_L, from, to, level_L, sum, month, year);
  return sum;
}

/** Days `from` up to `to` of one month; returns the level above the outlet at their end. */
function runStretch(
  { inUse, rule, usable_L, unusable_L, capacity_L, topUp }: TankGroup,
  inflow_L: Float64Array,
  draw_L: Float64Array,
  from: number,
  to: number,
  before_L: number,
  sum: TankSum,
  month: number,
  year: number,
): number {
  const early = rule === "before-spillage" ? 1 : 0;
  const trigger_L = inUse && topUp ? topUp.belowShare * capacity_L - unusable_L : Number.NEGATIVE_INFINITY;
  const target_L = topUp ? topUp.toShare * capacity_L - unusable_L : 0;
  const most_L = inUse ? usable_L : 0;
  let level_L = before_L;
  let short_L = 0;
  let yield_L = 0;
  let spill_L = 0;
  let topUp_L = 0;
  let drawDays = 0;
  let shortDays = 0;
  let emptyDays = 0;
  for (let i = from; i < to; i++) {
    const asks_L = draw_L[i]!;
    const filled_L = inUse ? level_L + inflow_L[i]! : level_L;
    const there_L = inUse ? (early ? filled_L : level_L) : 0;
    const gives_L = Math.min(asks_L, there_L);
    const left_L = filled_L - gives_L;
    const holds_L = inUse ? (early ? most_L : most_L - gives_L) : level_L;
    level_L = Math.min(left_L, holds_L);
    spill_L += left_L - level_L;
    if (level_L < trigger_L && target_L > level_L) {
      topUp_L += target_L - level_L;
      level_L = target_L;
    }
    yield_L += gives_L;
    short_L += asks_L - gives_L;
    if (asks_L > 0) {
      drawDays++;
      if (gives_L < asks_L) shortDays++;
    }
    if (level_L <= 0) emptyDays++;
  }
  addStretch(sum.mains, month, year, short_L + topUp_L);
  sum.yield_L += yield_L;
  sum.spill_L += spill_L;
  sum.topUp_L += topUp_L;
  sum.drawDays += drawDays;
  sum.shortDays += shortDays;
  sum.emptyDays += emptyDays;
  return level_L;
}
