import { getPosition } from "suncalc";
import { everyDay } from "./every-day.ts";
import type { Obstruction } from "./grounds.ts";
import { dayNumber } from "./weather/dates.ts";
import type { Calendar, Sky, WeatherSeries } from "./weather/series.ts";

/** A stretch of the horizon under one elevation, degrees; `to` is above `from`, both within 0–360. */
interface HorizonPiece {
  from_deg: number;
  to_deg: number;
  elevation_deg: number;
}

/** The record has neither temperatures nor sun, so shade cannot be worked out. */
export class ShadeNeedsSky extends Error {
  override name = "ShadeNeedsSky";
  readonly bed: string;
  constructor(bed: string) {
    super(`Bed ${bed} is shaded; the record has neither temperatures nor sun.`);
    this.bed = bed;
  }
}

/**
 * Cuts obstructions into pieces that do not overlap; where they did, the higher stands. A sector may
 * pass through north.
 */
export function horizon(obstructions: readonly Obstruction[]): HorizonPiece[] {
  const sectors = obstructions.flatMap(unrolled);
  const edges = [...new Set(sectors.flatMap((s) => [s.from_deg, s.to_deg]))].sort((a, b) => a - b);
  const pieces: HorizonPiece[] = [];
  for (let k = 1; k < edges.length; k++) {
    const from_deg = edges[k - 1]!;
    const to_deg = edges[k]!;
    const over = sectors.filter((s) => s.from_deg <= from_deg && s.to_deg >= to_deg);
    if (over.length === 0) continue;
    pieces.push({ from_deg, to_deg, elevation_deg: Math.max(...over.map((s) => s.elevation_deg)) });
  }
  return pieces;
}

function unrolled({ fromAzimuth_deg, toAzimuth_deg, elevation_deg }: Obstruction): HorizonPiece[] {
  if (toAzimuth_deg - fromAzimuth_deg >= 360) return [{ from_deg: 0, to_deg: 360, elevation_deg }];
  const from_deg = within360(fromAzimuth_deg);
  const to_deg = within360(toAzimuth_deg);
  if (from_deg < to_deg) return [{ from_deg, to_deg, elevation_deg }];
  return [
    { from_deg, to_deg: 360, elevation_deg },
    { from_deg: 0, to_deg, elevation_deg },
  ].filter((piece) => piece.to_deg > piece.from_deg);
}

function within360(azimuth_deg: number): number {
  return ((azimuth_deg % 360) + 360) % 360;
}

/** Share of an isotropic sky that level ground sees: 1 − Σ (width/360) sin²(elevation). */
export function skyView(pieces: readonly HorizonPiece[]): number {
  const hidden = pieces.map(
    (p) => ((p.to_deg - p.from_deg) / 360) * Math.sin((p.elevation_deg * Math.PI) / 180) ** 2,
  );
  return 1 - hidden.reduce((sum, share) => sum + share, 0);
}

/** Height of the skyline in a direction, degrees; 0 where it is open. */
export function skylineAt_deg(pieces: readonly HorizonPiece[], azimuth_deg: number): number {
  return pieces.find((p) => azimuth_deg >= p.from_deg && azimuth_deg < p.to_deg)?.elevation_deg ?? 0;
}

/** Where the sun stands above the true horizon, and how strong its clear-sky beam is on the level. */
export interface SunInstant {
  azimuth_deg: number;
  altitude_deg: number;
  /** sin(altitude) · 0.7^(1/sin(altitude)): simple air mass. */
  beam: number;
}

const stepsPerDay = 144;
const step_ms = 600_000;
const day_ms = 86_400_000;

/**
 * The sun every ten minutes of 15 `month` (1–12) 2021 from local mean solar midnight, while it is up.
 * suncalc 2 gives degrees clockwise from true north.
 */
export function sunPath(latitude_deg: number, longitude_deg: number, month: number): SunInstant[] {
  const midnight_ms = (dayNumber(2021, month, 15) - longitude_deg / 360) * day_ms;
  const path: SunInstant[] = [];
  for (let step = 0; step < stepsPerDay; step++) {
    const instant = new Date(midnight_ms + step * step_ms);
    const { azimuth, altitude } = getPosition(instant, latitude_deg, longitude_deg);
    if (altitude <= 0) continue;
    const sine = Math.sin((altitude * Math.PI) / 180);
    path.push({ azimuth_deg: azimuth, altitude_deg: altitude, beam: sine * 0.7 ** (1 / sine) });
  }
  return path;
}

/** Share of the beam that a skyline takes away on the 15th of a month; null where the sun stays down. */
export function blockedShare(pieces: readonly HorizonPiece[], path: readonly SunInstant[]): number | null {
  let blocked = 0;
  let all = 0;
  for (const { azimuth_deg, altitude_deg, beam } of path) {
    all += beam;
    if (altitude_deg < skylineAt_deg(pieces, azimuth_deg)) blocked += beam;
  }
  return all > 0 ? blocked / all : null;
}

