import * as z from "zod";

const amount = (meaning: string) => z.number().describe(meaning);
const share = (meaning: string) => z.number().min(0).max(1).describe(`${meaning}, 0 to 1`);
const words = (meaning: string) => z.string().describe(meaning);
const day = (meaning: string) => z.iso.date().describe(meaning);
const year = (meaning: string) => z.int().describe(meaning);

/** Points of a spread; null where no calendar year of the record is whole. */
const points = (meaning: string) =>
  z
    .strictObject({
      p10: z.number().nullable().describe("10 % point"),
      p50: z.number().nullable().describe("50 % point"),
      p90: z.number().nullable().describe("90 % point"),
    })
    .describe(meaning);

const assumed = z
  .strictObject({
    where: words("Path of the field that was left out"),
    value: z.union([z.number(), z.string(), z.boolean()]).describe("What stands in for it"),
    source: words("Where that comes from"),
  })
  .describe("Something the survey leaves out, and what stands in for it");

const weather = z
  .strictObject({
    from: day("First day of the record"),
    to: day("Last day of the record"),
    days: z.int().min(1).describe("Days of the record"),
    filled: z.int().min(0).describe("Days with a value filled in"),
    et0Method: z
      .enum(["given", "penman-monteith", "hargreaves"])
      .describe("How reference evapotranspiration was had"),
    rain_mm_year: amount("Rain (mm a year)"),
    et0_mm_year: amount("Reference evapotranspiration (mm a year)"),
    generated: z
      .strictObject({
        years: z.int().min(1).describe("Years generated"),
        seed: z.int().min(0).describe("Seed of the generator"),
      })
      .describe("Said where the record was generated from monthly means")
      .optional(),
  })
  .describe("The weather record used; means a year are total / days x 365.25");

const bed = z
  .strictObject({
    id: words("Id of the bed"),
    need_mm_year: amount("Net depth it would take with water always there (mm a year)"),
    need_L_year: amount("The same as water on the bed (L a year)"),
    gross_L_year: amount("Water let out to meet that need (L a year)"),
    habit_L_year: z
      .number()
      .nullable()
      .describe("Water let out as it is watered today (L a year); null where not known"),
    supplied_L_year: amount("Water let out in the run as supplied (L a year)"),
    rain_used_mm_year: amount("Rain less drainage (mm a year)"),
    drainage_mm_year: amount("Drainage below the roots (mm a year)"),
    stressDays_year: amount("Days on which plants get less than they could use (days a year)"),
    needByMonth_L: z
      .array(amount("Water let out in the month (L)"))
      .length(12)
      .describe("Gross need by calendar month, mean over the years (L)"),
    establishing_L_year: amount("Water let out while new plants establish (L a year)").optional(),
  })
  .describe("A bed; means a year");

const tank = z
  .strictObject({
    id: words("Id of the tank, or of the first of a linked group"),
    inflow_L_year: amount("Water from roofs (L a year)"),
    yield_L_year: amount("Water given (L a year)"),
    spill_L_year: amount("Water spilled (L a year)"),
    topUp_L_year: amount("Filled from the mains (L a year)"),
    draw_L_year: amount("Water asked of it (L a year)"),
    shortDays_year: amount("Days on which it could not give all (days a year)"),
    reliability: share("Share of days with a draw on which all was given"),
    volumetricReliability: share("Share of the water asked for that was given"),
  })
  .describe("A tank; means a year");

const mains = z
  .strictObject({
    today_kL_year: amount("Mains water today (kL a year)"),
    need_kL_year: amount("Mains water if watered to need (kL a year)"),
    plan_kL_year: amount("Mains water with the measures chosen (kL a year)"),
    giveUp_kL_year: points(
      "Mains water that could be given up: today less plan, by whole calendar year (kL a year)",
    ),
    byYear: z
      .array(
        z
          .strictObject({
            year: year("Calendar year"),
            today_kL: amount("Today (kL)"),
            need_kL: amount("Watered to need (kL)"),
            plan_kL: amount("With the measures chosen (kL)"),
          })
          .describe("A whole calendar year of the record"),
      )
      .describe("Whole calendar years of the record"),
    todayUnknown: z.array(words("Id of a bed")).describe("Beds whose watering today is not known"),
    dryYear: z.int().nullable().describe("The dry year; null without a whole one"),
    wetYear: z.int().nullable().describe("The wet year; null without a whole one"),
  })
  .describe("Mains water for beds, for what tanks are short of, for top-up and for leaks");

const spread = z
  .strictObject({
    draws: z.int().min(1).describe("Draws"),
    seed: z.int().min(0).describe("Seed"),
    giveUp_kL_year: points("Mains water that could be given up, factors sampled (kL a year)"),
    byUnknown: z
      .array(
        z
          .strictObject({ at: words("Path of what is not known"), share: share("Its share of the width") })
          .describe("What one unknown brings to the width"),
      )
      .describe("What each unknown brings to the width"),
  })
  .describe("How sure: published ranges sampled");

const measure = z
  .strictObject({
    id: words("Id of the measure, or water-to-need"),
    share_kL_year: amount("Its share of what is given up (kL a year)"),
    npv: z
      .number()
      .nullable()
      .describe("Net present value, in the tariff's currency; null without a cost or a price"),
    payback_years: z.number().nullable().describe("Simple payback (years); null where it never pays back"),
    costPerKL: z
      .number()
      .nullable()
      .describe("Cost of a kL saved, in the tariff's currency; null without a cost"),
  })
  .describe("A measure");

export const reportFormat = "grounds-report";
export const reportVersion = 1;

/** The report document. */
export const reportSchema = z
  .strictObject({
    format: z.literal(reportFormat).describe("Kind of document"),
    version: z.literal(reportVersion).describe("Version of the format"),
    engine: words("Version of the program that made it"),
    survey: words("Name of the place surveyed"),
    assumed: z.array(assumed).describe("What the survey leaves out, and what stands in for it"),
    cautions: z.array(words("A caution")).describe("What to bear in mind beside the result"),
    weather,
    beds: z.array(bed).describe("Beds, in the survey's order"),
    tanks: z.array(tank).describe("Tanks, in the survey's order"),
    mains,
    spread: spread.optional(),
    measures: z.array(measure).describe("Measures chosen"),
  })
  .describe(
    "What the gardens of one place need, what roofs and tanks bring, and what mains water could be given up",
  );

export type GroundsReport = z.infer<typeof reportSchema>;
export type ReportAssumed = GroundsReport["assumed"][number];
export type ReportWeather = GroundsReport["weather"];
export type ReportBed = GroundsReport["beds"][number];
export type ReportTank = GroundsReport["tanks"][number];
export type ReportMains = GroundsReport["mains"];
export type ReportMeasure = GroundsReport["measures"][number];
