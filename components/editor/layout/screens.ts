import type { NamedList } from "../../../src/survey/edit/ids.ts";
import { field, fields, fieldsOf, type Node } from "./nodes.ts";
import { budget, finding, group, measure, meter, price, readings } from "./plan.ts";
import { mulch, plantings, shade, soil } from "./plants.ts";
import {
  draw,
  habitFields,
  leak,
  restriction,
  roof,
  tank,
  tap,
  wateringFields,
  wateringMore,
} from "./water.ts";

/** A screen that holds fields: where it is reached, where its fields stand, and which they are. */
export interface Sheet {
  slug: string;
  nodes: readonly Node[];
}

/** A part of the survey: one sheet, or a list of entries with a sheet, and further ones, each. */
export type Part =
  | { slug: string; group: string; in: readonly string[]; nodes: readonly Node[] }
  | { slug: string; group: string; list: NamedList; entry: readonly Node[]; sheets: readonly Sheet[] };

const nested = (holder: string, nodes: readonly { field: string }[]) =>
  fields(...nodes.map((node) => `${holder}.${node.field}`));

const bedSheets: readonly Sheet[] = [
  { slug: "plants", nodes: [plantings, { more: fields("rootDepth_m", "depletionFraction") }] },
  { slug: "cover", nodes: fields("leafCover", "leafCoverMonthly") },
  { slug: "mulch", nodes: [mulch] },
  { slug: "soil", nodes: soil },
  { slug: "shade", nodes: shade },
  {
    slug: "watering",
    nodes: [...nested("watering", wateringFields), { more: nested("watering", wateringMore) }],
  },
  { slug: "habit", nodes: [{ special: "habit", of: "watering.habit", nodes: habitFields }] },
  {
    slug: "days",
    nodes: [
      ...fields("watering.allowedDays", "watering.maxMinutes"),
      { special: "dry-days", of: "dryOn" },
      field("priority"),
    ],
  },
  { slug: "plan", nodes: [{ drawing: "outline" }, field("outline_m")] },
];

const list = (
  group_: string,
  name: NamedList,
  entry: readonly Node[],
  sheets: readonly Sheet[] = [],
): Part => ({ slug: name, group: group_, list: name, entry, sheets });

/** Every part, in the order of a walk. */
export const partList: readonly Part[] = [
  {
    slug: "place",
    group: "place",
    in: ["site"],
    nodes: [
      ...fields("name", "latitude", "longitude", "elevation_m", "coastal", "timeZone"),
      { more: fields("windHeight_m") },
    ],
  },
  {
    slug: "weather",
    group: "place",
    in: ["site"],
    nodes: [
      {
        group: "normals",
        isAlone: true,
        nodes: fields(
          "source",
          "rain_mm",
          "rainDays",
          "tmin_c",
          "tmax_c",
          "et0_mm",
          "elevation_m",
          "wetDay_mm",
        ),
      },
    ],
  },
  list("growing", "beds", [...fields("name", "area_m2"), { more: [{ special: "id", of: "id" }] }], bedSheets),
  list("water", "roofs", roof),
  list("water", "tanks", tank),
  list("water", "taps", tap),
  list("water", "draws", draw),
  list("water", "leaks", leak),
  {
    slug: "hours",
    group: "rules",
    in: ["site"],
    nodes: [{ rows: "hours", begin: { days: [] }, nodes: fields("days", "fromTime", "toTime") }],
  },
  {
    slug: "absences",
    group: "rules",
    in: ["site"],
    nodes: [{ rows: "absences", begin: {}, nodes: fields("name", "from", "to", "carer") }],
  },
  list("rules", "restrictions", restriction),
  { slug: "price", group: "plan", in: [], nodes: price },
  { slug: "budget", group: "plan", in: [], nodes: budget },
  list("plan", "measures", measure),
  list("proof", "meters", meter),
  { slug: "readings", group: "proof", in: [], nodes: [readings] },
  list("proof", "groups", group),
  list("proof", "found", finding),
];

export interface Place {
  part: Part;
  sheet: string;
}

/** The pattern of every field with where it is edited: the part and, within an entry, the sheet's slug. */
export const places: ReadonlyMap<string, Place> = new Map(partList.flatMap(placesOf));

function placesOf(part: Part): [string, Place][] {
  if (!("list" in part)) {
    const within = part.in.join(".");
    return part.nodes
      .flatMap((node) => fieldsOf(node, within))
      .map((pattern) => [pattern, { part, sheet: "" }]);
  }
  return [{ slug: "", nodes: part.entry }, ...part.sheets].flatMap(({ slug, nodes }) =>
    nodes
      .flatMap((node) => fieldsOf(node, `${part.list}[]`))
      .map((pattern): [string, Place] => [pattern, { part, sheet: slug }]),
  );
}

export function partAt(slug: string): Part | undefined {
  return partList.find((part) => part.slug === slug);
}
