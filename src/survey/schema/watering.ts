import * as z from "zod";
import { methods, supplies } from "../words.ts";
import { days, id, months, quantity } from "./parts.ts";

export const flow = (meaning: string) => quantity(meaning, "L/min", 0.01, 100_000);

const positiveShare = (meaning: string) => quantity(`${meaning}, above 0 to 1`, "", 0.01, 1);

const habit = z
  .strictObject({
    minutes: quantity("Length of one watering; 0 where it is not watered", "min", 0, 1_440),
    days: days("Days of the week on which it is watered"),
    months: months("Months in which it is watered"),
  })
  .describe("Watering as it is done today");

/** How a bed is watered; the measure changeWatering has the same fields. */
export const watering = z
  .strictObject({
    method: z.enum(methods).describe("How the water is put on"),
    flow_L_min: flow("Flow on to the whole bed while it is watered").optional(),
    efficiency: positiveShare("Share of the water let out that the root zone gets").optional(),
    wettedShare: positiveShare("Share of the ground that a watering wets").optional(),
    distributionUniformity: positiveShare("Lowest quarter of the catch cans over the mean of all").optional(),
    supply: z.enum(supplies).describe("Where the water comes from"),
    tank: id("Id of the tank that serves the bed").optional(),
    tap: id("Id of the tap that serves the bed").optional(),
    runBy: z.enum(["hand", "timer"]).describe("Whether somebody turns it on, or a timer").optional(),
    habit: habit.optional(),
    allowedDays: days("Days of the week on which watering is allowed").optional(),
    maxMinutes: quantity("Longest watering of a day", "min", 0.1, 1_440).optional(),
  })
  .describe("How the bed is watered");
