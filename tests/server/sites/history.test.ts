import * as fc from "fast-check";
import { expect, test } from "vitest";
import { changesSchema, versionsSchema } from "../../../src/server/routes/sites/answers.ts";
import { ask, problemOf } from "../stand-in.ts";
import {
  areaIn,
  create,
  freshFolder,
  getState,
  putSurvey,
  schoolOf,
  send,
  stateOf,
  testApp,
  testStore,
} from "./helpers.ts";

type App = ReturnType<typeof testApp>;

async function save(app: App, id: string, area_m2: number) {
  return stateOf(await putSurvey(app, id, (await getState(app, id)).etag, schoolOf(area_m2)));
}

async function move(app: App, id: string, name: "undo" | "redo") {
  return send(app, "POST", `/api/sites/${id}/${name}`);
}

const areaOf = async (app: App, id: string) => (await getState(app, id)).survey.beds[0]!.area_m2;

test("undo goes back and redo forth, and says what it would do, also after the program was started anew", async () => {
  const folder = freshFolder();
  const store = testStore(folder);
  const app = testApp(store);
  const { id } = await create(app, { survey: schoolOf(1) });
  await save(app, id, 2);
  await save(app, id, 3);
  const back = await stateOf(await move(app, id, "undo"));
  expect(back.survey.beds[0]!.area_m2).toBe(2);
  expect(back.undo).toBe("Oval: area 1 m² → 2 m²");
  expect(back.redo).toBe("Oval: area 2 m² → 3 m²");

  const anew = testApp(testStore(folder));
  expect(await getState(anew, id)).toEqual(back);
  await move(anew, id, "undo");
  expect(await areaOf(anew, id)).toBe(1);
  expect((await move(anew, id, "undo")).status).toBe(409);
  await move(anew, id, "redo");
  await move(anew, id, "redo");
  expect(await areaOf(anew, id)).toBe(3);
  expect((await move(anew, id, "redo")).status).toBe(409);
});

test("a save after undo leaves nothing to redo, and the version undone stays among the versions", async () => {
  const app = testApp();
  const { id } = await create(app, { survey: schoolOf(1) });
  await save(app, id, 2);
  await move(app, id, "undo");
  const saved = await save(app, id, 3);
  expect(saved.redo).toBeNull();
  expect(saved.versions).toBe(3);
  expect(await areaIn(app, id, 2)).toBe(2);
});

test("undo and redo are those of a list of edits with a place in it, whatever the order", async () => {
  const step = fc.oneof(
    fc.constant("undo" as const),
    fc.constant("redo" as const),
    fc.integer({ min: 1, max: 9 }),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 14 }), async (steps) => {
      const app = testApp();
      const { id } = await create(app, { survey: schoolOf(100) });
      let edits = [100];
      let at = 0;
      for (const one of steps) {
        if (one === "undo") {
          expect((await move(app, id, "undo")).status).toBe(at > 0 ? 200 : 409);
          at = Math.max(0, at - 1);
        } else if (one === "redo") {
          expect((await move(app, id, "redo")).status).toBe(at < edits.length - 1 ? 200 : 409);
          at = Math.min(edits.length - 1, at + 1);
        } else if (one !== edits[at]) {
          await save(app, id, one);
          edits = [...edits.slice(0, at + 1), one];
          at += 1;
        }
        expect(await areaOf(app, id)).toBe(edits[at]);
      }
    }),
    { numRuns: 25 },
  );
});

test("two tabs: undo on a state that is gone is told", async () => {
  const app = testApp();
  const { id } = await create(app, { survey: schoolOf(1) });
  const seen = await save(app, id, 2);
  await save(app, id, 3);
  const answer = await send(app, "POST", `/api/sites/${id}/undo`, undefined, {
    "If-Match": `"${seen.etag}"`,
  });
  expect(answer.status).toBe(412);
  expect(await areaOf(app, id)).toBe(3);
});

test("an earlier version is brought back as the newest, and undo leads back from it", async () => {
  const app = testApp();
  const { id } = await create(app, { survey: schoolOf(1) });
  await save(app, id, 2);
  await save(app, id, 3);
  const restored = await stateOf(await send(app, "POST", `/api/sites/${id}/restore`, { version: 1 }));
  expect(restored.survey.beds[0]!.area_m2).toBe(1);
  expect(restored.words).toBe("Went back to version 1\nOval: area 3 m² → 1 m²");
  expect(restored.version).toBe(4);
  await move(app, id, "undo");
  expect(await areaOf(app, id)).toBe(3);
});

test("every version is listed with its time and what changed, newest first", async () => {
  const app = testApp();
  const { id } = await create(app, { survey: schoolOf(1) });
  await save(app, id, 2);
  await save(app, id, 3);
  await move(app, id, "undo");
  const list = versionsSchema.parse(await (await ask(app, `/api/sites/${id}/versions`)).json());
  expect(list.current).toBe(2);
  expect(list.versions.map(({ number, after, words }) => [number, after, words])).toEqual([
    [3, 2, "Oval: area 2 m² → 3 m²"],
    [2, 1, "Oval: area 1 m² → 2 m²"],
    [1, null, expect.stringMatching(/^Started with \d+ beds, \d+ roofs and \d+ tanks$/)],
  ]);
  const times = list.versions.map(({ savedAt }) => savedAt);
  expect(times).toEqual([...times].sort().reverse());
});

test("two versions are compared in words, either way round", async () => {
  const app = testApp();
  const { id } = await create(app, { survey: schoolOf(1) });
  await save(app, id, 2);
  await save(app, id, 3);
  const compare = async (from: number, to: number) =>
    changesSchema.parse(await (await ask(app, `/api/sites/${id}/compare?from=${from}&to=${to}`)).json());
  expect((await compare(1, 3)).changes).toEqual([
    { path: "beds[0].area_m2", sentence: "Oval: area 1 m² → 3 m²" },
  ]);
  expect((await compare(3, 1)).changes[0]!.sentence).toBe("Oval: area 3 m² → 1 m²");
  expect((await compare(2, 2)).changes).toEqual([]);
});

test.each([
  ["GET", "versions/99", undefined, 404],
  ["GET", "versions/0", undefined, 422],
  ["GET", "versions/x", undefined, 422],
  ["GET", "compare?from=1", undefined, 422],
  ["GET", "compare?from=1&to=1.5", undefined, 422],
  ["GET", "compare?from=1&to=99", undefined, 404],
  ["POST", "restore", { version: 99 }, 404],
  ["POST", "restore", { version: "1" }, 422],
  ["POST", "restore", { version: 1, also: 2 }, 422],
  ["POST", "restore", [], 422],
])("%s %s %j: %i, with a reason", async (method, path, body, status) => {
  const app = testApp();
  const { id } = await create(app);
  const answer = await send(app, method, `/api/sites/${id}/${path}`, body);
  expect(answer.status).toBe(status);
  expect((await problemOf(answer)).detail).toMatch(/\w/);
});
