import * as z from "zod";
import { date, id, quantity, text, whole } from "./parts.ts";

/** Columns of the log as a table, in order. */
export const logColumns = [
  "date",
  "kind",
  "id",
  "minutes",
  "litres",
  "rain_mm",
  "days",
  "level_L",
  "group",
] as const;

export type LogColumn = (typeof logColumns)[number];

/** A bed watered, rain read off a gauge, a tank dipped. */
export const logKinds = ["watering", "rain", "dip"] as const;

export type LogKind = (typeof logKinds)[number];

/** What an entry of each kind must have beside its date, and what it may have. One of `oneOf` must be there. */
export const logFields: Readonly<
  Record<LogKind, { must: readonly LogColumn[]; oneOf?: readonly LogColumn[]; may: readonly LogColumn[] }>
> = {
  watering: { must: ["id"], oneOf: ["minutes", "litres"], may: ["group"] },
  rain: { must: ["rain_mm"], may: ["id", "days", "group"] },
  dip: { must: ["id", "level_L"], may: ["group"] },
};

/** One line of the log; which fields go with which kind is checked beside the schema. */
export const logEntry = z
  .strictObject({
    date: date("Day it was done, read or dipped; for rain of several days the last of them"),
    kind: z.enum(logKinds).describe("What the entry is"),
    id: id("Id of the bed watered, of the tank dipped, of a gauge").optional(),
    minutes: quantity("Minutes of watering; 0 says that it was left out", "min", 0, 1_440).optional(),
    litres: quantity("Litres of watering", "L", 0, 10_000_000).optional(),
    rain_mm: quantity("Rain since the gauge was last read", "mm", 0, 2_000).optional(),
    days: whole("Days that the gauge gathered, 1 where left out", 1, 366).optional(),
    level_L: quantity("Level of the tank", "L", 0, 10_000_000).optional(),
    group: text("Nickname or id of the group that wrote it", 64).optional(),
  })
  .describe("An entry of the log");

export type LogEntry = z.infer<typeof logEntry>;

/** A log as a list of its entries, as the site document keeps it. */
export const logSchema = z.array(logEntry).describe("A log of watering, rain and dips");

export const mostLogEntries = 200_000;
