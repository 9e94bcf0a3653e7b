import type { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { describeRoute } from "hono-openapi";
import type { WeatherRecord } from "../../engine/weather/record.ts";
import { choicesText } from "../../words/en/choices-command.ts";
import { serverWords } from "../../words/en/server.ts";
import { readJson } from "../body.ts";
import { choicesRequest, mostDrawsOfRequest } from "../choices-request.ts";
import { answers, bodyWithSurvey } from "../described.ts";
import { refused } from "../estimate-request.ts";
import { limits } from "../limits.ts";
import type { Read, ServerParts } from "../parts.ts";
import { Problem } from "../problem.ts";

type HasBeds = { beds: readonly unknown[] };

/** What the route is made of; tests put in their own. */
export interface ChoicesParts<Survey extends HasBeds>
  extends Pick<ServerParts<Survey>, "readSurvey" | "readRecord"> {
  /** The decision document, or the reasons why there is none. */
  choose(
    survey: Survey,
    record: WeatherRecord | null,
    asked: { budget: number | null; draws: number; seed: number },
  ): Read<object>;
}

/** Beds × days × draws of one request: a thousand draws of a school's ten beds over 40 years. */
const mostBedDaysDrawn = 150_000_000;

/** `POST /api/choices`: { survey, weather, budget, draws, seed } in, the decision document out. Nothing is kept. */
export function addChoices<Survey extends HasBeds>(app: Hono, parts: ChoicesParts<Survey>): void {
  const limit = bodyLimit({
    maxSize: limits.body_bytes,
    onError: () => {
      throw new Problem(413, serverWords.bodyTooLarge(limits.body_bytes / 1024 ** 2));
    },
  });
  app.post("/api/choices", describeRoute(description), limit, async (c) => {
    const { survey: document, weather, ...asked } = choicesRequest(await readJson(c));
    const survey = parts.readSurvey(document);
    const record = weather === null ? null : parts.readRecord(weather);
    if (!survey.ok || record?.ok === false)
      throw refused([survey, record].flatMap((read) => (read === null || read.ok ? [] : read.faults)));
    const days = record?.value.days ?? 0;
    const beds = survey.value.beds.length;
    if (beds * days > limits.bedDays)
      throw refused([{ path: "beds", sentence: serverWords.tooManyBedDays(limits.bedDays, beds, days) }]);
    if (beds * days * asked.draws > mostBedDaysDrawn)
      throw refused([{ path: "draws", sentence: choicesText.tooManyDraws(asked.draws, beds, days) }]);
    const choices = parts.choose(survey.value, record?.value ?? null, asked);
    if (!choices.ok) throw refused(choices.faults);
    c.header("Cache-Control", "no-store");
    return c.json(choices.value);
  });
}

const whole = (most: number, meaning: string) => ({
  type: "integer" as const,
  minimum: 0,
  maximum: most,
  description: meaning,
});

const description: Parameters<typeof describeRoute>[0] = {
  summary: "Says what could be done, what each of it saves and costs, and how sure that is",
  description: "Nothing that is sent is kept. Every fault in either document is listed with its path.",
  requestBody: bodyWithSurvey({
    budget: { type: ["number", "null"], minimum: 0, description: "What may be spent in all" },
    draws: whole(mostDrawsOfRequest, "Draws of what is not known for sure"),
    seed: whole(Number.MAX_SAFE_INTEGER, "Seed of the draws"),
  }),
  responses: answers("Choices", "The survey or the record is refused"),
};
