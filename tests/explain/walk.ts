import { expect } from "vitest";
import { isAddress, parseAddress } from "../../src/explain/address.ts";
import { explain } from "../../src/explain/explain.ts";
import type { Say } from "../../src/explain/say.ts";
import type { Given, Step, Working } from "../../src/explain/working.ts";
import type { WorkedOut } from "../../src/report/work-out.ts";
import { evaluate } from "./evaluate.ts";

/** Within 1e-9 of the figure, or of 1 where it is small. */
export function isSame(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(other));
}

export interface Walk {
  /** Every address that was opened. */
  opened: Map<string, Working>;
  /** What was found wrong, one line each. */
  faults: string[];
}

/**
 * Opens every address that can be reached from some, each once. Of days, those asked for are followed further, one
 * of each 61 others is opened, and the rest are only read.
 */
export function walk(worked: WorkedOut, say: Say, from: readonly string[], days: ReadonlySet<number>): Walk {
  const opened = new Map<string, Working>();
  const faults: string[] = [];
  const queue = [...from];
  const met = new Map<string, Working | null>();
  const open = (address: string): Working | null => {
    if (!met.has(address)) met.set(address, isAddress(address) ? explain(worked, address, say) : null);
    return met.get(address)!;
  };
  for (const next of queue) {
    if (opened.has(next)) continue;
    const working = open(next);
    if (!working) {
      faults.push(`${next} leads nowhere`);
      continue;
    }
    opened.set(next, working);
    faults.push(...faultsOf(next, working));
    const when = parseAddress(next)!.when;
    if (when.kind === "day" && !days.has(when.day)) continue;
    for (const { at, value, name } of working.given) {
      if (at === undefined) continue;
      const link = parseAddress(at);
      if (!link) faults.push(`${next}: ${at} is no address`);
      if (link?.when.kind === "day" && !days.has(link.when.day) && link.when.day % 61 > 0) continue;
      const below = open(at);
      if (below && value !== undefined && !isSame(value, below.value!))
        faults.push(`${next}: ${name} is ${value}, and ${at} gives ${below.value}`);
      if (!opened.has(at)) queue.push(at);
    }
  }
  return { opened, faults };
}

/** What is wrong with a working by itself. */
export function faultsOf(address: string, working: Working): string[] {
  const faults: string[] = [];
  if (working.at !== address) faults.push(`${address}: says that it is ${working.at}`);
  if (working.steps.length === 0) faults.push(`${address}: has no step`);
  if (!isSame(working.value!, working.steps.at(-1)!.value!)) faults.push(`${address}: is not its last step`);
  for (const given of working.given) faults.push(...faultsOfGiven(address, given));
  for (const step of working.steps) faults.push(...faultsOfStep(address, step));
  return faults;
}

function faultsOfGiven(address: string, given: Given): string[] {
  const faults: string[] = [];
  if (given.at === undefined && !given.source)
    faults.push(`${address}: ${given.name} has neither source nor address`);
  if (given.provenance === "worked-out" && given.at === undefined && !given.source)
    faults.push(`${address}: ${given.name} is worked out, and nothing says how`);
  if (/NaN|undefined|∞|Infinity/.test(`${given.name}${given.text}${given.source ?? ""}`))
    faults.push(`${address}: ${given.name}: ${given.text} (${given.source})`);
  return faults;
}

function faultsOfStep(address: string, step: Step): string[] {
  const faults: string[] = [];
  if (!step.expression || step.value === undefined || !step.unit)
    return [`${address}: ${step.formula} has no numbers`];
  const value = evaluate(step.expression);
  if (!isSame(value, step.value))
    faults.push(`${address}: ${step.formula} gives ${value}, the engine ${step.value}`);
  if (
    /NaN|undefined|∞|Infinity|[{}]/.test(
      `${step.formula}${step.withNumbers}${step.result}${step.words ?? ""}`,
    )
  )
    faults.push(`${address}: ${step.formula} = ${step.withNumbers} = ${step.result}`);
  return faults;
}

export function expectClean({ faults }: Walk): void {
  expect(faults.slice(0, 20)).toEqual([]);
}
