import { beforeAll, describe, expect, test } from "vitest";
import type { GroundsChoices } from "../../../src/report/choices-schema.ts";
import { surveyOf, textOf } from "../../helpers/worked.ts";
import { isSame } from "../walk.ts";
import { type Opened, openedChoices, walkChoices } from "./walk.ts";

let opened: Opened;
beforeAll(() => {
  opened = openedChoices(surveyOf(textOf("demo/school.survey.json")), 25);
}, 60_000);

const keyOf = (ids: readonly string[]) => ids.filter((id) => id !== "water-to-need").join("+") || "none";

/** Each figure of the document beside the address at which it opens. */
function figures({ document }: Opened): [string, number][] {
  const { measures, shares, frontier, frontierByWorth, plans, best, order, outlook, spread, tanks } =
    document;
  const rows: [string, number | null | undefined][] = [
    ["choices/least", plans.noMoreThanToday?.plan_kL_year],
    ["choices/least/p50", plans.noMoreThanToday?.giveUp_kL_year.p50],
    ["choices/short", plans.underWatered.reduce((sum, row) => sum + row.need_kL_year - row.habit_kL_year, 0)],
    ["choices/outlook/discount", outlook.discountShare],
    ["choices/outlook/rise", outlook.riseShare],
    ["choices/outlook/years", outlook.horizon_years],
    [`choices/set/${keyOf(best.measures)}/saved`, best.saved_kL_year],
    [`choices/purse/set/${keyOf(best.measures)}/npv`, best.npv],
    ["choices/top-price", outlook.topPerKL],
    ...measures.flatMap(({ id, cost, alone_kL_year, after_kL_year, npv, costPerKL }) => [
      [`choices/cost/${id}`, cost] as [string, number | null],
      [`choices/measure/${id}/alone`, alone_kL_year] as [string, number],
      [`choices/measure/${id}/after`, after_kL_year] as [string, number],
      [`choices/worth/${id}`, npv] as [string, number | null],
      [`choices/purse/offer/${id}/cost-per-kl`, costPerKL] as [string, number | null],
    ]),
    ...shares.flatMap((row): [string, number | null][] => {
      const of = (what: string) => `choices/purse/share/${row.id}/${what}`;
      return [
        [`choices/share/${row.id}/water`, row.share_kL_year],
        [`choices/share/${row.id}/money`, row.saved_money_year],
        [`choices/share/${row.id}/first`, row.first_kL_year],
        [`choices/share/${row.id}/last`, row.last_kL_year],
        [of("npv"), row.npv],
        [of("payback"), row.payback_years || null],
        [of("discounted-payback"), row.discountedPayback_years || null],
        [of("cost-per-kl"), row.costPerKL],
        [of("pays-from"), row.breakEvenPerKL],
        [of("pays-up-to"), row.breakEvenCost],
      ];
    }),
    ...frontier.map(({ measures: ids, saved_kL_year }): [string, number] => [
      `choices/best/${keyOf(ids)}/water`,
      saved_kL_year,
    ]),
    ...frontier.map(({ measures: ids, cost }): [string, number] => [`choices/cost/set/${keyOf(ids)}`, cost]),
    ...frontierByWorth.map(({ measures: ids, npv }): [string, number | null] => [
      `choices/best/${keyOf(ids)}/money`,
      npv,
    ]),
    ...(order?.steps ?? []).map(({ spent }, k): [string, number] => [
      `choices/order/${k}`,
      spent / order!.budgetPerYear,
    ]),
    ...tanks.flatMap((row): [string, number][] => [
      [`choices/most/${row.tank}`, row.most_kL_year],
      [`choices/more/${row.tank}/tank`, row.moreTank_kL_year],
      [`choices/more/${row.tank}/roof`, row.moreRoof_kL_year],
      [`choices/more/${row.tank}/demand`, row.moreDemand_kL_year],
    ]),
    ["choices/sure/give-up/p10", spread?.giveUp_kL_year.p10],
    ["choices/sure/give-up/p90", spread?.giveUp_kL_year.p90],
    ["choices/sure/need/p50", spread?.need_kL_year.p50],
    ["choices/sure/plan/p50", spread?.plan_kL_year.p50],
    ["choices/sure/chance/0/1", spread?.chance[0]?.[1]],
    ...(spread?.rivals ?? []).flatMap(({ saved_kL_year, npv }, k): [string, number | null][] => [
      [`choices/sure/rival/${k}/saved/p10`, saved_kL_year.p10],
      [`choices/sure/rival/${k}/worth/p90`, npv.p90],
    ]),
    ...(spread?.byUnknown ?? []).map(({ at, share }): [string, number] => [
      `choices/sure/unknown/${at}`,
      share,
    ]),
    ...(spread?.byUnknownOfChoice ?? []).map(({ at, share }): [string, number] => [
      `choices/sure/choice/${at}`,
      share,
    ]),
    ...banFigures(opened),
    ...sizeFigures(opened),
    ...weatherFigures(opened),
    ...proposalFigures(opened),
  ];
  return rows.flatMap(([at, value]): [string, number][] =>
    value === null || value === undefined ? [] : [[at, value]],
  );
}

