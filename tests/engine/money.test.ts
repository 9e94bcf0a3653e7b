import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  annuity,
  breakEvenPerKL,
  breakEvenQuote,
  capital,
  capitalRecovery,
  costPerKL,
  discountedPayback,
  flowsOf,
  joinOutlays,
  netPresentValue,
  noOutlay,
  type Outlay,
  type Outlook,
  presentValue,
  rateOfReturn,
  simplePayback,
} from "../../src/engine/money.ts";
import { Inputs, published } from "../published/figures.ts";

/** Inputs, and what the source prints with its tolerance. */
function entry(id: string) {
  const { inputs, expected, tolerance } = published.find((row) => row.id === id)!;
  const near = (key: string, found: number, k?: number) => {
    const printed = k === undefined ? expected[key] : (expected[key] as number[])[k];
    const off = typeof tolerance === "number" ? tolerance : (tolerance?.[key] ?? tolerance?.default ?? 0);
    expect(Math.abs(found - (printed as number)), `${key}: ${found}`).toBeLessThanOrEqual(off);
  };
  return { in: new Inputs(inputs), near };
}

const outlook = (discountShare: number, horizon_years: number, riseShare = 0): Outlook => ({
  discountShare,
  riseShare,
  horizon_years,
});
const toOneDecimal = (figure: number) => Math.round(10 * figure) / 10;
const bought = (cost: number, life_years: number, upkeepPerYear = 0, grant = 0): Outlay => ({
  lines: [{ cost, life_years }],
  grant,
  upkeepPerYear,
});

describe("published figures", () => {
  test("pv-annuity-7pct-20y", () => {
    const { in: given, near } = entry("pv-annuity-7pct-20y");
    const [rate, years, payment] = [given.n("rate"), given.n("years"), given.n("payment")];
    // printed to one decimal
    near("presentValue", toOneDecimal(payment * annuity(rate, years)));
    near("presentValue", toOneDecimal(netPresentValue(noOutlay, payment, outlook(rate, years))));
  });

  test("fv-annuity-7p5pct-20y", () => {
    const { in: given, near } = entry("fv-annuity-7p5pct-20y");
    const growth = (1 + given.n("rate")) ** given.n("years");
    const atEnd = given.n("payment") * annuity(given.n("rate"), given.n("years")) * growth;
    near("futureValue", atEnd);
    near("futureValueDueAtStart", atEnd * (1 + given.n("rate")));
  });

  test("loan-payment-15y", () => {
    const { in: given, near } = entry("loan-payment-15y");
    near(
      "monthlyPayment",
      given.n("principal") * capitalRecovery(given.n("annualRate") / 12, given.n("months")),
    );
  });

  test("zero-rate-limits", () => {
    const { in: given, near } = entry("zero-rate-limits");
    const periods = given.n("periods");
    near("annuityFactor", annuity(given.n("rate"), periods));
    const flows = [0, ...Array<number>(periods).fill(given.n("payment"))];
    flows[periods]! += given.n("finalValue");
    near("presentValue", presentValue(flows, given.n("rate")));
  });

  test("irr-examples", () => {
    const { in: given, near } = entry("irr-examples");
    (given.list("flows") as unknown as number[][]).forEach((flows, k) => {
      near("irr", rateOfReturn(flows)!, k);
    });
  });

  test("nist-upv-factor", () => {
    const { in: given, near } = entry("nist-upv-factor");
    near("uniformPresentValue", annuity(given.n("rate"), given.n("years")));
    near(
      "singlePresentValue",
      presentValue([...Array<number>(given.n("years")).fill(0), 1], given.n("rate")),
    );
  });
});

