import { describe, expect, test } from "vitest";
import * as z from "zod";
import { listSchema } from "../../../src/server/routes/sites/answers.ts";
import { siteDocument } from "../../../src/server/store/document.ts";
import { siteSchema } from "../../../src/survey/schema/site-document.ts";
import { ask, own, problemOf } from "../stand-in.ts";
import {
  areaIn,
  create,
  getState,
  putSurvey,
  record,
  school,
  schoolOf,
  send,
  stateOf,
  testApp,
  testStore,
} from "./helpers.ts";

type App = ReturnType<typeof testApp>;

const log = [
  "date,kind,id,minutes,litres,rain_mm,days,level_L,group",
  "2024-01-01,watering,oval,30,,,,,wrens",
  "2024-01-02,rain,,,,4.5,2,,",
  "2024-01-02,dip,hall-tank,,,,,1200,",
  "",
].join("\n");

/** A site with four versions, one of them undone, a record, a log and a draft. */
async function lived(app: App) {
  const first = await create(app, { survey: schoolOf(1), weather: record, log });
  let etag = first.etag;
  for (const area of [2, 3]) {
    etag = (await stateOf(await putSurvey(app, first.id, etag, schoolOf(area)))).etag;
  }
  await send(app, "POST", `/api/sites/${first.id}/undo`);
  etag = (await getState(app, first.id)).etag;
  etag = (await stateOf(await putSurvey(app, first.id, etag, schoolOf(4)))).etag;
  await send(app, "PUT", `/api/sites/${first.id}/draft`, schoolOf(-1), { "If-Match": `"${etag}"` });
  return first.id;
}

async function exported(app: App, id: string) {
  const answer = await ask(app, `/api/sites/${id}/export`);
  expect(answer.status).toBe(200);
  return siteSchema.parse(await answer.json());
}

describe("one file", () => {
  test("brings the same site elsewhere: survey, record, log, versions, draft, undo", async () => {
    const here = testApp();
    const id = await lived(here);
    const file = await exported(here, id);
    const there = testApp();
    const brought = await create(there, file);
    expect(await exported(there, brought.id)).toEqual(file);
    const sentences = async (app: App, site: string) =>
      (await ask(app, `/api/sites/${site}/compare?from=1&to=4`)).text();
    expect(await sentences(there, brought.id)).toBe(await sentences(here, id));
    await send(there, "DELETE", `/api/sites/${brought.id}/draft`);
    const undone = await stateOf(await send(there, "POST", `/api/sites/${brought.id}/undo`));
    expect(undone.survey.beds[0]!.area_m2).toBe(2);
    expect(undone.redo).toBe("Oval: area 2 m² → 4 m²");
  });

  test("holds what the contract names", async () => {
    const app = testApp();
    const file = await exported(app, await lived(app));
    expect(file.format).toBe("grounds-site");
    expect(file.version).toBe(1);
    expect(file.weather).toBe(record);
    expect(file.log).toBe(log);
    expect(file.versions).toHaveLength(4);
    expect(file.versions!.map(({ survey }) => survey.beds[0]!.area_m2)).toEqual([1, 2, 3, 4]);
  });

  test("without versions makes a first one", async () => {
    const app = testApp();
    const { versions, words } = await create(app, { format: "grounds-site", version: 1, survey: school() });
    expect(versions).toBe(1);
    expect(words).toContain("Started with");
  });

  test("whose survey is none of its versions keeps it as one more", async () => {
    const app = testApp();
    const { current: _current, draft: _draft, ...file } = await exported(app, await lived(app));
    const brought = await create(app, { ...file, survey: schoolOf(9) });
    expect(brought.versions).toBe(5);
    expect(brought.words).toBe("Oval: area 4 m² → 9 m²");
    expect(brought.undo).toBe(brought.words);
  });

  test("too large for all its versions has the newest, says how many are not there, and can be brought in", async () => {
    const store = testStore();
    const app = testApp(store);
    const id = await lived(app);
    const room_bytes = 2.5 * JSON.stringify(school()).length;
    const file = siteDocument(store, id, room_bytes);
    expect(file.versions!.map(({ survey }) => survey.beds[0]!.area_m2)).toEqual([3, 4]);
    expect(file.versionsLeftOut).toBe(2);
    const brought = await create(testApp(), file);
    expect(brought.versions).toBe(2);
    expect(brought.survey.beds[0]!.area_m2).toBe(4);
  });

  test("is sent as a file to save, and asked for again only when it has changed", async () => {
    const app = testApp();
    const id = await lived(app);
    const first = await ask(app, `/api/sites/${id}/export`);
    expect(first.headers.get("Content-Disposition")).toContain("attachment");
    const headers = { ...own, "If-None-Match": first.headers.get("ETag")! };
    expect((await ask(app, `/api/sites/${id}/export`, { headers })).status).toBe(304);
    await send(app, "POST", `/api/sites/${id}/log`, {
      entries: [{ date: "2024-01-05", kind: "rain", rain_mm: 1 }],
    });
    expect((await ask(app, `/api/sites/${id}/export`, { headers })).status).toBe(200);
  });
});

