import { describe, expect, test } from "vitest";
import { pointError_px, tracedIn, withTraced } from "../../../components/walk/aids/plan.ts";
import { entryFor, readEntry, withText } from "../../../components/walk/entry.ts";
import { pictureKind, within } from "../../../components/walk/picture.ts";
import {
  did,
  emptyTrace,
  inMetres,
  nearest,
  snapped,
  toPicture,
  toScreen,
  undone,
  zoomed,
} from "../../../components/walk/trace/state.ts";

describe("a point set on a plan", () => {
  test("goes on to a corner traced before where one is near", () => {
    expect(snapped([103, 98], [], [[100, 100]], 6)).toEqual([100, 100]);
    expect(snapped([120, 98], [], [[100, 100]], 6)).toEqual([120, 98]);
  });

  test("goes square or in line with the side before it", () => {
    const side = [
      [0, 0],
      [100, 0],
    ] as const;
    expect(snapped([103, 80], side, [], 6)).toEqual([100, 80]);
    expect(snapped([180, 4], side, [], 6)).toEqual([180, 0]);
    expect(snapped([150, 60], side, [], 6)).toEqual([150, 60]);
  });

  test("takes hold of the nearest mark within reach", () => {
    expect(
      nearest(
        [10, 10],
        [
          [0, 0],
          [12, 10],
          [11, 10],
        ],
        5,
      ),
    ).toBe(2);
    expect(nearest([50, 50], [[0, 0]], 5)).toBeNull();
  });
});

test("steps are taken back one by one, to the beginning", () => {
  let tracing = { now: emptyTrace, past: [] as (typeof emptyTrace)[] } as ReturnType<typeof did>;
  for (let i = 1; i <= 5; i++)
    tracing = did(tracing, { ...tracing.now, corners: [...tracing.now.corners, [i, i]] });
  for (let i = 4; i >= 0; i--) {
    tracing = undone(tracing);
    expect(tracing.now.corners).toHaveLength(i);
  }
  expect(undone(tracing)).toEqual(tracing);
});

test("zooming keeps the place under the fingers, and screen and picture lead to each other", () => {
  const view = zoomed({ scale: 0.4, x: 12, y: -30 }, 2.5, [200, 150]);
  const before = toPicture({ scale: 0.4, x: 12, y: -30 }, [200, 150]);
  const after = toPicture(view, [200, 150]);
  expect(after[0]).toBeCloseTo(before[0], 9);
  expect(after[1]).toBeCloseTo(before[1], 9);
  expect(toScreen(view, toPicture(view, [33, 44]))[1]).toBeCloseTo(44, 9);
});

test("an outline is in metres east and north of the picture's lower left corner", () => {
  expect(
    inMetres(
      [
        [0, 700],
        [100, 700],
        [100, 500],
      ],
      0.1,
      700,
    ),
  ).toEqual([
    [0, 0],
    [10, 0],
    [10, 20],
  ]);
});

test("a traced square comes to its area, with an error", () => {
  const known = [
    [0, 0],
    [200, 0],
  ] as const;
  const corners = [
    [50, 50],
    [150, 50],
    [150, 150],
    [50, 150],
  ] as const;
  const entry = withText(
    withTraced(entryFor("plan"), 0, { known: [...known], corners: [...corners] }),
    0,
    0,
    0,
    "20",
  );
  expect(tracedIn(entry, 0)).toEqual(corners);
  const read = readEntry(entry, { system: "metric", locale: "en" });
  expect(read.readings.slice(0, 3)).toEqual([20, 200, pointError_px]);
  const area = read.outcome && "figures" in read.outcome ? read.outcome.figures.area_m2! : null;
  expect(area!.figure).toBeCloseTo(100, 9);
  expect(area!.standardError).toBeGreaterThan(1);
});

describe("a picture", () => {
  const bytes = (...head: number[]) => new Uint8Array([...head, ...Array(16).fill(0)]);

  test("is known by its content, not by its name", () => {
    expect(pictureKind(bytes(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a))).toBe("image/png");
    expect(pictureKind(bytes(0xff, 0xd8, 0xff, 0xe1))).toBe("image/jpeg");
    expect(pictureKind(new TextEncoder().encode("RIFF....WEBPVP8 "))).toBe("image/webp");
  });

  test.each(["<svg xmlns='http:", "%PDF-1.7 ........", "GIF89a..........", ""])("refuses %s", (text) => {
    expect(pictureKind(new TextEncoder().encode(text))).toBeNull();
  });

  test("is made no larger, and keeps its shape", () => {
    expect(within(6000, 3000, 3000)).toEqual({ width: 3000, height: 1500 });
    expect(within(640, 480, 3000)).toEqual({ width: 640, height: 480 });
    expect(within(30_000, 1, 3000)).toEqual({ width: 3000, height: 1 });
  });
});
