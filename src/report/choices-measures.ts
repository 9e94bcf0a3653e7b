import type { WateredBy } from "../engine/bed-variant.ts";
import { points } from "../engine/give-up.ts";
import {
  breakEvenPerKL,
  breakEvenQuote,
  capital,
  costPerKL,
  discountedPayback,
  flowsOf,
  netPresentValue,
  type Outlay,
  type Outlook,
  rateOfReturn,
  simplePayback,
} from "../engine/money.ts";
import { byYear_L, total_L } from "../engine/tally.ts";
import { perYear } from "../engine/years.ts";
import { tankWanted } from "../survey/measures/acting.ts";
import { chosenMeasures } from "../survey/measures/chosen.ts";
import { outlookFor } from "../survey/measures/costs.ts";
import type { SurveyMeasure } from "../survey/survey.ts";
import { changes } from "../survey/words.ts";
import { type ChoicesContext, npvOfSet } from "./choices-context.ts";
import type { GroundsChoices } from "./choices-schema.ts";
import { memberOutlay } from "./measures.ts";
import { type Member, membersOf } from "./plan-worth.ts";

type MeasureRow = GroundsChoices["measures"][number];
type ShareRow = GroundsChoices["shares"][number];
type Plans = GroundsChoices["plans"];

/** Less than this is said to save nothing: 50 L a year. */
const nothing_kL = 0.05;

/** The set that a measure is looked at in: the plan, less what excludes it, with the tank that it cannot do without. */
export function beside(
  context: Pick<ChoicesContext, "measures" | "plan" | "apart" | "worked">,
  place: number,
): Uint8Array {
  const { measures, plan, apart, worked } = context;
  const set = plan.slice();
  const drop = (of: number) => {
    for (const [a, b] of apart) {
      if (a === of) set[b] = 0;
      if (b === of) set[a] = 0;
    }
  };
  drop(place);
  set[place] = 0;
  const wanted = tankWanted(measures[place]!);
  const isThere = (id: string) =>
    worked.survey.tanks.some((tank) => tank.id === id) ||
    measures.some(({ addTank }, k) => set[k] === 1 && addTank?.id === id);
  if (wanted !== null && !isThere(wanted)) {
    const bringing = measures.findIndex(({ addTank }) => addTank?.id === wanted);
    if (bringing >= 0) {
      drop(bringing);
      set[bringing] = 1;
    }
  }
  return set;
}

export function with_(set: Uint8Array, place: number): Uint8Array {
  const more = set.slice();
  more[place] = 1;
  return more;
}

/** Every measure of the survey: by itself, and after the others. */
export function measureRows(context: ChoicesContext): MeasureRow[] {
  const { measures, valuer, outlays, plan } = context;
  const saved = (set: Uint8Array) => valuer.saved_kL_year(set, "need");
  return measures.map((measure, place) => {
    const others = beside(context, place);
    const base = onlyBringing(context, others, place);
    const outlay = outlays[place]!;
    const after_kL_year = saved(with_(others, place)) - saved(others);
    const worthWith = npvOfSet(context, with_(others, place));
    const npv = outlay && worthWith !== null ? worthWith - npvOfSet(context, others)! : null;
    return {
      id: measure.id,
      name: measure.name,
      change: changeOf(measure),
      oneOf: measure.oneOf ?? null,
      chosen: plan[place] === 1,
      cost: outlay && capital(outlay),
      upkeepPerYear: measure.upkeepPerYear ?? 0,
      quotedBy: measure.quote?.from ?? null,
      alone_kL_year: saved(with_(base, place)) - saved(base),
      after_kL_year,
      againstNeed: againstNeed(measure, context),
      npv,
      costPerKL: outlay && costPerKL(outlay, after_kL_year, context.outlook.discountShare),
      worth: worthOf(after_kL_year, npv),
    };
  });
}

/** Of the others only the tank that the measure cannot do without. */
export function onlyBringing(
  { measures }: Pick<ChoicesContext, "measures">,
  others: Uint8Array,
  place: number,
): Uint8Array {
  const wanted = tankWanted(measures[place]!);
  return others.map((one, k) =>
    one === 1 && wanted !== null && measures[k]!.addTank?.id === wanted ? 1 : 0,
  );
}

export function worthOf(after_kL_year: number, npv: number | null): MeasureRow["worth"] {
  if (after_kL_year < nothing_kL) return "saves-nothing";
  if (npv === null) return "not-priced";
  return npv >= 0 ? "pays" : "does-not-pay";
}

