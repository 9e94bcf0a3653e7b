import type { Hono } from "hono";
import * as z from "zod";
import { createApp } from "../../src/server/app.ts";
import type { JsonSchema } from "../../src/server/openapi.ts";
import type { ServerParts } from "../../src/server/parts.ts";

/** A survey with no more in it than these tests ask about. */
export interface SmallSurvey {
  beds: readonly unknown[];
}

export const port = 8017;

const encoder = new TextEncoder();

/** Parts that answer at once, to test what the server itself does. */
export function standIn(changes: Partial<ServerParts<SmallSurvey>> = {}): ServerParts<SmallSurvey> {
  return {
    version: "0.0.0",
    schemas: { survey: schemaOf({ beds: z.array(z.unknown()) }), report: schemaOf({ need_mm: z.number() }) },
    port: () => port,
    readSurvey: (document) => ({ ok: true, value: document as SmallSurvey }),
    readRecord: () => ({
      ok: true,
      value: { firstDay: 0, days: 365, columns: { rain_mm: new Float64Array(365) } },
    }),
    estimate: () => ({ ok: true, value: { need_mm: 1 } }),
    demo: { name: "demo", survey: {}, weather: "date,rain_mm\n" },
    page: [
      file(
        "/index.html",
        "text/html; charset=utf-8",
        `<!doctype html><title>${"a page ".repeat(300)}</title>`,
        false,
      ),
      file("/assets/page-a1b2c3d4.js", "text/javascript; charset=utf-8", "export {};", true),
    ],
    logFault: () => {},
    ...changes,
  };
}

function schemaOf(shape: z.ZodRawShape): JsonSchema {
  return z.toJSONSchema(z.strictObject(shape)) as JsonSchema;
}

function file(path: string, type: string, text: string, hashed: boolean) {
  return { path, type, bytes: encoder.encode(text), hashed };
}

export const own = { Host: `127.0.0.1:${port}` };

/** A request as a browser on this computer sends it. */
export function ask(app: Hono, path: string, init: RequestInit = {}) {
  return app.request(path, { ...init, headers: { ...own, ...init.headers } });
}

export function post(app: Hono, body: unknown, headers: Record<string, string> = {}) {
  const text = typeof body === "string" ? body : JSON.stringify(body);
  return ask(app, "/api/estimate", {
    method: "POST",
    body: text,
    headers: { "Content-Type": "application/json", ...headers },
  });
}

export function standInApp(changes: Partial<ServerParts<SmallSurvey>> = {}): Hono {
  return createApp(standIn(changes));
}

const problemDocument = z.strictObject({
  type: z.string(),
  title: z.string().min(1),
  status: z.number(),
  detail: z.string().min(1),
  faults: z.array(z.strictObject({ path: z.string(), sentence: z.string().min(1) })),
});

/** The problem document of an answer, its form checked. */
export async function problemOf(answer: Response) {
  if (answer.headers.get("Content-Type") !== "application/problem+json") {
    throw new Error(`Not a problem document: ${answer.headers.get("Content-Type")}`);
  }
  const problem = problemDocument.parse(await answer.json());
  if (problem.status !== answer.status) throw new Error(`Says ${problem.status}, sent as ${answer.status}`);
  return problem;
}
