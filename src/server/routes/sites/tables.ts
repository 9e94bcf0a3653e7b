import type { Context, Hono } from "hono";
import { describeRoute } from "hono-openapi";
import * as z from "zod";
import { writeLog } from "../../../files/log.ts";
import { logEntry } from "../../../survey/schema/log.ts";
import { siteWords } from "../../../words/en/sites.ts";
import { expectedOf, keyOf, quoted } from "../../preconditions.ts";
import { Problem } from "../../problem.ts";
import { logEntries } from "../../store/log.ts";
import type { Store } from "../../store/open.ts";
import { appendLog, saveLog, saveWeather, weatherText } from "../../store/records.ts";
import { siteRow } from "../../store/sites.ts";
import { stateSchema } from "./answers.ts";
import { limitBody, readLogBody, readWeatherBody } from "./bodies.ts";
import { csv, json, route } from "./describe.ts";
import { ask } from "./failures.ts";
import { stateResponse } from "./survey.ts";

const entriesBody = json(z.strictObject({ entries: z.array(logEntry) }));
const writeFails = [400, 404, 412, 413, 415, 422, 428];

/** The tables kept with a site: its weather record and its log, each CSV with an ETag of its own. */
export function addTables(app: Hono, store: Store): void {
  addWeather(app, store);
  addLog(app, store);
}

function addWeather(app: Hono, store: Store): void {
  const address = "/api/sites/:id/weather";
  app.get(address, describeRoute(route({ summary: "The weather record as CSV", gives: csv })), (c) => {
    const id = c.req.param("id");
    const text = ask(() => weatherText(store, id));
    if (text === null) throw new Problem(404, siteWords.noWeather);
    return table(c, "weather", text, ask(() => siteRow(store, id)).weather_tag);
  });

  app.put(
    address,
    describeRoute(
      route({
        summary: "Puts a weather record in the place of the one before",
        description: "If-Match is wanted where there is a record already.",
        takes: csv,
        gives: json(stateSchema),
        fails: writeFails,
        ifMatch: "may",
      }),
    ),
    limitBody(),
    async (c) => {
      const id = c.req.param("id");
      const expected = expectedOf(c, ask(() => siteRow(store, id)).weather_at !== null);
      const weather = await readWeatherBody(c);
      ask(() => saveWeather(store, id, expected, weather));
      return stateResponse(c, store, id);
    },
  );

  app.delete(
    address,
    describeRoute(
      route({
        summary: "Takes the weather record out",
        gives: json(stateSchema),
        fails: [404, 412, 428],
        ifMatch: "must",
      }),
    ),
    (c) => {
      const id = c.req.param("id");
      const expected = expectedOf(c, true);
      ask(() => saveWeather(store, id, expected, null));
      return stateResponse(c, store, id);
    },
  );
}

function addLog(app: Hono, store: Store): void {
  const address = "/api/sites/:id/log";
  app.get(address, describeRoute(route({ summary: "The log as CSV", gives: csv })), (c) => {
    const id = c.req.param("id");
    const tag = ask(() => siteRow(store, id)).log_tag;
    return table(c, "log", writeLog(ask(() => logEntries(store, id))), tag);
  });

  app.put(
    address,
    describeRoute(
      route({
        summary: "Puts a whole log in the place of the one before",
        takes: { ...csv, ...entriesBody },
        gives: json(stateSchema),
        fails: writeFails,
        ifMatch: "must",
      }),
    ),
    limitBody(),
    async (c) => {
      const id = c.req.param("id");
      const expected = expectedOf(c, true);
      const entries = await readLogBody(c);
      ask(() => saveLog(store, id, expected, entries));
      return stateResponse(c, store, id);
    },
  );

  app.post(
    address,
    describeRoute(
      route({
        summary: "Adds entries at the end of the log",
        takes: { ...entriesBody, ...csv },
        gives: json(stateSchema),
        fails: [400, 404, 413, 415, 422],
        key: true,
      }),
    ),
    limitBody(),
    async (c) => {
      const id = c.req.param("id");
      const entries = await readLogBody(c);
      const key = keyOf(c);
      ask(() => appendLog(store, id, entries, key));
      return stateResponse(c, store, id);
    },
  );
}

function table(c: Context, name: string, text: string, tag: string): Response {
  return c.body(text, 200, {
    "Content-Type": "text/csv; charset=utf-8",
    "Content-Disposition": `attachment; filename="${name}.csv"`,
    "Cache-Control": "no-cache",
    ETag: quoted(tag),
  });
}
