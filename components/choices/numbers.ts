/** An amount as somebody writes it: "$1,250", "1 250.50"; null where blank, undefined where it is no number. */
export function readAmount(text: string): number | null | undefined {
  const bare = text
    .replace(/[\s,'’]/g, "")
    .replace(/^\p{Sc}|\p{Sc}$/gu, "")
    .replace(/%$/, "");
  if (bare === "") return null;
  return /^-?(\d+\.?\d*|\.\d+)$/.test(bare) ? Number(bare) : undefined;
}
