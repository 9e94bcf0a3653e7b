import { getPosition } from "suncalc";
import { describe, expect, test } from "vitest";
import { fist_deg } from "../../../src/survey/measuring/skyline.ts";
import { skyLeft, sunByMonth } from "../../../src/survey/measuring/sun-hours.ts";
import { published } from "../../published/figures.ts";
import { come, refusal } from "./readings.ts";

const daylight = ["fao56-table-2-7-daylight", "fao56-table-2-7-latitude-48N-part"].flatMap((id) => {
  const { expected } = published.find((entry) => entry.id === id)!;
  return Object.entries(expected.n as Record<string, number[]>).map(([latitude, hours]) => ({
    latitude: Number(latitude),
    hours,
  }));
});

const obstructions = (how: string, ...readings: number[]) =>
  come(how, ...readings).values!.obstructions as {
    fromAzimuth_deg: number;
    toAzimuth_deg: number;
    elevation_deg: number;
  }[];

describe("a skyline", () => {
  test("by fists: the person's own fist at their own arm's length", () => {
    const [wall] = obstructions("skyline-fists", 0, 0.09, 0.6, 100, 160, 3);
    expect(wall!.elevation_deg).toBeCloseTo((3 * 2 * Math.atan(0.075) * 180) / Math.PI, 9);
  });

  // common practice: a fist at arm's length is about ten degrees
  test("a usual fist takes about ten degrees", () => {
    const fist = fist_deg({ figure: 0.1, standardError: 0.005 }, { figure: 0.6, standardError: 0.005 });
    expect(fist.figure).toBeGreaterThan(8);
    expect(fist.figure).toBeLessThan(11);
  });

  test("by height and distance: as high as far is 45 degrees", () => {
    expect(obstructions("skyline-heights", 0, 300, 60, 7, 7)[0]!.elevation_deg).toBeCloseTo(45, 9);
  });

  test("compass bearings turn by the declination, through north too", () => {
    expect(obstructions("skyline-tilt", 15, 350, 20, 30)).toEqual([
      { fromAzimuth_deg: 5, toAzimuth_deg: 35, elevation_deg: 30 },
    ]);
    expect(obstructions("skyline-tilt", -10, 5, 20, 30)[0]!.fromAzimuth_deg).toBe(355);
  });

  test("open stretches take nothing", () => {
    expect(obstructions("skyline-tilt", 0, 0, 90, 0, 90, 180, 20)).toHaveLength(1);
  });

  test("higher than overhead cannot be", () => {
    expect(refusal("skyline-tilt", 0, 0, 90, 95)).toBe("above-overhead");
    expect(refusal("skyline-tilt", 0, 0, 400, 20)).toBe("bearing-above-360");
    expect(refusal("skyline-tilt", 0, 0, 90)).toBe("reading-missing");
  });
});

describe("the sun", () => {
  // Reda and Andreas 2004, Solar Energy 76:577–589 (NREL/TP-560-34302), Table A5.1: 17 October 2003, 12:30:30
  // at UTC − 7, 39.742476 N, 105.1786 W: zenith 50.11162 with refraction, azimuth 194.34024
  test("stands where the published worked example has it", () => {
    const { altitude, azimuth } = getPosition(new Date("2003-10-17T19:30:30Z"), 39.742476, -105.1786);
    expect(Math.abs(azimuth - 194.34024)).toBeLessThan(0.05);
    expect(Math.abs(altitude - (90 - 50.11162))).toBeLessThan(0.05);
  });

  // FAO-56 Table 2.7, daylight hours on the 15th, printed to 0.1 h. Its declination is off by up to 0.6° (0.1 h at
  // 48°) and it leaves refraction out (0.12 h there); the path has steps of a sixth of an hour.
  test.each(daylight)("is up as long as FAO-56's table says, latitude $latitude", ({ latitude, hours }) => {
    for (const { month, open_h, sun_h } of sunByMonth(latitude, 0, []).slice(0, hours.length)) {
      expect(Math.abs(open_h - hours[month - 1]!), `month ${month}`).toBeLessThan(1 / 6 + 0.05 + 0.22);
      expect(sun_h).toBe(open_h);
    }
  });

  test("a wall to the south takes the winter sun and leaves the summer's, north of the tropics", () => {
    const wall = [{ fromAzimuth_deg: 90, toAzimuth_deg: 270, elevation_deg: 30 }];
    const months = sunByMonth(47.5, -122, wall);
    expect(months[11]!.sun_h).toBe(0);
    expect(months[11]!.blocked).toBe(1);
    expect(months[5]!.sun_h / months[5]!.open_h).toBeGreaterThan(0.7);
    expect(skyLeft(wall)).toBeCloseTo(1 - 0.5 * 0.25, 12);
  });

  test("higher skylines never leave more sun", () => {
    const hours = [0, 10, 25, 40, 70].map((elevation_deg) =>
      sunByMonth(-37.8, 145, [{ fromAzimuth_deg: 270, toAzimuth_deg: 90, elevation_deg }]).reduce(
        (sum, { sun_h }) => sum + sun_h,
        0,
      ),
    );
    expect(hours).toEqual(hours.toSorted((a, b) => b - a));
  });
});
