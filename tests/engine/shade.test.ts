import { describe, expect, test } from "vitest";
import {
  betweenMonths,
  blockedByMonth,
  blockedShare,
  diffuseShare,
  horizon,
  ShadeNeedsSky,
  shadedEt0,
  skylineAt_deg,
  skyView,
  sunPath,
} from "../../src/engine/shade.ts";
import { dayNumber } from "../../src/engine/weather/dates.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";

const seattle = {
  latitude_deg: 47.45,
  longitude_deg: -122.31,
  elevation_m: 132,
  coastal: true,
  windHeight_m: 10,
};
const days = 365;
const flat = (value: number) => new Float64Array(days).fill(value);
const temperatures = { rain_mm: flat(0), tmin_c: flat(8), tmax_c: flat(20) };
const firstDay = dayNumber(2021, 1, 1);

describe("the skyline", () => {
  test("passes through north, and the higher elevation stands where sectors overlap", () => {
    const pieces = horizon([
      { fromAzimuth_deg: 350, toAzimuth_deg: 20, elevation_deg: 30 },
      { fromAzimuth_deg: 10, toAzimuth_deg: 40, elevation_deg: 50 },
    ]);
    expect([0, 15, 30, 45, 355].map((azimuth) => skylineAt_deg(pieces, azimuth))).toEqual([
      30, 50, 50, 0, 30,
    ]);
  });

  test("hides sin² of its elevation from an isotropic sky", () => {
    const ring = horizon([{ fromAzimuth_deg: 0, toAzimuth_deg: 360, elevation_deg: 30 }]);
    expect(skyView(ring)).toBeCloseTo(0.75, 12);
    expect(skyView(horizon([{ fromAzimuth_deg: 90, toAzimuth_deg: 180, elevation_deg: 90 }]))).toBeCloseTo(
      0.75,
      12,
    );
    expect(skyView([])).toBe(1);
  });
});

describe("the sun's path", () => {
  // At equinox the sun rises due east and sets due west, everywhere between the polar circles.
  test.each([-60, -37.8, 0, 47.45, 60])(
    "rises near 90° and sets near 270° at equinox, latitude %d",
    (latitude) => {
      const path = sunPath(latitude, 0, 3);
      const off = latitude === 0 ? 3 : 6;
      expect(Math.abs(path[0]!.azimuth_deg - 90)).toBeLessThan(off);
      expect(Math.abs(path.at(-1)!.azimuth_deg - 270)).toBeLessThan(off);
    },
  );

  test("stands in the north at noon south of the tropics, in the south north of them", () => {
    const highest = (latitude: number) =>
      sunPath(latitude, 0, 6).reduce((top, at) => (at.altitude_deg > top.altitude_deg ? at : top))
        .azimuth_deg;
    expect(Math.cos((highest(-37.8) * Math.PI) / 180)).toBeGreaterThan(0.99);
    expect(Math.cos((highest(47.45) * Math.PI) / 180)).toBeLessThan(-0.99);
  });

  // Noon altitude is 90° − latitude + declination. The equinox was on 20 March 2021 at 9:37 UTC (US Naval
  // Observatory, from memory), 4.57 days after this noon; the declination rises by 0.395° a day then.
  test("is as high at noon as geometry has it", () => {
    const noon = Math.max(...sunPath(47.45, -122.31, 3).map((at) => at.altitude_deg));
    const declination15March = -4.57 * 0.395;
    expect(Math.abs(noon - (90 - 47.45 + declination15March))).toBeLessThan(0.05);
  });

  test("is empty in polar night, and a month without sun takes its nearest month with", () => {
    expect(sunPath(78.2, 15.6, 12)).toEqual([]);
    const wall = horizon([{ fromAzimuth_deg: 90, toAzimuth_deg: 270, elevation_deg: 89 }]);
    expect(blockedShare(wall, [])).toBeNull();
    const shares = blockedByMonth(wall, 78.2, 15.6);
    expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
    // January's nearest months with sun are October, three back, and February, one on.
    expect(shares[0]).toBe(shares[1]);
  });
});

