import * as z from "zod";
import { moment, whole } from "./parts.ts";
import { surveySchema } from "./survey.ts";

export const siteFormat = "grounds-site";
export const siteVersion = 1;

export const mostVersions = 20_000;
const longestWords = 50_000;

const versionOf = <Survey extends z.ZodType>(survey: Survey) =>
  z
    .strictObject({
      savedAt: moment("When it was saved, in UTC"),
      words: z.string().max(longestWords).describe("What changed from the version before, a line a change"),
      after: whole(
        "Number of the version it was made from; the one listed before where left out",
        1,
        mostVersions,
      ).optional(),
      survey: survey.describe("The survey as it then was"),
    })
    .describe("A version saved; its number is its place in the list, from 1");

const documentOf = <Survey extends z.ZodType>(survey: Survey) =>
  z
    .strictObject({
      format: z.literal(siteFormat).describe("Kind of document"),
      version: z.literal(siteVersion).describe("Version of the format"),
      survey: survey.describe("The survey as it is now"),
      weather: z.string().nullable().describe("The weather record as CSV text; null for none").optional(),
      log: z.string().nullable().describe("The log as CSV text; null for none").optional(),
      versions: z
        .array(versionOf(survey))
        .max(mostVersions)
        .describe("Every version saved, oldest first")
        .optional(),
      current: whole(
        "Number of the version that is at hand; the last where left out",
        1,
        mostVersions,
      ).optional(),
      versionsLeftOut: whole(
        "Older versions that the file leaves out for its size",
        0,
        10_000_000,
      ).optional(),
      draft: z
        .strictObject({
          savedAt: moment("When it was saved, in UTC"),
          survey: z.looseObject({}).describe("The survey as it was typed, faults and all"),
        })
        .describe("Entries with faults, kept beside the last survey that was right")
        .optional(),
    })
    .describe("A site as kept: its survey, weather record, log and every version, in one file");

/** The whole document. */
export const siteSchema = documentOf(surveySchema);

/** The document about its surveys: those are read for themselves, older forms too. */
export const siteEnvelope = documentOf(z.looseObject({}));

export type SiteEnvelope = z.infer<typeof siteEnvelope>;
