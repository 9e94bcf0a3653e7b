import type { Bed } from "../engine/grounds.ts";
import type { Figure } from "./figure.ts";

/** The bed of a figure, every blank filled. */
export function bedOf({ run, k }: Figure): Bed {
  return run.ready.beds[k]!.grown.bed;
}

/** Where it stands in the survey. */
export function bedPath({ k }: Figure): string {
  return `beds[${k}]`;
}
