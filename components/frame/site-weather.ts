import type { Survey } from "../../src/survey/survey.ts";
import type { SiteState } from "../kept/answers.ts";
import { Answered, NotReached } from "../kept/sites-api.ts";
import { LookUpRefused, type PlaceFacts, weatherOfPlace } from "./lookups.ts";
import type { ToldFault, WeatherOf } from "./work/messages.ts";

/** The weather that a site is worked out on, or why there is none. */
export type SiteWeather =
  | { is: "record"; of: WeatherOf; place: PlaceFacts | null }
  | { is: "own" | "place"; of: WeatherOf; place: PlaceFacts | null }
  | { is: "none"; faults: readonly ToldFault[] };

/** Fetches a site's record once for each time it was put in, and the means of its place where there is none. */
export class WeatherSource {
  readonly #id: string;
  #record: { etag: string; csv: string } | null = null;

  constructor(id: string) {
    this.#id = id;
  }

  /** @throws NotReached */
  async of(survey: Survey, state: SiteState | null): Promise<SiteWeather> {
    if (state?.weather) {
      const csv = await this.#csvOf(state.weather.etag);
      return { is: "record", of: { is: "record", csv }, place: await placeOf(survey).catch(() => null) };
    }
    if (survey.site.normals)
      return {
        is: "own",
        of: { is: "normals", place: null },
        place: await placeOf(survey).catch(() => null),
      };
    try {
      const place = await placeOf(survey);
      return { is: "place", of: { is: "normals", place }, place };
    } catch (error) {
      if (error instanceof LookUpRefused) return { is: "none", faults: error.faults };
      throw error;
    }
  }

  /** Puts a record in. @throws Answered, NotReached */
  put(csv: string, before: string | null): Promise<void> {
    return this.#write({ method: "PUT", body: csv }, before);
  }

  /** Takes the record out. @throws Answered, NotReached */
  takeOut(before: string): Promise<void> {
    return this.#write({ method: "DELETE" }, before);
  }

  async #write(request: RequestInit, before: string | null): Promise<void> {
    const headers: Record<string, string> = { "Content-Type": "text/csv; charset=utf-8" };
    if (before !== null) headers["If-Match"] = `"${before}"`;
    const answer = await reached(fetch(this.#address, { ...request, headers }));
    if (answer.ok) return;
    const { detail = "", faults = [] } = await answer.json();
    throw new Answered({ status: answer.status, detail, faults });
  }

  async #csvOf(etag: string): Promise<string> {
    if (this.#record?.etag === etag) return this.#record.csv;
    const answer = await reached(fetch(this.#address));
    if (!answer.ok) throw new NotReached();
    const csv = await answer.text();
    this.#record = { etag, csv };
    return csv;
  }

  get #address(): string {
    return `/api/sites/${encodeURIComponent(this.#id)}/weather`;
  }
}

function placeOf({ site }: Survey): Promise<PlaceFacts> {
  return weatherOfPlace(site.latitude, site.longitude, site.elevation_m);
}

async function reached(coming: Promise<Response>): Promise<Response> {
  try {
    return await coming;
  } catch {
    throw new NotReached();
  }
}
