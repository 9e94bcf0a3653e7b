/**
 * The world's land in cells of half a degree, with each cell's monthly normals as they are coded in the
 * climate file. Rows run southward from 89.75° N, columns eastward from 0.25° E.
 * @source CRU CL 1.0: New, Hulme and Jones (1999), Journal of Climate 12:829-856; heights ETOPO5 (NOAA)
 */
export interface Climate {
  /** Place of a cell (row × 720 + column) among the land cells; −1 for sea. */
  landCell: Int32Array;
  height_m: Int16Array;
  /** Twelve arrays each, January first, a code for each land cell. */
  rain: readonly Uint8Array[];
  rainDays: readonly Uint8Array[];
  tmin: readonly Uint8Array[];
  range: readonly Uint8Array[];
}

/** Rain comes from its square root, so that light rain keeps its steps fine. */
export const rain_mm = (code: number): number => (code / 4) ** 2;
export const rainDays = (code: number): number => code / 8;
export const tmin_c = (code: number): number => (code - 142) / 2.5;
export const range_c = (code: number): number => code / 4;

/** Monthly means and height of a land cell by its place among them. */
export function cellNormals(climate: Climate, cell: number) {
  const monthly = (codes: readonly Uint8Array[], value: (code: number) => number) =>
    codes.map((month) => value(month[cell]!));
  const low = monthly(climate.tmin, tmin_c);
  const range = monthly(climate.range, range_c);
  return {
    height_m: climate.height_m[cell]!,
    rain_mm: monthly(climate.rain, rain_mm),
    rainDays: monthly(climate.rainDays, rainDays),
    tmin_c: low,
    tmax_c: low.map((tmin, m) => tmin + range[m]!),
  };
}
