import { expect, test } from "vitest";
import * as z from "zod";
import { ask, standInApp } from "./stand-in.ts";

const app = standInApp();

const described = z.object({
  openapi: z.string(),
  paths: z.record(z.string(), z.record(z.string(), z.unknown())),
  components: z.object({ schemas: z.record(z.string(), z.unknown()) }),
});

test("the API describes itself as OpenAPI 3.1, every address of it", async () => {
  const answer = await ask(app, "/api/openapi.json");
  expect(answer.headers.get("Content-Type")).toContain("application/json");
  const document = described.parse(await answer.json());
  expect(document.openapi).toMatch(/^3\.1\./);
  expect(Object.keys(document.paths).sort()).toEqual([
    "/api/demo",
    "/api/estimate",
    "/api/schema/report.json",
    "/api/schema/survey.json",
    "/healthz",
  ]);
  expect(Object.keys(document.paths["/api/estimate"] ?? {})).toEqual(["post"]);
});

test("no reference in the description points nowhere", async () => {
  const text = await (await ask(app, "/api/openapi.json")).text();
  const document = described.parse(JSON.parse(text));
  const references = [...text.matchAll(/"\$ref":"([^"]+)"/g)].map((match) => match[1] ?? "");
  expect(references.length).toBeGreaterThan(0);
  const names = Object.keys(document.components.schemas).map((name) => `#/components/schemas/${name}`);
  for (const reference of references) expect(names).toContain(reference);
});

test.each(["survey", "report"])("the %s document is published as JSON Schema 2020-12", async (name) => {
  const answer = await ask(app, `/api/schema/${name}.json`);
  expect(answer.headers.get("Content-Type")).toBe("application/schema+json");
  const schema = z.looseObject({ $schema: z.string(), type: z.string() }).parse(await answer.json());
  expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  expect(schema.type).toBe("object");
});
