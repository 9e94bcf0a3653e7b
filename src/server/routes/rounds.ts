import type { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { type DescribeRouteOptions, describeRoute } from "hono-openapi";
import type { WeatherRecord } from "../../engine/weather/record.ts";
import { shown } from "../../survey/record/draft.ts";
import { roundsRequestWords } from "../../words/en/rounds-request.ts";
import { serverWords } from "../../words/en/server.ts";
import { readJson } from "../body.ts";
import { answers, bodyWithSurvey } from "../described.ts";
import { limits } from "../limits.ts";
import type { Read } from "../parts.ts";
import { type Fault, Problem } from "../problem.ts";

/** What the rounds are asked with, before any document is read. */
export interface RoundsRequest {
  survey: unknown;
  /** CSV text or rows; null where the survey's own normals are to serve. */
  weather: string | readonly unknown[] | null;
  /** 1–12 for one month of the table. */
  month: number | null;
  /** The week's facts as sent; null for the table alone. */
  week: unknown;
}

/** What the route is made of; the server puts in readers and the working. */
export interface RoundsParts<Survey extends { beds: readonly unknown[] }> {
  readSurvey(document: unknown): Read<Survey>;
  readRecord(weather: string | readonly unknown[]): Read<WeatherRecord>;
  /** The rounds document, or every reason why there is none. */
  rounds(survey: Survey, record: WeatherRecord | null, request: RoundsRequest): Read<object>;
}

const members = ["survey", "weather", "month", "week"];
const mostUnknown = 20;

export const roundsDescription: DescribeRouteOptions = {
  summary:
    "Works out the watering rounds of a survey: the month table, and a week's round where one is asked for",
  description: "Nothing that is sent is kept. Every fault in any document is listed with its path.",
  requestBody: bodyWithSurvey({
    month: { description: "One month of the table", type: "integer", minimum: 1, maximum: 12 },
    week: {
      description: "The week's facts",
      type: "object",
      required: ["from"],
      properties: {
        from: { type: "string", format: "date", description: "First day of the week" },
        log: { type: "string", description: "The log as CSV text" },
        level_L: {
          type: "object",
          additionalProperties: { type: "number" },
          description: "Today's dips by tank (L)",
        },
        lastRound: {
          enum: ["all", "some", "none", "unknown"],
          description: "What was done of the last round",
        },
        heat: { enum: ["cooler", "usual", "hotter"], description: "The week's heat" },
        temperatures: {
          type: "object",
          properties: { tmin_c: { type: "number" }, tmax_c: { type: "number" } },
          description: "The week's temperatures (°C), in place of its heat",
        },
        forecast: {
          type: "array",
          items: {
            type: "object",
            properties: {
              date: { type: "string", format: "date" },
              rain_mm: { type: "number" },
              chance: { type: "number", minimum: 0, maximum: 1 },
            },
          },
          description: "Rain that is forecast, with its chance",
        },
        hotSpell: {
          type: ["number", "null"],
          minimum: 0,
          maximum: 1,
          description: "Chance of a hot spell in the week, where one is forecast",
        },
      },
    },
  }),
  responses: answers("Rounds", "The survey, the record or the week is refused"),
};

/** `POST /api/rounds`: { survey, weather, month?, week? } in, the rounds document out. Nothing is kept. */
export function addRounds<Survey extends { beds: readonly unknown[] }>(
  app: Hono,
  parts: RoundsParts<Survey>,
): void {
  const limit = bodyLimit({
    maxSize: limits.body_bytes,
    onError: () => {
      throw new Problem(413, serverWords.bodyTooLarge(limits.body_bytes / 1024 ** 2));
    },
  });
  app.post("/api/rounds", describeRoute(roundsDescription), limit, async (c) => {
    const answer = work(roundsRequest(await readJson(c)), parts);
    c.header("Cache-Control", "no-store");
    return c.json(answer);
  });
}

function work<Survey extends { beds: readonly unknown[] }>(
  request: RoundsRequest,
  parts: RoundsParts<Survey>,
): object {
  const survey = parts.readSurvey(request.survey);
  const record = request.weather === null ? null : parts.readRecord(request.weather);
  if (!survey.ok || record?.ok === false)
    throw refused([survey, record].flatMap((read) => (read === null || read.ok ? [] : read.faults)));
  const days = record?.value.days ?? 0;
  const beds = survey.value.beds.length;
  if (beds * days > limits.bedDays)
    throw refused([{ path: "beds", sentence: serverWords.tooManyBedDays(limits.bedDays, beds, days) }]);
  const rounds = parts.rounds(survey.value, record?.value ?? null, request);
  if (!rounds.ok) throw refused(rounds.faults);
  return rounds.value;
}

function roundsRequest(body: unknown): RoundsRequest {
  if (typeof body !== "object" || body === null || Array.isArray(body))
    throw refused([{ path: "body", sentence: serverWords.notAnObject }]);
  const { survey = null, weather = null, month = null, week = null } = body as Record<string, unknown>;
  const unknown = Object.keys(body).filter((key) => !members.includes(key));
  const faults: Fault[] = unknown
    .slice(0, mostUnknown)
    .map((name) => ({ path: shown(name), sentence: roundsRequestWords.unknownMember }));
  if (survey === null) faults.push({ path: "survey", sentence: serverWords.noSurvey });
  const isWeather = weather === null || typeof weather === "string" || Array.isArray(weather);
  if (!isWeather) faults.push({ path: "weather", sentence: serverWords.weatherForm });
  const isMonth = month === null || (Number.isInteger(month) && Number(month) >= 1 && Number(month) <= 12);
  if (!isMonth) faults.push({ path: "month", sentence: roundsRequestWords.month(shown(month)) });
  if (faults.length > 0 || !isWeather) throw refused(faults);
  return { survey, weather, month: month === null ? null : Number(month), week };
}

function refused(faults: readonly Fault[]): Problem {
  return new Problem(422, serverWords.refused(faults.length), faults);
}
