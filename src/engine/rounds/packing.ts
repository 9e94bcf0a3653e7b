import type { Stretch } from "./stretches.ts";

/** A bed's watering of a day, to be given a time. Minutes are whole. */
export interface Job {
  id: string;
  /** Its runs in order; between two lies the soak. */
  runs_min: readonly number[];
  soak_min: number;
  flow_L_min: number;
  /** Taps and lines whose flow it takes, as places among the supplies; none for water of its own. */
  uses: readonly number[];
  /** Somebody walks there to turn it on. */
  byHand: boolean;
  /** The tap whose hose has to be brought to it; null where nothing is moved. */
  hoseOf: number | null;
  at_m: readonly [number, number] | null;
  /** When it may run, in order. */
  stretches: readonly Stretch[];
}

/** A tap, or a line that taps share. */
export interface FlowLimit {
  id: string;
  flow_L_min: number;
}

/** One run with its time, minutes from midnight. */
export interface PackedRun {
  job: number;
  run: number;
  from_min: number;
  to_min: number;
}

/** What a day's round costs, in the order in which it is kept small. */
export interface PackingCost {
  finish_min: number;
  hoseMoves: number;
  walk_m: number;
}

/** A round worked down in time order: each run begins as early as its turn in the list lets it. */
export interface Packing {
  runs: readonly PackedRun[];
  cost: PackingCost;
}

const tiny = 1e-9;

export function isCheaper(a: PackingCost, b: PackingCost): boolean {
  if (a.finish_min !== b.finish_min) return a.finish_min < b.finish_min;
  if (a.hoseMoves !== b.hoseMoves) return a.hoseMoves < b.hoseMoves;
  return a.walk_m < b.walk_m - tiny;
}

