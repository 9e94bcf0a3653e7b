import { type PreparedBed, prepareBed } from "./bed-day.ts";
import { runBed } from "./bed-run.ts";
import type { Frame } from "./frame.ts";
import type { Bed, Draw, Roof } from "./grounds.ts";
import { drawsOnTank } from "./prepare.ts";
import { addTally, blankTally, type Tally, tallyOf } from "./tally.ts";
import { type Claimant, runTank, thirstyBed } from "./tank-run.ts";
import { sumTank } from "./tank-sum.ts";
import { drawByDay_L, roofByDay_L, type TankGroup, tankGroups, tankSeries } from "./tanks.ts";
import { type MeasureSet, onceEach, type VariedGrounds, type VariedTanks } from "./varied.ts";
import { grossFromNet_L, habitByDay_L, openDays } from "./watering.ts";

/**
 * How beds are watered: by today's habit, to need, or to need where that takes no more than habit and by habit where
 * it would (no bed gets more than today). Where a habit is not known, need stands in for it.
 */
export type WateredBy = "habit" | "need" | "least";

/** Mains water of any set of measures. Each bed, roof and tank is run once for each way that it can be. */
export interface SetEvaluator {
  /** Mains water with the set done and beds watered in the way said. */
  mains(set: MeasureSet, by: WateredBy): Tally;
  /** A bed as it is in a set. */
  bed(place: number, set: MeasureSet): BedVariant;
}

/** A bed in one of the ways that it can be; its runs are made when first asked for. */
export interface BedVariant {
  bed: Bed;
  prepared: PreparedBed;
  open: Uint8Array;
  /** Gross litres of each day with water always there. */
  need_L(): Float64Array;
  habit_L(): Float64Array | null;
  /** Whether today's habit gives less than the need, mean a year. */
  wantsMoreThanHabit(): boolean;
}

interface RoofVariant {
  roof: Roof;
  inflow_L: Float64Array;
}

interface DrawVariant {
  draw: Draw;
  asks_L: Float64Array;
}

/** @throws ShadeNeedsSky where a shaded bed's record has neither temperatures nor sun */
export function setEvaluator(grounds: VariedGrounds, frame: Frame): SetEvaluator {
  const { weather, absent } = frame;
  const days = weather.calendar.days;
  const drawOf = (draw: Draw | null): DrawVariant | null =>
    draw && { draw, asks_L: drawByDay_L(draw, weather, absent) };

  const beds = grounds.beds.map((part) => onceEach(part.changedBy, (set) => bedVariant(part.in(set), frame)));
  const bedTallies = (["habit", "need", "least"] as const).map((by) =>
    grounds.beds.map((part, k) =>
      onceEach(part.changedBy, (set) => {
        const variant = beds[k]!(set);
        const { supply } = variant.bed.watering;
        return supply === "mains-only" ? tallyOf(asked_L(variant, by), frame) : null;
      }),
    ),
  );
  const mainsDraws = grounds.mainsDraws.map((part) =>
    onceEach(part.changedBy, (set) => {
      const use = drawOf(part.in(set));
      return use && tallyOf(use.asks_L, frame);
    }),
  );
  const leaks = onceEach(grounds.leaks_L_day.changedBy, (set) =>
    tallyOf(new Float64Array(days).fill(grounds.leaks_L_day.in(set)), frame),
  );
  const tankTallies = (["habit", "need", "least"] as const).map((by) =>
    grounds.tanks.map((tanks) => {
      const run = tanksRunner(tanks, beds, frame, drawOf);
      return onceEach(tanks.changedBy, (set) => run(set, by));
    }),
  );

  return {
    mains(set, by) {
      const at = by === "habit" ? 0 : by === "need" ? 1 : 2;
      const sum = leaks(set).slice();
      for (const tally of bedTallies[at]!) addIf(sum, tally(set));
      for (const tally of mainsDraws) addIf(sum, tally(set));
      for (const tally of tankTallies[at]!) addTally(sum, tally(set));
      return sum;
    },
    bed: (place, set) => beds[place]!(set),
  };
}

function addIf(sum: Tally, more: Tally | null): void {
  if (more) addTally(sum, more);
}

function bedVariant(bed: Bed, { weather, absent, shadeOf }: Frame): BedVariant {
  const prepared = prepareBed(bed, weather, false, shadeOf);
  const open = openDays(bed.watering, weather.calendar, absent);
  let need_L: Float64Array | null = null;
  let habit_L: Float64Array | null | undefined;
  const variant: BedVariant = {
    bed,
    prepared,
    open,
    need_L: () => (need_L ??= needByDay_L(prepared, open)),
    habit_L: () => {
      if (habit_L === undefined) habit_L = habitByDay_L(bed, weather.calendar, absent);
      return habit_L;
    },
    wantsMoreThanHabit: () => {
      const habit = variant.habit_L();
      return habit !== null && sum(variant.need_L()) > sum(habit);
    },
  };
  return variant;
}

