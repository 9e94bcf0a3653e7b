import { type FlowLimit, finishBound_min, type Job, type Packing } from "./packing.ts";
import { searchAll } from "./packing-exact.ts";
import { packMany } from "./packing-many.ts";
import { minutesOfDay } from "./site.ts";

/** Beds up to which the best round is searched for among all. */
export const mostSearched = 10;

export interface PackedDay {
  packing: Packing;
  jobs: readonly Job[];
  /** Whether no round of these jobs is cheaper. */
  proven: boolean;
  /** A finish that none can be earlier than. */
  bound_min: number;
  /** Ids of beds that did not fit, the last in the order first. */
  left: readonly string[];
  help: PackingHelp | null;
}

/** What would let the beds that fell out fit. */
export interface PackingHelp {
  /** Minutes beyond the day's hours that all beds would take; null where no longer day would do. */
  more_min: number | null;
  /** The tap or line that is busiest; null where no flow stands in the way. */
  busiest: string | null;
}

/**
 * Packs a day's waterings into its hours, no tap or line beyond its flow: earliest finish, then fewest hoses moved,
 * then fewest metres. Where not all fit, the last in the order fall out until the rest does.
 * @param jobs the first in the order first
 */
export function packDay(jobs: readonly Job[], limits: readonly FlowLimit[]): PackedDay {
  const possible = jobs.filter(
    (job) => Number.isFinite(finishBound_min([job], limits)) && fitsAlone(job, limits),
  );
  const left = jobs
    .filter((job) => !possible.includes(job))
    .map(({ id }) => id)
    .reverse();
  const kept = [...possible];
  for (;;) {
    const packed = packAll(kept, limits);
    if (packed) {
      const help = left.length > 0 ? helpFor(jobs, limits) : null;
      return { ...packed, jobs: kept, bound_min: finishBound_min(kept, limits), left, help };
    }
    left.push(kept.pop()!.id);
  }
}

function packAll(
  jobs: readonly Job[],
  limits: readonly FlowLimit[],
): { packing: Packing; proven: boolean } | null {
  if (jobs.length === 0)
    return { packing: { runs: [], cost: { finish_min: 0, hoseMoves: 0, walk_m: 0 } }, proven: true };
  const quick = packMany(jobs, limits);
  if (jobs.length > mostSearched) return quick && { packing: quick, proven: false };
  const { packing, proven } = searchAll(jobs, limits, quick);
  return packing && { packing, proven };
}

function fitsAlone(job: Job, limits: readonly FlowLimit[]): boolean {
  return packMany([job], limits) !== null;
}

/** The same jobs with their last hours drawn out to midnight and beyond. */
function helpFor(jobs: readonly Job[], limits: readonly FlowLimit[]): PackingHelp {
  const longer = jobs.map((job) => {
    const last = job.stretches[job.stretches.length - 1];
    const stretches = last
      ? [...job.stretches.slice(0, -1), { from: last.from, to: last.to + minutesOfDay }]
      : [{ from: 0, to: 2 * minutesOfDay }];
    return { ...job, stretches };
  });
  const packed = packMany(longer, limits);
  const close = Math.max(0, ...jobs.flatMap(({ stretches }) => stretches.map(({ to }) => to)));
  const loads = limits.map(({ id, flow_L_min }, use) => {
    const litres = jobs
      .filter(({ uses }) => uses.includes(use))
      .reduce((sum, job) => sum + job.flow_L_min * job.runs_min.reduce((a, b) => a + b, 0), 0);
    return { id, minutes: litres / flow_L_min };
  });
  const busiest = loads.reduce<{ id: string; minutes: number } | null>(
    (most, next) => (!most || next.minutes > most.minutes ? next : most),
    null,
  );
  return {
    more_min: packed && Math.max(0, packed.cost.finish_min - close),
    busiest: busiest && busiest.minutes > 0 ? busiest.id : null,
  };
}
