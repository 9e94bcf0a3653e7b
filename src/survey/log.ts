import { FaultCollector } from "./collector.ts";
import type { Fault } from "./faults.ts";
import {
  type LogColumn,
  type LogEntry,
  logColumns,
  logEntry,
  logFields,
  mostLogEntries,
} from "./schema/log.ts";
import { checkShape } from "./shape.ts";
import { foundFacts } from "./wanted.ts";

export type LogOutcome = { entries: LogEntry[] } | { faults: Fault[] };

type Row = Readonly<Record<string, unknown>>;

/**
 * Reads entries of the log, each an object of its fields; blank ones are left out beforehand.
 * @param at what a row is called, and one of its fields: `row 3, minutes`
 */
export function readLogRows(
  rows: readonly unknown[],
  at: (index: number, field?: string) => string,
): LogOutcome {
  const faults: Fault[] = [];
  const entries: LogEntry[] = [];
  if (rows.length > mostLogEntries)
    return {
      faults: [{ path: "log", code: "log-too-long", facts: { rows: rows.length, most: mostLogEntries } }],
    };
  rows.forEach((row, index) => {
    if (typeof row !== "object" || row === null || Array.isArray(row)) {
      faults.push({ path: at(index), code: "log-row-not-fields", facts: foundFacts(row) });
      return;
    }
    const found = new FaultCollector(logColumns);
    const entry = checkShape(logEntry, row, found);
    for (const fault of found.list()) faults.push({ ...fault, path: at(index, fault.path) });
    if (entry === null) return;
    const misfits = kindFaults(entry, row as Row);
    for (const { field, code, facts } of misfits) faults.push({ path: at(index, field), code, facts });
    if (misfits.length === 0) entries.push(entry);
  });
  return faults.length > 0 ? { faults } : { entries };
}

interface Misfit {
  field?: string;
  code: string;
  facts: Fault["facts"];
}

/** What an entry of its kind lacks, and what has no place in it. */
function kindFaults(entry: LogEntry, row: Row): Misfit[] {
  const { kind } = entry;
  const { must, oneOf = [], may } = logFields[kind];
  const has = (field: LogColumn) => row[field] !== undefined;
  const allowed: readonly LogColumn[] = ["date", "kind", ...must, ...oneOf, ...may];
  const lacking = must.filter((field) => !has(field));
  const strange = logColumns.filter((field) => has(field) && !allowed.includes(field));
  return [
    ...lacking.map((field) => ({ field, code: "log-lacks", facts: { kind } })),
    ...(oneOf.length > 0 && !oneOf.some(has)
      ? [{ code: "log-lacks-both", facts: { kind, fields: oneOf } }]
      : []),
    ...strange.map((field) => ({ field, code: "log-not-here", facts: { kind, fields: allowed.slice(2) } })),
  ];
}
