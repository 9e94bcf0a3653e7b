import type * as z from "zod";
import { writeLog } from "../../files/log.ts";
import { siteFormat, type siteSchema, siteVersion } from "../../survey/schema/site-document.ts";
import { logEntries } from "./log.ts";
import type { Store } from "./open.ts";
import { unpackSurvey } from "./pack.ts";
import { weatherText } from "./records.ts";
import { siteRow, versionSurvey } from "./sites.ts";

export type SiteDocument = z.infer<typeof siteSchema>;

interface VersionRow {
  number: number;
  after: number | null;
  saved_at: string;
  words: string;
  survey: Buffer;
}

/**
 * A whole site as its document.
 * @param room_bytes for the versions: the newest that fit are in it, how many older ones are not is said
 */
export function siteDocument(store: Store, id: string, room_bytes: number): SiteDocument {
  return store.db.transaction(() => {
    const row = siteRow(store, id);
    const survey = versionSurvey(store, id, row.current);
    const { versions, first } = newestVersions(store, id, room_bytes);
    const entries = logEntries(store, id);
    const number = row.current - first + 1;
    return {
      format: siteFormat,
      version: siteVersion,
      survey,
      weather: weatherText(store, id),
      log: entries.length === 0 ? null : writeLog(entries),
      versions,
      ...(number >= 1 ? { current: number } : {}),
      ...(first > 1 ? { versionsLeftOut: first - 1 } : {}),
      ...(row.draft === null
        ? {}
        : { draft: { savedAt: row.draft_at!, survey: JSON.parse(row.draft) as Record<string, unknown> } }),
    } as SiteDocument;
  })();
}

/** The newest versions that fit, oldest first, and the number of the first of them; one at least. */
function newestVersions({ db }: Store, id: string, room_bytes: number) {
  const rows = db
    .prepare<[string], VersionRow>(
      "SELECT number, after, saved_at, words, survey FROM version WHERE site = ? ORDER BY number DESC",
    )
    .iterate(id);
  const taken: VersionRow[] = [];
  const surveys: SiteDocument["versions"] = [];
  let room = room_bytes;
  let first = 1;
  for (const row of rows) {
    const survey = unpackSurvey(row.survey);
    room -= Buffer.byteLength(JSON.stringify(survey)) + Buffer.byteLength(row.words) + 100;
    if (room < 0 && taken.length > 0) break;
    first = row.number;
    taken.push(row);
    surveys.push({ savedAt: row.saved_at, words: row.words, survey });
  }
  const versions = surveys
    .map((version, i) => {
      const { number, after } = taken[i]!;
      const isNext = after === number - 1 || after === null || after < first;
      return isNext ? version : { ...version, after: after - first + 1 };
    })
    .reverse();
  return { versions, first };
}
