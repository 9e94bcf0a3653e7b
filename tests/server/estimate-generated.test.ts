import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { createApp } from "../../src/server/app.ts";
import { readDemo, realParts } from "../../src/server/real-parts.ts";
import { ask } from "./stand-in.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const app = createApp(realParts(root, () => 8017, []));

function estimate(body: object) {
  const headers = { "Content-Type": "application/json" };
  return ask(app, "/api/estimate", { method: "POST", headers, body: JSON.stringify(body) });
}

test("an estimate without a record is worked on years generated from the place's normals", async () => {
  const answer = await estimate({ survey: readDemo(root).survey });
  expect(answer.status).toBe(200);
  const report = await answer.json();
  expect(report.weather.generated).toEqual({ years: 50, seed: 1 });
  expect(report.cautions.join(" ")).toMatch(/generated from monthly means/);
});

test("in the middle of an ocean there are no normals, and the fault says so by path", async () => {
  const survey = structuredClone(readDemo(root).survey) as { site: { latitude: number; longitude: number } };
  Object.assign(survey.site, { latitude: -30, longitude: -120 });
  const answer = await estimate({ survey });
  expect(answer.status).toBe(422);
  expect(await answer.json()).toMatchObject({ faults: [{ path: "site.latitude" }] });
});
