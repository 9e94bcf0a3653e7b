import * as z from "zod";
import { amount, id, maybe, members, points, share, words } from "./choices-fields.ts";

export const size = z
  .strictObject({
    tank: id("the tank"),
    capacity_L: amount("Its size (L)"),
    mark: z
      .enum(["today", "quoted", "enough"])
      .nullable()
      .describe("Today's size, one of a quote, or the smallest within 5 % of all that roof and draw allow"),
    saved_kL_year: points("Mains water it takes the place of, by whole calendar year (kL a year)"),
    mean_kL_year: amount("The same, mean a year (kL)"),
    dry_kL: maybe("The same in the dry year (kL); null without a whole year"),
    wet_kL: maybe("The same in the wet year (kL); null without a whole year"),
    marginal_kL: maybe("More a year for the next 1,000 L (kL); null at the largest size"),
    reliability: share("Share of days with a draw on which all was met"),
    emptyDays_year: amount("Days that end empty (days a year)"),
  })
  .describe("A size of a tank");

export const banBed = z
  .strictObject({
    bed: id("the bed"),
    stressDays_year: amount("Days on which plants get less than they could use (days a year)"),
    longestDry_days: amount("Most days in a row with next to nothing left in the root zone"),
    lives: z.boolean().describe("Whether that is no longer than a fortnight: our rule"),
  })
  .describe("A bed under a ban on mains watering");

export const tank = z
  .strictObject({
    tank: id("the tank"),
    name: words("Its name"),
    capacity_L: amount("Its size in the plan (L)"),
    saved_kL_year: amount("Mains water it takes the place of, mean a year (kL)"),
    most_kL_year: amount("The same were it never to spill (kL)"),
    enough_L: amount("Smallest size within 5 % of that (L)"),
    limit: z
      .enum(["tank", "roof", "demand", "nothing-asked"])
      .describe("What holds its saving back at its size"),
    moreTank_kL_year: amount("More saved with a quarter more tank (kL a year)"),
    moreRoof_kL_year: amount("More saved with a quarter more roof (kL a year)"),
    moreDemand_kL_year: amount("More saved with a quarter more demand (kL a year)"),
    byRoof: z
      .array(
        z
          .strictObject({
            times: amount("Roof connected, over what it is in the plan"),
            saved_kL_year: amount("Mains water it takes the place of, mean a year (kL)"),
          })
          .describe("A share of the roof"),
      )
      .describe("The saving against roof connected"),
    ban: z
      .array(
        z
          .strictObject({ capacity_L: amount("Size (L)"), beds: z.array(banBed).describe("Its beds") })
          .describe("A size under a ban"),
      )
      .describe("Its beds under a ban on mains watering, at each size marked"),
  })
  .describe("A tank of the plan");

export const scenario = z
  .strictObject({
    code: words("What is asked of the weather"),
    rain_mm_year: amount("Rain (mm a year)"),
    et0_mm_year: amount("Reference evapotranspiration (mm a year)"),
    today_kL_year: amount("Mains water as watered today (kL a year)"),
    need_kL_year: amount("Mains water watered to need (kL a year)"),
    plan_kL_year: amount("Mains water with the measures chosen (kL a year)"),
    giveUp_kL_year: points("Today less plan, by whole calendar year (kL a year)"),
    measures: members("The best set for the budget"),
    reliability: z
      .array(
        z
          .strictObject({ tank: id("the tank"), reliability: share("Share of days its draw is all met") })
          .describe("A tank"),
      )
      .describe("Tanks of the plan"),
    breaksFirst: z.string().nullable().describe("Tank whose reliability falls most against the record"),
  })
  .describe("The plan under other weather: a question, no forecast");

const unknowns = (meaning: string) =>
  z
    .array(
      z
        .strictObject({ at: words("Path of what is not known"), share: share("Its share of the width") })
        .describe("An unknown"),
    )
    .describe(meaning);

export const spread = z
  .strictObject({
    draws: z.int().min(1).describe("Draws"),
    seed: z.int().min(0).describe("Seed"),
    giveUp_kL_year: points("Today less plan, factors and years (kL a year)"),
    need_kL_year: points("Mains water watered to need (kL a year)"),
    plan_kL_year: points("Mains water with the measures chosen (kL a year)"),
    byUnknown: unknowns("What each unknown brings to the width of the saving"),
    rivals: z
      .array(
        z
          .strictObject({
            measures: members("What is done"),
            saved_kL_year: points("Saved, mean a year (kL)"),
            npv: points("Net present value"),
          })
          .describe("A set"),
      )
      .describe("Sets told apart under the same draws; the best for the budget first"),
    chance: z
      .array(z.array(share("Chance")))
      .describe("For each rival its chance to do better than each other one"),
    isDraw: z
      .boolean()
      .describe("Whether the first two cannot be told apart: neither does better in nine of ten draws"),
    byUnknownOfChoice: unknowns("What the choice between the first two hangs on"),
  })
  .describe("How sure: published ranges and survey errors drawn, with the record's years");
