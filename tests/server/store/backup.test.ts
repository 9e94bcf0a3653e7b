import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { backUp, bringBackUp } from "../../../src/server/store/backup.ts";
import { siteDocument } from "../../../src/server/store/document.ts";
import { storeFile } from "../../../src/server/store/open.ts";
import { listSites } from "../../../src/server/store/sites.ts";
import { root } from "../../structure/sources.ts";
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

const now = new Date("2026-03-02T09:10:11.000Z");

describe("a backup", () => {
  test("made while the server goes on holds every save answered before it, in one file", async () => {
    const folder = freshFolder();
    const store = testStore(folder);
    const app = testApp(store);
    const site = await create(app);
    const saved = await stateOf(await putSurvey(app, site.id, site.etag, schoolOf(44)));
    const target = freshFolder();
    expect(await backUp(folder, join(target, "all.sqlite"))).toBe(1);
    expect(readdirSync(target)).toEqual(["all.sqlite"]);
    await putSurvey(app, site.id, saved.etag, schoolOf(45));

    const elsewhere = freshFolder();
    const { setAside, sites } = await bringBackUp(elsewhere, join(target, "all.sqlite"), now);
    expect([setAside, sites]).toEqual([null, 1]);
    expect(await getState(testApp(testStore(elsewhere)), site.id)).toEqual(saved);
  });

  test("brought back under a running server is what it answers with, and what was kept is set aside", async () => {
    const folder = freshFolder();
    const app = testApp(testStore(folder));
    const site = await create(app);
    const backup = join(freshFolder(), "all.sqlite");
    await backUp(folder, backup);
    const later = await stateOf(await putSurvey(app, site.id, site.etag, schoolOf(45)));
    const { setAside } = await bringBackUp(folder, backup, now);
    expect(await getState(app, site.id)).toEqual(site);
    expect((await putSurvey(app, site.id, later.etag, schoolOf(46))).status).toBe(412);
    expect((await putSurvey(app, site.id, site.etag, schoolOf(46))).status).toBe(200);

    const aside = freshFolder();
    await bringBackUp(aside, setAside!, now);
    const kept = testStore(aside);
    expect(siteDocument(kept, site.id, 1e9).survey.beds[0]!.area_m2).toBe(45);
  });

  test("that is no backup changes nothing", async () => {
    const folder = freshFolder();
    const store = testStore(folder);
    await create(testApp(store));
    const before = readdirSync(folder);
    const text = join(freshFolder(), "notes.txt");
    writeFileSync(text, "no database");
    await expect(bringBackUp(folder, text, now)).rejects.toThrow(/could not be opened/);
    await expect(bringBackUp(folder, join(folder, "nowhere"), now)).rejects.toThrow(/There is no file/);
    await expect(bringBackUp(folder, storeFile(folder), now)).rejects.toThrow(/Choose another/);
    expect(readdirSync(folder)).toEqual(before);
    expect(listSites(store)).toHaveLength(1);
  });
});

describe("the commands", () => {
  const run = (script: string, ...args: string[]) =>
    spawnSync(process.execPath, ["--import", "tsx", `src/cli/${script}.ts`, ...args], {
      cwd: root,
      encoding: "utf8",
    });

  test("write a backup and bring it back", async () => {
    const folder = freshFolder();
    await create(testApp(testStore(folder)));
    const out = join(freshFolder(), "all.sqlite");
    const written = run("backup", "--data", folder, "--out", out);
    expect(written.stderr).toBe("");
    expect(written.stdout).toContain("1 site, checked");
    const elsewhere = freshFolder();
    const restored = run("restore", "--data", elsewhere, "--from", out);
    expect([restored.status, restored.stderr]).toEqual([0, ""]);
    expect(listSites(testStore(elsewhere))).toHaveLength(1);
  });

  test("refuse with status 2, a line each and no stack", () => {
    const folder = freshFolder();
    for (const [script, args, line] of [
      ["backup", ["--data", folder], /^--out is missing/],
      ["backup", ["--data", folder, "--out", join(folder, "x")], /^There is nothing to back up/],
      ["restore", ["--form", "x"], /^There is no option --form/],
      ["restore", ["--data", folder, "--from", join(folder, "x")], /^There is no file/],
    ] as const) {
      const { status, stdout, stderr } = run(script, ...args);
      expect([status, stdout]).toEqual([2, ""]);
      expect(stderr).toMatch(line);
      expect(stderr).not.toMatch(/ at .*:\d+/);
    }
    expect(existsSync(storeFile(folder))).toBe(false);
  });
});
