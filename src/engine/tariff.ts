/** A price of mains water and the bill that it is part of. */
export interface Tariff {
  /** From 0 kL up, by use in a billing period. */
  steps: readonly { fromKL: number; perKL: number }[];
  /** All charges that follow the volume, such as sewer; fixed ones are never saved and have no place here. */
  also_perKL: number;
  periodMonths: number;
  /** Other water on the same bill, spread evenly over the year. */
  otherUse_kL_year: number;
}

/** What a period's use costs, without fixed charges. */
export function periodBill({ steps, also_perKL }: Tariff, use_kL: number): number {
  const priced = steps.reduce((sum, { fromKL, perKL }, k) => {
    const to_kL = Math.min(use_kL, steps[k + 1]?.fromKL ?? Number.POSITIVE_INFINITY);
    return sum + Math.max(0, to_kL - fromKL) * perKL;
  }, 0);
  return priced + use_kL * also_perKL;
}

/**
 * What a year's mains water costs. Where twelve months hold whole periods these run from January, each with its own
 * use; other periods share the year's use evenly.
 * @param monthly_kL mains water of gardens, tanks and leaks by calendar month
 */
export function yearBill(tariff: Tariff, monthly_kL: readonly number[]): number {
  const { periodMonths, otherUse_kL_year } = tariff;
  const periods = 12 / periodMonths;
  if (!Number.isInteger(periods)) {
    const year_kL = monthly_kL.reduce((sum, kL) => sum + kL, otherUse_kL_year);
    return periods * periodBill(tariff, year_kL / periods);
  }
  let bill = 0;
  for (let from = 0; from < 12; from += periodMonths) {
    let use_kL = otherUse_kL_year / periods;
    for (let month = from; month < from + periodMonths; month++) use_kL += monthly_kL[month]!;
    bill += periodBill(tariff, use_kL);
  }
  return bill;
}

/** What a year's saving is worth: the whole bill before less the whole bill after, so the top step goes first. */
export function savedMoney(
  tariff: Tariff,
  before_kL: readonly number[],
  after_kL: readonly number[],
): number {
  return yearBill(tariff, before_kL) - yearBill(tariff, after_kL);
}
