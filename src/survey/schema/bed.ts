import * as z from "zod";
import { kinds, mulchMaterials, textures, thirsts } from "../words.ts";
import { date, dateOrWeekday, id, monthly, outline, quantity, share, text, whole } from "./parts.ts";
import { watering } from "./watering.ts";

const rootDepth = quantity("Depth that roots draw water from", "m", 0.02, 10);
const depletionFraction = share("Share of the soil's available water that may be used before plants suffer");
export const leafCover = share("Share of the ground covered by leaves, seen from above");

const planting = z
  .strictObject({
    kind: z.enum(kinds).describe("Kind of plants"),
    thirst: z.enum(thirsts).describe("How much water the plants ask for, once grown"),
    share: quantity("Share of the bed's planted area, above 0 to 1; a bed's shares add to 1", "", 1e-6, 1),
    height_m: quantity("Height of the plants", "m", 0.01, 60).optional(),
    kcbFull: quantity("Basal crop coefficient at full cover", "share of ET0", 0, 1.6).optional(),
    rootDepth_m: rootDepth.optional(),
    depletionFraction: depletionFraction.optional(),
    monthly: monthly("Multiplier of the basal coefficient in the month", "", 0, 2).optional(),
    establishingUntil: date("Date until which new plants are establishing").optional(),
    count: z
      .strictObject({
        plants: whole("Number of plants", 1, 1_000_000),
        canopy_m: quantity("Width of one plant's canopy", "m", 0.01, 50),
      })
      .describe("Plants counted, with the width of one's canopy")
      .optional(),
  })
  .describe("Plants of one kind and thirst");

export const plantings = z.array(planting).min(1).max(50).describe("What grows in the bed");

/** The fields of a mulch, for a bed and for the measure that lays one. */
export const mulchFields = {
  material: z.enum(mulchMaterials).describe("Mulch material"),
  cover: share("Share of the ground that the mulch covers"),
  depth_mm: quantity("Depth of the mulch", "mm", 0, 500),
};

/** Exactly one of its three forms is wanted: see checks/soil.ts. */
const soil = z
  .strictObject({
    texture: z.enum(textures).describe("Texture class of the soil").optional(),
    sand_pct: quantity("Sand", "%", 0, 100).optional(),
    clay_pct: quantity("Clay", "%", 0, 100).optional(),
    fieldCapacity: quantity("Water held at field capacity", "m³/m³", 0.01, 0.9).optional(),
    wiltingPoint: quantity("Water held at wilting point", "m³/m³", 0, 0.8).optional(),
    tew_mm: quantity("Total evaporable water of the surface layer", "mm", 0.1, 100).optional(),
    rew_mm: quantity("Readily evaporable water of the surface layer", "mm", 0, 100).optional(),
    slope_pct: quantity("Slope of the ground", "%", 0, 100).optional(),
    intake_mm_h: quantity("Rate at which the soil takes in water", "mm/h", 0.1, 1_000).optional(),
  })
  .meta({
    oneOf: [
      { required: ["texture"] },
      { required: ["sand_pct", "clay_pct"] },
      { required: ["fieldCapacity", "wiltingPoint", "tew_mm", "rew_mm"] },
    ],
  })
  .describe("Soil: a texture class, or sand and clay, or its own figures");

const obstruction = z
  .strictObject({
    fromAzimuth_deg: quantity("Left end, clockwise from true north", "°", 0, 360),
    toAzimuth_deg: quantity("Right end, clockwise from true north; may pass north", "°", 0, 360),
    elevation_deg: quantity("Angle from the bed's middle up to its top", "°", 0, 90),
  })
  .describe("A wall, building or tree that takes sky");

const initial = z
  .strictObject({
    rootDepletion_mm: quantity("Water missing from the root zone on the first day", "mm", 0, 10_000),
    surfaceDepletion_mm: quantity("Water missing from the surface layer on the first day", "mm", 0, 1_000),
  })
  .describe("State of the soil on the record's first day");

export const bed = z
  .strictObject({
    id: id("Id of the bed"),
    name: text("Name of the bed"),
    area_m2: quantity("Area of the bed", "m²", 0.1, 50_000),
    plantings,
    leafCover: leafCover.optional(),
    leafCoverMonthly: monthly("Multiplier of the leaf cover in the month", "", 0, 10).optional(),
    rootDepth_m: rootDepth.optional(),
    depletionFraction: depletionFraction.optional(),
    mulch: z.strictObject(mulchFields).describe("Mulch on the bed").optional(),
    soil: soil.optional(),
    obstructions: z.array(obstruction).max(72).describe("What takes sun and sky from the bed").optional(),
    rainShare: share("Share of the rain that reaches the bed").optional(),
    watering,
    priority: whole("Order of importance, 1 first", 1, 1_000).optional(),
    dryOn: z
      .array(dateOrWeekday("A date, or a day of the week"))
      .max(400)
      .describe("When the bed must be dry")
      .optional(),
    outline_m: outline("Corners of the bed on the site plan (m)").optional(),
    initial: initial.optional(),
  })
  .describe("A bed, lawn, oval, hedge or row of trees that is watered as one");
