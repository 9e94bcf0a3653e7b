import type { Hono } from "hono";
import { describeRoute } from "hono-openapi";
import * as z from "zod";
import { changesBetween, namesOf } from "../../../survey/changes.ts";
import { surveySchema } from "../../../survey/schema/survey.ts";
import { changeSentence } from "../../../words/en/changes.ts";
import { siteWords } from "../../../words/en/sites.ts";
import { expectedOf } from "../../preconditions.ts";
import { Problem } from "../../problem.ts";
import type { Store } from "../../store/open.ts";
import { siteRow, versionSurvey } from "../../store/sites.ts";
import { versionLines } from "../../store/state.ts";
import { redo, restore, undo } from "../../store/surveys.ts";
import { changesSchema, stateSchema, versionsSchema } from "./answers.ts";
import { limitBody, readFields } from "./bodies.ts";
import { json, route } from "./describe.ts";
import { ask, askWith } from "./failures.ts";
import { stateResponse } from "./survey.ts";

const moves = { undo, redo } as const;

/** Every version of a site: listed, read, compared, gone back to. */
export function addHistory(app: Hono, store: Store): void {
  app.get(
    "/api/sites/:id/versions",
    describeRoute(route({ summary: "Every version saved, without its survey", gives: json(versionsSchema) })),
    (c) => {
      const id = c.req.param("id");
      const lines = ask(() => versionLines(store, id));
      const versions = lines.map(({ number, after, saved_at, words }) => {
        return { number, after, savedAt: saved_at, words };
      });
      return c.json({ current: ask(() => siteRow(store, id)).current, versions }, 200, noCache);
    },
  );

  app.get(
    "/api/sites/:id/versions/:number",
    describeRoute(
      route({ summary: "The survey of a version", gives: json(surveySchema), fails: [404, 422] }),
    ),
    (c) => {
      const survey = surveyOf(store, c.req.param("id"), numberFrom("number", c.req.param("number")));
      return c.json(survey as object, 200, noCache);
    },
  );

  const version = { schema: { type: "integer", minimum: 1 }, required: true };
  app.get(
    "/api/sites/:id/compare",
    describeRoute(
      route({
        summary: "What differs between two versions, in words",
        gives: json(changesSchema),
        query: {
          from: { description: "Number of the earlier version", ...version },
          to: { description: "Number of the later version", ...version },
        },
        fails: [404, 422],
      }),
    ),
    (c) => {
      const id = c.req.param("id");
      const from = numberFrom("from", c.req.query("from") ?? "");
      const to = numberFrom("to", c.req.query("to") ?? "");
      const later = surveyOf(store, id, to);
      const names = namesOf(later);
      const changes = changesBetween(surveyOf(store, id, from), later).map((change) => {
        return { path: change.path, sentence: changeSentence(change, names) };
      });
      return c.json({ from, to, changes }, 200, noCache);
    },
  );

  for (const name of ["undo", "redo"] as const)
    app.post(
      `/api/sites/:id/${name}`,
      describeRoute(
        route({
          summary:
            name === "undo"
              ? "Goes back to the version that the one at hand was made from"
              : "Goes on again to the version last undone",
          gives: json(stateSchema),
          fails: [404, 409, 412],
          ifMatch: "may",
        }),
      ),
      (c) => {
        const id = c.req.param("id");
        return askWith(c, store, id, null, () => {
          moves[name](store, id, expectedOf(c, false));
          return stateResponse(c, store, id);
        });
      },
    );

  app.post(
    "/api/sites/:id/restore",
    describeRoute(
      route({
        summary: "Saves an earlier version's survey as the newest",
        description: "What came between stays among the versions, and undo leads back.",
        takes: json(z.strictObject({ version: z.int().min(1) })),
        gives: json(stateSchema),
        fails: [400, 404, 412, 415, 422],
        ifMatch: "may",
      }),
    ),
    limitBody(),
    async (c) => {
      const id = c.req.param("id");
      const { version: number, ...others } = await readFields(c);
      if (!isNumber(number) || Object.keys(others).length > 0)
        throw new Problem(422, siteWords.restoreForm, [{ path: "version", sentence: siteWords.restoreForm }]);
      surveyOf(store, id, number);
      return askWith(c, store, id, null, () => {
        restore(store, id, expectedOf(c, false), number);
        return stateResponse(c, store, id);
      });
    },
  );
}

const noCache = { "Cache-Control": "no-cache" } as const;

function surveyOf(store: Store, id: string, number: number) {
  ask(() => siteRow(store, id));
  try {
    return versionSurvey(store, id, number);
  } catch {
    throw new Problem(404, siteWords.noSuchVersion);
  }
}

function numberFrom(name: string, text: string): number {
  const number = /^\d{1,9}$/.test(text) ? Number(text) : 0;
  if (isNumber(number)) return number;
  const sentence = siteWords.versionForm(name, text.slice(0, 40));
  throw new Problem(422, sentence, [{ path: name, sentence }]);
}

function isNumber(value: unknown): value is number {
  return typeof value === "number" && Number.isSafeInteger(value) && value >= 1;
}
