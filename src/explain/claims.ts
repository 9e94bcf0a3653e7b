import { slot, wanted_mm } from "../engine/bed-day.ts";
import type { ReadyBed } from "../engine/prepare.ts";
import { newDraw_L, standsOut_L } from "../engine/tank-run.ts";
import { drawByDay_L } from "../engine/tanks.ts";
import { grossFromNet_L } from "../engine/watering.ts";
import type { Address } from "./address.ts";
import type { Book, History, RunBook } from "./book.ts";

/** Something that asks a tank for water, in the order in which a short day serves it. */
export interface Claim {
  kind: "bed" | "draw";
  id: string;
  /** Place among the ready beds; −1 of a draw. */
  k: number;
  asks_L: Float64Array;
  gets_L: Float64Array;
  /** What the tank cannot give comes from the mains; else it is not given. */
  restFromMains: boolean;
  /** What of each day's request was not asked for before; the request itself but for beds on a tank alone. */
  newDraw_L: Float64Array;
  /** Stands out at the end of each day; of beds on a tank alone. */
  outstanding_L: Float64Array | null;
}

/** Those that ask a tank, by the place of its group, with what each got. */
export function claimsOn(book: Book, run: RunBook, k: number): Claim[] {
  return book.once(`claims ${run.name} ${k}`, () => {
    const tank = run.ready.tanks[k]!;
    const { before_L, beds_L, after_L } = run.site.shares![k]!;
    const drawn = (draws: typeof tank.before, got_L: readonly Float64Array[]) =>
      draws.map(({ draw, asks_L }, place) =>
        known({ kind: "draw", id: draw.id, k: -1, asks_L, gets_L: got_L[place]!, restFromMains: true }),
      );
    return [
      ...drawn(tank.before, before_L),
      ...tank.beds.map((bed, place) => bedClaim(book, run, bed, beds_L[place]!)),
      ...drawn(tank.after, after_L),
    ];
  });
}

function known(claim: Omit<Claim, "newDraw_L" | "outstanding_L">): Claim {
  return { ...claim, newDraw_L: claim.asks_L, outstanding_L: null };
}

/** What a bed asks for on a day: its habit, or its need. */
export function asksByDay_L(run: RunBook, k: number): Float64Array {
  const { habit_L } = run.ready.beds[k]!;
  return run.name === "today" && habit_L ? habit_L : run.beds[k]!.needByDay_L;
}

function bedClaim(book: Book, run: RunBook, bed: ReadyBed, gets_L: Float64Array): Claim {
  const k = run.ready.beds.indexOf(bed);
  const { id, watering } = bed.grown.bed;
  const history = watering.supply === "tank-only" ? book.history(run.name, k) : null;
  const isHabit = run.name === "today" && bed.habit_L !== null;
  const restFromMains = watering.supply !== "tank-only";
  if (!history || isHabit)
    return known({ kind: "bed", id, k, asks_L: asksByDay_L(run, k), gets_L, restFromMains });
  return thirstyClaim(bed, k, history);
}

/** A bed on a tank alone asks by its soil, which feels what it did not get. */
function thirstyClaim({ grown, open }: ReadyBed, k: number, { days, got_L }: History): Claim {
  const { bed, trigger_mm, mostNet_mm } = grown;
  const gross = (net_mm: number) => grossFromNet_L(net_mm, bed.area_m2, bed.watering.efficiency);
  const asks_L = got_L.map((_, i) => {
    const before_mm = i > 0 ? days.rootDepletion_mm[i - 1]! : days.start[slot.rootDepletion]!;
    return open[i] ? gross(wanted_mm(before_mm, trigger_mm, mostNet_mm)) : 0;
  });
  const fresh_L = new Float64Array(got_L.length);
  const outstanding_L = new Float64Array(got_L.length);
  let out_L = 0;
  for (let i = 0; i < got_L.length; i++) {
    fresh_L[i] = newDraw_L(asks_L[i]!, out_L);
    out_L = standsOut_L(out_L, asks_L[i]!, got_L[i]!, gross(days.rootDepletion_mm[i]!));
    outstanding_L[i] = out_L;
  }
  return {
    kind: "bed",
    id: bed.id,
    k,
    asks_L,
    gets_L: got_L,
    restFromMains: false,
    newDraw_L: fresh_L,
    outstanding_L,
  };
}