describe("a second formula", () => {
  const some = fc.record({
    cost: fc.integer({ min: 0, max: 20_000 }),
    life: fc.integer({ min: 1, max: 40 }),
    upkeep: fc.integer({ min: 0, max: 300 }),
    grant: fc.integer({ min: 0, max: 3000 }),
    saved: fc.integer({ min: 0, max: 3000 }),
    discount: fc.constantFrom(0, 0.02, 0.03, 0.07),
    rise: fc.constantFrom(0, 0.02, 0.03, 0.05),
    horizon: fc.integer({ min: 1, max: 40 }),
  });

  test("net present value: year by year with discount factors of its own", () => {
    fc.assert(
      fc.property(some, ({ cost, life, upkeep, grant, saved, discount, rise, horizon }) => {
        let factor = 1;
        let price = saved;
        let value = -Math.max(0, cost - grant);
        for (let year = 1; year <= horizon; year++) {
          factor /= 1 + discount;
          value += (price - upkeep) * factor;
          if (year < horizon && year % life === 0) value -= cost * factor;
          price *= 1 + rise;
        }
        const found = netPresentValue(
          bought(cost, life, upkeep, grant),
          saved,
          outlook(discount, horizon, rise),
        );
        expect(found).toBeCloseTo(value, 6);
      }),
    );
  });

  test("cost per kL is the price at which the saving over one life pays for it exactly", () => {
    fc.assert(
      fc.property(some, ({ cost, life, upkeep, discount }) => {
        const outlay = bought(cost, life, upkeep);
        const perKL = costPerKL(outlay, 40, discount)!;
        expect(netPresentValue(outlay, perKL * 40, outlook(discount, life))).toBeCloseTo(0, 5);
        expect(breakEvenPerKL(outlay, 40, outlook(discount, life))!).toBeCloseTo(perKL, 8);
      }),
    );
  });

  test("at the break-even price and at the break-even quote it is worth nothing", () => {
    fc.assert(
      fc.property(some, ({ cost, life, upkeep, grant, saved, discount, rise, horizon }) => {
        const outlay = bought(cost + 1 + grant, life, upkeep, grant);
        const ahead = outlook(discount, horizon, rise);
        const price = breakEvenPerKL(outlay, 25, ahead)!;
        expect(netPresentValue(outlay, price * 25, ahead)).toBeCloseTo(0, 5);
        const quote = breakEvenQuote(outlay, saved, ahead);
        if (quote !== null && quote >= grant)
          expect(netPresentValue(bought(quote, life, upkeep, grant), saved, ahead)).toBeCloseTo(0, 5);
      }),
    );
  });

  test("discounted payback: the value up to then is nothing, and never sooner than the simple one without a rise", () => {
    fc.assert(
      fc.property(some, ({ cost, upkeep, saved, discount }) => {
        const outlay = bought(cost, 100, upkeep);
        const years = discountedPayback(outlay, saved, outlook(discount, 40));
        if (years === null) return;
        const simple = simplePayback(outlay, saved)!;
        expect(years).toBeGreaterThanOrEqual(simple - 1e-9);
        if (discount === 0) expect(years).toBeCloseTo(simple, 9);
        const whole = Math.floor(years);
        expect(netPresentValue(outlay, saved, outlook(discount, whole))).toBeLessThanOrEqual(1e-6);
      }),
    );
  });
});

describe("what an outlay is", () => {
  test("parts are bought again when their lives end, the grant pays for the first time only", () => {
    const outlay: Outlay = {
      lines: [
        { cost: 900, life_years: 10 },
        { cost: 100, life_years: 4 },
      ],
      grant: 300,
      upkeepPerYear: 20,
    };
    expect(flowsOf(outlay, 50, outlook(0.03, 10))).toEqual([-700, 30, 30, 30, -70, 30, 30, 30, -70, 30, 30]);
  });

  test("a grant above the cost pays nothing out, and takes nothing off another's cost", () => {
    expect(capital(bought(100, 10, 0, 250))).toBe(0);
    expect(capital(joinOutlays([bought(100, 10, 0, 250), bought(500, 10)]))).toBe(500);
  });

  test("what saves nothing never pays back and has no cost a kL", () => {
    const outlay = bought(1000, 10, 30);
    expect(simplePayback(outlay, 30)).toBeNull();
    expect(discountedPayback(outlay, 30, outlook(0, 30))).toBeNull();
    expect(costPerKL(outlay, 0, 0.03)).toBeNull();
    expect(breakEvenPerKL(outlay, -2, outlook(0.03, 10))).toBeNull();
    expect(breakEvenQuote(outlay, 10, outlook(0.03, 10))).toBeNull();
  });

  test("what costs nothing has paid at once, and has no rate of return", () => {
    expect(simplePayback(noOutlay, 5)).toBe(0);
    expect(discountedPayback(noOutlay, 5, outlook(0.03, 10))).toBe(0);
    expect(rateOfReturn(flowsOf(noOutlay, 5, outlook(0.03, 10)))).toBeNull();
  });
});
