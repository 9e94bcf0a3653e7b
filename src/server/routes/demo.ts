import type { Hono } from "hono";
import { describeRoute } from "hono-openapi";
import type { Demo } from "../parts.ts";

/** `GET /api/demo`: the invented school and the real record it is worked on, ready to be posted back. */
export function addDemo(app: Hono, demo: Demo): void {
  const description = describeRoute({
    summary: "The demo: an invented survey and a real weather record",
    responses: {
      200: { description: "{ name, survey, weather: CSV text }", content: { "application/json": {} } },
    },
  });
  app.get("/api/demo", description, (c) => {
    c.header("Cache-Control", "no-cache");
    return c.json(demo as object);
  });
}
