import * as z from "zod";
import { readSurvey } from "../../../survey/read.ts";
import { surveySchema } from "../../../survey/schema/survey.ts";
import { faultWords } from "../../../words/en/faults.ts";
import { problemSchema } from "../../problem.ts";
import type { SiteState } from "../../store/state.ts";

const moment = z.iso.datetime();
const tag = z.string().describe("To be sent as If-Match with the next write, in quotation marks");
const faults = z.array(z.strictObject({ path: z.string(), sentence: z.string() }));

/** A site as it stands. */
export const stateSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  createdAt: moment,
  changedAt: moment,
  etag: tag,
  version: z.number().int().describe("Number of the version at hand"),
  versions: z.number().int().describe("Versions kept"),
  savedAt: moment.describe("When the version at hand was saved"),
  words: z.string().describe("What changed with it, a line a change"),
  survey: surveySchema,
  draft: z
    .strictObject({ savedAt: moment, survey: z.looseObject({}), faults })
    .nullable()
    .describe("Entries with faults, kept beside the last survey that was right"),
  undo: z.string().nullable().describe("What undo would take back; null for nothing"),
  redo: z.string().nullable().describe("What redo would bring again; null for nothing"),
  weather: z
    .strictObject({
      savedAt: moment,
      from: z.iso.date(),
      to: z.iso.date(),
      days: z.number().int(),
      etag: tag,
    })
    .nullable(),
  log: z.strictObject({ entries: z.number().int(), etag: tag }),
});

export type StateAnswer = z.infer<typeof stateSchema>;

export const lineSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  createdAt: moment,
  changedAt: moment,
  deletedAt: moment.nullable().describe("When it was taken out; null where it is not"),
  hasDraft: z.boolean(),
});

export const listSchema = z.strictObject({ sites: z.array(lineSchema).describe("Last changed first") });

export const versionsSchema = z.strictObject({
  current: z.number().int().describe("Number of the version at hand"),
  versions: z
    .array(
      z.strictObject({
        number: z.number().int(),
        after: z.number().int().nullable().describe("The version it was made from"),
        savedAt: moment,
        words: z.string().describe("What changed, a line a change"),
      }),
    )
    .describe("Newest first"),
});

export const changesSchema = z.strictObject({
  from: z.number().int(),
  to: z.number().int(),
  changes: z.array(z.strictObject({ path: z.string(), sentence: z.string() })),
});

/** The problem of a write that came too late, with both surveys and what differs between them. */
export const conflictSchema = problemSchema.extend({
  kept: stateSchema.describe("The site as it stands"),
  sent: z.looseObject({}).nullable().describe("The survey that was sent; null where none was"),
  changes: z
    .array(z.strictObject({ path: z.string(), sentence: z.string() }))
    .describe("What the survey sent would change in the one kept"),
});

export function stateAnswer(state: SiteState): StateAnswer {
  const { row, survey, savedAt, words, draft, undo, redo, versions, weather, entries } = state;
  return {
    id: row.id,
    name: survey.site.name,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    etag: row.tag,
    version: row.current,
    versions,
    savedAt,
    words,
    survey,
    draft: draft && {
      savedAt: draft.savedAt,
      survey: draft.survey as Record<string, unknown>,
      faults: draftFaults(draft.survey),
    },
    undo,
    redo,
    weather: weather && { ...weather, etag: row.weather_tag },
    log: { entries, etag: row.log_tag },
  };
}

function draftFaults(survey: unknown): { path: string; sentence: string }[] {
  const read = readSurvey(survey);
  if (!("faults" in read)) return [];
  return read.faults.map((fault) => ({ path: fault.path, sentence: faultWords(fault) }));
}
