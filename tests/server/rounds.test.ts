import { readFileSync } from "node:fs";
import { Hono } from "hono";
import { describe, expect, test } from "vitest";
import { readRecord } from "../../src/files/record.ts";
import { roundsSchema } from "../../src/report/rounds-schema.ts";
import { Problem, problemResponse } from "../../src/server/problem.ts";
import { roundsOf } from "../../src/server/real-rounds.ts";
import { addRounds } from "../../src/server/routes/rounds.ts";
import { readSurvey } from "../../src/survey/read.ts";
import { recordFromRows } from "../../src/survey/record/strict.ts";
import { faultWords } from "../../src/words/en/faults.ts";

const demo = new URL("../../demo/", import.meta.url);
const survey = JSON.parse(readFileSync(new URL("school.survey.json", demo), "utf8"));
const weather = readFileSync(new URL("seattle.csv", demo), "utf8");

const app = new Hono();
app.onError((error, c) => {
  if (error instanceof Problem) return problemResponse(c, error);
  throw error;
});
const inWords = (faults: Parameters<typeof faultWords>[0][]) => ({
  ok: false as const,
  faults: faults.map((fault) => ({ path: fault.path, sentence: faultWords(fault) })),
});
addRounds(app, {
  readSurvey: (document) => {
    const read = readSurvey(document);
    return "survey" in read ? { ok: true, value: read.survey } : inWords(read.faults);
  },
  readRecord: (given) => {
    const read = typeof given === "string" ? readRecord(given) : recordFromRows(given);
    return "record" in read ? { ok: true, value: read.record } : inWords(read.faults);
  },
  rounds: roundsOf,
});

const post = (body: unknown) =>
  app.request("/api/rounds", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
  });

test("a survey and a record give the rounds document", async () => {
  const answer = await post({ survey, weather, month: 7 });
  expect(answer.status).toBe(200);
  const document = roundsSchema.parse(await answer.json());
  expect(document.months.map(({ month }) => month)).toEqual([7]);
});

test("with a week's facts it gives the week's round", async () => {
  const week = {
    from: "2026-07-06",
    log: "date,kind,id,minutes\n2026-07-04,watering,oval,200\n",
    level_L: { "yard-tank": 900 },
    heat: "hotter",
    hotSpell: 0.4,
    forecast: [{ date: "2026-07-08", rain_mm: 12, chance: 0.6 }],
  };
  const document = roundsSchema.parse(await (await post({ survey, weather, week })).json());
  expect(document.week?.from).toBe("2026-07-06");
  expect(document.week?.tanks.find(({ id }) => id === "yard-tank")?.level_L).toBe(900);
});

describe("a request that is not understood is refused with every fault", () => {
  test.each([
    [{ weather }, ["survey"]],
    [{ survey, weather, month: 13, colour: 1 }, ["colour", "month"]],
    [{ survey, weather, week: "monday" }, ["week"]],
    [
      {
        survey,
        weather,
        week: {
          from: "2026-02-30",
          lastRound: "maybe",
          level_L: { pond: 3, "yard-tank": 9e9 },
          heat: "warm",
          temperatures: { tmin_c: 30, tmax_c: 10 },
          forecast: [{}],
          hotSpell: 2,
        },
      },
      [
        "week.from",
        "week.lastRound",
        "week.temperatures",
        "week.heat",
        "week.level_L.pond",
        "week.level_L.yard-tank",
        "week.forecast[0]",
        "week.hotSpell",
      ],
    ],
    [
      { survey, weather, week: { from: "2026-07-06", log: "date,kind\n2026-07-04,watered\n" } },
      ["week.log, row 2, kind"],
    ],
  ])("%#", async (body, paths) => {
    const answer = await post(body);
    expect(answer.status).toBe(422);
    const { faults } = await answer.json();
    expect(faults.map(({ path }: { path: string }) => path)).toEqual(paths);
  });
});
