import {
  type LongitudeLatitude,
  metresFrom,
  placeAt,
  ringOnEllipsoid,
} from "../survey/measuring/ellipsoid.ts";
import { type Corner, crossingSides } from "../survey/measuring/polygon.ts";

/** A shape read from a GeoJSON file. */
export interface DrawnShape {
  /** Its `name` property, or "" where it has none. */
  name: string;
  area_m2: number;
  perimeter_m: number;
  /** Corners in metres east and north of `origin`. */
  outline_m: Corner[];
}

/** What is wrong with a file or one of its shapes, by code; `at` counts shapes from 0, null for the whole file. */
export interface ShapeFault {
  at: number | null;
  code:
    | "not-json"
    | "not-geojson"
    | "no-polygons"
    | "too-many-shapes"
    | "not-a-ring"
    | "outside-the-world"
    | "sides-cross";
  facts: Readonly<Record<string, number>>;
}

export interface DrawnShapes {
  origin: LongitudeLatitude | null;
  shapes: DrawnShape[];
  faults: ShapeFault[];
}

const mostShapes = 1_000;
const mostCorners = 2_000;

/** One polygon: its rings as written, and the feature's name. */
interface Found {
  name: string;
  rings: unknown;
}

/**
 * Polygons of a GeoJSON text, areas on the WGS84 ellipsoid with holes taken away. Whatever is wrong is listed,
 * and what is right is read beside it.
 * @source RFC 7946: longitude before latitude, a ring's first place repeated at its end, holes after the outer ring
 */
export function readGeoJson(text: string): DrawnShapes {
  let document: unknown;
  try {
    document = JSON.parse(text);
  } catch {
    return { origin: null, shapes: [], faults: [{ at: null, code: "not-json", facts: {} }] };
  }
  const found = polygonsOf(document);
  if (!found) return { origin: null, shapes: [], faults: [{ at: null, code: "not-geojson", facts: {} }] };
  if (found.length === 0)
    return { origin: null, shapes: [], faults: [{ at: null, code: "no-polygons", facts: {} }] };
  if (found.length > mostShapes)
    return {
      origin: null,
      shapes: [],
      faults: [{ at: null, code: "too-many-shapes", facts: { found: found.length, most: mostShapes } }],
    };
  return shapesOf(found);
}

function shapesOf(found: readonly Found[]): DrawnShapes {
  const faults: ShapeFault[] = [];
  const read = found.flatMap(({ name, rings }, at) => {
    const checked = ringsOf(rings, at);
    if ("code" in checked) {
      faults.push(checked);
      return [];
    }
    return [{ name, rings: checked.rings }];
  });
  const origin = read[0]?.rings[0]?.[0] ?? null;
  const shapes = read.map(({ name, rings: [outer, ...holes] }) => {
    const { area_m2, perimeter_m } = ringOnEllipsoid(outer!);
    const taken_m2 = holes.reduce((sum, hole) => sum + ringOnEllipsoid(hole).area_m2, 0);
    const outline_m = outer!.map((place) => metresFrom(origin!, place));
    return { name, area_m2: area_m2 - taken_m2, perimeter_m, outline_m };
  });
  return { origin, shapes, faults };
}

/** Every polygon of the document, whatever it is wrapped in; null where it is no GeoJSON. */
function polygonsOf(part: unknown, name = ""): Found[] | null {
  if (part === null || typeof part !== "object") return null;
  const { type, features, geometry, geometries, coordinates, properties } = part as Record<string, unknown>;
  const named = nameOf(properties) ?? name;
  switch (type) {
    case "FeatureCollection":
      return listed(features, named);
    case "GeometryCollection":
      return listed(geometries, named);
    case "Feature":
      return geometry === null ? [] : polygonsOf(geometry, named);
    case "Polygon":
      return [{ name, rings: coordinates }];
    case "MultiPolygon":
      return Array.isArray(coordinates) ? coordinates.map((rings: unknown) => ({ name, rings })) : null;
    case "Point":
    case "MultiPoint":
    case "LineString":
    case "MultiLineString":
      return [];
    default:
      return null;
  }
}

function listed(parts: unknown, name: string): Found[] | null {
  if (!Array.isArray(parts)) return null;
  const all = parts.map((part: unknown) => polygonsOf(part, name));
  return all.includes(null) ? null : all.flatMap((found) => found ?? []);
}

function nameOf(properties: unknown): string | null {
  if (properties === null || typeof properties !== "object") return null;
  const { name } = properties as Record<string, unknown>;
  return typeof name === "string" ? name.slice(0, 200) : null;
}

function ringsOf(rings: unknown, at: number): { rings: LongitudeLatitude[][] } | ShapeFault {
  if (!Array.isArray(rings) || rings.length === 0) return { at, code: "not-a-ring", facts: {} };
  const read: LongitudeLatitude[][] = [];
  for (const ring of rings as unknown[]) {
    if (!Array.isArray(ring) || ring.length < 4 || ring.length > mostCorners || !ring.every(isPlace))
      return { at, code: "not-a-ring", facts: {} };
    const places = ring.map(([longitude, latitude]): LongitudeLatitude => [longitude!, latitude!]);
    const outside = places.find(
      ([longitude, latitude]) => Math.abs(longitude) > 180 || Math.abs(latitude) > 90,
    );
    if (outside)
      return { at, code: "outside-the-world", facts: { longitude: outside[0], latitude: outside[1] } };
    const [first, last] = [places[0]!, places.at(-1)!];
    if (first[0] !== last[0] || first[1] !== last[1]) return { at, code: "not-a-ring", facts: {} };
    const open = places.slice(0, -1);
    const crossing = crossingSides(open);
    if (crossing) return { at, code: "sides-cross", facts: { one: crossing[0] + 1, other: crossing[1] + 1 } };
    read.push(open);
  }
  return { rings: read };
}

function isPlace(place: unknown): place is number[] {
  return (
    Array.isArray(place) && place.length >= 2 && place.slice(0, 2).every((value) => Number.isFinite(value))
  );
}

/** Outlines in metres as a GeoJSON text, each a feature with its name; nine places of a degree are a tenth of a millimetre. */
export function writeGeoJson(
  origin: LongitudeLatitude,
  shapes: readonly { name: string; outline_m: readonly Corner[] }[],
): string {
  const features = shapes.map(({ name, outline_m }) => {
    const places = outline_m.map((corner) =>
      placeAt(origin, corner).map((degrees) => Number(degrees.toFixed(9))),
    );
    const ring = anticlockwise(outline_m) ? places : places.toReversed();
    return {
      type: "Feature",
      properties: { name },
      geometry: { type: "Polygon", coordinates: [[...ring, ring[0]]] },
    };
  });
  return JSON.stringify({ type: "FeatureCollection", features }, null, 1);
}

/** RFC 7946 wants outer rings anticlockwise. */
function anticlockwise(corners: readonly Corner[]): boolean {
  return (
    corners.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = corners[(i + 1) % corners.length]!;
      return sum + x * nextY - nextX * y;
    }, 0) >= 0
  );
}
