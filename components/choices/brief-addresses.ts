import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import { setKeyOf } from "./verdict.ts";

/** Where the figures of the brief open, in its order. */
export function briefAddresses({ mains, plans, best, measures, shares, spread }: GroundsChoices): string[] {
  const key = setKeyOf(best.measures);
  const years = [mains.dryYear, mains.wetYear].filter((year) => year !== null);
  return [
    ...(plans.underWatered.length > 0 ? ["choices/short"] : []),
    "mains/today",
    "mains/plan",
    "mains/give-up",
    ...(plans.noMoreThanToday ? ["choices/least"] : []),
    ...years.map((year) => `mains/give-up/${year}`),
    ...(spread ? ["choices/sure/give-up/p10", "choices/sure/give-up/p90"] : []),
    ...(spread && spread.rivals.length > 1 ? ["choices/sure/chance/0/1"] : []),
    `choices/set/${key}/saved`,
    `choices/cost/set/${key}`,
    `choices/purse/set/${key}/npv`,
    ...shares.map(({ id }) => `choices/share/${id}/water`),
    ...measures.flatMap(({ id }) => [
      `choices/measure/${id}/after`,
      `choices/worth/${id}`,
      `choices/purse/offer/${id}/cost-per-kl`,
    ]),
  ];
}
