const wholeNumbers = new Intl.NumberFormat("en");

/** A whole number as English writes it: 75,000. */
export function count(n: number): string {
  return wholeNumbers.format(n);
}
