import { type Climate, cellNormals } from "./climate.ts";
import { columns, rows } from "./decode.ts";

/** Monthly normals of a place, from the half-degree cell it lies in or the nearest on land. */
export interface PlaceNormals {
  /** Middle of the cell, its mean height, and how far off the place it is. */
  cell: { latitude: number; longitude: number; height_m: number; distance_km: number };
  /** Height that the temperatures are for. */
  elevation_m: number;
  /** That height less the cell's; 0 where no height was given. */
  heightDifference_m: number;
  /** Highest less lowest of the cell and the land round it: a sign of country that a cell is too coarse for. */
  relief_m: number;
  /** A guess: the cell or one beside it is sea. */
  coastal: boolean;
  rain_mm: number[];
  rainDays: number[];
  tmin_c: number[];
  tmax_c: number[];
}

/** Farthest that a cell's middle may be from the place: the reach of a cell that the place lies beside. */
export const farthest_km = 80;

/** Least rain of a day that CRU CL 1.0 counts as wet. */
export const wetDay_mm = 0.1;

/** Fall of temperature with height: the standard atmosphere's. */
export const lapse_c_per_km = 6.5;

const earthRadius_km = 6371;

/**
 * Normals of a place, degrees north and east. Temperatures are moved to `elevation_m`, where given, by 6.5 °C
 * per km; rain is the cell's.
 * @returns null where no land cell's middle lies within 80 km: the sea
 */
export function normalsAt(
  climate: Climate,
  latitude: number,
  longitude: number,
  elevation_m?: number,
): PlaceNormals | null {
  const found = nearestLand(climate, latitude, longitude);
  if (found === null) return null;
  const { row, column, distance_km } = found;
  const { height_m, rain_mm, rainDays, tmin_c, tmax_c } = cellNormals(climate, found.land);
  const round = around(row, column).map((cell) => climate.landCell[cell]!);
  const heights = [height_m, ...round.filter((land) => land >= 0).map((land) => climate.height_m[land]!)];
  const heightDifference_m = elevation_m === undefined ? 0 : elevation_m - height_m;
  return {
    cell: { ...middle(row, column), height_m, distance_km: rounded(distance_km, 10) },
    elevation_m: height_m + heightDifference_m,
    heightDifference_m,
    relief_m: Math.max(...heights) - Math.min(...heights),
    coastal: round.some((land) => land < 0),
    rain_mm: rain_mm.map((mm) => rounded(mm, 10)),
    rainDays: rainDays.map((days) => rounded(days, 100)),
    tmin_c: movedBy(heightDifference_m, tmin_c),
    tmax_c: movedBy(heightDifference_m, tmax_c),
  };
}

/** Temperatures moved up a slope (down, where the difference is below 0), held to what a survey takes. */
export function movedBy(heightDifference_m: number, means_c: readonly number[]): number[] {
  const colder_c = (lapse_c_per_km * heightDifference_m) / 1000;
  return means_c.map((mean) => rounded(Math.max(-60, Math.min(60, mean - colder_c)), 100));
}

function nearestLand(climate: Climate, latitude: number, longitude: number) {
  const row = Math.min(rows - 1, Math.floor((90 - latitude) * 2));
  const column = Math.floor(east(longitude) * 2) % columns;
  const own = climate.landCell[row * columns + column]!;
  if (own >= 0) return { row, column, land: own, distance_km: distanceTo(latitude, longitude, row, column) };
  let nearest: { row: number; column: number; land: number; distance_km: number } | null = null;
  // A cell is 56 km from north to south: two rows hold all that is near, and as many columns as fit in there.
  const wide = Math.min(
    columns / 2,
    Math.ceil(farthest_km / (55 * Math.max(0.01, Math.cos(radians(latitude))))),
  );
  for (let r = Math.max(0, row - 2); r <= Math.min(rows - 1, row + 2); r++) {
    for (let c = column - wide; c <= column + wide; c++) {
      const wrapped = (c + columns) % columns;
      const land = climate.landCell[r * columns + wrapped]!;
      if (land < 0) continue;
      const distance_km = distanceTo(latitude, longitude, r, wrapped);
      if (distance_km <= (nearest?.distance_km ?? farthest_km))
        nearest = { row: r, column: wrapped, land, distance_km };
    }
  }
  return nearest;
}

/** The eight cells round one; none past the poles. */
function around(row: number, column: number): number[] {
  const cells: number[] = [];
  for (const r of [row - 1, row, row + 1]) {
    if (r < 0 || r >= rows) continue;
    for (const c of [column - 1, column, column + 1]) {
      if (r !== row || c !== column) cells.push(r * columns + ((c + columns) % columns));
    }
  }
  return cells;
}

function middle(row: number, column: number): { latitude: number; longitude: number } {
  const eastward = 0.25 + column / 2;
  return { latitude: 89.75 - row / 2, longitude: eastward > 180 ? eastward - 360 : eastward };
}

/** Along the great circle, haversine formula. */
function distanceTo(latitude: number, longitude: number, row: number, column: number): number {
  const to = middle(row, column);
  const dLatitude = radians(to.latitude - latitude);
  const dLongitude = radians(to.longitude - longitude);
  const h =
    Math.sin(dLatitude / 2) ** 2 +
    Math.cos(radians(latitude)) * Math.cos(radians(to.latitude)) * Math.sin(dLongitude / 2) ** 2;
  return 2 * earthRadius_km * Math.asin(Math.min(1, Math.sqrt(h)));
}

function east(longitude: number): number {
  return ((longitude % 360) + 360) % 360;
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

function rounded(value: number, parts: number): number {
  return Math.round(value * parts) / parts;
}
