import * as z from "zod";

const amount = (meaning: string) => z.number().min(0).describe(meaning);
const words = (meaning: string) => z.string().describe(meaning);
const day = (meaning: string) => z.iso.date().describe(meaning);
const time = (meaning: string) => z.string().describe(`${meaning}, local 24-hour clock`);

const range = (meaning: string) =>
  z
    .strictObject({
      low: amount("In one year of ten, less"),
      middle: amount("In half of all years"),
      high: amount("In one year of ten, more"),
    })
    .describe(meaning);

const reason = {
  code: words("Why, as a word"),
  sentence: words("Why, in a sentence"),
};

const watering = z
  .strictObject({
    date: day("Day"),
    minutes: z.int().min(1).describe("Length, whole minutes"),
    cycles: z.int().min(1).describe("Runs into which it is split"),
    soak_min: z.int().min(0).describe("Rest between two runs (min)"),
    litres: amount("Water let out (L)"),
    net_mm: amount("Depth that the roots get (mm)"),
    runs: z
      .array(
        z
          .strictObject({ from: time("Beginning of a run"), to: time("End of a run") })
          .describe("A run with its time"),
      )
      .describe("Times that keep to the hours and the taps; empty where the day is too short for it"),
    ...reason,
  })
  .describe("A watering of the week");

const bed = z
  .strictObject({
    id: words("Id of the bed"),
    young: z.boolean().describe("Whether its plants are establishing"),
    missing_mm: range("Water missing from the roots as the week begins, over years and answers (mm)"),
    holds_mm: amount("Water that the roots' soil holds for plants (mm)"),
    mayLose_mm: amount("What the roots may lose before they suffer (mm)"),
    waterings: z.array(watering).describe("What to water on which day"),
    leave: z.strictObject(reason).nullable().describe("Why it is left; null where it is watered"),
    short_L: amount("What its tank cannot give it (L)"),
    stressDays: z
      .int()
      .min(0)
      .max(7)
      .describe("Days of the week on which it is likely to suffer all the same"),
    litres: amount("Water of the week (L)"),
    lastWeek_L: z
      .number()
      .min(0)
      .nullable()
      .describe("Water of the week before, from the log (L); null without a log"),
    changed: words("What changed since last week and last month"),
  })
  .describe("A bed in the week");

const ration = z
  .strictObject({
    id: words("Id of the bed"),
    asks_L: amount("What the round asks for (L)"),
    fromTank_L: amount("What the tank gives (L)"),
    fromMains_L: amount("What the mains give (L)"),
    short_L: amount("What it does not get (L)"),
  })
  .describe("A bed's ration, the first in the order first");

const tank = z
  .strictObject({
    id: words("Id of the tank"),
    level_L: z.number().min(0).nullable().describe("Today's level (L); null where it was not dipped"),
    usable_L: z.number().min(0).nullable().describe("What of it lies above the outlet (L)"),
    draws_L: amount("What other draws take in the week (L)"),
    inflow_L: amount("What roofs bring in a dry week of this date (L)"),
    daysLeft: range("Days until it cannot meet a day's draw, over the record's years; 180 for that or more")
      .nullable()
      .describe("Days of water left; null where it was not dipped"),
    rations: z.array(ration).describe("Who gets what, in the order of who goes first"),
    mainsToKeepAll_L: amount("Mains water that would keep all of the round (L)"),
    sentence: words("The same in a sentence"),
  })
  .describe("A tank in the week");

const dayRow = z
  .strictObject({
    date: day("Day"),
    dawn: z.string().nullable().describe("Dawn, local clock; null where there is none"),
    sunrise: z.string().nullable().describe("Sunrise, local clock; null where there is none"),
    sunset: z.string().nullable().describe("Sunset, local clock; null where there is none"),
    dusk: z.string().nullable().describe("Dusk, local clock; null where there is none"),
    finish: z.string().nullable().describe("When the round is done, local clock; null without one"),
    hoseMoves: z.int().min(0).describe("Hoses to be moved"),
    walk_m: amount("Metres walked between beds (m)"),
    proven: z
      .boolean()
      .describe("Whether no round of these beds is done earlier, with fewer moves, or shorter"),
    couldFinish: z.string().nullable().describe("A finish that no round can be earlier than, local clock"),
    left: z.array(words("Id of a bed")).describe("Beds that do not fit into the day's hours"),
    help: z.string().nullable().describe("What would let them fit"),
  })
  .describe("A day of the week");

const holiday = z
  .strictObject({
    name: words("Name of the absence"),
    from: day("First day"),
    to: day("Last day"),
    firstDayBack: day("First day back"),
    beds: z
      .array(
        z
          .strictObject({
            id: words("Id of the bed"),
            soakOn: z.iso.date().nullable().describe("Day of the last soak; null where none is open"),
            minutes: z.int().min(0).describe("Minutes of the soak"),
            litres: amount("Water of the soak (L)"),
            lasts_days: range("Days that it lasts, over the record's years; 120 for that or more"),
            visitBy: z.iso.date().nullable().describe("By when somebody must come; null where it lasts"),
            sentence: words("The same in a sentence"),
          })
          .describe("A bed run by hand"),
      )
      .describe("Beds run by hand"),
  })
  .describe("An absence with nobody to water");

const done = z
  .strictObject({
    id: words("Id of the bed"),
    month: z.string().describe("Month, year-month"),
    planned_L: amount("Planned by the table (L)"),
    done_L: amount("Done by the log (L)"),
  })
  .describe("Planned against done");

/** The round of one week. */
export const weekSchema = z
  .strictObject({
    from: day("First day"),
    to: day("Last day"),
    lastRound: z
      .enum(["all", "some", "none", "unknown"])
      .describe("What was done of the last round, as said"),
    heatFactor: amount("What the usual evaporation is multiplied by"),
    hotSpell: z
      .number()
      .min(0)
      .max(1)
      .nullable()
      .describe("Chance of a hot spell in the week, as forecast; null where none is"),
    order: z
      .array(z.strictObject({ id: words("Id of the bed"), ...reason }).describe("A bed's place"))
      .describe("Who goes first when water is short"),
    beds: z.array(bed).describe("Beds, in the survey's order"),
    tanks: z.array(tank).describe("Tanks in use"),
    days: z.array(dayRow).length(7).describe("The days with their hours"),
    holidays: z.array(holiday).describe("Absences that begin within four weeks"),
    done: z.array(done).describe("Planned against done, by bed and month of the log"),
  })
  .describe("The round of one week");

export type RoundsWeek = z.infer<typeof weekSchema>;
export type RoundsWeekBed = RoundsWeek["beds"][number];
