import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import type { FigureKind, MarkFigure } from "../../src/words/en/choices.ts";
import { marked } from "../../src/words/marked.ts";
import { setKeyOf } from "./verdict.ts";

type Figures = [kind: FigureKind, value: number | null | undefined, at: string][];

/** Marks each figure of the brief with the address of a working that gives that very number. */
export function markBrief(choices: GroundsChoices): MarkFigure {
  const known = new Map<string, string>();
  const know = (kind: FigureKind, value: number, at: string) => {
    const key = `${kind} ${value}`;
    if (value !== 0 && !known.has(key)) known.set(key, at);
  };
  for (const [kind, value, at] of figuresOf(choices))
    if (value !== null && value !== undefined) {
      know(kind, value, at);
      // what stays unpaid is said without its minus
      know(kind, -value, at);
    }
  return (text, value, kind) => {
    const at = known.get(`${kind} ${value}`);
    return at === undefined ? text : marked(text, at);
  };
}

function figuresOf(choices: GroundsChoices): Figures {
  const { mains, plans, best, outlook, spread } = choices;
  const key = setKeyOf(best.measures);
  const short = plans.underWatered.reduce((sum, row) => sum + row.need_kL_year - row.habit_kL_year, 0);
  return [
    ["water", mains.today_kL_year, "mains/today"],
    ["water", mains.plan_kL_year, "mains/plan"],
    ["water", mains.need_kL_year, "mains/need"],
    ["water", mains.giveUp_kL_year.p50, "mains/give-up"],
    ["water", plans.noMoreThanToday?.plan_kL_year, "choices/least"],
    ["water", short, "choices/short"],
    ...mains.byYear.map(({ year, today_kL, plan_kL }): Figures[number] => [
      "water",
      today_kL - plan_kL,
      `mains/give-up/${year}`,
    ]),
    ["water", spread?.giveUp_kL_year.p10, "choices/sure/give-up/p10"],
    ["water", spread?.giveUp_kL_year.p90, "choices/sure/give-up/p90"],
    ["water", best.saved_kL_year, `choices/set/${key}/saved`],
    ["money", best.cost, `choices/cost/set/${key}`],
    ["money", best.npv, `choices/purse/set/${key}/npv`],
    ["price", outlook.topPerKL, "choices/top-price"],
    ...measureFigures(choices),
    ...tankFigures(choices),
  ];
}

function measureFigures({ measures, shares, proposals }: GroundsChoices): Figures {
  return [
    ...shares.flatMap(
      ({ id, share_kL_year, saved_money_year }): Figures => [
        ["water", share_kL_year, `choices/share/${id}/water`],
        ["money", saved_money_year, `choices/share/${id}/money`],
      ],
    ),
    ...measures.flatMap(
      ({ id, after_kL_year, cost, npv, costPerKL }): Figures => [
        ["water", after_kL_year, `choices/measure/${id}/after`],
        ["money", cost, `choices/cost/${id}`],
        ["money", npv, `choices/worth/${id}`],
        ["price", costPerKL, `choices/purse/offer/${id}/cost-per-kl`],
      ],
    ),
    ...proposals.flatMap(
      ({ measure, after_kL_year, worthUpTo }): Figures =>
        measure
          ? [
              ["water", after_kL_year, `choices/measure/${measure.id}/after`],
              ["money", worthUpTo, `choices/purse/offer/${measure.id}/pays-up-to`],
            ]
          : [],
    ),
  ];
}

function tankFigures({ tanks }: GroundsChoices): Figures {
  return tanks.flatMap(
    ({ tank, capacity_L, saved_kL_year, most_kL_year, enough_L }): Figures => [
      ["water", saved_kL_year, `choices/size/${tank}/${capacity_L}/mean`],
      ["water", most_kL_year, `choices/most/${tank}`],
      ["size", enough_L, `choices/size/${tank}/${enough_L}/part`],
    ],
  );
}
