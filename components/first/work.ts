import type { FirstOutcome } from "../../src/report/first-answer.ts";
import type { FirstEntries, FirstPlace } from "../../src/survey/first/entries.ts";
import { LookUpRefused, weatherOfPlace } from "../frame/lookups.ts";
import type { Compute } from "../frame/work/compute.ts";

/**
 * Works the entries out beside the page, surer each time.
 * @param standIn the place that serves until one is said
 * @returns null where later entries overtook these
 * @throws NotReached
 */
export async function workFirst(
  compute: Compute,
  entries: FirstEntries,
  standIn: FirstPlace | undefined,
  each: (outcome: FirstOutcome) => void,
): Promise<{ outcome: FirstOutcome } | { faults: readonly string[] } | null> {
  const place = entries.place ?? standIn;
  if (!place) return null;
  try {
    const { normals, guesses, limits } = await weatherOfPlace(
      place.latitude,
      place.longitude,
      place.elevation_m,
    );
    const told = await compute.follow(
      { kind: "first", entries, place, weather: { normals, guesses, limits } },
      (now) => {
        if ("outcome" in now) each(now.outcome);
      },
    );
    if (told === null || "outcome" in told) return told;
    return { faults: told.faults.map(({ sentence }) => sentence) };
  } catch (error) {
    if (error instanceof LookUpRefused) return { faults: error.faults.map(({ sentence }) => sentence) };
    throw error;
  }
}
