import { asked_L, type BedVariant, byHabit, type WateredBy } from "./bed-variant.ts";
import type { Frame } from "./frame.ts";
import type { Draw, Roof } from "./grounds.ts";
import { drawsOnTank } from "./prepare.ts";
import { type Tally, tallyOf } from "./tally.ts";
import { type Claimant, runTank, thirstyBed } from "./tank-run.ts";
import { sumTank } from "./tank-sum.ts";
import { drawByDay_L, roofByDay_L, type TankGroup, tankGroups, tankSeries } from "./tanks.ts";
import { type MeasureSet, onceEach, type VariedTanks } from "./varied.ts";

/** A tank, or joined tanks, in a set of measures: what comes in, and who asks. */
export interface TankInputs {
  group: TankGroup;
  inflow_L: Float64Array;
  /** Beds that it serves, in the survey's order. */
  beds: BedVariant[];
  /** Draws served before the beds and after them. */
  draws(): { before: Claimant[]; after: Claimant[] };
  /** Who asks, in the order in which a short day serves them; anew for each run, since thirsty beds carry a state. */
  claimants(): Claimant[];
  /** The sum of what is asked for, where nothing hangs on what is given and the mains give the rest; else null. */
  known_L: Float64Array | null;
}

/** Works out, for any set, the tanks of a system with their inflow and claimants. */
export function tankInputs(
  parts: VariedTanks,
  beds: readonly ((set: MeasureSet) => BedVariant)[],
  frame: Frame,
): (set: MeasureSet, by: WateredBy) => TankInputs[] {
  const drawsOf = parts.draws.map((part) =>
    onceEach(part.changedBy, (set) => drawVariant(part.in(set), frame)),
  );
  const roofs = parts.roofs.map((part) =>
    onceEach(part.changedBy, (set) => roofVariant(part.in(set), frame)),
  );
  return (set, by) => {
    const there = drawsOf.flatMap((draw) => draw(set) ?? []);
    const served = parts.beds.map((place) => beds[place]!(set)).filter(({ bed }) => drawsOnTank(bed));
    const sending = roofs.map((roof) => roof(set));
    return tankGroups(parts.tanks.flatMap((part) => part.in(set) ?? [])).map((group) => {
      const ids = new Set(group.members.map(({ id }) => id));
      const onGroup = served.filter(({ bed }) => ids.has(bed.watering.tank!));
      const inOrder = (order: Draw["order"]) =>
        there.filter(({ draw }) => draw.order === order && ids.has(draw.tank)).map(knownDraw);
      const draws = () => ({ before: inOrder("before-beds"), after: inOrder("after-beds") });
      const claimants = () => {
        const { before, after } = draws();
        return [...before, ...onGroup.map((bed) => claimantOf(bed, by)), ...after];
      };
      const inflow_L = inflowOf(group, ids, sending, frame);
      return {
        group,
        inflow_L,
        beds: onGroup,
        draws,
        claimants,
        known_L: knownSum_L(claimants(), inflow_L.length),
      };
    });
  };
}

/** A draw with what it asks for on each day. */
export interface DrawVariant {
  draw: Draw;
  asks_L: Float64Array;
}

export function drawVariant(draw: Draw | null, { weather, absent }: Frame): DrawVariant | null {
  return draw && { draw, asks_L: drawByDay_L(draw, weather, absent) };
}

interface RoofVariant {
  roof: Roof;
  inflow_L: Float64Array;
}

function roofVariant(roof: Roof, { weather }: Frame): RoofVariant {
  return { roof, inflow_L: roof.tank === null ? new Float64Array(0) : roofByDay_L(roof, weather) };
}

function inflowOf(
  { inUse }: TankGroup,
  ids: ReadonlySet<string>,
  roofs: readonly RoofVariant[],
  { weather }: Frame,
): Float64Array {
  const inflow_L = new Float64Array(weather.calendar.days);
  if (!inUse) return inflow_L;
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

function knownSum_L(claimants: readonly Claimant[], days: number): Float64Array | null {
  const sum_L = new Float64Array(days);
  for (const claimant of claimants) {
    if (claimant.kind !== "known" || !claimant.restFromMains) return null;
    const { asks_L } = claimant;
    for (let i = 0; i < days; i++) sum_L[i]! += asks_L[i]!;
  }
  return sum_L;
}

/** Mains water that a tank's claimants and its top-up take: the short way where all is known, else day by day. */
export function runGroup({ group, inflow_L, known_L, claimants }: TankInputs, frame: Frame): Tally {
  if (known_L) return sumTank(group, inflow_L, known_L, frame).mains;
  const mains_L = new Float64Array(inflow_L.length);
  runTank(group, claimants(), tankSeries(inflow_L), mains_L);
  return tallyOf(mains_L, frame);
}
