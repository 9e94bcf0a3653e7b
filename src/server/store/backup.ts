import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
} from "node:fs";
import { dirname, join, resolve } from "node:path";
import Sqlite, { type Database } from "better-sqlite3";
import { backupWords } from "../../words/en/backup.ts";
import { CannotOpenStore, checkOurs, codeOf, openFile, storeFile } from "./open.ts";

/** Why a backup was not written, or not put in place, as a sentence that says what to do. */
export class CannotBackUp extends Error {
  override name = "CannotBackUp";
}

const allPages = 0x7fff_ffff;

/**
 * Writes what a data folder keeps into one file, while a server may go on: to a neighbour first, checked, then
 * under its name.
 * @returns how many sites it holds
 */
export async function backUp(folder: string, out: string): Promise<number> {
  const file = storeFile(folder);
  if (!existsSync(file)) throw new CannotBackUp(backupWords.nothingKept(file));
  if (existsSync(out) && realpathSync(out) === realpathSync(file))
    throw new CannotBackUp(backupWords.itself(out));
  const part = join(dirname(resolve(out)), `.${process.pid}.part`);
  const db = openFile(file);
  try {
    mkdirSync(dirname(part), { recursive: true });
    await db.backup(part);
    const sites = settle(part);
    renameSync(part, out);
    return sites;
  } catch (error) {
    if (error instanceof CannotOpenStore) throw error;
    throw new CannotBackUp(backupWords.notWritten(out, codeOf(error)));
  } finally {
    db.close();
    removeFile(part);
  }
}

/**
 * Puts a backup's content in the place of what a data folder keeps, in one write that a running server sees
 * whole; what was kept before is set aside first.
 * @returns where that is, null where nothing was kept; and how many sites there are now
 */
export async function bringBackUp(
  folder: string,
  from: string,
  now: Date,
): Promise<{ setAside: string | null; sites: number }> {
  if (!existsSync(from)) throw new CannotBackUp(backupWords.noBackup(from));
  const file = storeFile(folder);
  if (existsSync(file) && realpathSync(from) === realpathSync(file))
    throw new CannotBackUp(backupWords.itself(from));
  mkdirSync(folder, { recursive: true });
  const part = join(folder, `.${process.pid}.restore`);
  try {
    copyFileSync(from, part);
    const sites = countSites(part);
    const setAside = existsSync(file) ? asideName(folder, now) : null;
    if (setAside !== null) await backUp(folder, setAside);
    await putInPlace(part, file);
    return { setAside, sites };
  } catch (error) {
    if (error instanceof CannotOpenStore || error instanceof CannotBackUp) throw error;
    throw new CannotBackUp(backupWords.notRestored(codeOf(error)));
  } finally {
    removeFile(part);
  }
}

/** Brings the copy to the newest version of the file and counts its sites. @throws CannotOpenStore */
function countSites(path: string): number {
  const db = openFile(path);
  try {
    return sitesIn(db);
  } finally {
    db.close();
  }
}

async function putInPlace(part: string, file: string): Promise<void> {
  const db = new Sqlite(part, { fileMustExist: true });
  try {
    await db.backup(file, { progress: () => allPages });
  } finally {
    db.close();
  }
}

/** Makes the copy one file without a log beside it, looks through it, and waits for the disk. */
function settle(part: string): number {
  const db = new Sqlite(part, { fileMustExist: true });
  try {
    db.pragma("journal_mode = DELETE");
    checkOurs(db, part);
    return sitesIn(db);
  } finally {
    db.close();
    const handle = openSync(part, "r+");
    fsyncSync(handle);
    closeSync(handle);
  }
}

function sitesIn(db: Database): number {
  return db.prepare<[], { n: number }>("SELECT count(*) AS n FROM site WHERE deleted_at IS NULL").get()!.n;
}

function asideName(folder: string, now: Date): string {
  return join(folder, `before-restore-${now.toISOString().replaceAll(/[:.]/g, "-")}.sqlite`);
}

function removeFile(path: string): void {
  for (const file of [path, `${path}-wal`, `${path}-shm`, `${path}-journal`]) rmSync(file, { force: true });
}
