import { expect, test } from "vitest";
import * as z from "zod";
import { ask } from "../stand-in.ts";
import { testApp } from "./helpers.ts";

const description = z.object({
  paths: z.record(
    z.string(),
    z.record(z.string(), z.looseObject({ responses: z.record(z.string(), z.unknown()) })),
  ),
  components: z.object({ schemas: z.record(z.string(), z.unknown()) }),
});

const text = async () => (await ask(testApp(), "/api/openapi.json")).text();

test("every address of the sites is described, with its methods", async () => {
  const { paths } = description.parse(JSON.parse(await text()));
  const sites = Object.entries(paths).filter(([path]) => /sites/.test(path));
  expect(
    Object.fromEntries(sites.map(([path, methods]) => [path, Object.keys(methods).sort().join()])),
  ).toEqual({
    "/api/sites": "get,post",
    "/api/deleted-sites": "get",
    "/api/sites/{id}": "delete,get,put",
    "/api/sites/{id}/export": "get",
    "/api/sites/{id}/recover": "post",
    "/api/sites/{id}/state": "get",
    "/api/sites/{id}/survey": "get,put",
    "/api/sites/{id}/draft": "delete,put",
    "/api/sites/{id}/versions": "get",
    "/api/sites/{id}/versions/{number}": "get",
    "/api/sites/{id}/compare": "get",
    "/api/sites/{id}/undo": "post",
    "/api/sites/{id}/redo": "post",
    "/api/sites/{id}/restore": "post",
    "/api/sites/{id}/weather": "delete,get,put",
    "/api/sites/{id}/log": "get,post,put",
  });
});

test("writes that want a condition say so, and what a conflict answers", async () => {
  const { paths } = description.parse(JSON.parse(await text()));
  const put = z
    .object({ parameters: z.array(z.object({ name: z.string(), required: z.boolean().optional() })) })
    .parse(paths["/api/sites/{id}/survey"]!.put);
  expect(put.parameters).toContainEqual({ name: "If-Match", required: true });
  const { responses } = paths["/api/sites/{id}/survey"]!.put!;
  expect(JSON.stringify(responses["412"])).toContain('"kept"');
});

test("no reference in the description points nowhere", async () => {
  const whole = await text();
  const names = Object.keys(description.parse(JSON.parse(whole)).components.schemas);
  const references = [...whole.matchAll(/"\$ref":"([^"]+)"/g)].map((match) => match[1]!);
  expect(references).toContain("#/components/schemas/Survey");
  for (const reference of new Set(references))
    expect(names).toContain(reference.replace("#/components/schemas/", ""));
});
