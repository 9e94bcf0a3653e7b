import type { Hono } from "hono";
import { describeRoute } from "hono-openapi";

/** `GET /healthz`: whether the server answers. */
export function addHealth(app: Hono): void {
  const description = describeRoute({
    summary: "Whether the server answers",
    responses: { 200: { description: "It does", content: { "application/json": {} } } },
  });
  app.get("/healthz", description, (c) => {
    c.header("Cache-Control", "no-store");
    return c.json({ status: "ok" });
  });
}
