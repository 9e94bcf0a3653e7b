import { describe, expect, test } from "vitest";
import { saturation_kPa } from "../../../src/engine/air.ts";
import { dayNumber } from "../../../src/engine/weather/dates.ts";
import { vapourFromRecord } from "../../../src/engine/weather/humidity.ts";
import { NoReferenceError, prepareWeather } from "../../../src/engine/weather/series.ts";

const place = { latitude_deg: 45.72, longitude_deg: 4.9, elevation_m: 200, coastal: false, windHeight_m: 2 };
const one = (value: number) => Float64Array.of(value);
const july15 = { firstDay: dayNumber(2021, 7, 15), days: 1 };
const temperatures = { rain_mm: one(0), tmin_c: one(14.8), tmax_c: one(26.6) };
const weather = (columns: object) =>
  prepareWeather({ ...july15, columns: { rain_mm: one(0), ...columns } }, place);

describe("how ET0 is had", () => {
  test("as given before all else, and never below 0", () => {
    const given = weather({ ...temperatures, et0_mm: one(-0.3), wind_ms: one(2) });
    expect(given.et0Method).toBe("given");
    expect(given.et0_mm[0]).toBe(0);
  });

  // FAO-56 example 20: Hargreaves gives 5.0 mm for these temperatures in July.
  test("from temperatures alone by Hargreaves", () => {
    const alone = weather(temperatures);
    expect(alone.et0Method).toBe("hargreaves");
    expect(Math.abs(alone.et0_mm[0]! - 5)).toBeLessThan(0.05);
  });

  // FAO-56 example 20: Penman–Monteith with wind 2 m/s, Tdew = Tmin and Rs from temperature gives 4.56 mm.
  test("by Penman–Monteith where wind is recorded too, the rest by chapter 3", () => {
    const windy = weather({ ...temperatures, wind_ms: one(2) });
    expect(windy.et0Method).toBe("penman-monteith");
    expect(Math.abs(windy.et0_mm[0]! - 4.56)).toBeLessThan(0.03);
  });

  test.each(["tdew_c", "vp_kpa", "rhmean_pct", "solar_MJ_m2", "sun_h"])("%s is enough for it", (column) => {
    expect(weather({ ...temperatures, [column]: one(2) }).et0Method).toBe("penman-monteith");
  });

  test("not at all with neither", () => {
    expect(() => weather({ wind_ms: one(2) })).toThrow(NoReferenceError);
  });

  test("in polar night, as a number", () => {
    const night = prepareWeather(
      { firstDay: dayNumber(2021, 12, 21), days: 1, columns: { ...temperatures, wind_ms: one(3) } },
      { ...place, latitude_deg: 80 },
    );
    expect(Number.isFinite(night.et0_mm[0])).toBe(true);
  });
});

describe("humidity", () => {
  test("is taken from the first column there is: dew point, vapour, both ends, mean", () => {
    const all = {
      tdew_c: one(10),
      vp_kpa: one(1.5),
      rhmin_pct: one(40),
      rhmax_pct: one(80),
      rhmean_pct: one(55),
    };
    const { tdew_c: _, ...noDew } = all;
    const { vp_kpa: __, ...noVapour } = noDew;
    const { rhmin_pct: ___, ...meanOnly } = noVapour;
    const vapour = (columns: object) => vapourFromRecord({ ...temperatures, ...columns })!(0);
    expect(vapour(all)).toBe(saturation_kPa(10));
    expect(vapour(noDew)).toBe(1.5);
    expect(vapour(noVapour)).toBeCloseTo((saturation_kPa(14.8) * 0.8 + saturation_kPa(26.6) * 0.4) / 2, 12);
    expect(vapour(meanOnly)).toBeCloseTo((0.55 * (saturation_kPa(14.8) + saturation_kPa(26.6))) / 2, 12);
  });
});

describe("the climate's part of the coefficients", () => {
  test("of Kcb only where wind and humidity are recorded, within Eq. 70's limits", () => {
    expect(weather({ ...temperatures, wind_ms: one(3) }).kcbClimate).toBeNull();
    const stormy = weather({ ...temperatures, wind_ms: one(20), rhmin_pct: one(5) });
    const u2 = (20 * 4.87) / Math.log(67.8 * 2 - 5.42);
    expect(stormy.kcbClimate![0]).toBeCloseTo(0.04 * 4 - 0.004 * (20 - 45), 12);
    expect(stormy.kcMaxClimate[0]).toBeCloseTo(0.04 * (u2 - 2) - 0.004 * (5 - 45), 12);
  });

  test("of Kc max is 0 where neither is recorded", () => {
    expect(weather(temperatures).kcMaxClimate[0]).toBe(0);
  });

  test("least humidity is 100 ea/e°(Tmax) where humidity is recorded otherwise", () => {
    const dew = weather({ ...temperatures, tdew_c: one(12) });
    const rhmin = (100 * saturation_kPa(12)) / saturation_kPa(26.6);
    expect(dew.kcMaxClimate[0]).toBeCloseTo(-0.004 * (rhmin - 45), 12);
  });
});