function sizeFigures({ document: { sizes } }: Opened): [string, number | null][] {
  return sizes
    .filter(({ mark }, k) => mark !== null || k % 20 === 1)
    .flatMap((row): [string, number | null][] => {
      const next = sizes[sizes.indexOf(row) + 1];
      const of = (what: string) => `choices/size/${row.tank}/${row.capacity_L}/${what}`;
      return [
        [of("mean"), row.mean_kL_year],
        [of("p10"), row.saved_kL_year.p10],
        [of("p50"), row.saved_kL_year.p50],
        [of("p90"), row.saved_kL_year.p90],
        [of("reliability"), row.reliability],
        [of("empty"), row.emptyDays_year],
        [of(`marginal/${next?.capacity_L}`), row.marginal_kL],
      ];
    });
}

function banFigures({ document: { tanks, rainOnly } }: Opened): [string, number][] {
  const days = (bed: GroundsChoices["rainOnly"][number], on: string): [string, number][] => [
    [`choices/ban/${bed.bed}/${on}/short`, bed.stressDays_year],
    [`choices/ban/${bed.bed}/${on}/dry`, bed.longestDry_days],
  ];
  return [
    ...rainOnly.flatMap((bed) => days(bed, "rain")),
    ...tanks.flatMap(({ tank, ban, byRoof }) => [
      ...ban.flatMap(({ capacity_L, beds }) => beds.flatMap((bed) => days(bed, `${tank}/${capacity_L}`))),
      ...byRoof.map(({ times, saved_kL_year }): [string, number] => [
        `choices/roof/${tank}/${times}`,
        saved_kL_year,
      ]),
    ]),
  ];
}

function weatherFigures({ document: { scenarios } }: Opened): [string, number | null][] {
  return scenarios.flatMap((row): [string, number | null][] => [
    [`choices/under/${row.code}/rain`, row.rain_mm_year],
    [`choices/under/${row.code}/et0`, row.et0_mm_year],
    [`choices/under/${row.code}/mains/plan`, row.plan_kL_year],
    [`choices/under/${row.code}/mains/give-up`, row.giveUp_kL_year.p50],
    ...row.reliability.map(({ tank, reliability }): [string, number] => [
      `choices/met/${row.code}/${tank}`,
      reliability,
    ]),
  ]);
}

function proposalFigures({ document: { proposals } }: Opened): [string, number | null][] {
  return proposals.flatMap(
    ({ measure, alone_kL_year, after_kL_year, worthUpTo }): [string, number | null][] =>
      measure === null
        ? []
        : [
            [`choices/measure/${measure.id}/alone`, alone_kL_year],
            [`choices/measure/${measure.id}/after`, after_kL_year],
            [`choices/purse/offer/${measure.id}/pays-up-to`, worthUpTo],
          ],
  );
}

describe("every figure of the demo's decision", () => {
  test("opens to itself", () => {
    const wrong = figures(opened).flatMap(([at, value]) => {
      const found = opened.open(at);
      return found && isSame(found.value!, value) ? [] : [`${at}: ${found?.value} beside ${value}`];
    });
    expect(wrong).toEqual([]);
  }, 60_000);

  test("is followed to what it was made of, adds up as it is written, and says where each number came from", () => {
    const { faults, opened: met } = walkChoices(
      opened,
      figures(opened).map(([at]) => at),
    );
    expect(faults.slice(0, 20)).toEqual([]);
    for (const topic of ["set", "saving", "bill", "share", "added", "purse", "cost", "size", "with"])
      expect(
        met.some((at) => at.startsWith(`choices/${topic}/`)),
        topic,
      ).toBe(true);
  }, 120_000);

  test("goes down to the day behind a set of measures and under other weather", () => {
    const behind = opened.open("choices/with/mulch-front/bed/front/ks/2015-07-14");
    expect(behind!.title).toContain("Bark on the front beds");
    expect(
      behind!.given.every(({ at }) => at === undefined || at.startsWith("choices/with/mulch-front/")),
    ).toBe(true);
    const drier = opened.open("choices/under/less-rain/rain/2015-11-17")!.value!;
    expect(drier).toBeCloseTo(0.8 * opened.open("rain/2015-11-17")!.value!, 9);
  });

  test("leads nowhere from addresses of nothing", () => {
    for (const at of [
      "choices/set/nobody/saved",
      "choices/set/none/lost",
      "choices/measure/mulch-front/twice",
      "choices/purse/share/water-to-need/colour",
      "choices/size/yard-tank/-5/mean",
      "choices/sure/chance/0/99",
      "choices/under/never/rain",
      "choices/with/none/bed/nobody/need",
      "choices/nothing",
      "choices/toString/a",
    ])
      expect(opened.open(at), at).toBeNull();
  });
});
