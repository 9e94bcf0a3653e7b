import { randomStream } from "../weather/rng.ts";
import { distance_m, type FlowLimit, isCheaper, type Job, type Packing, PackingDraft } from "./packing.ts";

/** Runs placed at most while an order is bettered: so much time, whatever the number of beds. */
const placed = 9_000;
const seed = 7;

/**
 * A good round of any length: a few plain orders, the best of them bettered by moving beds within it. The same
 * jobs always give the same round.
 * @returns null where some bed fits nowhere in any order tried
 */
export function packMany(jobs: readonly Job[], limits: readonly FlowLimit[]): Packing | null {
  const length = (k: number) => {
    const { runs_min, soak_min } = jobs[k]!;
    return runs_min.reduce((sum, minutes) => sum + minutes + soak_min, 0);
  };
  const places = jobs.map((_, k) => k);
  const close = (k: number) => Math.max(0, ...jobs[k]!.stretches.map(({ to }) => to));
  const orders = [
    [...places].sort((a, b) => length(b) - length(a) || a - b),
    [...places].sort((a, b) => close(a) - close(b) || length(b) - length(a) || a - b),
    walkingOrder(jobs),
    places,
  ];
  let best: { order: number[]; packing: Packing } | null = null;
  for (const order of orders) {
    const packing = packInOrder(jobs, limits, order);
    if (packing && (!best || isCheaper(packing.cost, best.packing.cost))) best = { order, packing };
  }
  const random = randomStream(seed, 0);
  const runs = jobs.reduce((sum, { runs_min }) => sum + runs_min.length, 0);
  for (let turn = 0; turn < placed / runs && turn < 400 && jobs.length > 1; turn++) {
    const order = [...(best?.order ?? orders[0]!)];
    const [moved] = order.splice(Math.floor(random.uniform() * order.length), 1);
    order.splice(Math.floor(random.uniform() * (order.length + 1)), 0, moved!);
    const packing = packInOrder(jobs, limits, order);
    if (packing && (!best || isCheaper(packing.cost, best.packing.cost))) best = { order, packing };
  }
  return best?.packing ?? null;
}

/** From bed to nearest bed. */
function walkingOrder(jobs: readonly Job[]): number[] {
  const left = new Set(jobs.keys());
  const order: number[] = [];
  let at: Job["at_m"] = null;
  while (left.size > 0) {
    let next = -1;
    for (const k of left)
      if (next < 0 || distance_m(at, jobs[k]!.at_m) < distance_m(at, jobs[next]!.at_m)) next = k;
    order.push(next);
    left.delete(next);
    at = jobs[next]!.at_m ?? at;
  }
  return order;
}

/** Whatever can begin first goes first; of runs that can begin together the one whose hose lies there, then by the order. */
function packInOrder(
  jobs: readonly Job[],
  limits: readonly FlowLimit[],
  order: readonly number[],
): Packing | null {
  const draft = new PackingDraft(jobs, limits);
  const known = new Map<number, number>();
  while (!draft.isComplete) {
    let next = -1;
    let soonest = Number.POSITIVE_INFINITY;
    for (const job of order) {
      if (draft.isDone(job)) continue;
      const start = known.get(job) ?? draft.earliest(job);
      if (start === null) return null;
      known.set(job, start);
      const { hoseOf } = jobs[job]!;
      const isThere = hoseOf !== null && draft.hoseAt[hoseOf] === job;
      if (start < soonest || (start === soonest && isThere)) {
        next = job;
        soonest = start;
      }
    }
    draft.add(next, soonest);
    for (const job of order)
      if (job === next || jobs[job]!.uses.some((use) => jobs[next]!.uses.includes(use))) known.delete(job);
  }
  return draft.packing();
}
