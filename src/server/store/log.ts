import type { LogEntry } from "../../survey/schema/log.ts";
import type { Store } from "./open.ts";

type EntryRow = { [Field in keyof Required<LogEntry>]: LogEntry[Field] | null };

/** A site's log, in the order it was written. */
export function logEntries({ db }: Store, site: string): LogEntry[] {
  const rows = db
    .prepare<[string], EntryRow>(
      `SELECT date, kind, id, minutes, litres, rain_mm, days, level_L, "group"
       FROM log_entry WHERE site = ? ORDER BY row`,
    )
    .all(site);
  return rows.map((row) => {
    const there = Object.entries(row).filter(([, value]) => value !== null);
    return Object.fromEntries(there) as LogEntry;
  });
}

export function countEntries({ db }: Store, site: string): number {
  return db.prepare<[string], { n: number }>("SELECT count(*) AS n FROM log_entry WHERE site = ?").get(site)!
    .n;
}

/** Adds entries at the end, within the caller's transaction. */
export function insertEntries({ db }: Store, site: string, entries: readonly LogEntry[]): void {
  const insert = db.prepare(
    `INSERT INTO log_entry (site, date, kind, id, minutes, litres, rain_mm, days, level_L, "group")
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
  );
  for (const { date, kind, id, minutes, litres, rain_mm, days, level_L, group } of entries)
    insert.run(
      site,
      date,
      kind,
      id ?? null,
      minutes ?? null,
      litres ?? null,
      rain_mm ?? null,
      days ?? null,
      level_L ?? null,
      group ?? null,
    );
}

/** Takes every entry out, within the caller's transaction. */
export function removeEntries({ db }: Store, site: string): void {
  db.prepare("DELETE FROM log_entry WHERE site = ?").run(site);
}
