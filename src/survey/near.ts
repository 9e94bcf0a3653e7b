/** The known name that is written most like the one found: within a third of its letters; null for none. */
export function nearest(found: string, known: readonly string[]): string | null {
  if (found.length > 64) return null;
  const plain = found.toLowerCase();
  let best: { name: string; steps: number } | null = null;
  for (const name of known) {
    const steps = name.toLowerCase().startsWith(`${plain}_`) ? 0 : editSteps(plain, name.toLowerCase());
    if (steps <= Math.max(1, Math.floor(name.length / 3)) && (!best || steps < best.steps))
      best = { name, steps };
  }
  return best?.name ?? null;
}

/** Letters to add, drop or change to get from one word to the other. @source Levenshtein 1966 */
export function editSteps(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const change = row[j - 1]! + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(change, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[to.length]!;
}
