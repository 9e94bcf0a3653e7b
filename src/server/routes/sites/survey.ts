import type { Context, Hono } from "hono";
import { describeRoute } from "hono-openapi";
import * as z from "zod";
import { surveySchema } from "../../../survey/schema/survey.ts";
import { siteWords } from "../../../words/en/sites.ts";
import { limits } from "../../limits.ts";
import { expectedOf, quoted } from "../../preconditions.ts";
import { Problem } from "../../problem.ts";
import type { Store } from "../../store/open.ts";
import { siteRow } from "../../store/sites.ts";
import { siteState } from "../../store/state.ts";
import { dropDraft, saveDraft, saveSurvey } from "../../store/surveys.ts";
import { stateAnswer, stateSchema } from "./answers.ts";
import { limitBody, readFields, surveyFrom } from "./bodies.ts";
import { json, route } from "./describe.ts";
import { ask, askWith } from "./failures.ts";

const writeFails = [400, 404, 412, 413, 415, 422, 428];

/** A site's survey as it stands, and its draft: read, saved, let go. One ETag stands for both. */
export function addSurvey(app: Hono, store: Store): void {
  app.get(
    "/api/sites/:id/state",
    describeRoute(
      route({
        summary: "The site as it stands, without its past: what a page opens",
        gives: json(stateSchema),
      }),
    ),
    (c) => stateResponse(c, store, c.req.param("id")),
  );

  app.get(
    "/api/sites/:id/survey",
    describeRoute(route({ summary: "The survey as it stands", gives: json(surveySchema) })),
    (c) => {
      const { survey, row } = ask(() => siteState(store, c.req.param("id")));
      return c.json(survey as object, 200, { "Cache-Control": "no-cache", ETag: quoted(row.tag) });
    },
  );

  app.put(
    "/api/sites/:id/survey",
    describeRoute(
      route({
        summary: "Saves a survey as a new version",
        description:
          "The answer comes when the version is on the disk. A draft falls away. The same survey sent again is no new version.",
        takes: json(surveySchema),
        gives: json(stateSchema),
        fails: writeFails,
        ifMatch: "must",
      }),
    ),
    limitBody(),
    async (c) => {
      const id = c.req.param("id");
      const expected = expectedOf(c, true);
      ask(() => siteRow(store, id));
      const survey = surveyFrom(await readFields(c));
      return askWith(c, store, id, survey, () => {
        saveSurvey(store, id, expected, survey);
        return stateResponse(c, store, id);
      });
    },
  );

  app.put(
    "/api/sites/:id/draft",
    describeRoute(
      route({
        summary: "Keeps entries with faults beside the last survey that was right",
        description:
          "The answer lists the faults under draft. The next survey saved takes the draft's place.",
        takes: json(z.looseObject({})),
        gives: json(stateSchema),
        fails: writeFails,
        ifMatch: "must",
      }),
    ),
    limitBody(),
    async (c) => {
      const id = c.req.param("id");
      const expected = expectedOf(c, true);
      ask(() => siteRow(store, id));
      const draft = await readFields(c);
      if (JSON.stringify(draft).length > limits.draft_characters)
        throw new Problem(413, siteWords.draftTooLarge(limits.draft_characters));
      return askWith(c, store, id, draft, () => {
        saveDraft(store, id, expected, draft);
        return stateResponse(c, store, id);
      });
    },
  );

  app.delete(
    "/api/sites/:id/draft",
    describeRoute(
      route({ summary: "Lets the draft go", gives: json(stateSchema), fails: [404, 412], ifMatch: "may" }),
    ),
    (c) => {
      const id = c.req.param("id");
      return askWith(c, store, id, null, () => {
        dropDraft(store, id, expectedOf(c, false));
        return stateResponse(c, store, id);
      });
    },
  );
}

/**
 * The site as it stands, after whatever was done to it. Its ETag stands for the survey alone, not for the record and
 * the log that it tells of too: a browser that kept the answer would take it for fresh.
 */
export function stateResponse(c: Context, store: Store, id: string): Response {
  const state = ask(() => siteState(store, id));
  return c.json(stateAnswer(state), 200, { "Cache-Control": "no-store", ETag: quoted(state.row.tag) });
}
