import { describe, expect, it } from "vitest";
import { readClimate } from "../../../src/server/climate-file.ts";
import { decodeClimate, NotClimate } from "../../../src/survey/normals/decode.ts";
import { normalsAt } from "../../../src/survey/normals/normals-at.ts";

const climate = readClimate();
const tenth = (values: number[], m: number) => Math.round(values[m]! * 10) / 10;

describe("the climate file", () => {
  it("holds 59,831 land cells", () => {
    expect(climate.height_m).toHaveLength(59_831);
    expect(climate.landCell.filter((cell) => cell >= 0)).toHaveLength(59_831);
  });

  // Two cells read by another program, rain rounded to mm and temperatures to 0.1 °C.
  it.each([
    {
      at: [47.75, -122.25],
      height_m: 130,
      january: { rain: 138, days: 17.6, low: 2, high: 7.5 },
      july: { rain: 25, days: 5.2, low: 12.8, high: 23.8 },
    },
    {
      at: [-37.75, 145.25],
      height_m: 255,
      january: { rain: 49, days: 8.1, low: 13.6, high: 25.9 },
      july: { rain: 72, days: 16.4, low: 4.8, high: 12.3 },
    },
  ])("gives back the cell at $at", ({ at, height_m, january, july }) => {
    const place = normalsAt(climate, at[0]!, at[1]!)!;
    expect(place.cell).toEqual({ latitude: at[0], longitude: at[1], height_m, distance_km: 0 });
    expect(place.elevation_m).toBe(height_m);
    for (const [m, month] of [
      [0, january],
      [6, july],
    ] as const) {
      expect(Math.round(place.rain_mm[m]!)).toBe(month.rain);
      expect(Math.abs(place.rainDays[m]! - month.days)).toBeLessThanOrEqual(0.06);
      expect(tenth(place.tmin_c, m)).toBe(month.low);
      expect(tenth(place.tmax_c, m)).toBe(month.high);
    }
  });

  it("is refused when cut short", () => {
    expect(() => decodeClimate(new Uint8Array(1000))).toThrow(NotClimate);
    expect(() => decodeClimate(new Uint8Array(0))).toThrow(NotClimate);
  });

  it("holds no month that a survey would refuse", () => {
    let odd = 0;
    for (let row = 0; row < 360; row++) {
      for (let column = 0; column < 720; column += 7) {
        if (climate.landCell[row * 720 + column]! < 0) continue;
        const place = normalsAt(climate, 89.75 - row / 2, 0.25 + column / 2)!;
        for (let m = 0; m < 12; m++) {
          const { rain_mm, rainDays, tmin_c, tmax_c } = place;
          const right =
            rain_mm[m]! >= 0 &&
            rain_mm[m]! <= 5000 &&
            rainDays[m]! >= 0 &&
            rainDays[m]! <= 31 &&
            tmin_c[m]! >= -60 &&
            tmax_c[m]! <= 60 &&
            tmin_c[m]! <= tmax_c[m]!;
          if (!right) odd++;
        }
      }
    }
    expect(odd).toBe(0);
  });
});

describe("normals of a place", () => {
  it("are colder by 6.5 °C for a kilometre higher, and the difference is said", () => {
    const cell = normalsAt(climate, 47.75, -122.25)!;
    const higher = normalsAt(climate, 47.75, -122.25, 1130)!;
    expect(higher.heightDifference_m).toBe(1000);
    expect(higher.elevation_m).toBe(1130);
    for (let m = 0; m < 12; m++) {
      expect(higher.tmin_c[m]).toBeCloseTo(cell.tmin_c[m]! - 6.5, 2);
      expect(higher.tmax_c[m]).toBeCloseTo(cell.tmax_c[m]! - 6.5, 2);
    }
    expect(higher.rain_mm).toEqual(cell.rain_mm);
  });

  it("come from the cell a place lies in", () => {
    expect(normalsAt(climate, 47.61, -122.33)!.cell).toMatchObject({ latitude: 47.75, longitude: -122.25 });
    expect(normalsAt(climate, -37.81, 145.01)!.cell).toMatchObject({ latitude: -37.75, longitude: 145.25 });
  });

  it("come from the nearest land where a place is off the coast, no farther than 80 km", () => {
    // Off Fremantle, and an islet in the Tasman Sea's west: sea cells beside land.
    const near = normalsAt(climate, -32.05, 115.3)!;
    expect(near.cell.distance_km).toBeGreaterThan(0);
    expect(near.cell.distance_km).toBeLessThanOrEqual(80);
    expect(near.coastal).toBe(true);
  });

  it("are not to be had at sea", () => {
    for (const [latitude, longitude] of [
      [0, -30],
      [-45, -120],
      [40, -50],
      [89.9, 0],
    ] as const) {
      expect(normalsAt(climate, latitude, longitude)).toBeNull();
    }
  });

  it("hold on both sides of the date line, and for any way to write a longitude", () => {
    const east = normalsAt(climate, 66.25, 179.9)!;
    const west = normalsAt(climate, 66.25, -179.9)!;
    expect(Math.abs(east.cell.longitude)).toBeGreaterThan(179);
    expect(Math.abs(west.cell.longitude)).toBeGreaterThan(179);
    expect(normalsAt(climate, 47.75, 237.75)).toEqual(normalsAt(climate, 47.75, -122.25));
    // The source has no Antarctica.
    expect(normalsAt(climate, -90, 0)).toBeNull();
  });

  it("guess the coast by the sea beside the cell", () => {
    expect(normalsAt(climate, 39.74, -104.98)!.coastal).toBe(false);
    expect(normalsAt(climate, -33.87, 151.2)!.coastal).toBe(true);
  });
});
