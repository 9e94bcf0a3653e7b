import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Hono } from "hono";
import { afterEach } from "vitest";
import * as z from "zod";
import { createApp } from "../../../src/server/app.ts";
import { stateSchema } from "../../../src/server/routes/sites/answers.ts";
import { openStore, type Store } from "../../../src/server/store/open.ts";
import { surveySchema } from "../../../src/survey/schema/survey.ts";
import { ask, standIn } from "../stand-in.ts";

const folders: string[] = [];
const stores: Store[] = [];

afterEach(() => {
  for (const store of stores.splice(0)) store.db.close();
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});

export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "grounds-store-"));
  folders.push(folder);
  return folder;
}

let words = 0;

/** A store with a clock that goes on one second at each look, from a given start. */
export function testStore(folder = freshFolder(), start = "2026-03-01T08:00:00.000Z"): Store {
  let seconds = 0;
  const store = openStore(folder, {
    now: () => new Date(Date.parse(start) + 1000 * seconds++),
    freshWord: () => `word${++words}`,
  });
  stores.push(store);
  return store;
}

export function testApp(store = testStore()): Hono {
  return createApp(
    standIn({
      store,
      logFault: (error) => {
        throw error;
      },
    }),
  );
}

/** The demo's invented school: a new copy at each call. */
export function school() {
  return z
    .looseObject({
      beds: z.array(z.looseObject({ id: z.string(), name: z.string(), area_m2: z.number() })),
      site: z.looseObject({ name: z.string() }),
    })
    .parse(JSON.parse(readFileSync(new URL("../../../demo/school.survey.json", import.meta.url), "utf8")));
}

/** The school with the first bed of another area. */
export function schoolOf(area_m2: number) {
  const survey = school();
  survey.beds[0]!.area_m2 = area_m2;
  return survey;
}

export const record = "date,rain_mm,et0_mm\n2024-01-01,1.5,0.8\n2024-01-02,0,1\n";

type Headers = Record<string, string>;

export function send(app: Hono, method: string, path: string, body?: unknown, headers: Headers = {}) {
  const init = body === undefined ? {} : { body: typeof body === "string" ? body : JSON.stringify(body) };
  const type = typeof body === "string" ? "text/csv" : "application/json";
  return ask(app, path, { method, ...init, headers: { "Content-Type": type, ...headers } });
}

/** The state that an answer gives, its form checked. */
export async function stateOf(answer: Response) {
  if (!answer.ok) throw new Error(`${answer.status}: ${await answer.text()}`);
  return stateSchema.parse(await answer.json());
}

export async function create(app: Hono, body: object = { survey: school() }) {
  return stateOf(await send(app, "POST", "/api/sites", body));
}

export async function getState(app: Hono, id: string) {
  return stateOf(await ask(app, `/api/sites/${id}/state`));
}

export function putSurvey(app: Hono, id: string, etag: string, survey: object) {
  return send(app, "PUT", `/api/sites/${id}/survey`, survey, { "If-Match": `"${etag}"` });
}

/** The first bed's area in a version. */
export async function areaIn(app: Hono, id: string, version: number): Promise<number> {
  const answer = await ask(app, `/api/sites/${id}/versions/${version}`);
  return surveySchema.parse(await answer.json()).beds[0]!.area_m2;
}
