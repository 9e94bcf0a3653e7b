import { Hono } from "hono";
import { compress } from "hono/compress";
import { etag } from "hono/etag";
import { methodNotAllowed } from "hono/method-not-allowed";
import { serverWords } from "../words/en/server.ts";
import { ownAddressOnly } from "./guard.ts";
import { securityHeaders } from "./headers.ts";
import { addOpenApi } from "./openapi.ts";
import type { ServerParts } from "./parts.ts";
import { Problem, problemResponse } from "./problem.ts";
import { addChoices } from "./routes/choices.ts";
import { addDemo } from "./routes/demo.ts";
import { addEstimate } from "./routes/estimate.ts";
import { addHealth } from "./routes/health.ts";
import { addPage, pageNotFound } from "./routes/page.ts";
import { addPlaces } from "./routes/places.ts";
import { addRounds } from "./routes/rounds.ts";
import { addSchemas } from "./routes/schema.ts";
import { addSites } from "./routes/sites.ts";

/** Builds the server from its parts; listening is main's. */
export function createApp<Survey extends { beds: readonly unknown[] }>(parts: ServerParts<Survey>): Hono {
  const app = new Hono();
  app.onError((error, c) => {
    if (error instanceof Problem) return problemResponse(c, error);
    parts.logFault(error);
    return problemResponse(c, new Problem(500, serverWords.ownFault));
  });
  app.notFound(
    (c) => pageNotFound(c, parts.page) ?? problemResponse(c, new Problem(404, serverWords.nothingHere)),
  );

  app.use(securityHeaders());
  app.use(compress());
  app.use(etag());
  app.use(ownAddressOnly(parts.port));
  app.use(
    methodNotAllowed({
      app,
      onMethodNotAllowed: (c, methods) => {
        const allowed = [...methods].sort();
        const problem = new Problem(405, serverWords.notAllowed(allowed));
        return problemResponse(c, problem, { Allow: allowed.join(", ") });
      },
    }),
  );

  addEstimate(app, parts);
  const { readSurvey, readRecord, rounds, choose } = parts;
  if (rounds) addRounds(app, { readSurvey, readRecord, rounds });
  if (choose) addChoices(app, { readSurvey, readRecord, choose });
  addSchemas(app, parts.schemas);
  addDemo(app, parts.demo);
  if (parts.store) addSites(app, parts.store);
  if (parts.places) addPlaces(app, parts.places);
  addHealth(app);
  addPage(app, parts.page);
  addOpenApi(app, parts.version, parts.schemas);
  return app;
}
