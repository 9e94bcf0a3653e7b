import * as z from "zod";
import * as forms from "./forms.ts";
import { date, quantity, text, whole } from "./parts.ts";

const price = (meaning: string) => quantity(meaning, "money a kL", 0, 10_000);
export const amount = (meaning: string) => quantity(meaning, "money", 0, 1e9);
export const life = quantity("Years that it lasts", "years", 0.5, 200);

/** Either perKL or steps: see checks/money.ts. */
export const tariff = z
  .strictObject({
    currency: z.stringFormat("currency", forms.currency).describe("Currency, three letters of ISO 4217"),
    periodMonths: quantity("Length of a billing period", "months", 1, 24).optional(),
    perKL: price("Price of mains water").optional(),
    steps: z
      .array(
        z
          .strictObject({
            fromKL: quantity("Use in a period from which the price holds", "kL", 0, 1e7),
            perKL: price("Price of mains water in this step"),
          })
          .describe("A step of the price"),
      )
      .min(1)
      .max(20)
      .describe("Prices by use in a billing period, from 0 kL up")
      .optional(),
    perKLAlso: z
      .array(
        z
          .strictObject({ name: text("Name of the charge"), perKL: price("Charge") })
          .describe("A charge that follows the volume"),
      )
      .max(20)
      .describe("Charges that follow the volume, such as sewer")
      .optional(),
    otherUse_kL_year: quantity("Mains water used for other things", "kL a year", 0, 1e8).optional(),
    riseShare: quantity("Rise of the price above inflation, a share a year", "", -0.2, 0.5).optional(),
  })
  .meta({ oneOf: [{ required: ["perKL"] }, { required: ["steps"] }] })
  .describe("What mains water costs");

export const money = z
  .strictObject({
    budget: amount("What may be spent in all").optional(),
    budgetPerYear: amount("What may be spent in a year").optional(),
    discountShare: quantity("Real discount rate, a share a year", "", 0, 0.5).optional(),
    horizon_years: whole("Years looked ahead", 1, 100).optional(),
  })
  .describe("Budget and outlook");

export const quote = z
  .strictObject({
    from: text("Who quoted").optional(),
    on: date("Date of the quote").optional(),
    lines: z
      .array(
        z
          .strictObject({
            what: text("What is paid for"),
            cost: amount("Cost of the line"),
            life_years: life.optional(),
          })
          .describe("A line of the quote"),
      )
      .min(1)
      .max(100)
      .describe("Lines of the quote"),
    grant: amount("Grant that takes off the cost").optional(),
  })
  .describe("A quote in lines");
