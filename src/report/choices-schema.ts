import * as z from "zod";
import { amount, id, maybe, members, points, words } from "./choices-fields.ts";
import { banBed, scenario, size, spread, tank } from "./choices-runs-schema.ts";
import { reportSchema } from "./schema.ts";

const { shape } = reportSchema;

const wateredBed = z
  .strictObject({
    bed: id("the bed"),
    habit_kL_year: amount("Let out by today's habit (kL a year)"),
    need_kL_year: amount("Let out to meet the need (kL a year)"),
  })
  .describe("A bed whose watering today is known, against its need");

const planSum = z
  .strictObject({
    plan_kL_year: amount("Mains water with the measures chosen, mean a year (kL)"),
    giveUp_kL_year: points("Today less plan, by whole calendar year (kL a year)"),
  })
  .describe("A way of watering with the measures chosen");

const plans = z
  .strictObject({
    toNeed: planSum.describe("Every bed gets what it needs"),
    noMoreThanToday: planSum
      .nullable()
      .describe("No bed gets more than today; null where none gets less than it needs"),
    underWatered: z.array(wateredBed).describe("Beds that get less than they need"),
    overWatered: z.array(wateredBed).describe("Beds that get more than they need"),
  })
  .describe("Two ways to water, side by side where gardens get less than they need");

const measure = z
  .strictObject({
    id: id("the measure"),
    name: words("Its name"),
    change: words("Kind of change"),
    oneOf: z.string().nullable().describe("Group of which at most one is chosen"),
    chosen: z.boolean().describe("Whether it is part of the plan"),
    cost: maybe("What it costs to do, grant taken off; null where not known"),
    upkeepPerYear: amount("Upkeep a year"),
    quotedBy: z.string().nullable().describe("Who quoted"),
    alone_kL_year: amount("Saved by itself, beside watering to need (kL a year)"),
    after_kL_year: amount("Saved when all else that is chosen is done already (kL a year)"),
    againstNeed: z.array(id("a bed")).describe("Beds it changes whose watering today is not known"),
    npv: maybe("Present value after the others; null without a cost or a price"),
    costPerKL: maybe("Cost of a kL saved after the others; null without a cost, or where nothing is saved"),
    worth: z
      .enum(["pays", "does-not-pay", "saves-nothing", "not-priced"])
      .describe("What the figures say of it, after the others"),
  })
  .describe("A measure of the survey");

const shareRow = z
  .strictObject({
    id: words("Id of the measure, or water-to-need"),
    share_kL_year: amount("Its part of what the plan saves: the Shapley value (kL a year)"),
    standardError_kL: maybe("Standard error of it; null where every order was counted"),
    first_kL_year: amount("Saved where it is done first (kL a year)"),
    last_kL_year: amount("Saved where it is done last (kL a year)"),
    saved_money_year: maybe("Its part of the bill saved in a year; null without a price"),
    npv: maybe("Net present value; null without a cost or a price"),
    payback_years: maybe("Simple payback (years); null where it never pays back"),
    discountedPayback_years: maybe("Discounted payback (years); null where not within the horizon"),
    rateOfReturn: maybe("Rate of return, a share a year; null where there is none"),
    costPerKL: maybe("Cost of a kL saved"),
    breakEvenPerKL: maybe("Price of a kL from which it pays"),
    breakEvenCost: maybe("Dearest cost at which it pays"),
    horizon_years: maybe("Years looked ahead; null without a cost"),
  })
  .describe("A member of the plan and its part of the saving");

const step = z
  .strictObject({
    cost: amount("What the set costs to do"),
    measures: members("What is done"),
    saved_kL_year: amount("Saved by the set together (kL a year)"),
    npv: maybe("Net present value; null without a price"),
  })
  .describe("The best set from this cost on");

const order = z
  .strictObject({
    budgetPerYear: amount("What may be spent in a year"),
    steps: z
      .array(
        z
          .strictObject({
            year: z.int().min(1).describe("1 is the first year"),
            measures: members("What is done then"),
            spent: amount("Spent up to then"),
            saved_kL_year: amount("Saved from then on (kL a year)"),
          })
          .describe("A year in which something is done"),
      )
      .describe("Years in which something is done"),
  })
  .describe("What first, with a budget a year");

const wouldChange = z
  .strictObject({
    what: z.enum(["quote-dearer", "weather"]).describe("What is asked"),
    of: words("Id of the measure whose quote is dearer, or code of the weather"),
    measures: members("The best set for the same budget then"),
    isChange: z.boolean().describe("Whether the choice changes"),
  })
  .describe("What would change the choice");

const proposal = z
  .strictObject({
    code: words("Why it is proposed"),
    facts: z.record(z.string(), z.union([z.string(), z.number()])).describe("What the reason rests on"),
    measure: z
      .looseObject({})
      .nullable()
      .describe("The measure as it would stand in the survey; null where nothing is to be bought"),
    alone_kL_year: maybe("Saved by itself, beside watering to need (kL a year)"),
    after_kL_year: maybe("Saved when all that is chosen is done already (kL a year)"),
    worthUpTo: maybe(
      "Dearest cost at which it pays, after the others and without upkeep; null without a price",
    ),
  })
  .describe("Something that might be done here");

export const choicesFormat = "grounds-choices";
export const choicesVersion = 1;

/** The decision document. */
export const choicesSchema = z
  .strictObject({
    format: z.literal(choicesFormat).describe("Kind of document"),
    version: z.literal(choicesVersion).describe("Version of the format"),
    engine: words("Version of the program that made it"),
    survey: words("Name of the place surveyed"),
    assumed: shape.assumed,
    cautions: shape.cautions,
    beforeWork: z
      .array(words("A sentence"))
      .describe("What must be licensed, permitted or minded before work is ordered"),
    weather: shape.weather,
    currency: z.string().nullable().describe("Currency of every money figure; null without a tariff"),
    budget: maybe("What may be spent in all; null where not said"),
    outlook: z
      .strictObject({
        discountShare: amount("Real discount rate, a share a year"),
        riseShare: amount("Rise of the price of water above inflation, a share a year"),
        horizon_years: amount("Years looked ahead for sets"),
        topPerKL: maybe(
          "Dearest price of a kL, charges that follow the volume included; null without a price",
        ),
      })
      .describe("How money is looked at"),
    mains: shape.mains,
    plans,
    measures: z.array(measure).describe("The survey's measures, in its order"),
    shares: z.array(shareRow).describe("What each member of the plan saves"),
    frontier: z.array(step).describe("For every budget the set that gives up most mains water"),
    frontierByWorth: z.array(step).describe("For every budget the set worth most; none without a price"),
    proven: z.boolean().describe("Whether every set was valued"),
    leftOut: z.array(id("a measure")).describe("Measures without a cost, which no budget can hold"),
    best: step.describe("The set for the budget: worth most where there is a price, else giving up most"),
    order: order.nullable().describe("What first; null without a budget a year"),
    wouldChange: z.array(wouldChange).describe("What would change the choice"),
    sizes: z.array(size).describe("Sizes of each tank of the plan, and of each that a measure adds"),
    tanks: z.array(tank).describe("Tanks of the plan"),
    rainOnly: z.array(banBed).describe("Beds without a tank under a ban on mains watering"),
    scenarios: z.array(scenario).describe("Drier and warmer times"),
    spread: spread.optional(),
    proposals: z.array(proposal).describe("What might do something here and is no measure yet"),
  })
  .describe("What could be done at one place, what each of it saves and costs, and how sure that is");

export type GroundsChoices = z.infer<typeof choicesSchema>;
