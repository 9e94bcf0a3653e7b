import { type BedUse, bedUses, type RoundsBed } from "./site.ts";

/** Why a bed stands where it does in the order of who goes first. */
export type OrderReason = "site-order" | "young" | BedUse;

export interface Ranked {
  id: string;
  reason: OrderReason;
}

/**
 * Who goes first when water is short: the site's own order where it has one, then, ours: young plants, food,
 * trees, shrubs, flowers, lawn last; of two alike the first in the survey.
 */
export function orderOf(beds: readonly RoundsBed[], day: number): Ranked[] {
  return beds
    .map((bed, place) => ({ id: bed.id, place, ...rankOf(bed, day) }))
    .sort((a, b) => a.own - b.own || a.rank - b.rank || a.place - b.place)
    .map(({ id, reason }) => ({ id, reason }));
}

function rankOf(
  { priority, youngUntilDay, use }: RoundsBed,
  day: number,
): { own: number; rank: number; reason: OrderReason } {
  const isYoung = youngUntilDay !== null && day <= youngUntilDay;
  const rank = isYoung ? -1 : bedUses.indexOf(use);
  if (priority !== null) return { own: priority, rank, reason: "site-order" };
  return { own: Number.POSITIVE_INFINITY, rank, reason: isYoung ? "young" : use };
}

export interface Claim {
  id: string;
  asks_L: number;
  /** What the tank does not give comes from the mains. */
  hasMains: boolean;
}

export interface Ration {
  id: string;
  asks_L: number;
  fromTank_L: number;
  fromMains_L: number;
  /** What it does not get at all. */
  short_L: number;
}

export interface RationedWeek {
  rows: readonly Ration[];
  /** Mains water that would keep all, the beds that have only the tank included. */
  mainsToKeepAll_L: number;
}

/** Shares out what a tank holds in the order of the claims. */
export function ration(available_L: number, claims: readonly Claim[]): RationedWeek {
  let left_L = Math.max(0, available_L);
  const rows = claims.map(({ id, asks_L, hasMains }): Ration => {
    const fromTank_L = Math.min(asks_L, left_L);
    left_L -= fromTank_L;
    const rest_L = asks_L - fromTank_L;
    return { id, asks_L, fromTank_L, fromMains_L: hasMains ? rest_L : 0, short_L: hasMains ? 0 : rest_L };
  });
  return { rows, mainsToKeepAll_L: rows.reduce((sum, row) => sum + row.asks_L - row.fromTank_L, 0) };
}
