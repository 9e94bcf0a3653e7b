import type { GroundsChoices } from "../../../src/report/choices-schema.ts";
import { choicesPlates } from "../../../src/words/en/choices-plates.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { ChartTable } from "../chart.ts";
import { unitOf, yearlyIn } from "../size-curve/prepare.ts";

export interface Part {
  id: string;
  name: string;
  share_kL: number;
  first_kL: number;
  last_kL: number;
  standardError_kL: number | null;
  /** Where its piece of the bar begins, and how long it is; 0 where it takes more water than it saves. */
  from_kL: number;
  length_kL: number;
}

export interface Parts {
  parts: readonly Part[];
  /** What the plan saves: the shares' sum. */
  total_kL: number;
}

/** What each member of the plan brings, the largest first. */
export function prepareShares(shares: GroundsChoices["shares"], name: (id: string) => string): Parts {
  const sorted = [...shares].sort((a, b) => b.share_kL_year - a.share_kL_year);
  let from = 0;
  const parts = sorted.map((row): Part => {
    const length = Math.max(0, row.share_kL_year);
    const part = {
      id: row.id,
      name: name(row.id),
      share_kL: row.share_kL_year,
      first_kL: row.first_kL_year,
      last_kL: row.last_kL_year,
      standardError_kL: row.standardError_kL,
      from_kL: from,
      length_kL: length,
    };
    from += length;
    return part;
  });
  return { parts, total_kL: sorted.reduce((sum, row) => sum + row.share_kL_year, 0) };
}

export function sharesFinding({ parts, total_kL }: Parts, say: Formatter): string {
  const [first] = parts;
  const { finding, none } = choicesPlates.shares;
  if (!first || total_kL <= 0 || first.share_kL <= 0) return none;
  return finding(first.name, say.yearlyBare(Math.min(first.share_kL, total_kL)), say.yearly(total_kL));
}

export function shareReadings({ parts, total_kL }: Parts, say: Formatter): string[] {
  return parts.map(({ name, share_kL, first_kL, last_kL }) =>
    choicesPlates.shares.reading({
      name,
      share: say.yearly(share_kL),
      part: say.share(total_kL > 0 ? share_kL / total_kL : 0),
      first: say.yearly(first_kL),
      last: say.yearly(last_kL),
    }),
  );
}

export function sharesTable({ parts }: Parts, say: Formatter): ChartTable {
  const show = (value: number) => say.number(value, say.system === "us" ? 0 : 1);
  const water = (kL: number) => yearlyIn(kL, say);
  return {
    columns: choicesPlates.shares.columns.map((name, k) =>
      k === 0 ? { name } : { name: `${name}, ${unitOf(say)}`, show },
    ),
    rows: parts.map((part) => [
      part.name,
      water(part.share_kL),
      water(part.first_kL),
      water(part.last_kL),
      part.standardError_kL === null ? "" : water(part.standardError_kL),
    ]),
  };
}
