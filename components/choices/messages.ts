import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import type { Working } from "../../src/explain/working.ts";
import type { PricedRows } from "../../src/report/choices.ts";
import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import type { WeatherQuestion } from "../../src/report/choices-weather.ts";
import type { Survey } from "../../src/survey/survey.ts";
import type { UnitSystem } from "../../src/units.ts";

/** A record as CSV text or read already; null: the survey's own normals serve. */
export type GivenWeather = string | WeatherRecord | null;

/** What of a survey is money: all that a changed quote, price or budget touches. */
export type Prices = Pick<Survey, "measures" | "money" | "tariff">;

export function pricesOf({ measures, money, tariff }: Survey): Prices {
  return { ...(measures && { measures }), ...(money && { money }), ...(tariff && { tariff }) };
}

/** The survey with other money; nothing else of it changes. */
export function withPrices(survey: Survey, prices: Prices): Survey {
  const { measures: _m, money: _o, tariff: _t, ...rest } = survey;
  return { ...rest, ...prices };
}

/** What is asked of the worker; a new decision makes an end of the draws of the one before. */
export type Ask =
  | {
      kind: "decide";
      id: number;
      survey: Survey;
      weather: GivenWeather;
      budget: number | null;
      /** Asked of the weather beside the usual. */
      questions: readonly WeatherQuestion[];
      draws: number;
      seed: number;
    }
  /** Makes a decision that `reprice` is asked of, and tells nothing. */
  | { kind: "ready"; survey: Survey; weather: GivenWeather; budget: number | null }
  /** Money of the survey made ready has changed, and nothing else. */
  | { kind: "reprice"; id: number; prices: Prices; budget: number | null }
  /** The working of a figure. */
  | { kind: "explain"; id: number; at: string; units: UnitSystem; lang: string }
  /** No more draws of the last decision. */
  | { kind: "stop" }
  /** Draws of the last decision go on to so many. */
  | { kind: "draw-on"; draws: number };

export type Sureness = NonNullable<GroundsChoices["spread"]>;

export interface ToldFault {
  path: string;
  sentence: string;
}

export type Told =
  | { kind: "decided"; id: number; document: GroundsChoices }
  | { kind: "repriced"; id: number; rows: PricedRows }
  /** So many draws are made; `sureness` comes now and then, `isLast` when no more are made. */
  | { kind: "drawn"; id: number; done: number; of: number; sureness: Sureness | null; isLast: boolean }
  /** null: the address leads nowhere, or not yet. */
  | { kind: "working"; id: number; working: Working | null }
  | { kind: "faults"; id: number; faults: readonly ToldFault[] }
  /** A fault of the program itself. */
  | { kind: "crash"; id: number; words: string };
