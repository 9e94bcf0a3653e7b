import type { Frame } from "../engine/frame.ts";
import { dryAndWetYear, points } from "../engine/give-up.ts";
import { type BanBed, banByRain, banOnTank } from "../engine/mains-ban.ts";
import { drawsOnTank } from "../engine/prepare.ts";
import { enoughSize, limitOf, type SizePoint, savedByYear_kL, sizeCurve } from "../engine/size-curve.ts";
import { total_L } from "../engine/tally.ts";
import type { TankInputs } from "../engine/tank-inputs.ts";
import { perYear } from "../engine/years.ts";
import type { ChoicesContext } from "./choices-context.ts";
import { beside, with_ } from "./choices-measures.ts";
import type { GroundsChoices } from "./choices-schema.ts";

type SizeRow = GroundsChoices["sizes"][number];
type TankRow = GroundsChoices["tanks"][number];
type BanRow = GroundsChoices["rainOnly"][number];

/** Sizes tried for each tank, beside those marked. */
const tried = 58;
/** Days in a row with next to nothing left that a bed is taken to live through. Ours: a fortnight. */
const livesThrough_days = 14;

/** A tank to be looked at, in the plan or beside it, with what comes in and what is asked of it. */
export interface Looked {
  tank: string;
  name: string;
  capacity_L: number;
  isPlan: boolean;
  inputs: TankInputs;
  today_L: number | null;
  quoted_L: number[];
}

export interface TankParts {
  sizes: SizeRow[];
  tanks: TankRow[];
  rainOnly: BanRow[];
}

export function tankParts(context: ChoicesContext): TankParts {
  const looked = lookedAt(context);
  const enough = new Map(looked.map((tank) => [tank, enoughSize(tank.inputs, tank.tank, frameOf(context))]));
  return {
    sizes: looked.flatMap((tank) => sizeRows(tank, enough.get(tank)!.capacity_L, context)),
    tanks: looked.filter(({ isPlan }) => isPlan).map((tank) => tankRow(tank, enough.get(tank)!, context)),
    rainOnly: rainOnly(context),
  };
}

const frameOf = ({ worked }: ChoicesContext) => worked.ready.frame;

/** The tanks in use in the plan, and each that a measure outside it adds or puts to use. */
export function lookedAt(context: ChoicesContext): Looked[] {
  const { plan, measures } = context;
  const inPlan = inSet(context, plan, true);
  const known = new Set(inPlan.map(({ tank }) => tank));
  const beyond = measures.flatMap(({ addTank, useTank }, place) => {
    const id = addTank?.id ?? useTank?.tank;
    if (plan[place] === 1 || id === undefined || known.has(id)) return [];
    known.add(id);
    return inSet(context, with_(beside(context, place), place), false).filter(({ tank }) => tank === id);
  });
  return [...inPlan, ...beyond];
}

function inSet({ valuer, worked, measures }: ChoicesContext, set: Uint8Array, isPlan: boolean): Looked[] {
  const added = measures.flatMap(({ addTank }) => addTank ?? []);
  return valuer.evaluator.tanks(set, "need").flatMap((inputs) =>
    inputs.group.inUse
      ? inputs.group.members.map(({ id, capacity_L }) => {
          const today = worked.survey.tanks.find((tank) => tank.id === id);
          const quoted = measures.flatMap(({ addTank, resizeTank }) => [
            ...(addTank?.id === id ? [addTank.capacity_L] : []),
            ...(resizeTank?.tank === id ? [resizeTank.capacity_L] : []),
          ]);
          const name = (today ?? added.find((tank) => tank.id === id))!.name;
          return {
            tank: id,
            name,
            capacity_L,
            isPlan,
            inputs,
            today_L: today?.capacity_L ?? null,
            quoted_L: quoted,
          };
        })
      : [],
  );
}

function marked({ today_L, quoted_L }: Looked, enough_L: number): Map<number, NonNullable<SizeRow["mark"]>> {
  const marks = new Map<number, NonNullable<SizeRow["mark"]>>();
  if (enough_L > 0) marks.set(enough_L, "enough");
  for (const size of quoted_L) marks.set(size, "quoted");
  if (today_L !== null) marks.set(today_L, "today");
  return marks;
}

