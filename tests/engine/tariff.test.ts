import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { periodBill, savedMoney, type Tariff, yearBill } from "../../src/engine/tariff.ts";

const stepped: Tariff = {
  steps: [
    { fromKL: 0, perKL: 2 },
    { fromKL: 50, perKL: 3 },
    { fromKL: 80, perKL: 5 },
  ],
  also_perKL: 1,
  periodMonths: 3,
  otherUse_kL_year: 160,
};
const even = (kL: number) => Array<number>(12).fill(kL / 12);

describe("the bill of a period", () => {
  test("each kL at the price of its step, and what follows the volume on top", () => {
    expect(periodBill(stepped, 100)).toBe(50 * 2 + 30 * 3 + 20 * 5 + 100);
    expect(periodBill(stepped, 50)).toBe(50 * 2 + 50);
    expect(periodBill(stepped, 0)).toBe(0);
  });

  test("never falls, and each kL costs no more than the top price", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (use, more) => {
          const dearer = periodBill(stepped, use + more) - periodBill(stepped, use);
          expect(dearer).toBeGreaterThanOrEqual(-1e-9);
          expect(dearer).toBeLessThanOrEqual(6 * more + 1e-9);
        },
      ),
    );
  });
});

describe("a year's saving", () => {
  test("comes off the top step of the whole bill, other use included", () => {
    // 40 kL a quarter for other things, 60 for gardens: the top step goes first, then the middle one
    expect(savedMoney(stepped, even(240), even(240 - 4 * 10))).toBeCloseTo(4 * 10 * 6, 9);
    expect(savedMoney(stepped, even(240), even(0))).toBeCloseTo(4 * (20 * 6 + 30 * 4 + 10 * 3), 9);
  });

  test("in summer is worth more than the same spread over the year, where summer reaches a dearer step", () => {
    const summer = [60, 60, 0, 0, 0, 0, 0, 0, 0, 0, 0, 60];
    expect(savedMoney(stepped, summer, even(0))).toBeGreaterThan(savedMoney(stepped, even(180), even(0)));
  });

  test("at one price is the volume times the price, however long the period", () => {
    for (const periodMonths of [1, 2, 5, 12, 24]) {
      const flat = { ...stepped, steps: [{ fromKL: 0, perKL: 2.5 }], periodMonths };
      expect(savedMoney(flat, even(300), even(180))).toBeCloseTo(120 * 3.5, 9);
    }
  });

  test("periods that do not fill a year share its use evenly", () => {
    expect(yearBill({ ...stepped, periodMonths: 24 }, even(240))).toBeCloseTo(
      periodBill(stepped, 800) / 2,
      9,
    );
  });
});
