import type { Hono } from "hono";
import { describeRoute } from "hono-openapi";
import type { DocumentSchemas } from "../openapi.ts";

/** `GET /api/schema/NAME.json`: each document as JSON Schema. */
export function addSchemas(app: Hono, schemas: DocumentSchemas): void {
  for (const [name, document] of Object.entries(schemas)) {
    const description = describeRoute({
      summary: `The ${name} document as JSON Schema`,
      responses: { 200: { description: "JSON Schema 2020-12", content: { "application/schema+json": {} } } },
    });
    app.get(`/api/schema/${name}.json`, description, (c) =>
      c.body(JSON.stringify(document), 200, {
        "Content-Type": "application/schema+json",
        "Cache-Control": "no-cache",
      }),
    );
  }
}
