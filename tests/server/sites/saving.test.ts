import { describe, expect, test } from "vitest";
import * as z from "zod";
import { conflictSchema } from "../../../src/server/routes/sites/answers.ts";
import { ask, problemOf } from "../stand-in.ts";
import { areaIn, create, getState, putSurvey, school, schoolOf, send, stateOf, testApp } from "./helpers.ts";

describe("a survey saved", () => {
  test("is there again, with its time and what changed in words", async () => {
    const app = testApp();
    const first = await create(app);
    const saved = await stateOf(await putSurvey(app, first.id, first.etag, schoolOf(2444)));
    expect(saved.words).toBe("Oval: area 2,400 m² → 2,444 m²");
    expect(saved.savedAt > first.savedAt).toBe(true);
    expect(saved.version).toBe(first.version + 1);
    const again = await getState(app, first.id);
    expect(again).toEqual(saved);
    expect(again.survey.beds[0]!.area_m2).toBe(2444);
  });

  test("that is the one kept already is no new version", async () => {
    const app = testApp();
    const first = await create(app);
    const same = await stateOf(await putSurvey(app, first.id, first.etag, school()));
    expect(same).toEqual(first);
  });

  test("is answered the same when it is sent again because the answer was lost", async () => {
    const app = testApp();
    const first = await create(app);
    const saved = await stateOf(await putSurvey(app, first.id, first.etag, schoolOf(2444)));
    const again = await stateOf(await putSurvey(app, first.id, first.etag, schoolOf(2444)));
    expect(again).toEqual(saved);
  });

  test("with faults is refused with each fault, and changes nothing", async () => {
    const app = testApp();
    const first = await create(app);
    const survey = schoolOf(-4);
    survey.beds[1]!.name = "";
    const answer = await putSurvey(app, first.id, first.etag, survey);
    expect(answer.status).toBe(422);
    const { faults } = await problemOf(answer);
    expect(faults.map(({ path }) => path)).toEqual(["beds[0].area_m2", "beds[1].name"]);
    expect(faults[0]!.sentence).toBe("Bed area must be between 0.1 and 50,000 m². You entered -4.");
    expect(await getState(app, first.id)).toEqual(first);
  });

  test("without a condition is refused", async () => {
    const app = testApp();
    const { id } = await create(app);
    const answer = await send(app, "PUT", `/api/sites/${id}/survey`, schoolOf(5));
    expect(answer.status).toBe(428);
    await problemOf(answer);
  });

  test("with a tag that compression marked as weak is saved", async () => {
    const app = testApp();
    const { id } = await create(app);
    const read = await ask(app, `/api/sites/${id}/survey`, { headers: { "Accept-Encoding": "gzip" } });
    const etag = read.headers.get("ETag")!;
    expect(etag).toMatch(/^W\//);
    const answer = await send(app, "PUT", `/api/sites/${id}/survey`, schoolOf(5), { "If-Match": etag });
    expect(answer.status).toBe(200);
  });
});

describe("two tabs", () => {
  test("the second to save is told, has both, and nothing is overwritten", async () => {
    const app = testApp();
    const seen = await create(app);
    const theirs = await stateOf(await putSurvey(app, seen.id, seen.etag, schoolOf(2444)));
    const mine = school();
    mine.beds[1]!.name = "Lawn under the maples";
    const answer = await putSurvey(app, seen.id, seen.etag, mine);
    expect(answer.status).toBe(412);
    expect(answer.headers.get("Content-Type")).toBe("application/problem+json");
    const conflict = conflictSchema.parse(await answer.json());
    expect(conflict.kept).toEqual(theirs);
    expect(conflict.sent).toEqual(mine);
    expect(conflict.changes.map(({ sentence }) => sentence)).toEqual([
      "Oval: area 2,444 m² → 2,400 m²",
      "Quad lawn under the maples: name Quad lawn under the maples → Lawn under the maples",
    ]);
    expect(await getState(app, seen.id)).toEqual(theirs);
  });

  test("the second can keep its own: the other's stays a version", async () => {
    const app = testApp();
    const seen = await create(app);
    await putSurvey(app, seen.id, seen.etag, schoolOf(2444));
    const refused = conflictSchema.parse(
      await (await putSurvey(app, seen.id, seen.etag, schoolOf(1))).json(),
    );
    const kept = await stateOf(await putSurvey(app, seen.id, refused.kept.etag, schoolOf(1)));
    expect(kept.survey.beds[0]!.area_m2).toBe(1);
    expect(await areaIn(app, seen.id, 2)).toBe(2444);
  });

  test("both can be kept: the second as a site of its own", async () => {
    const app = testApp();
    const seen = await create(app);
    await putSurvey(app, seen.id, seen.etag, schoolOf(2444));
    const refused = conflictSchema.parse(
      await (await putSurvey(app, seen.id, seen.etag, schoolOf(1))).json(),
    );
    const copy = await create(app, { survey: refused.sent });
    expect(copy.id).not.toBe(seen.id);
    expect((await getState(app, seen.id)).survey.beds[0]!.area_m2).toBe(2444);
  });

  test("of twenty saves at once on one tag, one is kept and nineteen are told", async () => {
    const app = testApp();
    const seen = await create(app);
    const areas = Array.from({ length: 20 }, (_, i) => i + 1);
    const answers = await Promise.all(
      areas.map((area) => putSurvey(app, seen.id, seen.etag, schoolOf(area))),
    );
    expect(answers.filter(({ status }) => status === 200)).toHaveLength(1);
    expect(answers.filter(({ status }) => status === 412)).toHaveLength(19);
    expect((await getState(app, seen.id)).versions).toBe(2);
  });
});

describe("a draft", () => {
  const putDraft = (app: ReturnType<typeof testApp>, id: string, etag: string, survey: object) =>
    send(app, "PUT", `/api/sites/${id}/draft`, survey, { "If-Match": `"${etag}"` });

  test("keeps entries with faults, as typed, beside the last survey that was right", async () => {
    const app = testApp();
    const first = await create(app);
    const typed = { ...schoolOf(-4), colour: "green" };
    const kept = await stateOf(await putDraft(app, first.id, first.etag, typed));
    expect(kept.draft?.survey).toEqual(typed);
    expect(kept.draft?.faults.map(({ path }) => path)).toEqual(["colour", "beds[0].area_m2"]);
    expect(kept.survey).toEqual(first.survey);
    expect(kept.version).toBe(first.version);
    const list = z.object({ sites: z.array(z.object({ hasDraft: z.boolean() })) });
    expect(list.parse(await (await ask(app, "/api/sites")).json()).sites).toEqual([{ hasDraft: true }]);
  });

  test("gives way to the next survey that is right", async () => {
    const app = testApp();
    const first = await create(app);
    const kept = await stateOf(await putDraft(app, first.id, first.etag, schoolOf(-4)));
    const saved = await stateOf(await putSurvey(app, first.id, kept.etag, schoolOf(4)));
    expect(saved.draft).toBeNull();
    expect(saved.survey.beds[0]!.area_m2).toBe(4);
  });

  test("of one tab is not overwritten by another's save", async () => {
    const app = testApp();
    const first = await create(app);
    await putDraft(app, first.id, first.etag, schoolOf(-4));
    const answer = await putSurvey(app, first.id, first.etag, schoolOf(5));
    expect(answer.status).toBe(412);
    expect(conflictSchema.parse(await answer.json()).kept.draft?.survey).toEqual(schoolOf(-4));
  });

  test("stands in the way of undo until it is let go", async () => {
    const app = testApp();
    const first = await create(app);
    const saved = await stateOf(await putSurvey(app, first.id, first.etag, schoolOf(4)));
    await putDraft(app, first.id, saved.etag, schoolOf(-4));
    expect((await send(app, "POST", `/api/sites/${first.id}/undo`)).status).toBe(409);
    const without = await stateOf(await send(app, "DELETE", `/api/sites/${first.id}/draft`));
    expect(without.draft).toBeNull();
    expect((await send(app, "POST", `/api/sites/${first.id}/undo`)).status).toBe(200);
  });
});
