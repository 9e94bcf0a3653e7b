import * as z from "zod";
import { choicesSchema } from "../report/choices-schema.ts";
import { roundsSchema } from "../report/rounds-schema.ts";
import { reportSchema } from "../report/schema.ts";
import { logSchema } from "../survey/schema/log.ts";
import { siteSchema } from "../survey/schema/site-document.ts";
import { surveySchema } from "../survey/schema/survey.ts";
import { subject } from "../words/en/fields.ts";

/** The JSON Schema files of data/schemas, made from the schemas that read and write the documents. */
export function schemaFiles(): { name: string; text: string }[] {
  return [
    schemaFile("grounds-survey.schema.json", "Grounds survey", surveySchema, subject),
    schemaFile("grounds-report.schema.json", "Grounds report", reportSchema, null),
    schemaFile("grounds-choices.schema.json", "Grounds choices", choicesSchema, null),
    schemaFile("grounds-rounds.schema.json", "Grounds rounds", roundsSchema, null),
    schemaFile("grounds-log.schema.json", "Grounds log", logSchema, null),
    schemaFile("grounds-site.schema.json", "Grounds site", siteSchema, subject),
  ];
}

function schemaFile(
  name: string,
  title: string,
  schema: z.ZodType,
  titleOf: ((path: string) => string) | null,
) {
  const { $schema, ...rest } = z.toJSONSchema(schema, {
    target: "draft-2020-12",
    override: ({ jsonSchema, path }) => {
      // Of our forms of text only this one is a format that the standard knows; the others have their pattern.
      if (jsonSchema.format !== "date") delete jsonSchema.format;
      const field = fieldPath(path);
      if (titleOf && field !== null) jsonSchema.title = titleOf(field);
    },
  });
  const document = { $schema, $id: name, title, ...rest };
  return { name, text: `${JSON.stringify(document, null, 1)}\n` };
}

/** The document's path that a place in its JSON Schema speaks of; null for the document and for alternatives. */
function fieldPath(path: readonly (string | number)[]): string | null {
  let field = "";
  for (let at = 0; at < path.length; at++) {
    if (path[at] === "properties") field += `${field === "" ? "" : "."}${path[++at]}`;
    else if (path[at] === "items") field += "[0]";
    else return null;
  }
  return field === "" ? null : field;
}
