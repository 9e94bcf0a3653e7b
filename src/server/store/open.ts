import { mkdirSync } from "node:fs";
import { join } from "node:path";
import Sqlite, { type Database } from "better-sqlite3";
import { storeWords } from "../../words/en/store.ts";
import { applicationId, fileVersion, migrate } from "./migrations.ts";

/** What the store asks of the world about it. */
export interface Surroundings {
  /** The time now. */
  now(): Date;
  /** A word that was never given before: letters and digits. */
  freshWord(): string;
}

/** An open store: its file, and the world about it. */
export interface Store extends Surroundings {
  db: Database;
}

/** Why the file cannot be used, as a sentence that says what to do. */
export class CannotOpenStore extends Error {
  override name = "CannotOpenStore";
}

/** How long a write waits for another program that is writing. */
const patience_ms = 5_000;

/** The one file of a data folder. */
export function storeFile(folder: string): string {
  return join(folder, "grounds.sqlite");
}

/**
 * Opens the file of a data folder, made where it is missing, and brings it to the newest version.
 * @throws CannotOpenStore
 */
export function openStore(folder: string, surroundings: Surroundings): Store {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    throw new CannotOpenStore(storeWords.noFolder(folder, codeOf(error)));
  }
  return { ...surroundings, db: openFile(storeFile(folder)) };
}

/**
 * Opens a file of this program's, made where it is missing. What is written is on the disk before the write
 * returns: WAL, synchronous FULL.
 * @throws CannotOpenStore where it is of another program, of a newer version, or damaged
 */
export function openFile(path: string): Database {
  let db: Database | undefined;
  try {
    db = new Sqlite(path, { timeout: patience_ms });
    checkOurs(db, path);
    db.pragma("journal_mode = WAL");
    db.pragma("synchronous = FULL");
    db.pragma("foreign_keys = ON");
    migrate(db);
    return db;
  } catch (error) {
    db?.close();
    if (error instanceof CannotOpenStore) throw error;
    throw new CannotOpenStore(storeWords.cannotOpen(path, codeOf(error)));
  }
}

/** Whether the file is empty, or ours and of a version known here, and whole. */
export function checkOurs(db: Database, path: string): void {
  const objects = db.prepare<[], { n: number }>("SELECT count(*) AS n FROM sqlite_schema").get()!.n;
  if (objects === 0) return;
  if (db.pragma("application_id", { simple: true }) !== applicationId)
    throw new CannotOpenStore(storeWords.notOurs(path));
  const version = Number(db.pragma("user_version", { simple: true }));
  if (version > fileVersion) throw new CannotOpenStore(storeWords.newer(path, version, fileVersion));
  if (db.pragma("quick_check(1)", { simple: true }) !== "ok")
    throw new CannotOpenStore(storeWords.damaged(path));
}

export function codeOf(error: unknown): string {
  return String((error as { code?: unknown }).code ?? (error as Error).message);
}
