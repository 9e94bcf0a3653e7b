import { shown } from "../survey/record/draft.ts";
import { serverWords } from "../words/en/server.ts";
import { type Fault, Problem } from "./problem.ts";

export interface EstimateRequest {
  survey: unknown;
  /** CSV text or rows; null where the survey's own normals are to serve. */
  weather: string | readonly unknown[] | null;
}

const members = ["survey", "weather"];
/** Unknown fields named at most. */
const mostUnknown = 20;

/** Takes the body of an estimate apart, before either document is read. */
export function estimateRequest(body: unknown): EstimateRequest {
  if (typeof body !== "object" || body === null || Array.isArray(body)) {
    throw new Problem(422, serverWords.refused(1), [{ path: "body", sentence: serverWords.notAnObject }]);
  }
  const { survey = null, weather = null } = body as Record<string, unknown>;
  const faults: Fault[] = [];
  for (const name of Object.keys(body).filter((key) => !members.includes(key))) {
    if (faults.length < mostUnknown) faults.push({ path: shown(name), sentence: serverWords.unknownMember });
  }
  if (survey === null || typeof survey === "string")
    faults.push({ path: "survey", sentence: serverWords.noSurvey });
  if (!isWeather(weather)) {
    throw refused([...faults, { path: "weather", sentence: serverWords.weatherForm }]);
  }
  if (faults.length > 0) throw refused(faults);
  return { survey, weather };
}

/** The problem that lists what is wrong with the documents sent. */
export function refused(faults: readonly Fault[]): Problem {
  return new Problem(422, serverWords.refused(faults.length), faults);
}

function isWeather(weather: unknown): weather is EstimateRequest["weather"] {
  return weather === null || typeof weather === "string" || Array.isArray(weather);
}
