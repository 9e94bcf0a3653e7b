import * as z from "zod";
import { meterUnits } from "../words.ts";
import { date, dateOrTime, id, ids, quantity, text } from "./parts.ts";

export const meter = z
  .strictObject({
    id: id("Id of the meter"),
    name: text("Name of the meter"),
    unit: z.enum(meterUnits).describe("Unit that the register counts"),
    feeds: ids("Ids of the beds, taps, tanks, draws and leaks behind it", 2_000).optional(),
    parent: id("Id of the meter that this one is behind").optional(),
  })
  .describe("A water meter");

/** A register, a bill or a dip: see checks/meters.ts. */
export const reading = z
  .strictObject({
    meter: id("Id of the meter").optional(),
    at: dateOrTime("When the register was read: date, or date and time").optional(),
    value: quantity("What the register showed, in the meter's unit", "", 0, 1e12).optional(),
    from: date("First day of the bill").optional(),
    to: date("Last day of the bill").optional(),
    kL: quantity("Water billed", "kL", 0, 1e8).optional(),
    estimated: z.boolean().describe("Whether it was estimated, not read").optional(),
    tank: id("Id of the tank that was dipped").optional(),
    date: date("Day of the dip").optional(),
    level_L: quantity("Water in the tank", "L", 0, 10_000_000).optional(),
  })
  .meta({
    oneOf: [
      { required: ["meter", "at", "value"] },
      { required: ["meter", "from", "to", "kL"] },
      { required: ["tank", "date", "level_L"] },
    ],
  })
  .describe("A register read, a bill, or a tank dipped");

export const group = z
  .strictObject({ id: id("Id of the group"), nickname: text("Nickname of the group, no real names", 60) })
  .describe("A survey group");

const figure = (meaning: string) => z.union([z.number(), text(meaning, 100)]).describe(meaning);

export const finding = z
  .strictObject({
    id: id("Id of the finding"),
    at: text("Path of the field that it is about, such as beds[2].area_m2", 200),
    how: text("How it was measured", 100),
    readings: z.array(z.number()).max(1_000).describe("Numbers as read"),
    figure: figure("What the readings come to"),
    standardError: quantity("Standard error of the figure, in its unit", "", 0, 1e12).optional(),
    group: id("Id of the group").optional(),
    when: dateOrTime("When: date, or date and time"),
    guess: z
      .union([z.number(), z.boolean(), text("A guess in words", 100)])
      .describe("What the group guessed before measuring, or whether the figure is a guess")
      .optional(),
    used: z.boolean().describe("Whether the survey's field rests on it").optional(),
    text: text("As it was typed", 2_000).optional(),
  })
  .describe("What was measured, kept beside the field that it led to");
