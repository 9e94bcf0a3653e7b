import type { LogEntry } from "../../src/survey/schema/log.ts";
import type { Survey } from "../../src/survey/survey.ts";

export type { LogEntry };

export interface Fault {
  path: string;
  sentence: string;
}

/** A site as the server has it: what `/api/sites/ID/state` and every write of it answer. */
export interface SiteState {
  id: string;
  name: string;
  createdAt: string;
  changedAt: string;
  etag: string;
  version: number;
  versions: number;
  savedAt: string;
  words: string;
  survey: Survey;
  draft: { savedAt: string; survey: object; faults: Fault[] } | null;
  undo: string | null;
  redo: string | null;
  weather: { savedAt: string; from: string; to: string; days: number; etag: string } | null;
  log: { entries: number; etag: string };
}

/** What a server says of a request that it did not carry out. */
export interface ProblemAnswer {
  status: number;
  detail: string;
  faults: Fault[];
}

/** A write that came too late: what is kept, what was sent, and what differs. */
export interface ConflictAnswer extends ProblemAnswer {
  kept: SiteState;
  changes: Fault[];
}

export interface SiteLine {
  id: string;
  name: string;
  createdAt: string;
  changedAt: string;
  deletedAt: string | null;
  hasDraft: boolean;
}

export interface VersionLine {
  number: number;
  after: number | null;
  savedAt: string;
  words: string;
}
