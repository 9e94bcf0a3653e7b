import * as z from "zod";
import { changes } from "../words.ts";
import { leafCover, mulchFields, plantings } from "./bed.ts";
import { amount, life, quote } from "./money.ts";
import { id, ids, text } from "./parts.ts";
import { capacity, draw, firstFlush, roofShare, tank } from "./water.ts";
import { watering } from "./watering.ts";

const beds = ids("Ids of the beds that it changes", 1_000, 1);
const tankId = id("Id of a tank");

/** A measure has exactly one of its changes: see checks/measures.ts. */
export const measure = z
  .strictObject({
    id: id("Id of the measure"),
    name: text("Name of the measure"),
    cost: amount("Cost in all").optional(),
    quote: quote.optional(),
    life_years: life.optional(),
    upkeepPerYear: amount("Upkeep a year").optional(),
    oneOf: text("Name of a group of which at most one measure is chosen", 64).optional(),
    chosen: z.boolean().describe("Whether the measure is part of the plan").optional(),
    mulch: z
      .strictObject({ beds, ...mulchFields })
      .describe("Mulch laid")
      .optional(),
    replant: z
      .strictObject({ beds, plantings, leafCover: leafCover.optional() })
      .describe("Other plants")
      .optional(),
    changeWatering: watering
      .partial()
      .extend({ beds })
      .describe("Watering changed; a new method drops the old efficiency, wetted share, uniformity and flow")
      .optional(),
    addTank: tank.describe("A tank more").optional(),
    resizeTank: z
      .strictObject({ tank: tankId, capacity_L: capacity })
      .describe("A tank of another size")
      .optional(),
    useTank: z
      .strictObject({ tank: tankId, beds: ids("Ids of the beds that it then serves", 1_000) })
      .describe("A tank put to use")
      .optional(),
    connectRoof: z
      .strictObject({ roof: id("Id of the roof"), tank: tankId, share: roofShare.optional() })
      .describe("A roof led to a tank")
      .optional(),
    firstFlush: z
      .strictObject({ roofs: ids("Ids of the roofs", 200, 1), firstFlush_mm: firstFlush })
      .describe("First flush set anew")
      .optional(),
    addDraw: draw.describe("A use that is all mains water today, moved on to a tank").optional(),
    mendLeak: z
      .strictObject({ leaks: ids("Ids of the leaks", 200, 1) })
      .describe("Leaks mended")
      .optional(),
  })
  .meta({ oneOf: changes.map((change) => ({ required: [change] })) })
  .describe("Something that could be done, with exactly one change");
