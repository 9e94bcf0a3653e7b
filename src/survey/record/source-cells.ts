/** Numbers as files write them, and the marks that stand for a missing one. */

/** Texts that mean "not recorded". */
const missingTexts = new Set(
  "na n/a nan null none nil nd n.d. - -- --- . .. ... ? * m miss missing x #n/a #na #value! inf -inf \\n".split(
    " ",
  ),
);

/**
 * Numbers that archives write where nothing was recorded. They count as missing only in a column where they
 * cannot be a value, or stand far above every other.
 */
export const missingNumbers: ReadonlySet<number> = new Set([
  -99, -99.9, -99.99, -888, -999, -999.9, -999.99, -6999, -7777, -8888, -9999, -9999.9, -99999, 99.9, 99.99,
  999, 999.9, 999.99, 7777, 8888, 9999, 9999.9, 9999.99, 99999, 99999.9, 999999,
]);

export function isMissing(cell: string): boolean {
  return cell === "" || (!endsInDigit(cell) && missingTexts.has(cell.toLowerCase()));
}

/** Marks of a rain too little to measure. */
export function isTrace(cell: string): boolean {
  return !endsInDigit(cell) && /^(t|tr|trace|traces|0?\.?0*t)$/i.test(cell);
}

export function looksNumeric(cell: string): boolean {
  return /^[+-]?(\d[\d.,]*|[.,]\d+)(e[+-]?\d+)?$/i.test(cell);
}

/**
 * A cell's number: point or comma decimals, thousands set apart, a unit or degree sign behind it.
 * @returns NaN where the cell is no number
 */
export function cellNumber(cell: string, decimalComma: boolean): number {
  if (!decimalComma && isPlain(cell)) return Number(cell);
  const bare = endsInDigit(cell)
    ? cell
    : cell.replace(/\s*(°?[cfk]|°|%|mm|cm|in|"|km\/h|m\/s|mph|kt|hpa|kpa|h|min)$/i, "");
  const text = decimalComma
    ? bare.replace(/\.(?=\d{3}(\D|$))/g, "").replace(",", ".")
    : bare.replace(/,(?=\d{3}(\D|$))/g, "");
  return /^[+-−]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text) ? Number(text.replace("−", "-")) : Number.NaN;
}

function endsInDigit(cell: string): boolean {
  const code = cell.charCodeAt(cell.length - 1);
  return code >= 48 && code <= 57;
}

/** Whether a cell is digits with a sign and a point at most: the common case, told without a pattern. */
function isPlain(cell: string): boolean {
  let points = 0;
  for (let at = 0; at < cell.length; at++) {
    const code = cell.charCodeAt(at);
    if (code >= 48 && code <= 57) continue;
    if (code === 46) points += 1;
    else if (code !== 45 || at > 0) return false;
  }
  return points < 2 && cell.length > points + (cell.charCodeAt(0) === 45 ? 1 : 0);
}

/** Whether the numbers of a file have decimal commas: some look so, and none has a decimal point. */
export function hasDecimalCommas(cells: Iterable<string>): boolean {
  let commas = 0;
  let points = 0;
  for (const cell of cells) {
    if (/^[+-]?\d*,\d{1,2}$|^[+-]?0,\d+$|^[+-]?\d*,\d{4,}$/.test(cell)) commas += 1;
    else if (/^[+-]?\d*\.\d+$/.test(cell)) points += 1;
  }
  return commas > 0 && commas > points * 4;
}
