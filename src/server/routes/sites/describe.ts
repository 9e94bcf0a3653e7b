import type { DescribeRouteOptions } from "hono-openapi";
import * as z from "zod";
import { surveyFormat } from "../../../survey/schema/survey.ts";
import { conflictSchema } from "./answers.ts";

type Responses = NonNullable<DescribeRouteOptions["responses"]>;
type Content = Record<string, { schema: object }>;

const done = new Map<z.ZodType, object>();

/** A zod schema for the description of the API; a survey in it is a reference to the one described there. */
export function described(schema: z.ZodType): object {
  const known = done.get(schema) ?? describe(schema);
  done.set(schema, known);
  return known;
}

function describe(schema: z.ZodType): object {
  const { $schema: _dialect, ...rest } = z.toJSONSchema(schema, {
    target: "draft-2020-12",
    unrepresentable: "any",
    override: ({ jsonSchema }) => {
      if (!isSurvey(jsonSchema)) return;
      const { description } = jsonSchema;
      for (const key of Object.keys(jsonSchema)) delete jsonSchema[key];
      Object.assign(jsonSchema, { $ref: "#/components/schemas/Survey", description });
    },
  });
  return rest;
}

function isSurvey({ properties }: z.core.JSONSchema.BaseSchema): boolean {
  const format = properties?.format;
  return typeof format === "object" && format.const === surveyFormat;
}

export function json(schema: z.ZodType): Content {
  return { "application/json": { schema: described(schema) } };
}

export const csv: Content = { "text/csv": { schema: { type: "string" } } };

const problemRef = { $ref: "#/components/schemas/Problem" };

function problem(description: string, schema: object = problemRef) {
  return { description, content: { "application/problem+json": { schema } } };
}

const problems: Record<number, ReturnType<typeof problem>> = {
  400: problem("The body could not be read"),
  404: problem("There is no such site, or nothing of this sort in it"),
  409: problem("There is nothing to undo or to redo, or a draft stands in the way"),
  412: problem("The site was changed meanwhile: both are in the answer", described(conflictSchema)),
  413: problem("The body is too large"),
  415: problem("The body is of another type"),
  422: problem("What was sent is refused, every fault with its path; nothing was changed"),
  428: problem("If-Match is missing"),
};

interface Route {
  summary: string;
  description?: string;
  /** What the body may be. */
  takes?: Content;
  /** What comes back, by media type; none for an empty answer. */
  gives?: Content;
  status?: 200 | 201 | 204;
  fails?: readonly (keyof typeof problems)[];
  query?: Record<string, { description: string; required?: boolean; schema: object }>;
  ifMatch?: "must" | "may";
  key?: boolean;
}

/** One address and method of the sites' API, described. */
export function route(about: Route): DescribeRouteOptions {
  const { summary, description, takes, gives, status = gives ? 200 : 204, fails = [404] } = about;
  const responses: Responses = { [status]: { description: "Done", ...(gives ? { content: gives } : {}) } };
  for (const code of fails) responses[code] = problems[code]!;
  return {
    summary,
    ...(description ? { description } : {}),
    tags: ["sites"],
    parameters: parametersOf(about),
    ...(takes ? { requestBody: { required: true, content: takes } } : {}),
    responses,
  } as DescribeRouteOptions;
}

function parametersOf({ query = {}, ifMatch, key }: Route): object[] {
  const text = { type: "string" };
  const parameters: object[] = Object.entries(query).map(([name, rest]) => ({ name, in: "query", ...rest }));
  if (ifMatch)
    parameters.push({
      name: "If-Match",
      in: "header",
      required: ifMatch === "must",
      description: "The ETag last seen; * writes whatever is there",
      schema: text,
    });
  if (key)
    parameters.push({
      name: "Idempotency-Key",
      in: "header",
      required: false,
      description: "A word of the caller's own: a request sent again with it is carried out once",
      schema: text,
    });
  return parameters;
}
