import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { createApp } from "../../src/server/app.ts";
import { readDemo, realParts } from "../../src/server/real-parts.ts";
import { ask } from "./stand-in.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const app = createApp(realParts(root, () => 8017, []));
const demo = readDemo(root);

function post(path: string, body: object) {
  const headers = { "Content-Type": "application/json" };
  return ask(app, path, { method: "POST", headers, body: JSON.stringify(body) });
}

test.each(["survey", "report", "rounds", "choices", "site"])(
  "the %s document's schema is published",
  async (name) => {
    const answer = await ask(app, `/api/schema/${name}.json`);
    expect(answer.status).toBe(200);
    expect(await answer.json()).toMatchObject({ $id: `grounds-${name}.schema.json` });
  },
);

test("no reference of the whole description points nowhere", async () => {
  const text = await (await ask(app, "/api/openapi.json")).text();
  const names = Object.keys(JSON.parse(text).components.schemas).map(
    (name) => `#/components/schemas/${name}`,
  );
  const references = new Set(
    [...text.matchAll(/"\$ref":"(#\/components\/[^"]+)"/g)].map((match) => match[1]),
  );
  expect([...references].filter((reference) => !names.includes(reference!))).toEqual([]);
});

test("rounds of the demo come over HTTP, with a row for each bed and month", async () => {
  const answer = await post("/api/rounds", { survey: demo.survey, weather: demo.weather });
  expect(answer.status).toBe(200);
  const rounds = await answer.json();
  expect(rounds).toMatchObject({ format: "grounds-rounds", version: 1 });
  expect(JSON.stringify(rounds)).toContain("everyDays");
});

test("a decision on the demo comes over HTTP, the same for the same seed", async () => {
  const ask = { survey: demo.survey, weather: demo.weather, draws: 20, seed: 3 };
  const [first, second] = [await post("/api/choices", ask), await post("/api/choices", ask)];
  expect(first.status).toBe(200);
  const text = await first.text();
  expect(JSON.parse(text)).toMatchObject({ format: "grounds-choices", version: 1 });
  expect(await second.text()).toBe(text);
});
