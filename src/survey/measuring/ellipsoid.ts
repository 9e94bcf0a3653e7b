import geographic from "geographiclib-geodesic";

/** A place: longitude and latitude in degrees, in GeoJSON's order. */
export type LongitudeLatitude = readonly [number, number];

const { WGS84 } = geographic.Geodesic;

/**
 * Area and perimeter of a ring of places joined by geodesics on the WGS84 ellipsoid, either way round, the first
 * not repeated at the end; m² and m.
 * @source Karney 2013, Algorithms for geodesics, Journal of Geodesy 87:43–55
 */
export function ringOnEllipsoid(ring: readonly LongitudeLatitude[]): {
  area_m2: number;
  perimeter_m: number;
} {
  const polygon = WGS84.Polygon(false);
  for (const [longitude, latitude] of ring) polygon.AddPoint(latitude, longitude);
  const { area = 0, perimeter } = polygon.Compute(false, true);
  return { area_m2: Math.abs(area), perimeter_m: perimeter };
}

/** Metres east and north of an origin: geodesic distance and bearing, true to a millimetre over a few kilometres. */
export function metresFrom(origin: LongitudeLatitude, place: LongitudeLatitude): [number, number] {
  const { s12 = 0, azi1 = 0 } = WGS84.Inverse(origin[1], origin[0], place[1], place[0]);
  const bearing = (azi1 * Math.PI) / 180;
  return [s12 * Math.sin(bearing), s12 * Math.cos(bearing)];
}

/** The place so many metres east and north of an origin: the way back from `metresFrom`. */
export function placeAt(
  origin: LongitudeLatitude,
  [east_m, north_m]: readonly [number, number],
): [number, number] {
  const bearing = (Math.atan2(east_m, north_m) * 180) / Math.PI;
  const { lat2 = 0, lon2 = 0 } = WGS84.Direct(origin[1], origin[0], bearing, Math.hypot(east_m, north_m));
  return [lon2, lat2];
}