describe("months run into each other", () => {
  test("on the 15th a month stands alone; between, by days", () => {
    expect(betweenMonths(2021, 4, 15)).toEqual({ before: 4, after: 5, share: 0 });
    expect(betweenMonths(2021, 0, 1)).toEqual({ before: 11, after: 0, share: 17 / 31 });
    expect(betweenMonths(2020, 1, 29)).toEqual({ before: 1, after: 2, share: 14 / 29 });
    expect(betweenMonths(2021, 11, 31).share).toBeCloseTo(16 / 31, 12);
  });
});

describe("the diffuse share", () => {
  // Erbs, Klein and Duffie 1982: 0.143 and 0.175 are its floors; both branches begin at 1 under cloud.
  test("falls from 1 under cloud to its floor under a clear sky, in both seasons", () => {
    expect(diffuseShare(0, 1)).toBe(1);
    expect(diffuseShare(0, 2)).toBe(1);
    expect(diffuseShare(0.75, 1)).toBe(0.143);
    expect(diffuseShare(0.75, 2)).toBe(0.175);
    for (const sunset of [1, 2])
      for (let k = 0.2; k < 0.7; k += 0.05)
        expect(diffuseShare(k + 0.05, sunset)).toBeLessThan(diffuseShare(k, sunset));
  });

  test("each branch meets its floor within 0.02", () => {
    expect(Math.abs(diffuseShare(0.7149, 1) - 0.143)).toBeLessThan(0.02);
    expect(Math.abs(diffuseShare(0.7219, 2) - 0.175)).toBeLessThan(0.02);
  });
});

describe("the shade factor", () => {
  const wall = [{ fromAzimuth_deg: 95, toAzimuth_deg: 255, elevation_deg: 50 }];

  test("is 1 of an open bed, and between 0 and 1 of a shaded one", () => {
    const weather = prepareWeather({ firstDay, days, columns: temperatures }, seattle);
    const open = shadedEt0("b", [{ fromAzimuth_deg: 0, toAzimuth_deg: 360, elevation_deg: 0 }], weather);
    open.et0_mm.forEach((et0, i) => {
      expect(et0).toBeCloseTo(weather.et0_mm[i]!, 12);
    });
    const shaded = shadedEt0("b", wall, weather).et0_mm;
    expect(shaded.every((et0, i) => et0 >= 0 && et0 <= weather.et0_mm[i]!)).toBe(true);
  });

  test("leaves the long-wave term the sky's own: a bed without beam still keeps part of its drying power", () => {
    const weather = prepareWeather(
      { firstDay, days, columns: { ...temperatures, wind_ms: flat(4) } },
      seattle,
    );
    const pit = shadedEt0("b", [{ fromAzimuth_deg: 0, toAzimuth_deg: 360, elevation_deg: 90 }], weather);
    const july = dayNumber(2021, 7, 15) - firstDay;
    expect(pit.received[july]).toBeCloseTo(0, 12);
    expect(pit.et0_mm[july]! / weather.et0_mm[july]!).toBeGreaterThan(0.1);
  });

  test("is R itself where the record has sun but no temperatures, and cannot be had with neither", () => {
    const sunny = { rain_mm: flat(0), et0_mm: flat(4), sun_h: flat(7) };
    const weather = prepareWeather({ firstDay, days, columns: sunny }, seattle);
    const shade = shadedEt0("b", wall, weather);
    expect(shade.byRadiationAlone).toBe(true);
    shade.et0_mm.forEach((et0, i) => {
      expect(et0).toBeCloseTo(4 * shade.received[i]!, 12);
    });
    const bare = prepareWeather({ firstDay, days, columns: { rain_mm: flat(0), et0_mm: flat(4) } }, seattle);
    expect(() => shadedEt0("b", wall, bare)).toThrow(ShadeNeedsSky);
  });
});
