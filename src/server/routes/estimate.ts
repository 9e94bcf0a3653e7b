import type { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { describeRoute } from "hono-openapi";
import { serverWords } from "../../words/en/server.ts";
import { readJson } from "../body.ts";
import { estimateRequest, refused } from "../estimate-request.ts";
import { limits } from "../limits.ts";
import { estimateDescription } from "../openapi.ts";
import type { ServerParts } from "../parts.ts";
import { Problem } from "../problem.ts";

type HasBeds = { beds: readonly unknown[] };

/** `POST /api/estimate`: { survey, weather } in, the report out. Nothing is kept. */
export function addEstimate<Survey extends HasBeds>(app: Hono, parts: ServerParts<Survey>): void {
  const limit = bodyLimit({
    maxSize: limits.body_bytes,
    onError: () => {
      throw new Problem(413, serverWords.bodyTooLarge(limits.body_bytes / 1024 ** 2));
    },
  });
  app.post("/api/estimate", describeRoute(estimateDescription), limit, async (c) => {
    const report = answer(await readJson(c), parts);
    c.header("Cache-Control", "no-store");
    return c.json(report);
  });
}

function answer<Survey extends HasBeds>(body: unknown, parts: ServerParts<Survey>): object {
  const request = estimateRequest(body);
  const survey = parts.readSurvey(request.survey);
  const record = request.weather === null ? null : parts.readRecord(request.weather);
  if (!survey.ok || record?.ok === false) {
    throw refused([survey, record].flatMap((read) => (read === null || read.ok ? [] : read.faults)));
  }
  const days = record?.value.days ?? 0;
  const beds = survey.value.beds.length;
  if (beds * days > limits.bedDays) {
    throw refused([{ path: "beds", sentence: serverWords.tooManyBedDays(limits.bedDays, beds, days) }]);
  }
  const report = parts.estimate(survey.value, record?.value ?? null);
  if (!report.ok) throw refused(report.faults);
  return report.value;
}