/** Metres between two places; 0 where one is not known. */
export function distance_m(a: Job["at_m"], b: Job["at_m"]): number {
  return a === null || b === null ? 0 : Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** A round while it is built, run by run. */
export class PackingDraft {
  readonly jobs: readonly Job[];
  readonly limits: readonly FlowLimit[];
  readonly runs: PackedRun[] = [];
  /** Runs done of each job. */
  readonly done: number[];
  finish_min = 0;
  hoseMoves = 0;
  walk_m = 0;
  lastStart_min = 0;
  /** Where the keeper stands. */
  place: Job["at_m"] = null;
  /** The bed that each tap's hose lies at; −1 for none yet. */
  readonly hoseAt: number[];
  /** When each job's last run ends. */
  readonly lastEnd_min: number[];
  readonly #runsOf: PackedRun[][];

  constructor(jobs: readonly Job[], limits: readonly FlowLimit[]) {
    this.jobs = jobs;
    this.limits = limits;
    this.done = jobs.map(() => 0);
    this.hoseAt = limits.map(() => -1);
    this.lastEnd_min = jobs.map(() => 0);
    this.#runsOf = limits.map(() => []);
  }

  get cost(): PackingCost {
    return { finish_min: this.finish_min, hoseMoves: this.hoseMoves, walk_m: this.walk_m };
  }

  isDone(job: number): boolean {
    return this.done[job]! === this.jobs[job]!.runs_min.length;
  }

  get isComplete(): boolean {
    return this.jobs.every((_, job) => this.isDone(job));
  }

  /** The earliest minute, not before the last run's start, at which a job's next run fits; null where none does. */
  earliest(job: number): number | null {
    const { runs_min, soak_min, stretches, uses, flow_L_min } = this.jobs[job]!;
    const run = this.done[job]!;
    const length = runs_min[run]!;
    const ready = Math.max(this.lastStart_min, run > 0 ? this.lastEnd_min[job]! + soak_min : 0);
    for (const { from, to } of stretches) {
      let start: number | null = Math.max(from, ready);
      while (start !== null && start + length <= to) {
        if (this.#fits(uses, flow_L_min, start, start + length)) return start;
        start = this.#nextEnd(uses, start);
      }
    }
    return null;
  }

  /** The first end of a run on any of the supplies after a minute. */
  #nextEnd(uses: readonly number[], after: number): number | null {
    let next = Number.POSITIVE_INFINITY;
    for (const use of uses)
      for (const { to_min } of this.#runsOf[use]!) if (to_min > after && to_min < next) next = to_min;
    return Number.isFinite(next) ? next : null;
  }

  #fits(uses: readonly number[], flow: number, from: number, to: number): boolean {
    for (const use of uses) {
      const most = this.limits[use]!.flow_L_min + tiny;
      const rivals = this.#runsOf[use]!;
      if (flow + this.#flowAt(rivals, from) > most) return false;
      for (const { from_min } of rivals)
        if (from_min > from && from_min < to && flow + this.#flowAt(rivals, from_min) > most) return false;
    }
    return true;
  }

  #flowAt(rivals: readonly PackedRun[], at: number): number {
    let sum = 0;
    for (const { job, from_min, to_min } of rivals)
      if (from_min <= at && at < to_min) sum += this.jobs[job]!.flow_L_min;
    return sum;
  }

  /** Adds a job's next run; returns what undoes it. */
  add(job: number, from_min: number): () => void {
    const { runs_min, byHand, hoseOf, at_m, uses } = this.jobs[job]!;
    const endWas = this.lastEnd_min[job]!;
    const { finish_min, hoseMoves, walk_m, lastStart_min, place } = this;
    const hoseWas = hoseOf === null ? -1 : this.hoseAt[hoseOf]!;
    const to_min = from_min + runs_min[this.done[job]!]!;
    const packed = { job, run: this.done[job]!, from_min, to_min };
    this.runs.push(packed);
    for (const use of uses) this.#runsOf[use]!.push(packed);
    this.lastEnd_min[job] = to_min;
    this.done[job]!++;
    this.finish_min = Math.max(finish_min, to_min);
    this.lastStart_min = from_min;
    if (byHand) {
      this.walk_m += distance_m(place, at_m);
      this.place = at_m ?? place;
    }
    if (hoseOf !== null && hoseWas !== job) {
      this.hoseMoves++;
      this.hoseAt[hoseOf] = job;
    }
    return () => {
      this.runs.pop();
      for (const use of uses) this.#runsOf[use]!.pop();
      this.lastEnd_min[job] = endWas;
      this.done[job]!--;
      this.finish_min = finish_min;
      this.hoseMoves = hoseMoves;
      this.walk_m = walk_m;
      this.lastStart_min = lastStart_min;
      this.place = place;
      if (hoseOf !== null) this.hoseAt[hoseOf] = hoseWas;
    };
  }

  packing(): Packing {
    return { runs: [...this.runs], cost: this.cost };
  }
}

/**
 * A finish that no round can be earlier than: each job's runs and soaks from its first open minute, and the water
 * of each tap or line at its full flow from the first minute at which any of its jobs may begin.
 */
export function finishBound_min(jobs: readonly Job[], limits: readonly FlowLimit[]): number {
  const alone = jobs.map((job) => soonestAlone_min(job));
  const shared = limits.map(({ flow_L_min }, use) => {
    const mine = jobs.filter(({ uses }) => uses.includes(use));
    const litres = mine.reduce((sum, job) => sum + minutesOf(job) * job.flow_L_min, 0);
    const start = Math.min(...mine.map(({ stretches }) => stretches[0]?.from ?? 0));
    const together = mine.some((a) =>
      mine.some((b) => a !== b && a.flow_L_min + b.flow_L_min <= flow_L_min + tiny),
    );
    const inTurn = mine.reduce((sum, job) => sum + minutesOf(job), 0);
    return mine.length === 0 ? 0 : start + (together ? Math.ceil(litres / flow_L_min - tiny) : inTurn);
  });
  return Math.max(0, ...alone, ...shared);
}

function minutesOf({ runs_min }: Job): number {
  return runs_min.reduce((sum, minutes) => sum + minutes, 0);
}

/** When a job alone would be done. */
function soonestAlone_min(job: Job): number {
  const alone = new PackingDraft([{ ...job, uses: [], hoseOf: null }], []);
  for (let run = 0; run < job.runs_min.length; run++) {
    const start = alone.earliest(0);
    if (start === null) return alone.finish_min;
    alone.add(0, start);
  }
  return alone.finish_min;
}