describe("a broken file names each fault and changes nothing", () => {
  const breaks: [string, (file: Record<string, unknown>) => unknown, string[]][] = [
    ["another format", (file) => ({ ...file, format: "grounds-plan" }), ["format"]],
    ["a survey alone", (file) => file.survey, ["format"]],
    ["a newer version", (file) => ({ ...file, version: 2 }), ["version"]],
    ["a version in quotation marks", (file) => ({ ...file, version: "1" }), ["version"]],
    ["a list", () => [], ["body"]],
    ["no survey", ({ survey: _survey, ...file }) => file, ["survey"]],
    ["a field more", (file) => ({ ...file, colour: "green" }), ["colour"]],
    ["a bed of no size", (file) => ({ ...file, survey: schoolOf(0) }), ["survey.beds[0].area_m2"]],
    [
      "a record without rain",
      (file) => ({ ...file, weather: "date,et0_mm\n2024-01-01,1\n" }),
      ["weather, rain_mm"],
    ],
    [
      "a word in the record",
      (file) => ({ ...file, weather: record.replace("1.5", "wet") }),
      ["weather, row 2, rain_mm"],
    ],
    ["a record that is a number", (file) => ({ ...file, weather: 7 }), ["weather"]],
    [
      "a log of another kind",
      (file) => ({ ...file, log: log.replace("dip,", "dipp,") }),
      ["log, row 4, kind"],
    ],
    [
      "a broken survey in an old version, and one without a time",
      (file) => ({
        ...file,
        versions: [
          { savedAt: "2026-01-01T00:00:00Z", words: "", survey: schoolOf(-1) },
          { savedAt: "2026-01-01T00:00:00Z", words: "", survey: schoolOf(-2) },
        ],
      }),
      ["versions[0].survey.beds[0].area_m2", "versions[1].survey.beds[0].area_m2"],
    ],
    [
      "a version without a time",
      (file) => ({ ...file, versions: [{ words: "", survey: school() }] }),
      ["versions[0].savedAt"],
    ],
    [
      "a version made from a later one",
      (file) => ({
        ...file,
        versions: [{ savedAt: "2026-01-01T00:00:00Z", words: "", after: 3, survey: school() }],
      }),
      ["versions[0].after"],
    ],
    ["a version at hand that is not there", (file) => ({ ...file, versions: [], current: 2 }), ["current"]],
  ];

  test.each(breaks)("%s", async (_name, breakIt, paths) => {
    const app = testApp();
    const file = { format: "grounds-site", version: 1, survey: school(), weather: record, log };
    const answer = await send(app, "POST", "/api/sites", breakIt(file) as object);
    expect(answer.status).toBe(422);
    const { faults } = await problemOf(answer);
    expect(faults.map(({ path }) => path)).toEqual(paths);
    for (const { sentence } of faults) {
      expect(sentence).toMatch(/^[A-Z"].*[.?]$/);
      expect(sentence).not.toMatch(/invalid|not understood|expected/i);
    }
    expect(listSchema.parse(await (await ask(app, "/api/sites")).json()).sites).toEqual([]);
  });

  test("faults of every part come in one answer", async () => {
    const app = testApp();
    const answer = await send(app, "POST", "/api/sites", {
      survey: schoolOf(-1),
      weather: "date,et0_mm\n2024-01-01,1\n",
      log: "date,kind\n2024-01-01,rain\n",
      versions: [{ savedAt: "2026-01-01T00:00:00Z", words: "", survey: schoolOf(-2) }],
    });
    expect((await problemOf(answer)).faults.map(({ path }) => path)).toEqual([
      "survey.beds[0].area_m2",
      "weather, rain_mm",
      "log, row 2, rain_mm",
      "versions[0].survey.beds[0].area_m2",
    ]);
  });
});

describe("a site as a whole", () => {
  test("is read and put back as it is without a new version", async () => {
    const app = testApp();
    const { id } = await create(app, { survey: school(), weather: record, log });
    const read = await ask(app, `/api/sites/${id}`);
    const document = siteSchema.parse(await read.json());
    const put = await send(app, "PUT", `/api/sites/${id}`, document, {
      "If-Match": read.headers.get("ETag")!,
    });
    expect(put.status).toBe(200);
    expect((await stateOf(put)).versions).toBe(1);
  });

  test("is replaced in all its parts, and a second writer is told", async () => {
    const app = testApp();
    const { id } = await create(app, { survey: school() });
    const etag = (await ask(app, `/api/sites/${id}`)).headers.get("ETag")!;
    const body = { survey: schoolOf(7), weather: record, log };
    const put = await send(app, "PUT", `/api/sites/${id}`, body, { "If-Match": etag });
    const state = await stateOf(put);
    expect(state.survey.beds[0]!.area_m2).toBe(7);
    expect(state.weather).toMatchObject({ from: "2024-01-01", to: "2024-01-02", days: 2 });
    expect(state.log.entries).toBe(3);
    expect(
      (await send(app, "PUT", `/api/sites/${id}`, { survey: schoolOf(8) }, { "If-Match": etag })).status,
    ).toBe(412);
    expect((await send(app, "PUT", `/api/sites/${id}`, { survey: schoolOf(8) })).status).toBe(428);
    expect(await areaIn(app, id, 2)).toBe(7);
    const anew = put.headers.get("ETag")!;
    expect((await send(app, "PUT", `/api/sites/${id}`, body, { "If-Match": anew })).status).toBe(200);
  });

  test("is listed by its name, last changed first", async () => {
    const app = testApp();
    const one = await create(app);
    const other = school();
    other.site.name = "Another school (invented)";
    const two = await create(app, { survey: other });
    const list = async () => listSchema.parse(await (await ask(app, "/api/sites")).json()).sites;
    expect((await list()).map(({ name }) => name)).toEqual([two.name, one.name]);
    await putSurvey(app, one.id, one.etag, schoolOf(3));
    expect((await list()).map(({ id }) => id)).toEqual([one.id, two.id]);
  });

  test("taken out is gone from the list, can be brought back whole, or removed for good", async () => {
    const app = testApp();
    const id = await lived(app);
    const before = await exported(app, id);
    const site = `/api/sites/${id}`;
    const count = async (address: string) =>
      z.object({ sites: z.array(z.unknown()) }).parse(await (await ask(app, address)).json()).sites.length;
    expect((await send(app, "DELETE", `${site}?forGood=yes`)).status).toBe(409);
    expect((await send(app, "DELETE", site)).status).toBe(204);
    expect((await ask(app, site)).status).toBe(404);
    expect((await putSurvey(app, id, "any", schoolOf(1))).status).toBe(404);
    expect(await count("/api/sites")).toBe(0);
    expect(await count("/api/deleted-sites")).toBe(1);
    await send(app, "POST", `${site}/recover`);
    expect(await exported(app, id)).toEqual(before);
    await send(app, "DELETE", site);
    expect((await send(app, "DELETE", `${site}?forGood=yes`)).status).toBe(204);
    expect((await send(app, "POST", `${site}/recover`)).status).toBe(404);
    expect(await count("/api/deleted-sites")).toBe(0);
  });

  test("asked for twice with one key is made once", async () => {
    const app = testApp();
    const headers = { "Idempotency-Key": "one-and-the-same" };
    const first = await stateOf(await send(app, "POST", "/api/sites", { survey: school() }, headers));
    const second = await stateOf(await send(app, "POST", "/api/sites", { survey: school() }, headers));
    expect(second).toEqual(first);
  });

  test.each([
    "",
    "/state",
    "/survey",
    "/export",
    "/versions",
    "/versions/1",
    "/weather",
    "/log",
    "/compare?from=1&to=1",
  ])("that is not there answers 404 at its address %s", async (path) => {
    const answer = await ask(testApp(), `/api/sites/nowhere${path}`);
    expect(answer.status).toBe(404);
    await problemOf(answer);
  });
});
