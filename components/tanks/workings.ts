import type { Given, Working } from "../../src/explain/working.ts";
import type { TanksView } from "../../src/report/tanks-view.ts";
import { tanks } from "../../src/words/en/tanks.ts";
import { type Formatter, NBSP } from "../../src/words/format.ts";

const words = tanks.working;

interface Part {
  name: string;
  litres: number;
  at: string;
}

/** Workings of the page's own sums; each number in them opens at the engine's own. */
export function tanksWorkings(view: TanksView, say: Formatter): Map<string, Working> {
  const exact = (litres: number) => `${say.litresBare(litres)}${NBSP}${say.volumeSymbol}`;
  const sum = (title: string, formula: string, parts: readonly Part[]): Working => ({
    title,
    steps: [{ formula, withNumbers: "", result: exact(parts.reduce((all, { litres }) => all + litres, 0)) }],
    given: parts.map(
      ({ name, litres, at }): Given => ({ name, text: exact(litres), provenance: "worked-out", at }),
    ),
    sources: [],
    provenance: "worked-out",
  });
  const ofTanks = (title: string, what: string, litres: (tank: TanksView["tanks"][number]) => number) =>
    sum(
      title,
      words.sum,
      view.tanks.map((tank) => ({ name: tank.name, litres: litres(tank), at: `tank/${tank.id}/${what}` })),
    );
  const claims = view.tanks.flatMap((tank) => tank.claims);
  const given = (kind: "bed" | "draw", title: string) =>
    sum(
      title,
      words.sumClaims,
      claims
        .filter((claim) => claim.kind === kind)
        .map(({ id, name, got_L_year }) => ({ name, litres: got_L_year, at: `${kind}/${id}/gets` })),
    );
  const free = view.roofs.filter(({ tank }) => tank === null);
  const sending = view.roofs.filter(({ tank, idle }) => tank !== null && !idle);
  return new Map([
    ["all/sent", ofTanks(words.sent, "inflow", ({ inflow_L_year }) => inflow_L_year)],
    ["all/given", ofTanks(words.given, "yield", ({ yield_L_year }) => yield_L_year)],
    ["all/spilled", ofTanks(words.spilled, "spill", ({ spill_L_year }) => spill_L_year)],
    ["all/draws", given("draw", words.draws)],
    ["all/beds", given("bed", words.beds)],
    [
      "all/flush",
      sum(
        words.flush,
        words.sumRoofs,
        sending.map(({ id, name, firstFlush_L_year }) => ({
          name,
          litres: firstFlush_L_year,
          at: `roof/${id}/inflow`,
        })),
      ),
    ],
    [
      "all/could",
      sum(
        words.could,
        words.sumRoofs,
        free.map(({ id, name, sends_L_year }) => ({ name, litres: sends_L_year, at: `roof/${id}/inflow` })),
      ),
    ],
  ]);
}
