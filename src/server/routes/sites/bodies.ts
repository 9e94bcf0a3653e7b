import type { Context, MiddlewareHandler } from "hono";
import { bodyLimit } from "hono/body-limit";
import { readLog } from "../../../files/log.ts";
import { readRecord } from "../../../files/record.ts";
import { readSiteDocument, type SiteFile } from "../../../files/site-document.ts";
import type { Fault } from "../../../survey/faults.ts";
import { readLogRows } from "../../../survey/log.ts";
import { readSurvey } from "../../../survey/read.ts";
import { recordFromRows } from "../../../survey/record/strict.ts";
import type { LogEntry } from "../../../survey/schema/log.ts";
import { siteFormat, siteVersion } from "../../../survey/schema/site-document.ts";
import type { Survey } from "../../../survey/survey.ts";
import { faultWords } from "../../../words/en/faults.ts";
import { serverWords } from "../../../words/en/server.ts";
import { siteWords } from "../../../words/en/sites.ts";
import { decode, readJson } from "../../body.ts";
import { limits } from "../../limits.ts";
import { Problem } from "../../problem.ts";

/** Refuses a body beyond the server's limit before it is read. */
export function limitBody(most_bytes: number = limits.body_bytes): MiddlewareHandler {
  return bodyLimit({
    maxSize: most_bytes,
    onError: () => {
      throw new Problem(413, serverWords.bodyTooLarge(most_bytes / 1024 ** 2));
    },
  });
}

/** The problem that lists what is wrong with a document sent. */
export function refusal(faults: readonly Fault[]): Problem {
  const inWords = faults.map((fault) => ({ path: fault.path, sentence: faultWords(fault) }));
  return new Problem(422, serverWords.refused(faults.length), inWords);
}

export async function readFields(c: Context): Promise<Record<string, unknown>> {
  const body = await readJson(c);
  if (typeof body !== "object" || body === null || Array.isArray(body))
    throw new Problem(422, siteWords.bodyObject, [{ path: "body", sentence: siteWords.bodyObject }]);
  return body as Record<string, unknown>;
}

export function surveyFrom(value: unknown): Survey {
  const read = readSurvey(value);
  if ("faults" in read) throw refusal(read.faults);
  return read.survey;
}

/**
 * A site from a body: a whole document, or its parts without format and version. Weather may come as rows.
 */
export async function readSite(c: Context): Promise<SiteFile> {
  const body = await readFields(c);
  const isBare = body.format === undefined && body.version === undefined;
  const rows = Array.isArray(body.weather) ? recordFromRows(body.weather) : null;
  if (rows && "faults" in rows) throw refusal(rows.faults);
  const document = {
    ...(isBare ? { format: siteFormat, version: siteVersion } : {}),
    ...body,
    ...(rows ? { weather: csvOfRows(body.weather as Record<string, unknown>[]) } : {}),
  };
  const read = readSiteDocument(document);
  if ("faults" in read) throw refusal(read.faults);
  return read.site;
}

/** Rows of a record that were read and found in order, as the CSV that they would have come as. */
function csvOfRows(rows: readonly Record<string, unknown>[]): string {
  const columns = ["date", ...new Set(rows.flatMap(Object.keys).filter((name) => name !== "date"))];
  const lines = rows.map((row) => columns.map((column) => String(row[column] ?? "").trim()).join(","));
  return `${[columns.join(","), ...lines].join("\n")}\n`;
}

/** A weather record from a body of CSV text. */
export async function readWeatherBody(c: Context) {
  const csv = await readCsv(c);
  const read = readRecord(csv);
  if ("faults" in read) throw refusal(read.faults);
  return { csv, record: read.record };
}

/** Entries of the log from a body: CSV text, or JSON { entries }. */
export async function readLogBody(c: Context): Promise<LogEntry[]> {
  const read = isCsv(c) ? readLog(await readCsv(c)) : readLogRows(await rowsIn(c), rowPath);
  if ("faults" in read) throw refusal(read.faults);
  return read.entries;
}

const rowPath = (index: number, field?: string) =>
  field === undefined ? `entries[${index}]` : `entries[${index}].${field}`;

async function rowsIn(c: Context): Promise<unknown[]> {
  const { entries, ...others } = await readFields(c);
  if (!Array.isArray(entries) || Object.keys(others).length > 0)
    throw new Problem(422, siteWords.entriesForm, [{ path: "entries", sentence: siteWords.entriesForm }]);
  return entries;
}

function isCsv(c: Context): boolean {
  return /^text\/csv\s*(;|$)/i.test(c.req.header("Content-Type") ?? "");
}

async function readCsv(c: Context): Promise<string> {
  const charset = /charset\s*=\s*"?([\w-]+)/i.exec(c.req.header("Content-Type") ?? "")?.[1] ?? "utf-8";
  const encoding = c.req.header("Content-Encoding")?.toLowerCase() ?? "identity";
  if (!isCsv(c) || charset.toLowerCase() !== "utf-8") throw new Problem(415, siteWords.notCsv);
  if (encoding !== "identity") throw new Problem(415, serverWords.encoded);
  const text = decode(await c.req.arrayBuffer());
  if (text.trim() === "") throw new Problem(400, siteWords.emptyCsv);
  return text;
}