/**
 * Diffuse share of a day's solar radiation from its clearness Rs/Ra, for a sunset hour angle.
 * @source Erbs, Klein and Duffie 1982, Solar Energy 28:293–302, daily form (coefficients from memory)
 */
export function diffuseShare(clearness: number, sunset_rad: number): number {
  const k = clearness;
  const wintry = (sunset_rad * 180) / Math.PI < 81.4;
  if (wintry)
    return k < 0.715 ? 1 - 0.2727 * k + 2.4495 * k ** 2 - 11.9514 * k ** 3 + 9.3879 * k ** 4 : 0.143;
  return k < 0.722 ? 1 + 0.2832 * k - 2.5557 * k ** 2 + 0.8448 * k ** 3 : 0.175;
}

/** Share of short-wave that reaches the bed: beam past the skyline and the part of the sky it sees. */
export function receivedShare(diffuse: number, blocked: number, view: number): number {
  return (1 - diffuse) * (1 - blocked) + diffuse * view;
}

/** Blocked beam share of each month, 0–11; a month without sun takes the nearest one with (the earlier of two). */
export function blockedByMonth(
  pieces: readonly HorizonPiece[],
  latitude_deg: number,
  longitude_deg: number,
): number[] {
  const shares = Array.from({ length: 12 }, (_, m) =>
    blockedShare(pieces, sunPath(latitude_deg, longitude_deg, m + 1)),
  );
  return shares.map((_, m) => {
    for (let away = 0; away <= 6; away++)
      for (const near of [shares[(m - away + 12) % 12], shares[(m + away) % 12]])
        if (near !== null && near !== undefined) return near;
    return 0;
  });
}

/** How far into the span between two months' 15ths a day lies, and which months those are. */
export function betweenMonths(
  year: number,
  month: number,
  dayOfMonth: number,
): { before: number; after: number; share: number } {
  const before = dayOfMonth >= 15 ? month : (month + 11) % 12;
  const after = (before + 1) % 12;
  const yearBefore = dayOfMonth < 15 && month === 0 ? year - 1 : year;
  const start = dayNumber(yearBefore, before + 1, 15);
  const end = dayNumber(before === 11 ? yearBefore + 1 : yearBefore, after + 1, 15);
  return { before, after, share: (dayNumber(year, month + 1, dayOfMonth) - start) / (end - start) };
}

/** R of each day of the record: the share of the day's short-wave that the bed receives. */
export function receivedByDay(
  obstructions: readonly Obstruction[],
  calendar: Calendar,
  sky: Sky,
  latitude_deg: number,
  longitude_deg: number,
): Float64Array {
  const pieces = horizon(obstructions);
  const view = skyView(pieces);
  const blocked = blockedByMonth(pieces, latitude_deg, longitude_deg);
  return everyDay(calendar.days, (i) => {
    const { before, after, share } = betweenMonths(
      calendar.year[i]!,
      calendar.month[i]!,
      calendar.dayOfMonth[i]!,
    );
    const b = blocked[before]! * (1 - share) + blocked[after]! * share;
    const ra = sky.sun.ra_MJ_m2[calendar.dayOfYear[i]!]!;
    const clearness = ra > 0 ? sky.solar_MJ_m2[i]! / ra : 0;
    return receivedShare(diffuseShare(clearness, sky.sun.sunset_rad[calendar.dayOfYear[i]!]!), b, view);
  });
}

/** The bed's reference ET0 by day, and whether its factor is R itself for want of temperatures. */
export interface ShadedEt0 {
  et0_mm: Float64Array;
  received: Float64Array;
  byRadiationAlone: boolean;
}

/**
 * ET0 × PM(R·Rs)/PM(Rs), the factor held to 0–1; R itself where PM(Rs) ≤ 0 or the record has no
 * temperatures (ET0 in proportion to radiation, Hargreaves 1975).
 * @throws ShadeNeedsSky where the record has neither temperatures nor sun
 */
export function shadedEt0(
  bed: string,
  obstructions: readonly Obstruction[],
  weather: WeatherSeries,
): ShadedEt0 {
  const { sky, calendar, place } = weather;
  if (!sky) throw new ShadeNeedsSky(bed);
  const received = receivedByDay(obstructions, calendar, sky, place.latitude_deg, place.longitude_deg);
  const penmanMonteith = sky.penmanMonteith_mm;
  const et0_mm = everyDay(calendar.days, (i) => {
    const open = weather.et0_mm[i]!;
    const whole = penmanMonteith ? penmanMonteith(i, 1) : 0;
    const factor = penmanMonteith && whole > 0 ? penmanMonteith(i, received[i]!) / whole : received[i]!;
    return open * Math.min(1, Math.max(0, factor));
  });
  return { et0_mm, received, byRadiationAlone: penmanMonteith === null };
}
