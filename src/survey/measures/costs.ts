import type { Outlay, Outlook } from "../../engine/money.ts";
import type { Tariff } from "../../engine/tariff.ts";
import { defaultNumber } from "../../tables/defaults.ts";
import { type Assumed, standsIn } from "../resolve-assumed.ts";
import type { Survey, SurveyMeasure } from "../survey.ts";

/** What water costs and how far ahead is looked. */
export interface MoneyOf {
  currency: string | null;
  /** null where the survey has no price. */
  tariff: Tariff | null;
  discountShare: number;
  riseShare: number;
  /** null where the survey does not say: each measure is then looked at over its own life. */
  horizon_years: number | null;
  /** Stands in where neither the survey nor a measure says how long. */
  usualHorizon_years: number;
  /** What stands in for what the survey leaves out and its measures call for. */
  assumed: Assumed[];
}

export function moneyOf(survey: Survey): MoneyOf {
  const { tariff, money = {}, measures = [] } = survey;
  const assumed: Assumed[] = [];
  const stands = standsIn(measures.some(hasCost) ? assumed : []);
  const usual = (field: string) => defaultNumber(field);
  const usualHorizon_years = usual("money.horizon_years").middle;
  return {
    currency: tariff?.currency ?? null,
    tariff: tariff ? tariffOf(tariff, (own, field) => stands.number(own, field, usual(field))) : null,
    discountShare: stands.number(money.discountShare, "money.discountShare", usual("money.discountShare")),
    riseShare: tariff
      ? stands.number(tariff.riseShare, "tariff.riseShare", usual("tariff.riseShare"))
      : usual("tariff.riseShare").middle,
    horizon_years: money.horizon_years ?? null,
    usualHorizon_years,
    assumed,
  };
}

type SurveyTariff = NonNullable<Survey["tariff"]>;

function tariffOf(
  { perKL, steps, perKLAlso = [], periodMonths, otherUse_kL_year = 0 }: SurveyTariff,
  standIn: (own: number | undefined, field: string) => number,
): Tariff {
  return {
    steps: steps ?? [{ fromKL: 0, perKL: perKL ?? 0 }],
    also_perKL: perKLAlso.reduce((sum, charge) => sum + charge.perKL, 0),
    periodMonths: steps ? standIn(periodMonths, "tariff.periodMonths") : 12,
    otherUse_kL_year,
  };
}

function hasCost({ cost, quote }: SurveyMeasure): boolean {
  return cost !== undefined || quote !== undefined;
}

/** What a measure costs, a quote in lines before a sum; null where no cost is known. */
export function outlayOf(
  measure: SurveyMeasure,
  { horizon_years, usualHorizon_years }: MoneyOf,
): Outlay | null {
  const { cost, quote, life_years, upkeepPerYear = 0 } = measure;
  const lasting = life_years ?? horizon_years ?? usualHorizon_years;
  const lines = quote?.lines ?? (cost === undefined ? null : [{ cost, life_years }]);
  return (
    lines && {
      lines: lines.map((line) => ({ cost: line.cost, life_years: line.life_years ?? lasting })),
      grant: quote?.grant ?? 0,
      upkeepPerYear,
    }
  );
}

/** How far ahead an outlay is looked at: the survey's horizon, else the longest life in it. */
export function outlookFor({ lines }: Outlay, money: MoneyOf): Outlook {
  const longest = Math.max(0, ...lines.map(({ life_years }) => life_years));
  const { discountShare, riseShare, horizon_years, usualHorizon_years } = money;
  const ahead = horizon_years ?? (longest > 0 ? Math.ceil(longest) : usualHorizon_years);
  return { discountShare, riseShare, horizon_years: ahead };
}
