import { choicesParts as parts } from "../../words/en/choices-workings.ts";
import { bookOf } from "../book.ts";
import { originOf } from "../origins.ts";
import type { Input } from "../sheet.ts";
import type { Asked } from "./book.ts";

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
