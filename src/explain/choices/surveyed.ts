import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import { bookOf } from "../book.ts";
import { originOf } from "../origins.ts";
import type { Input } from "../sheet.ts";
import type { Working } from "../working.ts";
import { type Asked, sheetOf } from "./book.ts";

/** A figure of the survey's money: as it stands there, or what stands in for it with its table. */
export function surveyedMoney({ book, say }: Asked, path: string, value: number, name?: string): Input {
  const { worked, money } = book.context;
  const { survey, resolved } = worked;
  const filled = { ...resolved, assumed: [...resolved.assumed, ...money.assumed] };
  const origin = originOf(
    bookOf(worked),
    { name: "need", survey, resolved: filled },
    say,
    path,
    parts.notSaid,
  );
  return { value, origin, ...(name !== undefined && { name }) };
}

/** `choices/outlook/discount|rise|years`: how money is looked at. */
export function outlookWorking(asked: Asked): Working | null {
  const [what] = asked.rest;
  const { discountShare, riseShare, horizon_years } = asked.book.context.outlook;
  const sheet = sheetOf(asked);
  if (what === "discount")
    sheet.step(
      "discountIs",
      { discount: surveyedMoney(asked, "money.discountShare", discountShare) },
      discountShare,
    );
  else if (what === "rise")
    sheet.step("riseIs", { rise: surveyedMoney(asked, "tariff.riseShare", riseShare) }, riseShare);
  else if (what === "years")
    sheet.step(
      "aheadIs",
      { ahead: surveyedMoney(asked, "money.horizon_years", horizon_years) },
      horizon_years,
    );
  else return null;
  return sheet.done(asked.at, titles.outlook[what]);
}
