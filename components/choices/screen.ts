import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import type { Survey, SurveyMeasure } from "../../src/survey/survey.ts";
import { briefWords } from "../../src/words/en/choices.ts";
import { choicesPage } from "../../src/words/en/choices-page.ts";
import { allOf } from "../../src/words/en/lists.ts";
import { type Formatter, NBSP } from "../../src/words/format.ts";
import type { BudgetWords } from "../charts/budget/prepare.ts";
import type { Chart } from "../charts/chart.ts";
import type { ScreenState } from "./state.ts";

/** How far draws have come. */
export interface Drawing {
  done: number;
  of: number;
  isGoing: boolean;
}

/** What people do on the screen. */
export interface Acts {
  /** Money of the survey alone: redrawn at once. */
  money(survey: Survey, isDone: boolean): void;
  /** Anything else of the survey: worked out anew. */
  water(survey: Survey): void;
  state(change: Partial<ScreenState>): void;
  stopDraws(): void;
  drawOn(draws: number): void;
  /** Text as typed in a field while somebody is in it, or while it is no number; null: as the survey has it. */
  typed(field: string, text: string | null): void;
}

/** What every part of the screen is made from. */
export interface Screen {
  choices: GroundsChoices;
  survey: Survey;
  state: ScreenState;
  say: Formatter;
  drawing: Drawing;
  /** Whether draws, other weather and proposals are still those of the quotes before. */
  isStale: boolean;
  typed: ReadonlyMap<string, string>;
  acts: Acts;
  said: Said;
  /** A chart made once for what it shows. */
  chart(key: string, of: unknown, make: () => Chart): Chart;
}

/** How names, water and money are written. */
export interface Said extends BudgetWords {
  /** 383 kL, 101,000 gallons. */
  water(kL: number): string;
  money(amount: number | null): string;
  measure(id: string): string;
  bed(id: string): string;
  tank(id: string): string;
}

export function saidOf(survey: Survey, currency: string | null, say: Formatter): Said {
  const words = briefWords(currency);
  const { measures = [], beds, tanks, roofs } = survey;
  const added = measures.flatMap(({ addTank }) => addTank ?? []);
  const named = new Map([...beds, ...roofs, ...tanks, ...added].map(({ id, name }) => [id, name]));
  const measureNames = new Map<string, string>(measures.map(({ id, name }) => [id, name]));
  const water = (kL: number) => (say.system === "us" ? say.yearly(kL) : `${words.kL(kL)}${NBSP}kL`);
  return {
    // one figure is written one way, in sentences and on drawings
    say: { ...say, yearly: water, yearlyBare: say.system === "us" ? say.yearlyBare : words.kL },
    water,
    money: words.money,
    measure: (id) => measureNames.get(id) ?? choicesPage.waterToNeed,
    bed: (id) => named.get(id) ?? id,
    tank: (id) => named.get(id) ?? id,
    names: (ids) => ids.flatMap((id) => (measureNames.has(id) ? [`“${measureNames.get(id)!}”`] : [])),
    list: allOf,
  };
}

export function measureOf(survey: Survey, id: string): SurveyMeasure | undefined {
  return survey.measures?.find((measure) => measure.id === id);
}
