import * as z from "zod";
import { surveyFormat, surveyVersion } from "../format.ts";
import { bed } from "./bed.ts";
import { measure } from "./measures.ts";
import { finding, group, meter, reading } from "./meters.ts";
import { money, tariff } from "./money.ts";
import { site } from "./site.ts";
import { draw, leak, restriction, roof, tank, tap } from "./water.ts";

export { surveyFormat, surveyVersion };

/** The whole survey document: shape, words and bounds. What binds fields to each other is in checks/. */
export const surveySchema = z
  .strictObject({
    format: z.literal(surveyFormat).describe("Kind of document"),
    version: z.literal(surveyVersion).describe("Version of the format"),
    site,
    beds: z.array(bed).max(1_000).describe("Beds, lawns and everything else that grows"),
    roofs: z.array(roof).max(200).describe("Roofs"),
    tanks: z.array(tank).max(200).describe("Tanks"),
    taps: z.array(tap).max(500).describe("Taps").optional(),
    draws: z.array(draw).max(200).describe("Other uses of the tanks' water").optional(),
    leaks: z.array(leak).max(200).describe("Leaks not mended").optional(),
    restrictions: z.array(restriction).max(100).describe("Watering restrictions").optional(),
    tariff: tariff.optional(),
    money: money.optional(),
    measures: z.array(measure).max(100).describe("What could be done").optional(),
    meters: z.array(meter).max(200).describe("Water meters").optional(),
    readings: z.array(reading).max(100_000).describe("Registers read, bills, tanks dipped").optional(),
    groups: z.array(group).max(200).describe("Survey groups").optional(),
    found: z.array(finding).max(20_000).describe("What was measured").optional(),
  })
  .describe("Survey of the grounds of one place: what grows, what waters it, and what water costs");