function needByDay_L(prepared: PreparedBed, open: Uint8Array): Float64Array {
  const asked = new Float64Array(open.length);
  runBed(prepared, open, asked);
  const perMm_L = grossFromNet_L(1, prepared.bed.area_m2, prepared.bed.watering.efficiency);
  for (let i = 0; i < asked.length; i++) asked[i]! *= perMm_L;
  return asked;
}

function sum(values: Float64Array): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

/** Whether a bed's habit stands, or its need. */
function byHabit(variant: BedVariant, by: WateredBy): boolean {
  if (by === "need" || variant.habit_L() === null) return false;
  return by === "habit" || variant.wantsMoreThanHabit();
}

function asked_L(variant: BedVariant, by: WateredBy): Float64Array {
  return byHabit(variant, by) ? variant.habit_L()! : variant.need_L();
}

/** Mains water of tanks that act together, with the beds and draws on them, in a set. */
function tanksRunner(
  parts: VariedTanks,
  beds: readonly ((set: MeasureSet) => BedVariant)[],
  frame: Frame,
  drawOf: (draw: Draw | null) => DrawVariant | null,
): (set: MeasureSet, by: WateredBy) => Tally {
  const draws = parts.draws.map((part) => onceEach(part.changedBy, (set) => drawOf(part.in(set))));
  const roofs = parts.roofs.map((part) =>
    onceEach(part.changedBy, (set) => roofVariant(part.in(set), frame)),
  );
  return (set, by) => {
    const sum = blankTally(frame);
    const tanks = parts.tanks.flatMap((part) => part.in(set) ?? []);
    const there = draws.flatMap((draw) => draw(set) ?? []);
    const served = parts.beds.map((place) => beds[place]!(set)).filter(({ bed }) => drawsOnTank(bed));
    const sending = roofs.map((roof) => roof(set));
    for (const group of tankGroups(tanks)) {
      const ids = new Set(group.members.map(({ id }) => id));
      const inOrder = (order: Draw["order"]) =>
        there.filter(({ draw }) => draw.order === order && ids.has(draw.tank)).map(knownDraw);
      const claimants = [
        ...inOrder("before-beds"),
        ...served.filter(({ bed }) => ids.has(bed.watering.tank!)).map((bed) => claimantOf(bed, by)),
        ...inOrder("after-beds"),
      ];
      addTally(sum, runGroup(group, inflowOf(group, sending, frame), claimants, frame));
    }
    return sum;
  };
}

function roofVariant(roof: Roof, { weather }: Frame): RoofVariant {
  return { roof, inflow_L: roof.tank === null ? new Float64Array(0) : roofByDay_L(roof, weather) };
}

function inflowOf(group: TankGroup, roofs: readonly RoofVariant[], { weather }: Frame): Float64Array {
  const inflow_L = new Float64Array(weather.calendar.days);
  if (!group.inUse) return inflow_L;
  const ids = new Set(group.members.map(({ id }) => id));
  for (const { roof, inflow_L: more_L } of roofs)
    if (roof.tank !== null && ids.has(roof.tank))
      for (let i = 0; i < inflow_L.length; i++) inflow_L[i]! += more_L[i]!;
  return inflow_L;
}

function knownDraw({ asks_L }: DrawVariant): Claimant {
  return { kind: "known", asks_L, restFromMains: true };
}

function claimantOf(variant: BedVariant, by: WateredBy): Claimant {
  const restFromMains = variant.bed.watering.supply !== "tank-only";
  if (!restFromMains && !byHabit(variant, by)) return thirstyBed(variant.prepared, variant.open, null);
  return { kind: "known", asks_L: asked_L(variant, by), restFromMains };
}

/** Known draws that the mains make good take the short way; a bed that feels what it does not get, the long one. */
function runGroup(
  group: TankGroup,
  inflow_L: Float64Array,
  claimants: readonly Claimant[],
  frame: Frame,
): Tally {
  const days = inflow_L.length;
  if (claimants.every((claimant) => claimant.kind === "known" && claimant.restFromMains)) {
    const draw_L = new Float64Array(days);
    for (const claimant of claimants)
      if (claimant.kind === "known") for (let i = 0; i < days; i++) draw_L[i]! += claimant.asks_L[i]!;
    return sumTank(group, inflow_L, draw_L, frame).mains;
  }
  const mains_L = new Float64Array(days);
  runTank(group, claimants, tankSeries(inflow_L), mains_L);
  return tallyOf(mains_L, frame);
}
