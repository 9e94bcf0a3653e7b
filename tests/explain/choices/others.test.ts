import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Survey } from "../../../src/survey/survey.ts";
import { asRead, siteWithMeasures } from "../../helpers/sites.ts";
import { surveyOf, textOf } from "../../helpers/worked.ts";
import { type Opened, openedChoices, walkChoices } from "./walk.ts";

const school = () => surveyOf(textOf("demo/school.survey.json"));

/** Where a reader of the document begins. */
function beginnings({ document, open }: Opened): string[] {
  const all = [
    ...document.measures.flatMap(({ id }) => [
      `choices/cost/${id}`,
      `choices/measure/${id}/alone`,
      `choices/measure/${id}/after`,
      `choices/worth/${id}`,
      `choices/purse/offer/${id}/cost-per-kl`,
    ]),
    ...document.shares.flatMap(({ id }) => [
      `choices/share/${id}/water`,
      `choices/share/${id}/money`,
      `choices/share/${id}/error`,
      ...["npv", "payback", "discounted-payback", "cost-per-kl", "pays-from", "pays-up-to"].map(
        (what) => `choices/purse/share/${id}/${what}`,
      ),
    ]),
    ...document.sizes.slice(0, 3).map(({ tank, capacity_L }) => `choices/size/${tank}/${capacity_L}/p50`),
  ];
  return all.filter((at) => open(at) !== null);
}

function faultsOfSite(survey: Survey): string[] {
  const opened = openedChoices(asRead(survey));
  return walkChoices(opened, beginnings(opened)).faults.slice(0, 5);
}

describe("money of every kind", () => {
  const withTank = (change: object): Survey => {
    const survey = school();
    const tank = survey.measures!.find(({ id }) => id === "bigger-yard-tank")!;
    delete tank.cost;
    Object.assign(tank, change);
    return survey;
  };

  test("a quote in lines with lives of their own, a grant and upkeep", () => {
    const survey = withTank({
      quote: {
        from: "an invented firm",
        grant: 900,
        lines: [
          { what: "Tank", cost: 900, life_years: 25 },
          { what: "Pump", cost: 400, life_years: 7 },
          { what: "Base", cost: 300 },
        ],
      },
      upkeepPerYear: 12,
    });
    expect(faultsOfSite(survey)).toEqual([]);
    const { open } = openedChoices(survey);
    const year = open("choices/purse/share/bigger-yard-tank/year/7")!;
    expect(year.given.map(({ name }) => name)).toContain("Pump");
    expect(year.given.find(({ name }) => name === "Pump")!.source).toContain(
      "measures[3].quote.lines[1].cost",
    );
    expect(open("choices/purse/share/bigger-yard-tank/year/8")!.given.map(({ name }) => name)).not.toContain(
      "Pump",
    );
  });

  test("one price, periods that do not fill a year, and no discount", () => {
    const survey = school();
    const { steps: _, ...tariff } = survey.tariff!;
    survey.tariff = { ...tariff, perKL: 3.2 };
    survey.money = { ...survey.money, discountShare: 0 };
    expect(faultsOfSite(survey)).toEqual([]);
    expect(faultsOfSite({ ...survey, tariff: { ...school().tariff!, periodMonths: 5 } })).toEqual([]);
  });

  test("without a price there is water alone, and its workings", () => {
    const { tariff: _, ...survey } = school();
    const opened = openedChoices(survey);
    expect(opened.open("choices/share/mulch-front/money")).toBeNull();
    expect(opened.open("choices/worth/mulch-front")).toBeNull();
    expect(faultsOfSite(survey)).toEqual([]);
  });
});

test("beyond what can be counted out a share opens to the orders drawn and to how far it may be off", () => {
  const survey = school();
  const bed = (k: number) => survey.beds[k % survey.beds.length]!.id;
  const more = Array.from({ length: 6 }, (_, k) => ({
    id: `more-${k}`,
    name: `More ${k}`,
    cost: 100,
    mendLeak: undefined,
    replant: { beds: [bed(k)], plantings: survey.beds[k]!.plantings },
  })).map(({ mendLeak: _m, ...measure }) => measure);
  survey.measures = [
    ...survey.measures!.map((measure) => ({ ...measure, chosen: measure.id !== "big-yard-tank" })),
    ...more,
  ].filter(({ id }) => id !== "quad-meadow");
  const opened = openedChoices(survey);
  expect(opened.document.shares.length).toBeGreaterThan(10);
  const { id, share_kL_year, standardError_kL } = opened.document.shares[0]!;
  expect(opened.open(`choices/share/${id}/water`)!.value).toBeCloseTo(share_kL_year, 9);
  expect(opened.open(`choices/share/${id}/error`)!.value).toBeCloseTo(standardError_kL!, 9);
  expect(walkChoices(opened, [`choices/share/${id}/water`, `choices/share/${id}/error`]).faults).toEqual([]);
});

test("on random sites with measures of every kind", () => {
  fc.assert(
    fc.property(siteWithMeasures(4), (site) => {
      expect(faultsOfSite(site)).toEqual([]);
    }),
    { numRuns: 6 },
  );
}, 60_000);
