/** What the server says of the sites that it keeps. */
import { count } from "./count.ts";

export const siteWords = {
  noSuchSite: "There is no such site here. It may have been taken out: see /api/deleted-sites.",
  noSuchVersion: "There is no such version of this site.",
  noWeather: "No weather record is kept with this site.",
  noDraft: "There is no draft of this site.",
  notTakenOut: "Only a site that was taken out can be removed for good. Take it out first.",
  nothingToUndo: "There is nothing to undo: this is the first version.",
  nothingToRedo: "There is nothing to redo.",
  draftInTheWay:
    "Entries with faults are kept as a draft. Set them right, or let the draft go, before going back or forth.",
  conditionNeeded:
    'Say which state you are changing: send the ETag that you last saw as If-Match. "*" overwrites whatever is there.',
  keyTooLong: "Idempotency-Key must be at most 200 characters.",
  overtaken:
    "The site was changed elsewhere since you read it. Nothing was overwritten: what is kept and what you sent are both in this answer. To keep yours, send it again with the ETag in kept; to keep both, save yours as a new site.",
  tableOvertaken:
    "This was changed elsewhere since you read it, and nothing was overwritten. Read it again, then send yours with its ETag.",
  versionForm: (name: string, found: string) =>
    `${name} must be the number of a version, from 1. You entered ${found === "" ? "nothing" : found}.`,
  restoreForm: 'The body must be { "version": N } with the number of a version, from 1.',
  bodyObject: "The body must be a group of fields, in curly brackets.",
  draftTooLarge: (most: number) => `A draft must be at most ${count(most)} characters long.`,
  entriesForm: 'The body must be { "entries": [ … ] }, a list of entries of the log.',
  notCsv: "The table must be sent as text/csv, in UTF-8.",
  emptyCsv: "The table is empty. It needs a header row.",
  diskFull:
    "The disk is full: nothing of this was saved, and nothing kept before is lost. Make room, then send it again.",
  diskRefuses: (code: string) =>
    `The file could not be written (${code}): nothing of this was saved. See that the data folder can be written.`,
  busy: "Another program is writing the file. Send this again in a moment.",
} as const;
