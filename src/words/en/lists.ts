const either = new Intl.ListFormat("en", { type: "disjunction" });
const both = new Intl.ListFormat("en", { type: "conjunction" });

/** drip, spray, or none */
export function oneOf(words: readonly string[]): string {
  return either.format(words);
}

/** drip, spray, and none */
export function allOf(words: readonly string[]): string {
  return both.format(words);
}
