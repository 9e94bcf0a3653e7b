/** The word lists of the survey document. Each word of the first six has a row in a data table. */

export const kinds = [
  "lawn-cool",
  "lawn-warm",
  "groundcover",
  "perennials",
  "annuals",
  "ornamental-grasses",
  "shrubs",
  "hedge",
  "trees",
  "fruit-trees",
  "vegetables",
  "succulents",
] as const;

/** From least to most water. */
export const thirsts = ["very-low", "low", "moderate", "high"] as const;

export const methods = [
  "drip",
  "subsurface-drip",
  "spray",
  "rotor",
  "sprinkler",
  "hose",
  "can",
  "none",
] as const;

export const mulchMaterials = [
  "wood-chip",
  "bark",
  "straw",
  "leaf-litter",
  "compost",
  "stone",
  "sheet",
] as const;

export const roofMaterials = ["metal", "tile", "concrete", "membrane", "shingle", "green"] as const;

/** The twelve classes of the USDA triangle, coarse to fine, and potting mix. */
export const textures = [
  "sand",
  "loamy-sand",
  "sandy-loam",
  "loam",
  "silt-loam",
  "silt",
  "sandy-clay-loam",
  "clay-loam",
  "silty-clay-loam",
  "sandy-clay",
  "silty-clay",
  "clay",
  "potting-mix",
] as const;

export const supplies = ["tank-then-mains", "tank-only", "mains-only", "other", "none"] as const;

export const weekdays = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;

export const spillRules = ["after-spillage", "before-spillage"] as const;

export const drawOrders = ["before-beds", "after-beds"] as const;

export const meterUnits = ["kL", "m3", "L", "ft3", "100ft3", "gal", "1000gal"] as const;

/** The ways a measure can change the grounds; a measure has exactly one. */
export const changes = [
  "mulch",
  "replant",
  "changeWatering",
  "addTank",
  "resizeTank",
  "useTank",
  "connectRoof",
  "firstFlush",
  "addDraw",
  "mendLeak",
] as const;

export type Kind = (typeof kinds)[number];
export type Thirst = (typeof thirsts)[number];
export type Method = (typeof methods)[number];
export type MulchMaterial = (typeof mulchMaterials)[number];
export type RoofMaterial = (typeof roofMaterials)[number];
export type Texture = (typeof textures)[number];
export type Weekday = (typeof weekdays)[number];
export type MeterUnit = (typeof meterUnits)[number];
export type Change = (typeof changes)[number];
