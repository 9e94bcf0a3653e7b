/** What something costs to have and to keep. */
export interface Outlay {
  /** Each part with its own life; it is bought again when that ends. */
  lines: readonly { cost: number; life_years: number }[];
  /** Takes off the first purchase. */
  grant: number;
  upkeepPerYear: number;
}

/** Real rates, shares a year. */
export interface Outlook {
  discountShare: number;
  /** Rise of the price of water above inflation. */
  riseShare: number;
  horizon_years: number;
}

export const noOutlay: Outlay = { lines: [], grant: 0, upkeepPerYear: 0 };

/** What is paid on day one; a grant never pays more than that. */
export function capital({ lines, grant }: Outlay): number {
  return Math.max(0, total(lines) - grant);
}

export function joinOutlays(outlays: readonly Outlay[]): Outlay {
  return {
    lines: outlays.flatMap(({ lines }) => lines),
    grant: outlays.reduce((sum, { lines, grant }) => sum + Math.min(grant, total(lines)), 0),
    upkeepPerYear: outlays.reduce((sum, { upkeepPerYear }) => sum + upkeepPerYear, 0),
  };
}

function total(lines: Outlay["lines"]): number {
  return lines.reduce((sum, { cost }) => sum + cost, 0);
}

/** Present value of 1 a year for a number of years, at each year's end. @source Fuller and Petersen 1996, uniform present value */
export function annuity(discountShare: number, years: number): number {
  return discountShare === 0 ? years : (1 - (1 + discountShare) ** -years) / discountShare;
}

/** Yearly sum that pays a capital of 1 back over its life. @source Fuller and Petersen 1996, uniform capital recovery */
export function capitalRecovery(discountShare: number, years: number): number {
  return 1 / annuity(discountShare, years);
}

/** Present value of flows, the first today and each next a year later. */
export function presentValue(flows: readonly number[], rate: number): number {
  return flows.reduceRight((later, flow) => flow + later / (1 + rate), 0);
}

/**
 * What is paid (below zero) and saved in each year, today first. Parts are bought again at the end of the year in which
 * their life ends, within the horizon; nothing is put down for what is left at its end.
 * @param saved money saved in the first year
 */
export function flowsOf(outlay: Outlay, saved: number, outlook: Outlook): number[] {
  const { riseShare, horizon_years } = outlook;
  const flows = [-capital(outlay)];
  for (let year = 1; year <= horizon_years; year++)
    flows.push(saved * (1 + riseShare) ** (year - 1) - outlay.upkeepPerYear);
  for (const { cost, life_years } of outlay.lines)
    for (let bought = 1; Math.ceil(bought * life_years) < horizon_years; bought++)
      flows[Math.ceil(bought * life_years)]! -= cost;
  return flows;
}

/** Present value of savings less costs. @param saved money saved in the first year */
export function netPresentValue(outlay: Outlay, saved: number, outlook: Outlook): number {
  return presentValue(flowsOf(outlay, saved, outlook), outlook.discountShare);
}

/** Present value of all that is paid over the horizon. */
function presentCost(outlay: Outlay, outlook: Outlook): number {
  return -netPresentValue(outlay, 0, outlook);
}

/** Present value over the horizon of saving 1 in the first year. */
function presentSaving(outlook: Outlook): number {
  return netPresentValue(noOutlay, 1, outlook);
}

/** The discount rate at which flows are worth nothing; null where there is none between −90 % and 1,000 %. */
export function rateOfReturn(flows: readonly number[]): number | null {
  let low = -0.9;
  let high = 10;
  if (presentValue(flows, low) <= 0 || presentValue(flows, high) >= 0) return null;
  for (let halving = 0; halving < 80; halving++) {
    const middle = (low + high) / 2;
    if (presentValue(flows, middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Years until the first year's saving, upkeep taken off, has paid the capital back; null where it never does. */
export function simplePayback(outlay: Outlay, saved: number): number | null {
  const gain = saved - outlay.upkeepPerYear;
  if (capital(outlay) === 0) return gain >= 0 ? 0 : null;
  return gain > 0 ? capital(outlay) / gain : null;
}

/** Years until the discounted flows have paid the capital back, linear within a year; null where not in the horizon. */
export function discountedPayback(outlay: Outlay, saved: number, outlook: Outlook): number | null {
  const flows = flowsOf(outlay, saved, outlook);
  let worth = flows[0]!;
  if (worth >= 0) return saved >= outlay.upkeepPerYear ? 0 : null;
  for (let year = 1; year < flows.length; year++) {
    const gain = flows[year]! / (1 + outlook.discountShare) ** year;
    if (worth + gain >= 0) return year - 1 - worth / gain;
    worth += gain;
  }
  return null;
}

/**
 * Yearly cost over yearly saving; null where nothing is saved.
 * @source levelized cost: capital × capital recovery factor + upkeep, over the yearly output; each line over its life
 */
export function costPerKL(outlay: Outlay, saved_kL_year: number, discountShare: number): number | null {
  if (saved_kL_year <= 0) return null;
  const { lines, upkeepPerYear } = outlay;
  const yearly = lines.reduce(
    (sum, { cost, life_years }) => sum + cost * capitalRecovery(discountShare, life_years),
    0,
  );
  const longest = Math.max(0, ...lines.map(({ life_years }) => life_years));
  const granted = Math.min(outlay.grant, total(lines));
  const off = granted > 0 ? granted * capitalRecovery(discountShare, longest) : 0;
  return (Math.max(0, yearly - off) + upkeepPerYear) / saved_kL_year;
}

/** Price of a kL from which it pays over the horizon, were the price the same at every step; null where nothing is saved. */
export function breakEvenPerKL(outlay: Outlay, saved_kL_year: number, outlook: Outlook): number | null {
  if (saved_kL_year <= 0) return null;
  return presentCost(outlay, outlook) / (saved_kL_year * presentSaving(outlook));
}

/** The dearest quote, all lines in proportion, at which it still pays over the horizon; null where no quote would. */
export function breakEvenQuote(outlay: Outlay, saved: number, outlook: Outlook): number | null {
  const quoted = total(outlay.lines);
  if (quoted === 0) return null;
  const lines = presentCost({ ...noOutlay, lines: outlay.lines }, outlook);
  const upkeep = presentCost({ ...noOutlay, upkeepPerYear: outlay.upkeepPerYear }, outlook);
  const left = saved * presentSaving(outlook) - upkeep + Math.min(outlay.grant, quoted);
  return left > 0 ? (quoted * left) / lines : null;
}
