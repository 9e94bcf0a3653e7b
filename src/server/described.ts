import type { DescribeRouteOptions } from "hono-openapi";

const row = {
  type: "object" as const,
  description: "One day: date (ISO) and any of the record's columns, numbers or null",
  required: ["date", "rain_mm"],
  properties: { date: { type: "string" as const, format: "date" } },
  additionalProperties: { type: ["number", "string", "null"] as ["number", "string", "null"] },
};

/** The body of a request that sends a survey and its weather, for the API's description. @param more beside them */
export function bodyWithSurvey(
  more: Readonly<Record<string, object>> = {},
): DescribeRouteOptions["requestBody"] {
  return {
    required: true,
    content: {
      "application/json": {
        schema: {
          type: "object",
          required: ["survey"],
          additionalProperties: false,
          properties: {
            survey: { $ref: "#/components/schemas/Survey" },
            weather: {
              description: "CSV text with a header row, or rows; without it the survey's normals serve",
              oneOf: [{ type: "string" }, { type: "array", items: row }, { type: "null" }],
            },
            ...more,
          },
        },
      },
    },
  };
}

/** What such a request is answered with: the document, or why not. */
export function answers(
  document: "Report" | "Rounds" | "Choices",
  refused: string,
): DescribeRouteOptions["responses"] {
  return {
    200: {
      description: document,
      content: { "application/json": { schema: { $ref: `#/components/schemas/${document}` } } },
    },
    400: problem("The body is not JSON"),
    413: problem("The body is too large"),
    415: problem("The body is not sent as JSON"),
    422: problem(refused),
  };
}

function problem(description: string) {
  const schema = { $ref: "#/components/schemas/Problem" };
  return { description, content: { "application/problem+json": { schema } } };
}
