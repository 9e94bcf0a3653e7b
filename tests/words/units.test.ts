import { expect, test } from "vitest";
import { amountsIn } from "../../src/words/amounts.ts";
import { proposalSentence, weatherName } from "../../src/words/en/choices-reasons.ts";
import { figuresIn, marked, unmarked } from "../../src/words/marked.ts";
import { exactMoneyIn, moneyIn } from "../../src/words/money.ts";
import { tableIn } from "../../src/words/table-units.ts";

test("amounts are told in the units that people use there, a price by what water is bought by", () => {
  const [metric, us] = [amountsIn("metric"), amountsIn("us")];
  expect([metric.water(383.4), us.water(383.4)]).toEqual(["383 kL", "101,000 gallons"]);
  // 1 US gallon is 3.785411784 L
  expect(us.size(3785.411784)).toBe("1,000 gal");
  expect(us.perVolume(1)).toBeCloseTo(3.785411784, 9);
  expect([metric.layer(75), us.layer(75)]).toEqual(["75 mm", "3 in"]);
  expect(us.depth(254)).toBe("10");
  expect(weatherName("warmer", "us")).toBe("3.6 °F warmer");
  expect(proposalSentence("spills", { tank: "Shed", spill_kL_year: 10 }, "us")).toContain("2,600 gallons");
});

test("money is whole from 20 on, to the cent in workings, and never minus nothing", () => {
  expect([180, 2.847, -3129.4, 0].map(moneyIn("USD"))).toEqual(["$180", "$2.85", "−$3,129", "$0"]);
  expect([180, -0.001].map(exactMoneyIn("USD"))).toEqual(["$180.00", "$0.00"]);
  expect(exactMoneyIn(null)(2)).toBe("2.00");
});

test("a sentence comes apart at its figures, and reads the same without them", () => {
  const sentence = `Saves ${marked("69 kL", "choices/measure/a/after")} for ${marked("$180", "choices/cost/a")}.`;
  expect(figuresIn(sentence)).toEqual([
    "Saves ",
    { at: "choices/measure/a/after", text: "69 kL" },
    " for ",
    { at: "choices/cost/a", text: "$180" },
    ".",
  ]);
  expect(unmarked(sentence)).toBe("Saves 69 kL for $180.");
});

test("a table in gallons has them in its names and its cells", () => {
  const table = {
    name: "sizes",
    header: ["tank", "capacity_L", "saved_kL_year.p50", "rain_mm_year", "costPerKL", "npv"],
    rows: [
      ["shed", "3785.411784", "1", "25.4", "1", "12"],
      ["shed", "0", "", "0", "", ""],
    ],
  };
  const { header, rows } = tableIn(table, "us");
  expect(header).toEqual([
    "tank",
    "capacity_gal",
    "saved_gal_year.p50",
    "rain_in_year",
    "costPer1000gal",
    "npv",
  ]);
  expect(rows[0]!.slice(1).map(Number)).toEqual([
    1000,
    expect.closeTo(264.172, 3),
    1,
    expect.closeTo(3.785, 3),
    12,
  ]);
  expect(rows[1]).toEqual(["shed", "0", "", "0", "", ""]);
  expect(tableIn(table, "metric")).toBe(table);
});
