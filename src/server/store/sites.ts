import { formatIso } from "../../engine/weather/dates.ts";
import type { SiteFile } from "../../files/site-document.ts";
import { changesBetween, namesOf } from "../../survey/changes.ts";
import type { Survey } from "../../survey/survey.ts";
import { changesText, changeWords } from "../../words/en/changes.ts";
import { insertEntries } from "./log.ts";
import type { Store } from "./open.ts";
import { packSurvey, unpackSurvey } from "./pack.ts";

/** A row of the table of sites. */
export interface SiteRow {
  id: string;
  created_at: string;
  changed_at: string;
  deleted_at: string | null;
  current: number;
  tag: string;
  draft: string | null;
  draft_at: string | null;
  weather_at: string | null;
  weather_from: string | null;
  weather_days: number | null;
  weather_tag: string;
  log_tag: string;
}

const columns = `id, created_at, changed_at, deleted_at, current, tag, draft, draft_at,
  weather_at, weather_from, weather_days, weather_tag, log_tag`;

export interface SiteLine {
  id: string;
  name: string;
  createdAt: string;
  changedAt: string;
  deletedAt: string | null;
  hasDraft: boolean;
}

/** There is no such site, or it was taken out. */
export class NoSuchSite extends Error {
  override name = "NoSuchSite";
}

/** The site that has not been taken out. @throws NoSuchSite */
export function siteRow(store: Store, id: string): SiteRow {
  const row = anySiteRow(store, id);
  if (row.deleted_at !== null) throw new NoSuchSite();
  return row;
}

/** The site, taken out or not. @throws NoSuchSite */
export function anySiteRow({ db }: Store, id: string): SiteRow {
  const row = db.prepare<[string], SiteRow>(`SELECT ${columns} FROM site WHERE id = ?`).get(id);
  if (row === undefined) throw new NoSuchSite();
  return row;
}

/** The sites kept, last changed first; or those taken out. */
export function listSites({ db }: Store, takenOut = false): SiteLine[] {
  return db
    .prepare<[], Omit<SiteLine, "hasDraft"> & { draft: number }>(
      `SELECT id, name, created_at AS createdAt, changed_at AS changedAt, deleted_at AS deletedAt,
         draft IS NOT NULL AS draft
       FROM site JOIN version ON version.site = site.id AND version.number = site.current
       WHERE deleted_at IS ${takenOut ? "NOT NULL" : "NULL"} ORDER BY changed_at DESC, id`,
    )
    .all()
    .map(({ draft, ...line }) => ({ ...line, hasDraft: draft === 1 }));
}

/** Keeps a new site, with the versions that its file brings. @returns its id */
export function createSite(store: Store, site: SiteFile, key: string | null = null): string {
  return store.db
    .transaction(() => {
      const done = key === null ? null : doneSite(store, key);
      if (done !== null) return done;
      const id = store.freshWord();
      insertSite(store, id, site);
      if (key !== null) markDone(store, key, id);
      return id;
    })
    .immediate();
}

function insertSite(store: Store, id: string, site: SiteFile): void {
  const now = store.now().toISOString();
  const record = site.weather?.record;
  store.db
    .prepare(
      `INSERT INTO site (id, created_at, changed_at, current, tag, draft, draft_at, weather, weather_at,
         weather_from, weather_days, weather_tag, log_tag)
       VALUES (?, ?, ?, 1, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
    )
    .run(
      id,
      now,
      now,
      store.freshWord(),
      site.draft && JSON.stringify(site.draft.survey),
      site.draft?.savedAt ?? null,
      site.weather?.csv ?? null,
      site.weather && now,
      record ? formatIso(record.firstDay) : null,
      record?.days ?? null,
      store.freshWord(),
      store.freshWord(),
    );
  for (const version of site.versions) insertVersion(store, id, version);
  const current = site.current ?? addCurrent(store, id, site, now);
  store.db.prepare("UPDATE site SET current = ? WHERE id = ?").run(current, id);
  insertEntries(store, id, site.log);
}

/** The survey of a file without versions, or that is none of them, is a version more. */
function addCurrent(store: Store, id: string, { survey, versions }: SiteFile, now: string): number {
  const { beds, roofs, tanks } = survey;
  const last = versions.at(-1);
  const words = last
    ? changesText(changesBetween(last.survey, survey), namesOf(survey))
    : changeWords.started(beds.length, roofs.length, tanks.length);
  return insertVersion(store, id, { savedAt: now, words, after: last ? versions.length : null, survey });
}

/** Adds a version at the end. @returns its number */
export function insertVersion(
  { db }: Store,
  site: string,
  version: { savedAt: string; words: string; after: number | null; survey: Survey },
): number {
  const { savedAt, words, after, survey } = version;
  const row = db
    .prepare<unknown[], { number: number }>(
      `INSERT INTO version (site, number, after, saved_at, words, name, survey)
       VALUES (?, (SELECT coalesce(max(number), 0) + 1 FROM version WHERE site = ?), ?, ?, ?, ?, ?)
       RETURNING number`,
    )
    .get(site, site, after, savedAt, words, survey.site.name, packSurvey(survey))!;
  return row.number;
}

/** The survey of a version. @throws NoSuchSite where there is no such version */
export function versionSurvey({ db }: Store, site: string, number: number): Survey {
  const row = db
    .prepare<[string, number], { survey: Buffer }>("SELECT survey FROM version WHERE site = ? AND number = ?")
    .get(site, number);
  if (row === undefined) throw new NoSuchSite();
  return unpackSurvey(row.survey);
}

/** Takes a site out: it is kept, and can be brought back. */
export function takeOut(store: Store, id: string): void {
  siteRow(store, id);
  store.db.prepare("UPDATE site SET deleted_at = ? WHERE id = ?").run(store.now().toISOString(), id);
}

export function bringBack(store: Store, id: string): void {
  anySiteRow(store, id);
  store.db.prepare("UPDATE site SET deleted_at = NULL WHERE id = ?").run(id);
}

/** Removes for good a site that was taken out. @returns false where it was not taken out first */
export function erase(store: Store, id: string): boolean {
  if (anySiteRow(store, id).deleted_at === null) return false;
  store.db.prepare("DELETE FROM site WHERE id = ?").run(id);
  return true;
}

/** The site that a request of this key was carried out on; null for a new key. */
export function doneSite({ db }: Store, key: string): string | null {
  return db.prepare<[string], { site: string }>("SELECT site FROM done WHERE key = ?").get(key)?.site ?? null;
}

const keysKept_days = 90;

/** Remembers that a request was carried out, so that it is not when it is sent again. */
export function markDone(store: Store, key: string, site: string): void {
  const now = store.now();
  const oldest = new Date(now.getTime() - keysKept_days * 86_400_000);
  store.db.prepare("DELETE FROM done WHERE at < ?").run(oldest.toISOString());
  store.db.prepare("INSERT INTO done (key, site, at) VALUES (?, ?, ?)").run(key, site, now.toISOString());
}
