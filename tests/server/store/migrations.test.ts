import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Sqlite from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { siteDocument } from "../../../src/server/store/document.ts";
import { fileVersion, migrate } from "../../../src/server/store/migrations.ts";
import { CannotOpenStore, openFile, storeFile } from "../../../src/server/store/open.ts";
import { listSites } from "../../../src/server/store/sites.ts";
import { siteSchema } from "../../../src/survey/schema/site-document.ts";
import { freshFolder, testStore } from "../sites/helpers.ts";

const fixtures = new URL("./fixtures/", import.meta.url);
const versions = readdirSync(fixtures).flatMap((name) => /^version-(\d+)\.sql$/.exec(name)?.[1] ?? []);

/** A data folder with the file that a fixture's statements make. */
function folderOf(version: string): string {
  const folder = freshFolder();
  const db = new Sqlite(storeFile(folder));
  db.exec(readFileSync(new URL(`version-${version}.sql`, fixtures), "utf8"));
  db.close();
  return folder;
}

test("there is a fixture of every version of the file there ever was", () => {
  const all = Array.from({ length: fileVersion }, (_, i) => String(i + 1));
  expect([...versions].sort()).toEqual(all.sort());
});

test.each(versions)("a file of version %s opens with everything in it", (version) => {
  const folder = folderOf(version);
  const before = new Sqlite(storeFile(folder));
  expect(before.pragma("user_version", { simple: true })).toBe(Number(version));
  before.close();
  const store = testStore(folder);
  expect(store.db.pragma("user_version", { simple: true })).toBe(fileVersion);
  const kept = siteSchema.parse(JSON.parse(readFileSync(new URL("site.json", fixtures), "utf8")));
  expect(listSites(store).map(({ id, name }) => [id, name])).toEqual([["fixture", kept.survey.site.name]]);
  expect(siteDocument(store, "fixture", 1e9)).toEqual(kept);
  expect(listSites(store, true).map(({ id }) => id)).toEqual(["taken-out"]);
});

describe("a step of migration", () => {
  const twoSteps = [
    "CREATE TABLE a (x INTEGER) STRICT; INSERT INTO a VALUES (1);",
    "ALTER TABLE a RENAME TO b;",
  ];

  test("is run once, from the version that the file has", () => {
    const db = new Sqlite(":memory:");
    migrate(db, twoSteps.slice(0, 1));
    migrate(db, twoSteps);
    migrate(db, twoSteps);
    expect(db.prepare("SELECT x FROM b").all()).toEqual([{ x: 1 }]);
    expect(db.pragma("user_version", { simple: true })).toBe(2);
  });

  test("that fails leaves the file as it was", () => {
    const db = new Sqlite(":memory:");
    migrate(db, twoSteps.slice(0, 1));
    expect(() => migrate(db, [twoSteps[0]!, "DROP TABLE a; DROP TABLE nowhere;"])).toThrow(/nowhere/);
    expect(db.prepare("SELECT x FROM a").all()).toEqual([{ x: 1 }]);
    expect(db.pragma("user_version", { simple: true })).toBe(1);
  });
});

describe("a file that cannot be used is left as it was, with a sentence that says what to do", () => {
  const opening = (path: string) => () => openFile(path);

  test("of a newer version", () => {
    const folder = folderOf("1");
    const db = new Sqlite(storeFile(folder));
    db.pragma("user_version = 99");
    db.close();
    const bytes = readFileSync(storeFile(folder));
    expect(opening(storeFile(folder))).toThrow(/newer version of this program \(file version 99.*Update/);
    expect(readFileSync(storeFile(folder))).toEqual(bytes);
  });

  test("of another program", () => {
    const path = join(freshFolder(), "other.sqlite");
    const db = new Sqlite(path);
    db.exec("CREATE TABLE theirs (x)");
    db.close();
    const bytes = readFileSync(path);
    expect(opening(path)).toThrow(/not one that this program made/);
    expect(readFileSync(path)).toEqual(bytes);
  });

  test("that is no database", () => {
    const path = join(freshFolder(), "text.sqlite");
    writeFileSync(path, "a text, and long enough to be looked at as a file of its own kind. ".repeat(20));
    expect(opening(path)).toThrow(CannotOpenStore);
    expect(opening(path)).toThrow(/could not be opened/);
  });

  test("that is damaged", () => {
    const folder = folderOf("1");
    const bytes = readFileSync(storeFile(folder));
    bytes.fill(0xff, 4096 * 3, 4096 * 6);
    writeFileSync(storeFile(folder), bytes);
    expect(opening(storeFile(folder))).toThrow(/damaged|could not be opened/);
  });
});
