import type { SurveyNormals } from "../../src/survey/survey.ts";
import { NotReached } from "../kept/sites-api.ts";
import type { PlaceWeather, ToldFault } from "./work/messages.ts";

/** A place by name, as the server's list has it. */
export interface FoundPlace {
  name: string;
  region: string | null;
  country: string;
  latitude: number;
  longitude: number;
  timeZone: string;
  closeness: number;
}

/** The server answered that it cannot, with the reasons. */
export class LookUpRefused extends Error {
  override name = "LookUpRefused";
  readonly faults: readonly ToldFault[];
  constructor(faults: readonly ToldFault[]) {
    super(faults[0]?.sentence ?? "");
    this.faults = faults;
  }
}

/** Places whose names are near what was typed, best first. @throws LookUpRefused, NotReached */
export async function findPlaces(typed: string, signal?: AbortSignal): Promise<FoundPlace[]> {
  const answer = await ask<{ places: FoundPlace[] }>("/api/places", { q: typed }, signal);
  return answer.places;
}

interface NormalsAnswer {
  normals: SurveyNormals;
  guesses: {
    elevation_m: { value: number };
    coastal: { value: boolean };
    timeZone: { value: string };
  };
  limits: string[];
}

export interface PlaceFacts extends PlaceWeather {
  timeZone: string;
}

const known = new Map<string, Promise<PlaceFacts>>();

/** Monthly means of a place and good guesses about it; asked for once each. @throws LookUpRefused, NotReached */
export function weatherOfPlace(
  latitude: number,
  longitude: number,
  elevation_m?: number,
): Promise<PlaceFacts> {
  const asked: Record<string, string> = { latitude: String(latitude), longitude: String(longitude) };
  if (elevation_m !== undefined) asked.elevation_m = String(elevation_m);
  const key = JSON.stringify(asked);
  const kept = known.get(key);
  if (kept) return kept;
  const coming = ask<NormalsAnswer>("/api/normals", asked).then(({ normals, guesses, limits }) => ({
    normals,
    guesses: { elevation_m: guesses.elevation_m.value, coastal: guesses.coastal.value },
    timeZone: guesses.timeZone.value,
    limits,
  }));
  known.set(key, coming);
  coming.catch(() => known.delete(key));
  return coming;
}

async function ask<T>(path: string, query: Record<string, string>, signal?: AbortSignal): Promise<T> {
  let answer: Response;
  let read: T & { detail?: string; faults?: ToldFault[] };
  try {
    answer = await fetch(`${path}?${new URLSearchParams(query)}`, signal ? { signal } : {});
    read = await answer.json();
  } catch (error) {
    if (signal?.aborted) throw error;
    throw new NotReached();
  }
  if (answer.ok) return read;
  const faults = read.faults ?? [];
  throw new LookUpRefused(faults.length > 0 ? faults : [{ path: "", sentence: read.detail ?? "" }]);
}