/** A part of the site's mains water: its days, and where its working stands. */
export interface MainsPart {
  name: string;
  byDay_L: Float64Array;
  address: Pick<Address, "run" | "subject" | "id" | "what">;
}

/** What mains water goes to: beds, draws that a tank is short of, top-up, leaks. Nothing that never takes any. */
export function mainsParts(book: Book, run: RunBook, leaksName: string): MainsPart[] {
  return book.once(`mains ${run.name}`, () => {
    const { ready, survey, site } = run;
    const part = (
      subject: Address["subject"],
      id: string,
      what: string,
      name: string,
      byDay_L: Float64Array,
    ) => ({
      name,
      byDay_L,
      address: { run: run.name, subject, id, what },
    });
    const parts = ready.beds.flatMap((bed, k) => {
      const byDay_L = bedMains_L(book, run, k);
      return byDay_L
        ? [part("bed", bed.grown.bed.id, "mains", partName(run, "bed", bed.grown.bed.id), byDay_L)]
        : [];
    });
    ready.tanks.forEach(({ group }, k) => {
      for (const claim of claimsOn(book, run, k))
        if (claim.kind === "draw")
          parts.push(part("draw", claim.id, "mains", partName(run, "draw", claim.id), shortBy_L(claim)));
      if (group.topUp)
        parts.push(
          part("tank", group.id, "topup", partName(run, "tank", group.id), site.tanks[k]!.series.topUp_L),
        );
    });
    for (const draw of ready.grounds.mainsDraws ?? [])
      parts.push(
        part(
          "draw",
          draw.id,
          "mains",
          partName(run, "draw", draw.id),
          drawByDay_L(draw, ready.weather, ready.frame.absent),
        ),
      );
    if ((survey.leaks ?? []).length > 0) {
      const days = site.mains_L.length;
      parts.push(
        part("leaks", "", "leaks", leaksName, new Float64Array(days).fill(ready.grounds.leaks_L_day)),
      );
    }
    return parts;
  });
}

/** Mains water of a bed by day; null where it never takes any. */
export function bedMains_L(book: Book, run: RunBook, k: number): Float64Array | null {
  const { supply, tank } = run.ready.beds[k]!.grown.bed.watering;
  if (supply === "mains-only") return asksByDay_L(run, k);
  if (supply !== "tank-then-mains" || tank === null) return null;
  return book.once(`mains ${run.name} ${k}`, () => shortBy_L(claimOf(book, run, k)!.claim));
}

function shortBy_L({ asks_L, gets_L }: Claim): Float64Array {
  return asks_L.map((asks, i) => asks - gets_L[i]!);
}

/** A bed's claim on its tank, with the claims served before it. */
export function claimOf(
  book: Book,
  run: RunBook,
  k: number,
): { claim: Claim; tank: number; before: Claim[] } | null {
  return findClaim(book, run, (claim) => claim.kind === "bed" && claim.k === k);
}

/** A draw's claim on its tank; null for one that is not on a tank. */
export function drawClaim(
  book: Book,
  run: RunBook,
  id: string,
): { claim: Claim; tank: number; before: Claim[] } | null {
  return findClaim(book, run, (claim) => claim.kind === "draw" && claim.id === id);
}

function findClaim(book: Book, run: RunBook, isIt: (claim: Claim) => boolean) {
  for (let tank = 0; tank < run.ready.tanks.length; tank++) {
    const claims = claimsOn(book, run, tank);
    const place = claims.findIndex(isIt);
    if (place >= 0) return { claim: claims[place]!, tank, before: claims.slice(0, place) };
  }
  return null;
}

/** What a bed, tank, roof or draw is called in the survey. */
export function partName({ survey }: RunBook, subject: Address["subject"], id: string): string {
  const added = (survey.measures ?? []).flatMap(({ addDraw }) => (addDraw ? [addDraw] : []));
  const draws = [...(survey.draws ?? []), ...added];
  const lists = { bed: survey.beds, tank: survey.tanks, roof: survey.roofs, draw: draws };
  const list = Object.hasOwn(lists, subject) ? lists[subject as keyof typeof lists] : [];
  return list.find((thing) => thing.id === id)?.name ?? id;
}
