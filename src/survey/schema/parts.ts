import * as z from "zod";
import { weekdays } from "../words.ts";
import * as forms from "./forms.ts";

/** The unit of a quantity, for the sentence that says what is wanted. */
export const units = z.registry<{ unit: string }>();

/** A number within bounds, both included. */
export function quantity(meaning: string, unit: string, min: number, max: number) {
  const schema = z
    .number()
    .min(min)
    .max(max)
    .describe(unit === "" ? meaning : `${meaning} (${unit})`);
  units.add(schema, { unit });
  return schema;
}

/** A whole number within bounds, both included. */
export function whole(meaning: string, min: number, max: number) {
  return z.int().min(min).max(max).describe(meaning);
}

/** A share, 0–1. */
export const share = (meaning: string) => quantity(`${meaning}, 0 to 1`, "", 0, 1);

/** Twelve numbers, January first. */
export function monthly(meaning: string, unit: string, min: number, max: number) {
  return z
    .array(quantity(meaning, unit, min, max))
    .length(12)
    .describe(`${meaning}, twelve numbers from January${unit === "" ? "" : ` (${unit})`}`);
}

/** Words for people: not blank, one line, any script. */
export const text = (meaning: string, longest = 200) =>
  z.stringFormat("text", forms.text).max(longest).describe(meaning);

export const id = (meaning: string) => z.stringFormat("id", forms.id).describe(meaning);

export const date = (meaning: string) => z.stringFormat("date", forms.date).describe(meaning);

export const dateOrMonthDay = (meaning: string) =>
  z.stringFormat("date-or-month-day", forms.dateOrMonthDay).describe(meaning);

export const dateOrTime = (meaning: string) =>
  z.stringFormat("date-or-time", forms.dateOrTime).describe(meaning);

export const moment = (meaning: string) => z.stringFormat("moment", forms.moment).describe(meaning);

export const time = (meaning: string) => z.stringFormat("clock-time", forms.time).describe(meaning);

export const dateOrWeekday = (meaning: string) =>
  z.stringFormat("date-or-weekday", forms.dateOrWeekday).describe(meaning);

export const ids = (meaning: string, most: number, least = 0) =>
  z.array(id(meaning)).min(least).max(most).describe(meaning);

export const days = (meaning: string) => z.array(z.enum(weekdays)).max(7).describe(meaning);

export const months = (meaning: string) =>
  z
    .array(whole("A month, 1 to 12", 1, 12))
    .max(12)
    .describe(meaning);

/** A point of the site plan: metres east and north of any corner that suits. */
export const point = (meaning: string) => {
  const metres = () => quantity("Metres on the site plan", "m", -100_000, 100_000);
  return z.tuple([metres(), metres()]).describe(meaning);
};

export const outline = (meaning: string) =>
  z.array(point("A corner: x, y")).min(3).max(2_000).describe(meaning);
