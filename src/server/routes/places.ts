import type { Context, Hono } from "hono";
import { type DescribeRouteOptions, describeRoute, resolver } from "hono-openapi";
import * as z from "zod";
import type { Climate } from "../../survey/normals/climate.ts";
import { asSurveyNormals, placeCautions, seaFault } from "../../survey/normals/for-survey.ts";
import { normalsAt } from "../../survey/normals/normals-at.ts";
import { normals as normalsSchema } from "../../survey/schema/site.ts";
import {
  normalsCaution,
  normalsFaultWords,
  placeCredits,
  placeGuesses,
  placeQuery,
} from "../../words/en/normals.ts";
import type { PlaceSearch } from "../places/search.ts";
import { type Fault, Problem } from "../problem.ts";

/** What the look-ups are made of; tests put in their own. */
export interface PlacesParts {
  places(): PlaceSearch;
  climate(): Climate;
  /** IANA name of the zone that the map gives. */
  timeZoneAt(latitude: number, longitude: number): string;
}

const most = 8;
const letters = { least: 2, most: 100 };

const placesAnswer = z.strictObject({
  places: z
    .array(
      z.strictObject({
        name: z.string(),
        region: z.string().nullable().describe("State, province or county"),
        country: z.string(),
        countryCode: z.string().describe("ISO 3166-1"),
        latitude: z.number().describe("Degrees, south negative"),
        longitude: z.number().describe("Degrees, west negative"),
        population: z.number().int(),
        timeZone: z.string().describe("IANA name; a guess from the map"),
        closeness: z.number().min(0).max(1).describe("How near the name is to what was typed; 1 is the same"),
      }),
    )
    .describe("Best first"),
  credit: z.string(),
});

const guess = <T extends z.ZodType>(value: T) => z.strictObject({ value, words: z.string() });

const normalsAnswer = z.strictObject({
  normals: normalsSchema,
  cell: z
    .strictObject({
      latitude: z.number(),
      longitude: z.number(),
      height_m: z.number().describe("Mean height of the cell (m)"),
      distance_km: z.number().describe("From the place to the cell's middle (km)"),
    })
    .describe("The half-degree cell that the means are of"),
  heightDifference_m: z.number().describe("Height asked for less the cell's (m); 0 where none was given"),
  relief_m: z.number().describe("Highest less lowest of the cell and those round it (m)"),
  guesses: z
    .strictObject({
      elevation_m: guess(z.number()),
      coastal: guess(z.boolean()),
      timeZone: guess(z.string()),
    })
    .describe("To be shown as guesses and asked about"),
  limits: z.array(z.string()).describe("What to bear in mind of these means, to be said beside the result"),
  credit: z.string(),
});

/** `GET /api/places` and `GET /api/normals`: places by name, and the monthly means of one. */
export function addPlaces(app: Hono, parts: PlacesParts): void {
  app.get("/api/places", describeRoute(placesDescription), (c) => {
    const typed = (c.req.query("q") ?? "").trim();
    if (typed.length < letters.least || typed.length > letters.most)
      throw refused([{ path: "q", sentence: placeQuery.nameWanted }]);
    const places = parts.places().find(typed, most);
    const answer: z.infer<typeof placesAnswer> = {
      places: places.map(({ place, closeness }) => ({
        ...place,
        timeZone: parts.timeZoneAt(place.latitude, place.longitude),
        closeness: Math.round(closeness * 100) / 100,
      })),
      credit: placeCredits.places,
    };
    return kept(c, answer);
  });

  app.get("/api/normals", describeRoute(normalsDescription), (c) => {
    const faults: Fault[] = [];
    const latitude = number(c, "latitude", -90, 90, faults);
    const longitude = number(c, "longitude", -180, 180, faults);
    const elevation_m =
      c.req.query("elevation_m") === undefined ? undefined : number(c, "elevation_m", -430, 6000, faults);
    if (faults.length > 0) throw refused(faults);
    const place = normalsAt(parts.climate(), latitude, longitude, elevation_m);
    if (place === null) throw refused([seaRefusal(latitude, longitude)]);
    const { cell, heightDifference_m, relief_m, coastal } = place;
    const answer: z.infer<typeof normalsAnswer> = {
      normals: asSurveyNormals(place),
      cell,
      heightDifference_m,
      relief_m,
      guesses: {
        elevation_m: { value: cell.height_m, words: placeGuesses.elevation },
        coastal: { value: coastal, words: coastal ? placeGuesses.coastal : placeGuesses.inland },
        timeZone: { value: parts.timeZoneAt(latitude, longitude), words: placeGuesses.timeZone },
      },
      limits: placeCautions(place).map(normalsCaution),
      credit: placeCredits.normals,
    };
    return kept(c, answer);
  });
}

/** The data does not change while the server runs. */
function kept(c: Context, answer: object): Response {
  c.header("Cache-Control", "private, max-age=3600");
  return c.json(answer);
}

function number(c: Context, name: string, from: number, to: number, faults: Fault[]): number {
  const text = c.req.query(name)?.trim() ?? "";
  const value = text === "" ? Number.NaN : Number(text);
  if (value >= from && value <= to) return value;
  faults.push({ path: name, sentence: placeQuery.number(name, from, to, text === "" ? null : text) });
  return Number.NaN;
}

function seaRefusal(latitude: number, longitude: number): Fault {
  const { code, facts } = seaFault(latitude, longitude);
  return { path: "latitude", sentence: normalsFaultWords[code]!(facts) };
}

function refused(faults: readonly Fault[]): Problem {
  return new Problem(422, placeQuery.refused(faults.length), faults);
}

const problem = {
  description: "What was asked is refused, with reasons",
  content: {
    "application/problem+json": { schema: { $ref: "#/components/schemas/Problem" } as const },
  },
};

const query = (name: string, description: string, schema: object, required = true) => ({
  in: "query" as const,
  name,
  description,
  required,
  schema,
});

const placesDescription: DescribeRouteOptions = {
  summary: "Places by name, misspelled too",
  description: "Nearest in name and largest first; a region or country may follow the name.",
  parameters: [
    query("q", "What was typed", { type: "string", minLength: letters.least, maxLength: letters.most }),
  ],
  responses: {
    200: { description: "Places", content: { "application/json": { schema: resolver(placesAnswer) } } },
    422: problem,
  },
};

const normalsDescription: DescribeRouteOptions = {
  summary: "Monthly means of a place on land, with what may be guessed about it",
  parameters: [
    query("latitude", "Degrees, south negative", { type: "number", minimum: -90, maximum: 90 }),
    query("longitude", "Degrees, west negative", { type: "number", minimum: -180, maximum: 180 }),
    query(
      "elevation_m",
      "Height of the site above the sea (m): temperatures are moved to it",
      { type: "number", minimum: -430, maximum: 6000 },
      false,
    ),
  ],
  responses: {
    200: { description: "Means", content: { "application/json": { schema: resolver(normalsAnswer) } } },
    422: problem,
  },
};
