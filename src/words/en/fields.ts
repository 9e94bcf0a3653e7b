import { siteFieldNames } from "./siteFieldNames.ts";
import { surveyFieldNames } from "./surveyFieldNames.ts";

const names: Readonly<Record<string, string>> = { ...surveyFieldNames, ...siteFieldNames };

/** A field of the log is named by its row: `row 3, minutes`. */
const logRow = /^.*\brow \d+, /;

/** The name of the field at a path, as its label says it; the bare field name where there is none. */
export function fieldName(path: string): string {
  const steps = path
    .replace(logRow, "log.")
    .replaceAll(/\[\d+\]/g, "")
    .split(".");
  for (let from = 0; from < steps.length; from++) {
    const key = steps.slice(from).join(".");
    if (Object.hasOwn(names, key)) return names[key]!;
  }
  return steps[steps.length - 1]!;
}

/** One entry of a list, by the name of the list. */
const entries: Readonly<Record<string, string>> = {
  beds: "A bed",
  roofs: "A roof",
  tanks: "A tank",
  taps: "A tap",
  draws: "A draw",
  leaks: "A leak",
  restrictions: "A restriction",
  measures: "A measure",
  meters: "A meter",
  readings: "A reading",
  groups: "A group",
  found: "A finding",
  plantings: "A planting",
  obstructions: "An obstruction",
  absences: "An absence",
  hours: "An entry of the watering hours",
  steps: "A price step",
  perKLAlso: "A charge",
  lines: "A line of the quote",
  flowAt: "A level of the flow",
  outline_m: "A corner of the outline",
  linked: "A linked tank",
  feeds: "An id that the meter feeds",
  exempt: "An exempt bed",
  days: "A day of the week",
  allowedDays: "A day of the week",
  months: "A month",
  dryOn: "A day to stay dry",
  methods: "A method",
  supplies: "A supply",
  versions: "A version",
};

/** As fieldName, for a path that may end at an entry of a list: `beds[2]` is a bed. */
export function subject(path: string): string {
  const list = /(?:^|\.)(\w+)\[\d+\]$/.exec(path)?.[1];
  return (list !== undefined && Object.hasOwn(entries, list) && entries[list]) || fieldName(path);
}
