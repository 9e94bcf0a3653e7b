import type { WeatherRecord } from "../engine/weather/record.ts";
import { FaultCollector } from "../survey/collector.ts";
import { type Fault, mostFaults } from "../survey/faults.ts";
import { readSurvey } from "../survey/read.ts";
import type { LogEntry } from "../survey/schema/log.ts";
import { type SiteEnvelope, siteEnvelope, siteFormat, siteVersion } from "../survey/schema/site-document.ts";
import { checkShape } from "../survey/shape.ts";
import type { Survey } from "../survey/survey.ts";
import { foundFacts } from "../survey/wanted.ts";
import { readLog } from "./log.ts";
import { readRecord } from "./record.ts";

export interface SiteFile {
  survey: Survey;
  /** The record's own text, and what was read from it. */
  weather: { csv: string; record: WeatherRecord } | null;
  log: LogEntry[];
  versions: SiteFileVersion[];
  /** Number of the version at hand, from 1; null where the survey is not one of the versions. */
  current: number | null;
  draft: { savedAt: string; survey: object } | null;
}

export interface SiteFileVersion {
  savedAt: string;
  words: string;
  /** Number of the version it was made from; null for a first one. */
  after: number | null;
  survey: Survey;
}

export type SiteOutcome = { site: SiteFile } | { faults: Fault[] };

/** Reads a site's file from a value that was JSON: the site, or every fault with its path, and nothing else. */
export function readSiteDocument(value: unknown): SiteOutcome {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return { faults: [{ path: "site", code: "site-not-fields", facts: foundFacts(value) }] };
  const kind = kindFault(value as Record<string, unknown>);
  if (kind) return { faults: [kind] };
  const found = new FaultCollector(Object.keys(siteEnvelope.shape));
  const envelope = checkShape(siteEnvelope, value, found);
  if (envelope === null)
    return { faults: [...found.list(), ...surveyFaults((value as SiteEnvelope).survey)] };
  return readParts(envelope);
}

function kindFault({ format, version }: Record<string, unknown>): Fault | null {
  const fault = (path: string, code: string, facts: Fault["facts"]) => ({ path, code, facts });
  if (format !== siteFormat)
    return fault("format", "site-format", { wanted: siteFormat, ...foundFacts(format) });
  if (version === siteVersion) return null;
  if (typeof version === "number" && Number.isInteger(version) && version > siteVersion)
    return fault("version", "site-version-newer", { found: version, known: siteVersion });
  return fault("version", "site-version", { wanted: siteVersion, ...foundFacts(version) });
}

function readParts(envelope: SiteEnvelope): SiteOutcome {
  const { weather = null, log = null, versions = [], draft = null } = envelope;
  const survey = readSurvey(envelope.survey);
  const record = weather === null ? null : readRecord(weather);
  const entries = log === null ? { entries: [] } : readLog(log);
  const read = versions.map((version) => readSurvey(version.survey));
  const faults = [
    ...("faults" in survey ? within("survey", survey.faults) : []),
    ...(record && "faults" in record ? beside("weather", record.faults) : []),
    ...("faults" in entries ? beside("log", entries.faults) : []),
    ...read.flatMap((version, i) =>
      "faults" in version ? within(`versions[${i}].survey`, version.faults) : [],
    ),
    ...orderFaults(envelope),
  ];
  if (faults.length > 0 || "faults" in survey || "faults" in entries || (record && "faults" in record))
    return { faults: shortened(faults) };
  const kept = read.flatMap((version, i): SiteFileVersion[] => {
    if ("faults" in version) return [];
    const { savedAt, words, after = i } = versions[i]!;
    return [{ savedAt, words, after: after === 0 ? null : after, survey: version.survey }];
  });
  const current = currentOf(survey.survey, kept, envelope.current ?? kept.length);
  const csv = weather ?? "";
  return {
    site: {
      survey: survey.survey,
      weather: record && { csv, record: record.record },
      log: entries.entries,
      versions: kept,
      current,
      draft,
    },
  };
}

/** The number of the version that the survey is; null where it is another, or there is none. */
function currentOf(survey: Survey, versions: readonly SiteFileVersion[], number: number): number | null {
  const version = versions[number - 1];
  return version && JSON.stringify(version.survey) === JSON.stringify(survey) ? number : null;
}

/** A version comes after one that is listed before it; the one at hand is one of them. */
function orderFaults({ versions = [], current }: SiteEnvelope): Fault[] {
  const faults = versions.flatMap(({ after }, i): Fault[] => {
    if (after === undefined || after <= i) return [];
    return [{ path: `versions[${i}].after`, code: "site-after", facts: { found: after, number: i + 1 } }];
  });
  if (current !== undefined && current > versions.length)
    faults.push({ path: "current", code: "site-current", facts: { found: current, most: versions.length } });
  return faults;
}

function surveyFaults(survey: unknown): Fault[] {
  if (survey === undefined) return [];
  const read = readSurvey(survey);
  return "faults" in read ? within("survey", read.faults) : [];
}

/** `beds[0].area_m2` of a survey becomes `survey.beds[0].area_m2`. */
function within(path: string, faults: readonly Fault[]): Fault[] {
  return faults.map((fault) => ({
    ...fault,
    path: fault.path === "survey" ? path : `${path}.${fault.path}`,
  }));
}

/** `row 2, rain_mm` of a table becomes `weather, row 2, rain_mm`. */
function beside(table: string, faults: readonly Fault[]): Fault[] {
  return faults.map((fault) => {
    const isWhole = fault.path === "record" || fault.path === table;
    return { ...fault, path: isWhole ? table : `${table}, ${fault.path}` };
  });
}

function shortened(faults: Fault[]): Fault[] {
  if (faults.length <= mostFaults) return faults;
  const listed = faults.slice(0, mostFaults - 1);
  return [...listed, { path: "site", code: "more-faults", facts: { count: faults.length - listed.length } }];
}