function changeOf(measure: SurveyMeasure): string {
  return changes.find((change) => measure[change] !== undefined)!;
}

function againstNeed(
  { mulch, replant, changeWatering, useTank }: SurveyMeasure,
  { worked }: ChoicesContext,
): string[] {
  const beds = (mulch ?? replant ?? changeWatering ?? useTank)?.beds ?? [];
  return beds.filter((bed) => worked.outcome.mains.todayUnknown.includes(bed));
}

/** The members of the plan with their shares, in water and in money. */
export function shareRows(context: ChoicesContext): ShareRow[] {
  return planMembers(context).map((member) => shareRow(member, context));
}

const members = new WeakMap<ChoicesContext, Member[]>();

/** The plan's members; worked out once for a context, since every share's working asks for them. */
export function planMembers(context: ChoicesContext): Member[] {
  const found = members.get(context);
  if (found) return found;
  const { worked, money, planValuer } = context;
  const made = membersOf({ ...planValuer, measures: chosenMeasures(worked.survey) }, money.tariff);
  members.set(context, made);
  return made;
}

/** How far ahead an outlay of a member is looked at. */
export function outlookOf({ money }: ChoicesContext, outlay: Outlay): Outlook {
  return outlookFor(outlay, money);
}

function shareRow(member: Member, { money }: ChoicesContext): ShareRow {
  const { share, standardError, first, last } = member.water_kL_year;
  const water = {
    id: member.id,
    share_kL_year: share,
    standardError_kL: standardError,
    first_kL_year: first,
    last_kL_year: last,
  };
  const saved = member.money_year?.share ?? null;
  const outlay = memberOutlay(member, money);
  const outlook = outlay && outlookFor(outlay, money);
  const priced = outlay && outlook && saved !== null;
  return {
    ...water,
    saved_money_year: saved,
    npv: priced ? netPresentValue(outlay, saved, outlook) : null,
    payback_years: priced ? simplePayback(outlay, saved) : null,
    discountedPayback_years: priced ? discountedPayback(outlay, saved, outlook) : null,
    rateOfReturn: priced ? rateOfReturn(flowsOf(outlay, saved, outlook)) : null,
    costPerKL: outlay && outlook ? costPerKL(outlay, share, outlook.discountShare) : null,
    breakEvenPerKL: outlay && outlook ? breakEvenPerKL(outlay, share, outlook) : null,
    breakEvenCost: priced ? breakEvenQuote(outlay, saved, outlook) : null,
    horizon_years: outlook?.horizon_years ?? null,
  };
}

/** The plan to need, and where some beds get less than that today, the plan in which no bed gets more. */
export function planRows({ worked, valuer, plan, measures }: ChoicesContext): Plans {
  const { frame } = worked.ready;
  const { days } = worked.weather.calendar;
  const none = new Uint8Array(measures.length);
  const today = byYear_L(valuer.today);
  const sumOf = (by: WateredBy) => {
    const mains = valuer.evaluator.mains(plan, by);
    const giveUp = Array.from(byYear_L(mains), (litres, k) => (today[k]! - litres) / 1000);
    return {
      plan_kL_year: perYear(total_L(mains), days) / 1000,
      giveUp_kL_year: points(giveUp) ?? { p10: null, p50: null, p90: null },
    };
  };
  const watered = worked.survey.beds.flatMap(({ id }, place) => {
    const variant = valuer.evaluator.bed(place, none);
    const { supply } = variant.bed.watering;
    const habit_L = supply === "none" || supply === "other" ? null : variant.habit_L();
    if (habit_L === null) return [];
    const kL = (values: Float64Array) =>
      perYear(
        values.reduce((a, b) => a + b, 0),
        frame.weather.calendar.days,
      ) / 1000;
    return [{ bed: id, habit_kL_year: kL(habit_L), need_kL_year: kL(variant.need_L()) }];
  });
  const underWatered = watered.filter(({ habit_kL_year, need_kL_year }) => habit_kL_year < need_kL_year);
  return {
    toNeed: sumOf("need"),
    noMoreThanToday: underWatered.length > 0 ? sumOf("least") : null,
    underWatered,
    overWatered: watered.filter(({ habit_kL_year, need_kL_year }) => habit_kL_year > need_kL_year),
  };
}
