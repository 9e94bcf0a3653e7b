import fc from "fast-check";
import { expect, test } from "vitest";
import { overlap, placeCallouts, spreadRow } from "../../components/charts/labels.ts";

const bounds = { x: 0, y: 0, width: 400, height: 200 };

test("a label goes to the free space beside what is drawn", () => {
  const drawn = [{ x: 0, y: 60, width: 200, height: 140 }];
  const [placed] = placeCallouts([{ width: 90, height: 18, target: { x: 100, y: 60 } }], drawn, bounds);
  expect(placed!.covers).toBe(0);
  expect(placed!.y + placed!.height).toBeLessThanOrEqual(60);
});

test("where all is drawn over, a label says how much it covers", () => {
  const [placed] = placeCallouts([{ width: 90, height: 18, target: { x: 10, y: 10 } }], [bounds], bounds);
  expect(placed!.covers).toBeCloseTo(1, 9);
});

test("labels stay within their bounds and clear of each other where there is room", () => {
  const place = fc.record({ x: fc.integer({ min: 0, max: 400 }), y: fc.integer({ min: 0, max: 200 }) });
  fc.assert(
    fc.property(fc.array(place, { minLength: 1, maxLength: 4 }), (targets) => {
      const placed = placeCallouts(
        targets.map((target) => ({ width: 110, height: 18, target })),
        [],
        bounds,
      );
      for (const box of placed) {
        expect(box.x).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width).toBeLessThanOrEqual(400);
        expect(box.y + box.height).toBeLessThanOrEqual(200);
      }
      placed.forEach((a, i) => {
        for (const b of placed.slice(i + 1)) expect(overlap(a, b)).toBe(0);
      });
    }),
  );
});

test("labels of a row keep their order, a gap, and the row's ends", () => {
  const label = fc.record({
    x: fc.float({ min: 0, max: 300, noNaN: true }),
    width: fc.float({ min: 10, max: 60, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(label, { minLength: 1, maxLength: 4 }), (labels) => {
      const wanted = labels.sort((a, b) => a.x - b.x);
      const xs = spreadRow(wanted, 0, 320, 8);
      xs.forEach((x, i) => {
        expect(x).toBeGreaterThanOrEqual(-1e-9);
        expect(x + wanted[i]!.width).toBeLessThanOrEqual(320 + 1e-9);
        if (i > 0) expect(x).toBeGreaterThanOrEqual(xs[i - 1]! + wanted[i - 1]!.width + 8 - 1e-9);
      });
    }),
  );
});

test("labels that do not touch stay where they are wanted", () => {
  expect(
    spreadRow(
      [
        { x: 10, width: 30 },
        { x: 100, width: 30 },
      ],
      0,
      200,
      8,
    ),
  ).toEqual([10, 100]);
});
