import { sumWords } from "../words/en/explain.ts";
import { type Claim, partName } from "./claims.ts";
import { dayAt, elsewhere, type Figure, lasting } from "./figure.ts";
import type { Input, Part, Sheet } from "./sheet.ts";

/** What a claim asks its tank for on day i, with the working that it comes from. */
export function claimAsks(figure: Figure, claim: Claim, i: number): Part {
  const { run, address } = figure;
  const when = dayAt(figure, i);
  const name = partName(run, claim.kind, claim.id);
  const part = (what: string, runName: typeof address.run): Part => ({
    ...elsewhere(claim.asks_L[i]!, { run: runName, subject: claim.kind, id: claim.id, what, when }),
    name,
  });
  if (claim.kind === "draw") return part("asks", lasting(address.run));
  if (claim.outstanding_L !== null) return part("asks", address.run);
  const isHabit = run.name === "today" && claim.asks_L !== run.beds[claim.k]!.needByDay_L;
  return part(isHabit ? "habit" : "need", lasting(address.run));
}

/** Steps of what a claim gets: what its tank has left when its turn comes. */
export function getsSteps(
  figure: Figure,
  i: number,
  sheet: Sheet,
  { claim, tank, before }: { claim: Claim; tank: number; before: readonly Claim[] },
  asks: Input,
): void {
  const { group } = figure.run.ready.tanks[tank]!;
  const yield_L = figure.run.site.tanks[tank]!.series.yield_L[i]!;
  const parts = before.map((other) => claimAsks(figure, other, i));
  const asked_L = parts.reduce((sum, { value }) => sum + value, 0);
  const askedBefore = sheet.sum("askedBefore", sumWords.servedBefore, parts, asked_L);
  const given = elsewhere(yield_L, {
    run: figure.address.run,
    subject: "tank",
    id: group.id,
    what: "yield",
    when: dayAt(figure, i),
  });
  sheet.step("gets", { asks, yield: given, askedBefore }, claim.gets_L[i]!);
}
