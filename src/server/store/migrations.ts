import type { Database } from "better-sqlite3";

/**
 * One step a version of the file, never changed once it was used: step 1 makes version 1 of nothing, step n
 * makes version n of version n − 1.
 */
export const steps: readonly string[] = [
  `CREATE TABLE site (
     id TEXT PRIMARY KEY,
     created_at TEXT NOT NULL,
     changed_at TEXT NOT NULL,
     deleted_at TEXT,
     current INTEGER NOT NULL,
     tag TEXT NOT NULL,
     draft TEXT,
     draft_at TEXT,
     weather TEXT,
     weather_at TEXT,
     weather_from TEXT,
     weather_days INTEGER,
     weather_tag TEXT NOT NULL,
     log_tag TEXT NOT NULL
   ) STRICT;

   CREATE TABLE version (
     row INTEGER PRIMARY KEY,
     site TEXT NOT NULL REFERENCES site (id) ON DELETE CASCADE,
     number INTEGER NOT NULL,
     after INTEGER,
     saved_at TEXT NOT NULL,
     words TEXT NOT NULL,
     name TEXT NOT NULL,
     survey BLOB NOT NULL,
     UNIQUE (site, number)
   ) STRICT;

   CREATE TABLE log_entry (
     row INTEGER PRIMARY KEY,
     site TEXT NOT NULL REFERENCES site (id) ON DELETE CASCADE,
     date TEXT NOT NULL,
     kind TEXT NOT NULL,
     id TEXT,
     minutes REAL,
     litres REAL,
     rain_mm REAL,
     days INTEGER,
     level_L REAL,
     "group" TEXT
   ) STRICT;
   CREATE INDEX log_entry_of_site ON log_entry (site, row);

   CREATE TABLE done (
     key TEXT PRIMARY KEY,
     site TEXT NOT NULL,
     at TEXT NOT NULL
   ) STRICT;`,
];

/** Marks the file as one of this program's: "GrWB" in ASCII. */
export const applicationId = 0x47725742;

/** The version of the file that this program writes. */
export const fileVersion = steps.length;

/**
 * Brings a file to the newest version, each step whole or not at all.
 * @param all the steps, this program's unless a test brings its own
 */
export function migrate(db: Database, all: readonly string[] = steps): void {
  const version = () => Number(db.pragma("user_version", { simple: true }));
  for (let at = version(); at < all.length; at++) {
    db.transaction(() => {
      // Another program may have opened the file at the same moment, and gone first.
      if (version() > at) return;
      db.exec(all[at]!);
      db.pragma(`application_id = ${applicationId}`);
      db.pragma(`user_version = ${at + 1}`);
    }).immediate();
  }
}
