import { Hono } from "hono";
import { openAPIRouteHandler } from "hono-openapi";
import { describe, expect, it } from "vitest";
import { readClimate } from "../../src/server/climate-file.ts";
import { readPlaces, timeZoneAt } from "../../src/server/places.ts";
import { Problem, problemResponse } from "../../src/server/problem.ts";
import { addPlaces } from "../../src/server/routes/places.ts";

const app = new Hono();
app.onError((error, c) => {
  if (error instanceof Problem) return problemResponse(c, error);
  throw error;
});
addPlaces(app, { places: readPlaces, climate: readClimate, timeZoneAt });
app.get("/openapi", openAPIRouteHandler(app, { documentation: {} }));

interface Answer {
  status: number;
  type: string;
  body: Json;
}

type Json = Readonly<Record<string, unknown>>;

async function get(path: string): Promise<Answer> {
  const response = await app.request(path);
  const body = (await response.json()) as Json;
  return { status: response.status, type: response.headers.get("Content-Type") ?? "", body };
}

/** The value some names deep in a document. */
function at(body: Json, ...names: (string | number)[]): unknown {
  return names.reduce<unknown>((within, name) => (within as Json | undefined)?.[name], body);
}

describe("GET /api/places", () => {
  it("gives places, best first, with their time zone and who is to be credited", async () => {
    const { status, body } = await get(`/api/places?q=${encodeURIComponent("Melborne")}`);
    expect(status).toBe(200);
    expect(at(body, "places", 0)).toEqual({
      name: "Melbourne",
      region: "Victoria",
      country: "Australia",
      countryCode: "AU",
      latitude: -37.814,
      longitude: 144.96332,
      population: 4246375,
      timeZone: "Australia/Melbourne",
      closeness: 0.89,
    });
    expect(body.credit).toContain("GeoNames");
    expect(body.credit).toContain("CC BY 4.0");
  });

  it("gives an empty list where nothing is near", async () => {
    const { status, body } = await get("/api/places?q=xyzzyqw");
    expect([status, body.places]).toEqual([200, []]);
  });

  it.each(["/api/places", "/api/places?q=", "/api/places?q=a", `/api/places?q=${"a".repeat(101)}`])(
    "says what it wants: %s",
    async (path) => {
      const { status, type, body } = await get(path.slice(0, 300));
      expect(status).toBe(422);
      expect(type).toBe("application/problem+json");
      expect(body.faults).toEqual([{ path: "q", sentence: "A place name must have 2 to 100 letters." }]);
    },
  );
});

describe("GET /api/normals", () => {
  it("gives the normals of a place in the survey's form, with guesses and limits", async () => {
    const { status, body } = await get("/api/normals?latitude=-37.81&longitude=145.01");
    expect(status).toBe(200);
    expect(Math.round(Number(at(body, "normals", "rain_mm", 6)))).toBe(72);
    expect(body).toMatchObject({
      normals: { wetDay_mm: 0.1, elevation_m: 255 },
      cell: { latitude: -37.75, longitude: 145.25, height_m: 255 },
      heightDifference_m: 0,
      guesses: {
        elevation_m: { value: 255 },
        // The bay is narrower than a cell: the map cannot see that it is near.
        coastal: { value: false, words: expect.stringContaining("guess") },
        timeZone: { value: "Australia/Melbourne" },
      },
      credit: expect.stringContaining("University of East Anglia"),
    });
    expect(String(body.limits)).toMatch(/50 km wide.*1961–1990/);
  });

  it("guesses the coast and warns of rain there", async () => {
    const { body } = await get("/api/normals?latitude=-33.87&longitude=151.21");
    expect(at(body, "guesses", "coastal", "value")).toBe(true);
    expect(String(body.limits)).toContain("30–50% off");
  });

  it("moves temperatures to a height and says the difference", async () => {
    const low = await get("/api/normals?latitude=-37.81&longitude=145.01");
    const high = await get("/api/normals?latitude=-37.81&longitude=145.01&elevation_m=855");
    expect(high.body.heightDifference_m).toBe(600);
    const [warm, cool] = [low, high].map(({ body }) => Number(at(body, "normals", "tmax_c", 0)));
    expect(warm! - cool!).toBeCloseTo(3.9, 2);
    expect(String(high.body.limits)).toContain("600 m above");
  });

  it("refuses the sea with a sentence", async () => {
    const { status, body } = await get("/api/normals?latitude=-45&longitude=-120");
    expect(status).toBe(422);
    expect(body.faults).toEqual([
      { path: "latitude", sentence: expect.stringContaining("No land lies within 80 km") },
    ]);
  });

  it("lists every number that is not one", async () => {
    const { status, body } = await get("/api/normals?latitude=95&longitude=east&elevation_m=");
    expect(status).toBe(422);
    const faults = body.faults as { path: string; sentence: string }[];
    expect(faults.map((fault) => `${fault.path}: ${fault.sentence}`)).toEqual([
      'latitude: latitude must be a number between -90 and 90. You entered "95".',
      'longitude: longitude must be a number between -180 and 180. You entered "east".',
      "elevation_m: elevation_m must be a number between -430 and 6,000. It is not there.",
    ]);
  });
});

it("both look-ups are described", async () => {
  const { body } = await get("/openapi");
  for (const path of ["/api/places", "/api/normals"]) {
    const answer = ["responses", "200", "content", "application/json", "schema"];
    expect(at(body, "paths", path, "get", ...answer)).toBeDefined();
  }
});
