import { formatIso, parseIso } from "../../engine/weather/dates.ts";
import type { Survey } from "../../survey/survey.ts";
import { countEntries } from "./log.ts";
import type { Store } from "./open.ts";
import { type SiteRow, siteRow, versionSurvey } from "./sites.ts";
import { afterOf, nextOf } from "./surveys.ts";

/** A site as it stands, without its past. */
export interface SiteState {
  row: SiteRow;
  survey: Survey;
  savedAt: string;
  words: string;
  draft: { savedAt: string; survey: unknown } | null;
  /** What undo would take back, and redo would bring again; null for nothing. */
  undo: string | null;
  redo: string | null;
  versions: number;
  weather: { savedAt: string; from: string; to: string; days: number } | null;
  entries: number;
}

/** @throws NoSuchSite */
export function siteState(store: Store, id: string): SiteState {
  return store.db.transaction(() => {
    const row = siteRow(store, id);
    const { saved_at, words } = versionLine(store, id, row.current);
    const next = nextOf(store, row);
    const count = store.db
      .prepare<[string], { n: number }>("SELECT count(*) AS n FROM version WHERE site = ?")
      .get(id)!;
    return {
      row,
      survey: versionSurvey(store, id, row.current),
      savedAt: saved_at,
      words,
      draft: row.draft === null ? null : { savedAt: row.draft_at!, survey: JSON.parse(row.draft) },
      undo: afterOf(store, row) === null ? null : words,
      redo: next === null ? null : versionLine(store, id, next).words,
      versions: count.n,
      weather: weatherOf(row),
      entries: countEntries(store, id),
    };
  })();
}

interface VersionLine {
  number: number;
  after: number | null;
  saved_at: string;
  words: string;
}

function versionLine({ db }: Store, id: string, number: number): VersionLine {
  return db
    .prepare<[string, number], VersionLine>(
      "SELECT number, after, saved_at, words FROM version WHERE site = ? AND number = ?",
    )
    .get(id, number)!;
}

/** A site's versions without their surveys, newest first. */
export function versionLines(store: Store, id: string): VersionLine[] {
  siteRow(store, id);
  return store.db
    .prepare<[string], VersionLine>(
      "SELECT number, after, saved_at, words FROM version WHERE site = ? ORDER BY number DESC",
    )
    .all(id);
}

function weatherOf({ weather_at, weather_from, weather_days }: SiteRow): SiteState["weather"] {
  if (weather_at === null || weather_from === null || weather_days === null) return null;
  const to = formatIso(parseIso(weather_from)! + weather_days - 1);
  return { savedAt: weather_at, from: weather_from, to, days: weather_days };
}
