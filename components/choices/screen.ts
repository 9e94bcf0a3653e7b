import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import type { Survey, SurveyMeasure } from "../../src/survey/survey.ts";
import { briefWords } from "../../src/words/en/choices.ts";
import { choicesPage } from "../../src/words/en/choices-page.ts";
import { allOf } from "../../src/words/en/lists.ts";
import { type Formatter, NBSP } from "../../src/words/format.ts";
import { marked } from "../../src/words/marked.ts";
import type { BudgetWords } from "../charts/budget/prepare.ts";
import type { Chart } from "../charts/chart.ts";
import type { Explain } from "../figure/figure.ts";
import type { OpenCell } from "./opening.ts";
import type { ScreenState } from "./state.ts";

/** How far draws have come. */
export interface Drawing {
  done: number;
  of: number;
  isGoing: boolean;
}

/** What people do on the screen. */
export interface Acts {
  /** Money of the survey alone: redrawn at once. @param change of the survey as it stands by then */
  money(change: (survey: Survey) => Survey, isDone: boolean): void;
  /** Anything else of the survey: worked out anew. */
  water(change: (survey: Survey) => Survey): void;
  state(change: Partial<ScreenState>): void;
  stopDraws(): void;
  drawOn(draws: number): void;
  /** Text as typed in a field while somebody is in it, or while it is no number; null: as the survey has it. */
  typed(field: string, text: string | null, isRight: boolean): void;
  /** Opens a figure of a table, and closes the one open before; null: closes it. */
  open(cell: OpenCell | null): void;
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
  /** Hands out workings by address. */
  explain: Explain;
  /** The figure of a table that is open. */
  open: OpenCell | null;
}

/** How names, water and money are written. */
export interface Said extends BudgetWords {
  /** 383 kL, 101,000 gallons. */
  water(kL: number): string;
  money(amount: number | null): string;
  /** A price of a kL as a price of what water is bought by. */
  price(perKL: number | null): string;
  /** What water is bought by: a kL, 1,000 gallons. */
  volume: string;
  /** The step of size that a marginal saving is told for: 1,000 L, 100 gal. */
  stepSize: string;
  perStep(marginal_kL: number): string;
  /** A figure of a sentence, marked with the address at which it opens. */
  opens(text: string, at: string): string;
  measure(id: string): string;
  bed(id: string): string;
  tank(id: string): string;
}

export function saidOf(survey: Survey, currency: string | null, say: Formatter): Said {
  const words = briefWords(currency, say.system);
  const { measures = [], beds, tanks, roofs } = survey;
  const added = measures.flatMap(({ addTank }) => addTank ?? []);
  const named = new Map([...beds, ...roofs, ...tanks, ...added].map(({ id, name }) => [id, name]));
  const measureNames = new Map<string, string>(measures.map(({ id, name }) => [id, name]));
  const water = (kL: number) => (say.system === "us" ? say.yearly(kL) : words.water(kL).replace(" ", NBSP));
  return {
    // one figure is written one way, in sentences and on drawings
    say: { ...say, yearly: water, yearlyBare: say.system === "us" ? say.yearlyBare : words.kL },
    water,
    money: words.money,
    price: words.price,
    volume: words.volume,
    stepSize: say.system === "us" ? `100${NBSP}gal` : `1,000${NBSP}L`,
    perStep: (marginal_kL) => water(say.system === "us" ? marginal_kL / say.volume(10) : marginal_kL),
    opens: marked,
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
