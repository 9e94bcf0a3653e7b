import type { Hono } from "hono";
import { type DescribeRouteOptions, openAPIRouteHandler } from "hono-openapi";
import * as z from "zod";
import { answers, bodyWithSurvey } from "./described.ts";
import { problemSchema } from "./problem.ts";

export type JsonSchema = Readonly<Record<string, unknown>>;

/** The documents that the API speaks in, as JSON Schema 2020-12: the dialect of OpenAPI 3.1 too. */
export type DocumentSchemas = Readonly<
  Record<"survey" | "report", JsonSchema> & Partial<Record<"rounds" | "choices" | "site", JsonSchema>>
>;

/** A schema as a part of the description: its own name and dialect would start a document in the document. */
function component({ $schema: _dialect, $id: _name, ...rest }: JsonSchema): JsonSchema {
  return rest;
}

/** A document's name as a part of the description: `rounds` is Rounds. */
function capital(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}

export const estimateDescription: DescribeRouteOptions = {
  summary: "Works a survey on a weather record and gives the report",
  description: "Nothing that is sent is kept. Every fault in either document is listed with its path.",
  requestBody: bodyWithSurvey(),
  responses: answers("Report", "The survey or the record is refused"),
};

/** `GET /api/openapi.json`: the API described from the schemas that it checks with. */
export function addOpenApi(app: Hono, version: string, schemas: DocumentSchemas): void {
  const handler = openAPIRouteHandler(app, {
    excludeStaticFile: false,
    documentation: {
      openapi: "3.1.0",
      info: {
        title: "Grounds Water Balance",
        version,
        description:
          "How much water a place's grounds need, what roofs and tanks bring, what mains water could be given up.",
        license: { name: "MIT", identifier: "MIT" },
      },
      servers: [{ url: "/" }],
      components: {
        schemas: {
          ...Object.fromEntries(
            Object.entries(schemas).map(([name, schema]) => [capital(name), component(schema)]),
          ),
          Problem: component(z.toJSONSchema(problemSchema) as JsonSchema),
        },
      },
    },
  });
  app.get("/api/openapi.json", async (c, next) => {
    c.header("Cache-Control", "no-cache");
    return handler(c, next);
  });
}
