import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { tankShape } from "../../../components/walk/aids/tanks.ts";
import { edgeElevation_deg } from "../../../components/walk/aids/tilt.ts";
import { runsOf } from "../../../components/walk/aids/water.ts";
import { plantDrawing } from "../../../components/walk/drawings/key-plants.ts";
import { soilDrawing } from "../../../components/walk/drawings/key-soil.ts";
import { barLength_m, sitePlan } from "../../../components/walk/drawings/site-plan.ts";
import { runsOfPath } from "../../../components/walk/drawings/skyline.ts";
import { triangleOutlines } from "../../../components/walk/drawings/soil.ts";
import { aboutIn, figureIn, showIn } from "../../../components/walk/show.ts";
import { sunPath } from "../../../src/engine/shade.ts";
import { textureClass } from "../../../src/engine/texture-class.ts";
import { polygonArea } from "../../../src/survey/measuring/polygon.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { soilFeelKey, thirstKey } from "../../../src/tables/keys.ts";
import { root } from "../../structure/sources.ts";

const school = JSON.parse(readFileSync(join(root, "demo/school.survey.json"), "utf8")) as Survey;

describe("the triangle of soils", () => {
  const outlines = Object.entries(triangleOutlines);

  test("its twelve classes fill it, without a gap", () => {
    const sum = outlines.reduce((area, [, corners]) => area + polygonArea(corners), 0);
    expect(sum).toBeCloseTo(5000, 6);
  });

  test("every soil lies in the outline of the class that it is counted to", () => {
    const wrong: string[] = [];
    for (let sand = 0.5; sand < 100; sand++)
      for (let clay = 0.5; sand + clay < 100; clay++) {
        const within = outlines
          .filter(([, corners]) => isWithin([sand, clay], corners))
          .map(([name]) => name);
        if (!within.includes(textureClass(sand, clay)))
          wrong.push(`${sand}/${clay}: ${textureClass(sand, clay)} ${within}`);
      }
    expect(wrong).toEqual([]);
  });
});

/** Ray casting; a point on an edge counts as within. */
function isWithin(
  [x, y]: readonly [number, number],
  corners: readonly (readonly [number, number])[],
): boolean {
  let inside = false;
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    const [xi, yi] = corners[i]!;
    const [xj, yj] = corners[j]!;
    const cross = (xj - xi) * (y - yi) - (yj - yi) * (x - xi);
    const isBetween =
      x >= Math.min(xi, xj) && x <= Math.max(xi, xj) && y >= Math.min(yi, yj) && y <= Math.max(yi, yj);
    if (Math.abs(cross) < 1e-9 && isBetween) return true;
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside;
  }
  return inside;
}

describe("the site drawing", () => {
  const plan = sitePlan(school);

  test("shows everything once, each area as large as it is", () => {
    expect(plan.areas).toHaveLength(school.beds.length + school.roofs.length);
    expect(plan.points).toHaveLength(school.tanks.length + school.taps!.length);
    for (const { name, area_m2 } of [...school.beds, ...school.roofs])
      expect(polygonArea(plan.areas.find((one) => one.name === name)!.corners), name).toBeCloseTo(area_m2, 6);
  });

  test("what has no place yet lies over nothing else", () => {
    const boxes = plan.areas.map(({ corners }) => ({
      left: Math.min(...corners.map(([x]) => x)),
      right: Math.max(...corners.map(([x]) => x)),
      low: Math.min(...corners.map(([, y]) => y)),
      high: Math.max(...corners.map(([, y]) => y)),
    }));
    const over = boxes.flatMap((one, i) =>
      boxes
        .slice(i + 1)
        .filter(
          (other) =>
            one.left < other.right && other.left < one.right && one.low < other.high && other.low < one.high,
        ),
    );
    expect(over).toEqual([]);
  });

  test("an outline stands where it was traced", () => {
    const outline: [number, number][] = [
      [10, 10],
      [20, 10],
      [20, 30],
    ];
    const beds = school.beds.map((bed, i) => (i === 3 ? { ...bed, outline_m: outline } : bed));
    const placed = sitePlan({ ...school, beds }).areas.filter(({ isPlaced }) => isPlaced);
    expect(placed).toMatchObject([{ name: "Front beds", corners: outline }]);
  });

  test("an empty site has a drawing too", () => {
    const empty = sitePlan({ ...school, beds: [], roofs: [], tanks: [], taps: [] });
    expect(empty.areas).toEqual([]);
    expect(empty.east - empty.west).toBeGreaterThan(0);
  });

  test("its bar is a round length, between a tenth and a fifth of it", () => {
    for (const width of [3, 17, 96, 240, 1800]) {
      const bar = barLength_m(width);
      expect(bar / width).toBeGreaterThan(0.08);
      expect(bar / width).toBeLessThanOrEqual(0.2);
      expect([1, 2, 5]).toContain(Number(String(bar).replace(/[.0]/g, "")));
    }
  });
});

