import * as z from "zod";
import { drawOrders, methods, roofMaterials, spillRules, supplies } from "../words.ts";
import {
  dateOrMonthDay,
  days,
  id,
  ids,
  months,
  outline,
  point,
  quantity,
  share,
  text,
  time,
} from "./parts.ts";
import { flow } from "./watering.ts";

export const firstFlush = quantity("Depth of rain thrown away after a dry day", "mm", 0, 50);
export const roofShare = share("Share of the roof that drains to the tank");
export const capacity = quantity("Capacity of the tank", "L", 0, 10_000_000);

export const roof = z
  .strictObject({
    id: id("Id of the roof"),
    name: text("Name of the roof"),
    area_m2: quantity("Area of the roof in plan, not along its slope", "m²", 0.1, 100_000),
    material: z.enum(roofMaterials).describe("What the roof is made of"),
    runoff: share("Share of the rain that runs off").optional(),
    firstFlush_mm: firstFlush.optional(),
    share: roofShare.optional(),
    tank: id("Id of the tank it drains to; left out where it is not connected").optional(),
    outline_m: outline("Corners of the roof on the site plan (m)").optional(),
  })
  .describe("A roof, or the part of one with its own downpipe");

export const tank = z
  .strictObject({
    id: id("Id of the tank"),
    name: text("Name of the tank"),
    capacity_L: capacity,
    level_L: quantity("Water in the tank, with what lies below the outlet", "L", 0, 10_000_000).optional(),
    unusable_L: quantity("Water below the outlet", "L", 0, 10_000_000).optional(),
    inUse: z.boolean().describe("Whether the tank is used today").optional(),
    rule: z
      .enum(spillRules)
      .describe("Whether a day's draw comes after or before that day's spill")
      .optional(),
    topUp: z
      .strictObject({
        belowShare: share("Share of the capacity below which the mains fill it"),
        toShare: share("Share of the capacity that the mains fill it to"),
      })
      .describe("Filling from the mains")
      .optional(),
    linked: ids("Ids of tanks joined to this one", 200).optional(),
    at_m: point("Place of the tank on the site plan: x, y (m)").optional(),
  })
  .describe("A tank");

export const tap = z
  .strictObject({
    id: id("Id of the tap"),
    name: text("Name of the tap"),
    source: id("mains, other, or the id of a tank"),
    flow_L_min: flow("Flow of the tap").optional(),
    flowAt: z
      .array(
        z.strictObject({
          level_L: quantity("Level of the tank", "L", 0, 10_000_000),
          flow_L_min: flow("Flow at that level"),
        }),
      )
      .min(1)
      .max(50)
      .describe("Flow at levels of the tank that it draws from")
      .optional(),
    line: text("Name of the pipe that shares its flow between taps", 64).optional(),
    at_m: point("Place of the tap on the site plan: x, y (m)").optional(),
  })
  .describe("A tap, hose point or zone valve");

export const draw = z
  .strictObject({
    id: id("Id of the draw"),
    name: text("Name of the draw, such as toilets"),
    tank: id("Id of the tank it draws from"),
    litresPerDay: quantity("Water drawn on a day of use", "L a day", 0, 1_000_000),
    days: days("Days of the week of use").optional(),
    months: months("Months of use").optional(),
    order: z.enum(drawOrders).describe("Whether it is served before or after the beds").optional(),
    pausesWhenAbsent: z.boolean().describe("Whether it stops while nobody is there").optional(),
  })
  .describe("Another use of a tank's water");

export const leak = z
  .strictObject({
    id: id("Id of the leak"),
    name: text("Name of the leak"),
    litresPerDay: quantity("Mains water lost", "L a day", 0, 1_000_000),
  })
  .describe("Mains water lost until it is mended");

export const restriction = z
  .strictObject({
    id: id("Id of the restriction"),
    name: text("Name of the restriction"),
    from: dateOrMonthDay("First day: MM-DD each year, or a date").optional(),
    to: dateOrMonthDay("Last day, included: MM-DD each year, or a date").optional(),
    days: days("Days of the week that it speaks of").optional(),
    fromTime: time("From, 24-hour clock").optional(),
    toTime: time("To, 24-hour clock; may pass midnight").optional(),
    methods: z.array(z.enum(methods)).max(methods.length).describe("Methods it speaks of").optional(),
    supplies: z.array(z.enum(supplies)).max(supplies.length).describe("Supplies it speaks of").optional(),
    parity: z.enum(["odd", "even"]).describe("Odd or even dates that it speaks of").optional(),
    exempt: ids("Ids of beds that it leaves alone", 1_000).optional(),
  })
  .describe("A rule about when and how watering is allowed");
