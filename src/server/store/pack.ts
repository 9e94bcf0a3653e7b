import { deflateRawSync, inflateRawSync } from "node:zlib";
import type { Survey } from "../../survey/survey.ts";

/** Surveys are kept as deflated JSON: every version is kept, and one differs little from the next. */
export function packSurvey(survey: Survey): Buffer {
  return deflateRawSync(JSON.stringify(survey));
}

export function unpackSurvey(packed: Buffer): Survey {
  return JSON.parse(inflateRawSync(packed).toString("utf8"));
}