test("a sun's path is drawn without a line across the sky, on both sides of the equator", () => {
  for (const latitude of [47, -35, 70, 0]) {
    const middle = latitude >= 0 ? 180 : 0;
    const x = (azimuth: number) => (((azimuth - middle + 540) % 360) * 322) / 360;
    for (const month of [1, 6, 12])
      for (const run of runsOfPath(sunPath(latitude, 10, month), x))
        run.slice(1).forEach(({ azimuth_deg }, i) => {
          expect(Math.abs(x(azimuth_deg) - x(run[i]!.azimuth_deg))).toBeLessThan(81);
        });
  }
});

test("the phone's edge: flat on the ground is level, upright is straight up, tipped past it comes down again", () => {
  expect([0, 30, 90, 120].map((beta) => Math.round(edgeElevation_deg(beta)))).toEqual([0, 30, 90, 60]);
});

test("timings of a hose that are not whole are left out", () => {
  expect(runsOf([4500, 1.5, 7, 30, 1500, 0.5])).toEqual([{ level_L: 4500, head_m: 1.5, flow_L_min: 14 }]);
});

test("a tank has a shape once all its measures are there", () => {
  const sizes: Record<string, number | null> = { across: 2, length: null, girth: 6.28318530718, wall: 0 };
  const size = (slot: string) => sizes[slot] ?? null;
  expect(tankShape("tank-upright", size)).toEqual({ shape: "upright", across_m: 2 });
  expect(tankShape("tank-lying", size)).toBeNull();
  expect(tankShape("tank-girth", size)).toMatchObject({ across_m: expect.closeTo(2, 6) });
});

test("answers that can be seen are drawn; those that nobody saw are not", () => {
  const of = (key: typeof thirstKey) => [
    ...new Set(key.flatMap(({ answers }) => answers.map(({ answer }) => answer))),
  ];
  const notDrawn = of(thirstKey).filter((answer) => plantDrawing(answer) === null);
  expect(notDrawn.sort()).toEqual(["none-of-these", "not-known", "not-seen"]);
  expect(of(soilFeelKey).filter((answer) => soilDrawing(answer) === null)).toEqual([]);
});

describe("a figure is written to the place that its doubt reaches", () => {
  const written = ({ text, doubt }: { text: string; doubt: string | null }) =>
    (doubt === null ? text : `${text}, ± ${doubt}`).replaceAll("\u00A0", " ");
  const said = (figure: number, standardError: number, system: "metric" | "us" = "metric") =>
    written(figureIn(system, "en")({ figure, standardError }, "m²"));

  test.each([
    [22_032, 312, "22,000 m², ± 300 m²"],
    [48.234, 0.62, "48.2 m², ± 0.6 m²"],
    [48.234, 0.14, "48.23 m², ± 0.14 m²"],
    [19.634, 0.196, "19.6 m², ± 0.2 m²"],
    [5, 0, "5 m²"],
  ])("%d with %d", (figure, error, text) => {
    expect(said(figure, error)).toBe(text);
  });

  test("shares are written as the language writes them", () => {
    const { text, doubt } = figureIn("metric", "en")({ figure: 0.753, standardError: 0.068 }, "share");
    expect([text, doubt, showIn("metric", "en")(0.5, "share")]).toEqual(["75%", "7%", "50%"]);
    expect(showIn("metric", "en")(2.5, "%")).toBe("2.5%");
  });

  test("what was worked out is rounded in the unit shown", () => {
    const about = (system: "metric" | "us") => aboutIn(system, "en")(19_774, "L").replaceAll("\u00A0", " ");
    expect([about("metric"), about("us")]).toEqual(["19,800 L", "5,200 gal"]);
    expect(aboutIn("metric", "en")(0, "L").replaceAll("\u00A0", " ")).toBe("0 L");
  });

  test("in the units shown", () => {
    expect(said(100, 2, "us")).toBe("1,080 ft², ± 20 ft²");
    expect(showIn("us", "en")(50, "mm").replaceAll("\u00A0", " ")).toBe("1.97 in");
  });
});
