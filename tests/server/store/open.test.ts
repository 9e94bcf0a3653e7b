import { statSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openStore, storeFile } from "../../../src/server/store/open.ts";
import { listSites } from "../../../src/server/store/sites.ts";
import {
  create,
  freshFolder,
  getState,
  putSurvey,
  schoolOf,
  stateOf,
  testApp,
  testStore,
} from "../sites/helpers.ts";

test("the folder is made where it is missing, and what is written waits for the disk", () => {
  const folder = join(freshFolder(), "deep", "down");
  const { db } = testStore(folder);
  expect(statSync(storeFile(folder)).isFile()).toBe(true);
  expect(db.pragma("journal_mode", { simple: true })).toBe("wal");
  // 2 is FULL: each commit is flushed to the disk before it returns.
  expect(db.pragma("synchronous", { simple: true })).toBe(2);
});

test("a folder that cannot be made is said with what to do", () => {
  const file = storeFile(freshFolder());
  testStore(join(file, ".."));
  const world = { now: () => new Date(0), freshWord: () => "w" };
  expect(() => openStore(join(file, "below"), world)).toThrow(/--data FOLDER/);
});

test("two programs on one file: neither overwrites the other", async () => {
  const folder = freshFolder();
  const one = testApp(testStore(folder));
  const two = testApp(testStore(folder));
  const seen = await create(one);
  expect(await getState(two, seen.id)).toEqual(seen);
  const saved = await stateOf(await putSurvey(one, seen.id, seen.etag, schoolOf(2)));
  expect((await putSurvey(two, seen.id, seen.etag, schoolOf(3))).status).toBe(412);
  expect(await getState(two, seen.id)).toEqual(saved);
});

test("a version takes a small part of its survey's room", async () => {
  const store = testStore();
  const app = testApp(store);
  let state = await create(app);
  for (let area = 1; area <= 20; area++) {
    state = await stateOf(await putSurvey(app, state.id, state.etag, schoolOf(area)));
  }
  const { bytes } = store.db
    .prepare<[], { bytes: number }>("SELECT avg(length(survey)) AS bytes FROM version")
    .get()!;
  expect(bytes).toBeLessThan(JSON.stringify(schoolOf(1)).length / 3);
  expect(listSites(store)).toHaveLength(1);
});
