import * as z from "zod";
import { weekdays } from "../survey/words.ts";
import { weekSchema } from "./week-schema.ts";

const amount = (meaning: string) => z.number().min(0).describe(meaning);
const words = (meaning: string) => z.string().describe(meaning);
const day = (meaning: string) => z.iso.date().describe(meaning);
const month = (meaning: string) => z.int().min(1).max(12).describe(meaning);

/** A watering as a person carries it out, and the days it falls on; the same for the usual and the dry year. */
const watering = {
  minutes: z.int().min(0).describe("Length of one watering, whole minutes; 0 where the month needs none"),
  everyDays: z
    .number()
    .min(1)
    .nullable()
    .describe("Days from one watering to the next, on average; null without any"),
  cycles: z.int().min(0).describe("Runs into which a watering is split, so that the soil takes it"),
  soak_min: z.int().min(0).describe("Rest between two runs (min)"),
  litres: amount("Water let out in one watering (L)"),
  net_mm: amount("Depth of one watering that the roots get (mm)"),
  days: z.array(z.enum(weekdays)).describe("Days of the week on which it falls"),
  turns: z
    .array(z.int().min(1).max(5))
    .nullable()
    .describe("Which of that weekday in the month, 1 the first; null: each week"),
  dates: z
    .array(z.int().min(1).max(31))
    .nullable()
    .describe("Dates of the month, where odd or even dates rule; null: by weekdays"),
  wetted_m: amount("Depth of soil that a watering wets (m)"),
  leaveAfterRain_mm: z
    .int()
    .min(0)
    .nullable()
    .describe("Rain in the gauge since the last day of the round from which it is left out (mm)"),
  month_L: amount("Water let out in the month, mean over the years it was made for (L)"),
};

const plants = z
  .array(
    z
      .strictObject({
        plants: z.int().min(1).describe("Plants counted"),
        litresEach: amount("Water for one plant in one watering (L)"),
        cansEach: amount("The same in cans of 10 L, to the half"),
      })
      .describe("Plants that were counted"),
  )
  .describe("Water by the plant, where plants were counted");

const bedMonth = z
  .strictObject({
    id: words("Id of the bed"),
    ...watering,
    plants,
    dry: z
      .strictObject(watering)
      .nullable()
      .describe("The same for a dry year; null where the record has one year"),
  })
  .describe("A bed's watering in one month, for the middle years");

const cost = (meaning: string) =>
  z
    .strictObject({
      need_L_year: amount("Water let out to need, refilled on the day (L a year)"),
      given_L_year: amount("Water let out by the table (L a year)"),
      needStressDays_year: amount("Days of stress when watered to need (days a year)"),
      stressDays_year: amount("Days of stress by the table (days a year)"),
    })
    .describe(meaning);

const rounding = z
  .strictObject({
    id: words("Id of the bed"),
    middle: cost("The middle years' table in the middle years"),
    dry: cost("Means a year")
      .nullable()
      .describe("The dry years' table in the dry years; null where the record has one year"),
    allYears: cost("Over the whole record: the dry table in dry years, the other in the rest"),
    within: z.boolean().describe("Whether the whole record stays within the bounds"),
  })
  .describe("What whole minutes and fixed days cost beside watering to need");

const programme = z
  .strictObject({
    startTimes: z.int().min(1).describe("Start times of a day; each runs an equal part of the minutes"),
    days: z.array(z.enum(weekdays)).describe("Days of the week, the same for all"),
    percentByMonth: z.array(z.int().min(0).max(200)).length(12).describe("Seasonal percentage of each month"),
    beds: z
      .array(
        z
          .strictObject({
            id: words("Id of the bed"),
            minutes: z.int().min(0).describe("Minutes of a day at 100 %, all start times together"),
            cost: cost("What the programme costs the bed in the middle years"),
          })
          .describe("A bed of the programme"),
      )
      .describe("Beds on timers"),
  })
  .describe("A programme of few entries for a simple timer");

const conflict = z
  .strictObject({
    id: words("Id of the bed"),
    month: month("Month"),
    stressDays_year: amount("Days of stress that the rules bring (days a year)"),
    against: z
      .array(words("A restriction's id, or allowed-days, must-be-dry, nobody-there"))
      .describe("The rules that stand against the need"),
    sentence: words("The same in words"),
  })
  .describe("A month in which rules that are kept cost a bed stress");

export const roundsFormat = "grounds-rounds";
export const roundsVersion = 1;

/** The rounds document: month table, and the week's round where one was asked for. */
export const roundsSchema = z
  .strictObject({
    format: z.literal(roundsFormat).describe("Kind of document"),
    version: z.literal(roundsVersion).describe("Version of the format"),
    engine: words("Version of the program that made it"),
    survey: words("Name of the place surveyed"),
    madeOn: z.iso.date().nullable().describe("Day on which it was made; null where it was not said"),
    weather: z
      .strictObject({
        from: day("First day of the record"),
        to: day("Last day of the record"),
        days: z.int().min(1).describe("Days of the record"),
        filled: z.int().min(0).describe("Days with a value filled in"),
      })
      .describe("The weather record used"),
    years: z
      .strictObject({
        middle: z.array(z.int()).describe("The middle half of the record's whole years"),
        dry: z.array(z.int()).nullable().describe("The driest quarter; null where the record has one year"),
      })
      .describe("Years that the table was made for"),
    bounds: z
      .strictObject({
        overShare: amount("Water beyond need, as a share of it"),
        stressDays_year: amount("Days of stress beyond need's (days a year)"),
      })
      .describe("What the tables were mended to stay within"),
    assumed: z
      .array(
        z.strictObject({
          where: words("Path of the field that was left out"),
          value: z.union([z.number(), z.string(), z.boolean()]).describe("What stands in for it"),
          source: words("Where that comes from"),
        }),
      )
      .describe("What the survey leaves out, and what stands in for it"),
    cautions: z.array(words("A caution")).describe("What to bear in mind with the round"),
    months: z
      .array(
        z
          .strictObject({
            month: month("Month"),
            beds: z.array(bedMonth).describe("Beds, in the survey's order; beds that nobody waters left out"),
          })
          .describe("A month of the table"),
      )
      .describe("The month table"),
    rounding: z.array(rounding).describe("What rounding costs, by bed"),
    conflicts: z.array(conflict).describe("Where the rules stand against the need"),
    programme: programme.nullable().describe("Null where no bed is on a timer"),
    week: weekSchema.optional().describe("Said where a week was asked for"),
  })
  .describe("When, how long and how much to water each bed of one place");

export type GroundsRounds = z.infer<typeof roundsSchema>;
export type RoundsMonth = GroundsRounds["months"][number];
export type RoundsBedMonth = RoundsMonth["beds"][number];
export type RoundsWatering = z.infer<z.ZodObject<typeof watering>>;
