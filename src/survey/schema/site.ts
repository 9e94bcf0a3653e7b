import * as z from "zod";
import { dateOrMonthDay, days, monthly, quantity, text, time } from "./parts.ts";

const elevation = (meaning: string) => quantity(meaning, "m", -430, 6_000);

export const normals = z
  .strictObject({
    source: text("Where the monthly means come from", 500),
    elevation_m: elevation("Height above sea level that the means belong to").optional(),
    wetDay_mm: quantity("Least rain of a day counted as wet", "mm", 0, 10).optional(),
    rain_mm: monthly("Mean rain of the month", "mm", 0, 5_000),
    rainDays: monthly("Mean number of wet days in the month", "days", 0, 31),
    tmin_c: monthly("Mean daily lowest temperature", "°C", -60, 60).optional(),
    tmax_c: monthly("Mean daily highest temperature", "°C", -60, 60).optional(),
    et0_mm: monthly("Mean reference evapotranspiration", "mm a day", 0, 30).optional(),
  })
  .describe("Monthly means for a site without a daily record: rain, and temperatures or evapotranspiration");

const hours = z
  .strictObject({
    days: days("Days of the week"),
    fromTime: time("From, 24-hour clock"),
    toTime: time("To, 24-hour clock"),
  })
  .describe("When somebody waters");

export const absence = z
  .strictObject({
    name: text("What the absence is, such as summer holidays"),
    from: dateOrMonthDay("First day: MM-DD each year, or a date"),
    to: dateOrMonthDay("Last day, included: MM-DD each year, or a date"),
    carer: text("Who waters by hand meanwhile; left out where nobody does").optional(),
  })
  .describe("A time when nobody is there");

export const site = z
  .strictObject({
    name: text("Name of the place"),
    latitude: quantity("Latitude, south negative", "degrees", -90, 90),
    longitude: quantity("Longitude, west negative", "degrees", -180, 180),
    elevation_m: elevation("Height above sea level").optional(),
    timeZone: text("Time zone by its IANA name, such as Europe/Madrid", 64).optional(),
    coastal: z.boolean().describe("Whether the sea shapes the air: on or near a coast").optional(),
    windHeight_m: quantity("Height at which the record's wind was measured", "m", 0.5, 100).optional(),
    normals: normals.optional(),
    hours: z.array(hours).max(50).describe("When somebody waters").optional(),
    absences: z.array(absence).max(200).describe("Times when nobody is there").optional(),
  })
  .describe("The place");
