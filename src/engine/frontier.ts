import type { MeasureSet } from "./varied.ts";

/** Up to this many measures every set is valued, so that what is found is the best there is. */
export const mostProven = 15;

export interface Choices {
  /** What each measure costs to do. */
  costs: readonly number[];
  /** Pairs of measures that exclude each other. */
  apart: readonly (readonly [number, number])[];
}

export interface Step {
  set: MeasureSet;
  cost: number;
  value: number;
}

export interface Frontier {
  /** The best set from each budget on, dearer and better at each step; the first costs nothing. */
  steps: Step[];
  /** Every set was valued. Else one measure after another was taken, the best for its cost first. */
  proven: boolean;
}

/** Less than this share of a value is no difference: two ways of adding the same litres. */
const same = 1e-9;

/**
 * The best set of measures for every budget from nothing to all.
 * @param value of a set done together, never a sum of its measures' own
 */
export function frontierOf(choices: Choices, value: (set: MeasureSet) => number): Frontier {
  const proven = choices.costs.length <= mostProven;
  const sets = proven ? everySet(choices, value) : oneByOne(choices, value);
  return { steps: undominated(sets), proven };
}

/** The dearest step that a budget pays for. */
export function bestFor(steps: readonly Step[], budget: number): Step {
  return steps.findLast(({ cost }) => cost <= budget + 1e-9) ?? steps[0]!;
}

/** Values all sets whose measures do not exclude each other. */
function everySet({ costs, apart }: Choices, value: (set: MeasureSet) => number): Step[] {
  const steps: Step[] = [];
  const set = new Uint8Array(costs.length);
  const excluded = costs.map((_, i) => apart.flatMap(([a, b]) => (a === i ? b : b === i ? a : [])));
  const visit = (place: number, cost: number): void => {
    if (place === costs.length) {
      steps.push({ set: set.slice(), cost, value: value(set) });
      return;
    }
    visit(place + 1, cost);
    if (excluded[place]!.some((other) => other < place && set[other] === 1)) return;
    set[place] = 1;
    visit(place + 1, cost + costs[place]!);
    set[place] = 0;
  };
  visit(0, 0);
  return steps;
}

/** Takes the measure that adds most for its cost, again and again, and values each set on the way and beside it. */
function oneByOne({ costs, apart }: Choices, value: (set: MeasureSet) => number): Step[] {
  const set = new Uint8Array(costs.length);
  let now: Step = { set: set.slice(), cost: 0, value: value(set) };
  const steps = [now];
  for (;;) {
    const next = costs.flatMap((cost, place): Step[] => {
      if (set[place] === 1 || apart.some(([a, b]) => isApart(set, place, a, b))) return [];
      const tried = set.slice();
      tried[place] = 1;
      return [{ set: tried, cost: now.cost + cost, value: value(tried) }];
    });
    steps.push(...next);
    const gain = (step: Step) => (step.value - now.value) / Math.max(step.cost - now.cost, 1e-9);
    const best = next.reduce<Step | null>((a, b) => (a && gain(a) >= gain(b) ? a : b), null);
    if (!best || best.value <= now.value) return steps;
    set.set(best.set);
    now = best;
  }
}

function isApart(set: MeasureSet, place: number, a: number, b: number): boolean {
  return (a === place && set[b] === 1) || (b === place && set[a] === 1);
}

/** Sets that no other beats at their cost or less; of equal ones the one with fewer measures, then the earlier. */
function undominated(sets: readonly Step[]): Step[] {
  const size = ({ set }: Step) => set.reduce((sum, one) => sum + one, 0);
  const largest = sets.reduce((most, { value }) => Math.max(most, Math.abs(value)), 0);
  const inOrder = [...sets].sort((a, b) => a.cost - b.cost);
  const steps: Step[] = [];
  for (const step of inOrder) {
    const last = steps.at(-1);
    const gain = last ? step.value - last.value : Number.POSITIVE_INFINITY;
    if (gain <= -same * largest) continue;
    if (gain <= same * largest) {
      if (last && step.cost === last.cost && size(step) < size(last)) steps[steps.length - 1] = step;
      continue;
    }
    if (last && step.cost === last.cost) steps.pop();
    steps.push(step);
  }
  return steps;
}
