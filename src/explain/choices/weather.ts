import type { SizePoint } from "../../engine/size-curve.ts";
import { pointUnder } from "../../report/choices-weather.ts";
import { weatherName } from "../../words/en/choices-reasons.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import type { Working } from "../working.ts";
import { type Asked, ofRun, sheetOf } from "./book.ts";

/** `choices/met/CODE/TANK`: reliability of a tank of the plan under other weather. */
export function metWorking(asked: Asked): Working | null {
  const [code = "", tank] = asked.rest;
  const { book } = asked;
  const question = book.questions.find((one) => one.code === code) ?? null;
  if (tank === undefined || (question === null && code !== "record")) return null;
  const point = pointUnder(book.context, question, tank);
  if (!point) return null;
  const sheet = sheetOf(asked);
  met(sheet, point, weatherName(code));
  const name = book.context.worked.survey.tanks.find(({ id }) => id === tank)?.name ?? tank;
  return sheet.done(asked.at, titles.under(titles.reliabilityUnder(name), weatherName(code)));
}

function met(
  sheet: ReturnType<typeof sheetOf>,
  { drawDays, shortDays, reliability }: SizePoint,
  weather: string,
): void {
  const source = parts.underRun(weather);
  if (drawDays === 0) sheet.step("reliabilityNone", {}, reliability);
  else
    sheet.step(
      "reliability",
      { shortDays: ofRun(shortDays, source), drawDays: ofRun(drawDays, source) },
      reliability,
    );
}
