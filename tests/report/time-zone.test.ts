import { describe, expect, test } from "vitest";
import { sunOfDay } from "../../src/engine/rounds/sun.ts";
import { dayNumber } from "../../src/engine/weather/dates.ts";
import { localMinutes } from "../../src/report/local-time.ts";
import { sunMinutes } from "../../src/report/sun-minutes.ts";
import { momentOf, wallTimeOf, zoneChanges } from "../../src/report/time-zone.ts";

const place = (timeZone?: string, latitude = 0, longitude = 0) => ({ latitude, longitude, timeZone });
const at = (year: number, month: number, day: number, minutes: number) => ({
  day: dayNumber(year, month, day),
  minutes,
});

describe("clock readings and moments", () => {
  test("go over into each other on every hour of a year, in zones either side of the day's change", () => {
    for (const zone of ["America/Los_Angeles", "Pacific/Auckland", "Asia/Kolkata", "UTC"])
      for (let hour = 0; hour < 366 * 24; hour += 7) {
        const moment = Date.UTC(2028, 0, 1) + hour * 3_600_000;
        const reading = wallTimeOf(moment, place(zone));
        const back = momentOf(reading, place(zone));
        expect(wallTimeOf(back, place(zone))).toEqual(reading);
        expect(Math.abs(back - moment)).toBeLessThanOrEqual(3_600_000);
      }
  });

  test("a reading that the clock leaps over is the hour after it", () => {
    const moment = momentOf(at(2026, 3, 8, 150), place("America/Los_Angeles"));
    expect(new Date(moment).toISOString()).toBe("2026-03-08T10:30:00.000Z");
    expect(wallTimeOf(moment, place("America/Los_Angeles"))).toEqual(at(2026, 3, 8, 210));
  });

  test("without a zone the clock is the sun's mean time", () => {
    expect(localMinutes(Date.UTC(2026, 0, 1, 12), dayNumber(2026, 1, 1), place(undefined, 0, 15))).toBe(780);
  });
});

test("a zone's changes are those of its law", () => {
  const changes = zoneChanges(place("Europe/Berlin"), 2026, 2026).filter(
    ({ at: { day } }) => day >= dayNumber(2026, 1, 1),
  );
  expect(changes[0]).toEqual({ at: at(2026, 3, 29, 120), from_min: 60, to_min: 120, isDaylight: true });
  expect(changes[1]).toEqual({ at: at(2026, 10, 25, 180), from_min: 120, to_min: 60, isDaylight: false });
  expect(zoneChanges(place("Asia/Kolkata"), 2026, 2026)).toHaveLength(1);
});

describe("the sun of a day", () => {
  test("rises about six and sets about eighteen at the equinox on the equator", () => {
    const sun = sunMinutes(dayNumber(2026, 3, 20), place("UTC"));
    expect(Math.abs(sun.sunrise_min! - 363)).toBeLessThan(8);
    expect(Math.abs(sun.sunset_min! - 1090)).toBeLessThan(8);
    expect(sun.dawn_min!).toBeLessThan(sun.sunrise_min!);
    expect(sun.dusk_min!).toBeGreaterThan(sun.sunset_min!);
  });

  test("belongs to the local day wherever the place lies", () => {
    for (const [zone, longitude] of [
      ["Pacific/Auckland", 174.8],
      ["Pacific/Honolulu", -157.9],
      ["Pacific/Kiritimati", -157.4],
    ] as const) {
      const sun = sunMinutes(dayNumber(2026, 7, 1), place(zone, 0, longitude));
      expect(sun.sunrise_min!).toBeGreaterThan(0);
      expect(sun.sunset_min!).toBeLessThan(1440);
    }
  });

  test("has no rising in the polar day and night", () => {
    const summer = sunOfDay(Date.UTC(2026, 5, 21, 11), 78, 15);
    const winter = sunOfDay(Date.UTC(2026, 11, 21, 11), 78, 15);
    expect(summer).toMatchObject({ sunrise_ms: null, sunset_ms: null, polar: "day" });
    expect(winter).toMatchObject({ sunrise_ms: null, sunset_ms: null, polar: "night" });
  });
});
