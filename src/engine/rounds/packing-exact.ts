import {
  distance_m,
  type FlowLimit,
  finishBound_min,
  isCheaper,
  type Job,
  type Packing,
  type PackingCost,
  PackingDraft,
} from "./packing.ts";

/** Steps after which the search gives up its proof. */
const mostSteps = 400_000;

export interface Searched {
  packing: Packing | null;
  /** Whether nothing cheaper exists. */
  proven: boolean;
}

/**
 * The cheapest round among all that are worked down in time order, each run as early as its turn lets it, by branch
 * and bound. Such rounds hold every schedule in which no run could begin earlier, and so the earliest finish of all.
 * @param known a round to better, if there is one
 */
export function searchAll(
  jobs: readonly Job[],
  limits: readonly FlowLimit[],
  known: Packing | null,
): Searched {
  const draft = new PackingDraft(jobs, limits);
  const bound_min = finishBound_min(jobs, limits);
  const seen = new Map<string, PackingCost[]>();
  const nearest_m = jobs.map((job) =>
    Math.min(
      ...jobs
        .filter((other) => other !== job && other.byHand)
        .map((other) => distance_m(job.at_m, other.at_m)),
    ),
  );
  let best = known;
  let steps = 0;

  const canBetter = (): boolean => {
    if (!best) return true;
    const { finish_min, hoseMoves, walk_m } = leastCost(draft, bound_min, nearest_m);
    return isCheaper({ finish_min, hoseMoves, walk_m }, best.cost);
  };

  const visit = (): void => {
    if (steps++ > mostSteps) return;
    if (draft.isComplete) {
      if (!best || isCheaper(draft.cost, best.cost)) best = draft.packing();
      return;
    }
    if (!canBetter() || isDominated(draft, seen)) return;
    for (const { job, start } of nextRuns(draft)) {
      const undo = draft.add(job, start);
      visit();
      undo();
    }
  };
  visit();
  return { packing: best, proven: steps <= mostSteps };
}

/** Every run that may come next in time order, the earliest and nearest first. */
function nextRuns(draft: PackingDraft): { job: number; start: number }[] {
  const next = draft.jobs.flatMap((_, job) => {
    if (draft.isDone(job)) return [];
    const start = draft.earliest(job);
    return start === null ? [] : [{ job, start }];
  });
  // A timer on water of its own binds nobody: where it may begin first, it does.
  const free = next.find(
    ({ job, start }) =>
      !draft.jobs[job]!.byHand &&
      draft.jobs[job]!.uses.length === 0 &&
      next.every((other) => other.start >= start),
  );
  if (free) return [free];
  const steps = (job: number) => distance_m(draft.place, draft.jobs[job]!.at_m);
  return next.sort((a, b) => a.start - b.start || steps(a.job) - steps(b.job));
}

/** What the rest must cost at least. */
function leastCost(draft: PackingDraft, bound_min: number, nearest_m: readonly number[]): PackingCost {
  let finish_min = Math.max(bound_min, draft.finish_min, ...supplyBounds_min(draft));
  let { hoseMoves, walk_m } = draft;
  draft.jobs.forEach((job, k) => {
    if (draft.isDone(k)) return;
    const ready = draft.done[k]! > 0 ? draft.lastEnd_min[k]! + job.soak_min : 0;
    finish_min = Math.max(finish_min, Math.max(draft.lastStart_min, ready) + restOf_min(draft, k));
    if (job.hoseOf !== null && draft.hoseAt[job.hoseOf] !== k) hoseMoves++;
    const isFirst = draft.place === null;
    if (job.byHand && draft.done[k] === 0 && !isFirst)
      walk_m += Math.min(nearest_m[k]!, distance_m(draft.place, job.at_m));
  });
  return { finish_min, hoseMoves, walk_m };
}

/** Minutes from a job's next start to its end. */
function restOf_min({ jobs, done }: PackingDraft, k: number): number {
  const { runs_min, soak_min } = jobs[k]!;
  let sum = (runs_min.length - done[k]! - 1) * soak_min;
  for (let run = done[k]!; run < runs_min.length; run++) sum += runs_min[run]!;
  return sum;
}

/** When each supply could have let out what is still to come, from the last start on. */
function supplyBounds_min(draft: PackingDraft): number[] {
  const { jobs, done, lastStart_min, lastEnd_min } = draft;
  return draft.limits.map(({ flow_L_min }, use) => {
    let litres = 0;
    let isOpen = false;
    jobs.forEach(({ runs_min, uses, flow_L_min: flow }, k) => {
      if (!uses.includes(use)) return;
      litres += flow * Math.max(0, lastEnd_min[k]! - lastStart_min);
      if (done[k]! < runs_min.length) isOpen = true;
      for (let run = done[k]!; run < runs_min.length; run++) litres += flow * runs_min[run]!;
    });
    return isOpen ? lastStart_min + Math.ceil(litres / flow_L_min - 1e-9) : 0;
  });
}

/** Whether a draft that stands exactly so was met before at no greater cost; else it is noted. */
function isDominated(draft: PackingDraft, seen: Map<string, PackingCost[]>): boolean {
  const ready = draft.jobs.map((job, k) => {
    if (draft.isDone(k) || draft.done[k] === 0) return "";
    return Math.max(draft.lastStart_min, draft.lastEnd_min[k]! + job.soak_min);
  });
  const running = draft.runs
    .filter(({ to_min }) => to_min > draft.lastStart_min)
    .map(({ job, from_min, to_min }) => `${job}:${Math.max(from_min, draft.lastStart_min)}-${to_min}`)
    .sort();
  const place = draft.place === null ? "" : draft.place.join();
  const key = [
    draft.done.join(),
    ready.join("/"),
    running.join(),
    draft.lastStart_min,
    place,
    draft.hoseAt.join(),
  ].join(";");
  const { cost } = draft;
  const met = seen.get(key);
  if (met?.some((other) => other.finish_min <= cost.finish_min && !isLessAfter(cost, other))) return true;
  if (met) met.push(cost);
  else seen.set(key, [cost]);
  return false;
}

/** Whether a cost is below another in what comes after the finish. */
function isLessAfter(a: PackingCost, b: PackingCost): boolean {
  return a.hoseMoves < b.hoseMoves || (a.hoseMoves === b.hoseMoves && a.walk_m < b.walk_m - 1e-9);
}
