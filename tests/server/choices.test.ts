import { Hono } from "hono";
import { describe, expect, test } from "vitest";
import { readRecord } from "../../src/files/record.ts";
import { choicesSchema } from "../../src/report/choices-schema.ts";
import { choose } from "../../src/server/choose.ts";
import { Problem, problemResponse } from "../../src/server/problem.ts";
import { addChoices } from "../../src/server/routes/choices.ts";
import type { Fault } from "../../src/survey/faults.ts";
import { readSurvey } from "../../src/survey/read.ts";
import { faultWords } from "../../src/words/en/faults.ts";
import { textOf } from "../helpers/worked.ts";

const inWords = (faults: readonly Fault[]) => ({
  ok: false as const,
  faults: faults.map((fault) => ({ path: fault.path, sentence: faultWords(fault) })),
});

function app(): Hono {
  const server = new Hono();
  server.onError((error, c) => {
    if (error instanceof Problem) return problemResponse(c, error);
    throw error;
  });
  addChoices(server, {
    readSurvey: (document) => {
      const read = readSurvey(document);
      return "survey" in read ? { ok: true, value: read.survey } : inWords(read.faults);
    },
    readRecord: (weather) => {
      const read = readRecord(String(weather));
      return "record" in read ? { ok: true, value: read.record } : inWords(read.faults);
    },
    choose,
  });
  return server;
}

const ask = (body: unknown) =>
  app().request("/api/choices", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
  });

const survey = JSON.parse(textOf("demo/school.survey.json"));
const weather = textOf("demo/seattle.csv");

describe("POST /api/choices", () => {
  test("gives the decision document", async () => {
    const answer = await ask({ survey, weather, budget: 9000, draws: 3, seed: 2 });
    expect(answer.status).toBe(200);
    const choices = choicesSchema.parse(await answer.json());
    expect(choices).toMatchObject({ budget: 9000, spread: { draws: 3, seed: 2 } });
  });

  test("lists every fault of what it is asked, with its path", async () => {
    const answer = await ask({ survey, weather, budget: -1, draws: 1e6, seed: 0.5 });
    expect(answer.status).toBe(422);
    const { faults } = (await answer.json()) as { faults: { path: string }[] };
    expect(faults.map(({ path }) => path)).toEqual(["budget", "draws", "seed"]);
  });

  test("refuses a survey with faults, and a body that is no object", async () => {
    const broken = await ask({ survey: { ...survey, version: 99 }, weather });
    expect(broken.status).toBe(422);
    expect((await ask([1])).status).toBe(422);
  });
});