function sizeRows(tank: Looked, enough_L: number, context: ChoicesContext): SizeRow[] {
  const frame = frameOf(context);
  const { days } = frame.weather.calendar;
  const marks = marked(tank, enough_L);
  const sizes = sizesTo(Math.max(1000, 2 * Math.max(0, ...marks.keys())), [...marks.keys()]);
  const curve = sizeCurve(tank.inputs, tank.tank, sizes, frame);
  const mean = (point: SizePoint) => perYear(total_L(point.saved), days) / 1000;
  const { mains } = context.worked.outcome;
  const yearAt = (year: number | null) => (year === null ? -1 : frame.years.indexOf(year));
  const { dryYear, wetYear } = dryAndWetYear(mains.byYear);
  return curve.map((point, k) => {
    const byYear = savedByYear_kL(point);
    const next = curve[k + 1];
    return {
      tank: tank.tank,
      capacity_L: point.capacity_L,
      mark: marks.get(point.capacity_L) ?? null,
      saved_kL_year: points(byYear) ?? { p10: null, p50: null, p90: null },
      mean_kL_year: mean(point),
      dry_kL: byYear[yearAt(dryYear)] ?? null,
      wet_kL: byYear[yearAt(wetYear)] ?? null,
      marginal_kL: next ? ((mean(next) - mean(point)) / (next.capacity_L - point.capacity_L)) * 1000 : null,
      reliability: point.reliability,
      emptyDays_year: perYear(point.emptyDays, days),
    };
  });
}

/** Close together where a tank is small and little more does much, wider apart beyond; in whole hundreds. */
function sizesTo(most_L: number, marks: readonly number[]): number[] {
  const even = Array.from(
    { length: tried },
    (_, k) => Math.round((most_L * (k / (tried - 1)) ** 2) / 100) * 100,
  );
  return [...new Set([...even, ...marks])].sort((a, b) => a - b);
}

const times = [0, 0.25, 0.5, 0.75, 1, 1.5, 2, 3];

function tankRow(
  tank: Looked,
  enough: { most_L: number; capacity_L: number },
  context: ChoicesContext,
): TankRow {
  const frame = frameOf(context);
  const { days } = frame.weather.calendar;
  const kL_year = (litres: number) => perYear(litres, days) / 1000;
  const limit = limitOf(tank.inputs, tank.tank, enough.most_L, frame);
  const sizes = [...new Set([0, tank.capacity_L, ...marked(tank, enough.capacity_L).keys()])].sort(
    (a, b) => a - b,
  );
  return {
    tank: tank.tank,
    name: tank.name,
    capacity_L: tank.capacity_L,
    saved_kL_year: kL_year(limit.saved_L),
    most_kL_year: kL_year(enough.most_L),
    enough_L: enough.capacity_L,
    limit: limit.by,
    moreTank_kL_year: kL_year(limit.moreTank_L),
    moreRoof_kL_year: kL_year(limit.moreRoof_L),
    moreDemand_kL_year: kL_year(limit.moreDemand_L),
    byRoof: times.map((share) => ({
      times: share,
      saved_kL_year: kL_year(total_L(withRoof(tank, share, frame).with.saved)),
    })),
    ban: sizes.map((capacity_L) => ({
      capacity_L,
      beds: banOnTank(tank.inputs, tank.tank, capacity_L).map((bed) => banRow(bed, days)),
    })),
  };
}

/** The tank at its size with another share of its roof, and the same without a tank. */
export function withRoof(
  { inputs, tank, capacity_L }: Looked,
  share: number,
  frame: Frame,
): { with: SizePoint; without: SizePoint } {
  const inflow_L = inputs.inflow_L.map((litres) => litres * share);
  const [without, point] = sizeCurve({ ...inputs, inflow_L }, tank, [0, capacity_L], frame);
  return { with: point!, without: without! };
}

function banRow({ id, stressDays, longestDry_days }: BanBed, days: number): BanRow {
  return {
    bed: id,
    stressDays_year: perYear(stressDays, days),
    longestDry_days,
    lives: longestDry_days <= livesThrough_days,
  };
}

/** Beds of the plan that no tank waters and that are watered today. */
function rainOnly(context: ChoicesContext): BanRow[] {
  const { days } = context.worked.weather.calendar;
  return bedsOnRain(context).map((bed) => banRow(bed, days));
}

export function bedsOnRain({ valuer, worked, plan }: ChoicesContext): BanBed[] {
  return worked.survey.beds.flatMap((_, place) => {
    const variant = valuer.evaluator.bed(place, plan);
    const { supply } = variant.bed.watering;
    if (supply === "none" || supply === "other" || drawsOnTank(variant.bed)) return [];
    return banByRain(variant);
  });
}
