import type { Context } from "hono";
import * as z from "zod";
import { type ProblemStatus, problemTitles } from "../words/en/server.ts";

/** One fault: where it is in the document that was sent, and what is wanted there. */
export interface Fault {
  path: string;
  sentence: string;
}

/** An RFC 9457 problem document as this server sends it. */
export const problemSchema = z.strictObject({
  type: z.string().describe("A URI reference that names the kind of problem"),
  title: z.string(),
  status: z.number().int(),
  detail: z.string(),
  faults: z
    .array(z.strictObject({ path: z.string(), sentence: z.string() }))
    .describe("Every fault that was found, each with its path in the document that was sent"),
});

/** Thrown by routes to answer with a problem document. */
export class Problem extends Error {
  override name = "Problem";
  readonly status: ProblemStatus;
  readonly faults: readonly Fault[];

  constructor(status: ProblemStatus, detail: string, faults: readonly Fault[] = []) {
    super(detail);
    this.status = status;
    this.faults = faults;
  }
}

/** The kind of a problem that lists faults; the plain ones say no more than their status. */
const listedFaults = "/api/openapi.json#/components/schemas/Problem";

/**
 * What is said of a request that could not be met.
 * @source RFC 9457, section 3
 */
export function problemDocument(problem: Problem): z.infer<typeof problemSchema> {
  return {
    type: problem.faults.length > 0 ? listedFaults : "about:blank",
    title: problemTitles[problem.status],
    status: problem.status,
    detail: problem.message,
    faults: problem.faults.map(({ path, sentence }) => ({ path, sentence })),
  };
}

/** The answer to a request that could not be met. */
export function problemResponse(
  c: Context,
  problem: Problem,
  headers: Record<string, string> = {},
): Response {
  return c.body(JSON.stringify(problemDocument(problem)), problem.status, {
    "Content-Type": "application/problem+json",
    "Cache-Control": "no-store",
    ...headers,
  });
}
