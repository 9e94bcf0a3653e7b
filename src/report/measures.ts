import { costPerKL, netPresentValue, noOutlay, type Outlay, simplePayback } from "../engine/money.ts";
import { chosenMeasures } from "../survey/measures/chosen.ts";
import { type MoneyOf, outlayOf, outlookFor } from "../survey/measures/costs.ts";
import { type Member, membersOf, valuerOf } from "./plan-worth.ts";
import type { GroundsReport } from "./schema.ts";
import type { WorkedOut } from "./work-out.ts";

type ReportMeasure = GroundsReport["measures"][number];

/** A row for each measure chosen and for watering to need; none where the survey chooses no measure. */
export function measureRows({ survey, ready: { frame }, money }: WorkedOut): ReportMeasure[] {
  const chosen = chosenMeasures(survey);
  if (chosen.length === 0) return [];
  return membersOf(valuerOf(survey, chosen, frame), money.tariff).map((member) => rowOf(member, money));
}

function rowOf(member: Member, money: MoneyOf): ReportMeasure {
  const outlay = memberOutlay(member, money);
  const share_kL_year = member.water_kL_year.share;
  if (!outlay) return { id: member.id, share_kL_year, npv: null, payback_years: null, costPerKL: null };
  const outlook = outlookFor(outlay, money);
  const saved = member.money_year?.share ?? null;
  return {
    id: member.id,
    share_kL_year,
    npv: saved === null ? null : netPresentValue(outlay, saved, outlook),
    payback_years: saved === null ? null : simplePayback(outlay, saved),
    costPerKL: costPerKL(outlay, share_kL_year, outlook.discountShare),
  };
}

/** Watering to need is bought by nobody: it takes minutes set anew. null where a measure's cost is not known. */
export function memberOutlay({ measure }: Member, money: MoneyOf): Outlay | null {
  return measure ? outlayOf(measure, money) : noOutlay;
}
