/**
 * Every quantity that crosses a module: its name in code and documents, unit, symbol where the trade has one,
 * and meaning. Units are SI with litres, minutes and days beside them; "share" runs 0–1.
 */
export interface Quantity {
  unit: string;
  symbol?: string;
  meaning: string;
}

export const quantities = {
  // weather
  rain_mm: { unit: "mm", symbol: "P", meaning: "rain of a day" },
  et0_mm: { unit: "mm", symbol: "ET0", meaning: "reference evapotranspiration of a day" },
  tmin_c: { unit: "°C", symbol: "Tmin", meaning: "lowest air temperature of a day" },
  tmax_c: { unit: "°C", symbol: "Tmax", meaning: "highest air temperature of a day" },
  tdew_c: { unit: "°C", symbol: "Tdew", meaning: "dew point" },
  vp_kpa: { unit: "kPa", symbol: "ea", meaning: "vapour pressure of the air" },
  rhmin_pct: { unit: "%", symbol: "RHmin", meaning: "lowest relative humidity of a day" },
  rhmax_pct: { unit: "%", symbol: "RHmax", meaning: "highest relative humidity of a day" },
  rhmean_pct: { unit: "%", symbol: "RHmean", meaning: "mean relative humidity of a day" },
  wind_ms: { unit: "m/s", symbol: "u", meaning: "mean wind speed of a day" },
  solar_MJ_m2: { unit: "MJ/m²", symbol: "Rs", meaning: "solar radiation of a day on the level" },
  sun_h: { unit: "h", symbol: "n", meaning: "hours of bright sun of a day" },
  wetDay_mm: { unit: "mm", meaning: "least rain of a day that counts as wet" },
  rain_mm_year: { unit: "mm", symbol: "P", meaning: "rain, mean a year" },
  et0_mm_year: { unit: "mm", symbol: "ET0", meaning: "reference evapotranspiration, mean a year" },

  // place and sky
  latitude_deg: { unit: "°", symbol: "φ", meaning: "latitude, south negative" },
  longitude_deg: { unit: "°", meaning: "longitude, west negative" },
  elevation_m: { unit: "m", symbol: "z", meaning: "height above sea level" },
  windHeight_m: { unit: "m", meaning: "height at which wind is measured" },
  fromAzimuth_deg: { unit: "°", meaning: "left end of what takes sky, clockwise from true north" },
  toAzimuth_deg: { unit: "°", meaning: "right end of what takes sky, clockwise from true north" },
  elevation_deg: { unit: "°", meaning: "angle from the bed's middle up to the top of what takes sky" },

  // plants
  area_m2: { unit: "m²", symbol: "A", meaning: "area in plan" },
  share: { unit: "share", meaning: "part of the whole" },
  kcbFull: { unit: "share", symbol: "Kcb full", meaning: "basal coefficient at full cover, a share of ET0" },
  kcb: { unit: "share", symbol: "Kcb", meaning: "basal coefficient, a share of ET0" },
  height_m: { unit: "m", symbol: "h", meaning: "height of plants" },
  rootDepth_m: { unit: "m", symbol: "Zr", meaning: "depth from which roots take water" },
  depletionFraction: {
    unit: "share",
    symbol: "p",
    meaning: "share of TAW used before stress, at ETc 5 mm a day",
  },
  leafCover: { unit: "share", symbol: "fc", meaning: "share of the ground that leaves cover, from above" },
  fcStandard: {
    unit: "share",
    symbol: "fc",
    meaning: "leaf cover of the stand that a coefficient describes",
  },
  canopy_m: { unit: "m", meaning: "width of a plant's canopy" },

  // soil
  fieldCapacity: { unit: "m³/m³", symbol: "θFC", meaning: "water held after draining freely" },
  wiltingPoint: { unit: "m³/m³", symbol: "θWP", meaning: "water that roots cannot take" },
  available: {
    unit: "m³/m³",
    symbol: "θFC − θWP",
    meaning: "water between field capacity and wilting point",
  },
  saturation: { unit: "m³/m³", symbol: "θS", meaning: "water that fills every pore" },
  saturatedConductivity_mm_h: {
    unit: "mm/h",
    symbol: "Ks",
    meaning: "rate at which water passes a saturated soil",
  },
  tew_mm: { unit: "mm", symbol: "TEW", meaning: "total evaporable water of the surface layer" },
  rew_mm: { unit: "mm", symbol: "REW", meaning: "surface water that evaporates without hindrance" },
  taw_mm: { unit: "mm", symbol: "TAW", meaning: "water that the root zone holds for plants" },
  raw_mm: { unit: "mm", symbol: "RAW", meaning: "part of TAW that plants take without stress" },
  sand_pct: { unit: "%", meaning: "sand, by weight" },
  clay_pct: { unit: "%", meaning: "clay, by weight" },
  slope_pct: { unit: "%", meaning: "slope of the ground" },
  fromSlope_pct: { unit: "%", meaning: "slope from which a row holds" },
  intake_mm_h: { unit: "mm/h", meaning: "rate at which soil takes water in" },
  intakeShare: { unit: "share", meaning: "share of the level's intake rate left on a slope" },
  surfaceStorage_mm: { unit: "mm", meaning: "water that may stand on the surface before it runs off" },
  rootDepletion_mm: { unit: "mm", symbol: "Dr", meaning: "water missing from the root zone" },
  surfaceDepletion_mm: { unit: "mm", symbol: "De", meaning: "water missing from the surface layer" },
  root_depletion_mm: { unit: "mm", symbol: "Dr", meaning: "water missing from the root zone, end of day" },
  surface_depletion_mm: {
    unit: "mm",
    symbol: "De",
    meaning: "water missing from the surface layer, end of day",
  },
  rainShare: { unit: "share", meaning: "share of the rain that reaches a bed" },

  // mulch
  cut: { unit: "share", symbol: "M", meaning: "share of evaporation that a full cover of mulch takes away" },
  cover: { unit: "share", meaning: "share of the ground that mulch covers" },
  depth_mm: { unit: "mm", meaning: "depth of mulch" },
  fullDepth_mm: { unit: "mm", meaning: "depth from which a mulch's cut is whole" },

  // a bed's day
  ke: { unit: "share", symbol: "Ke", meaning: "evaporation coefficient" },
  ks: { unit: "share", symbol: "Ks", meaning: "stress coefficient; 1 is no stress" },
  etc_mm: { unit: "mm", symbol: "ETc", meaning: "evapotranspiration of the bed" },
  net_mm: { unit: "mm", symbol: "I", meaning: "watering that reaches the root zone" },
  gross_L: { unit: "L", meaning: "water let out to give the net" },
  drainage_mm: { unit: "mm", symbol: "DP", meaning: "water that drains below the roots" },
  rainUsed_mm: { unit: "mm", meaning: "rain that did not drain" },
  need_mm: { unit: "mm", meaning: "net watering with water always there" },
  fromTankByMonth_L: { unit: "L", meaning: "water let out of a tank to give the need, by calendar month" },
  grossByMonth_L: { unit: "L", meaning: "water let out to give the need, by calendar month" },
  grossByDay_L: { unit: "L", meaning: "water let out to give the need, by day" },
  habitByMonth_L: { unit: "L", meaning: "water let out by today's habit, by calendar month" },
  habit_L: { unit: "L", meaning: "water let out by today's habit" },
  supplied_L: { unit: "L", meaning: "water that the bed got" },
  establishing_L: { unit: "L", meaning: "water let out while plants establish" },
  need_mm_year: { unit: "mm", meaning: "net watering with water always there, mean a year" },
  need_L_year: { unit: "L", meaning: "net watering with water always there, mean a year" },
  gross_L_year: { unit: "L", meaning: "water let out to give the need, mean a year" },
  habit_L_year: { unit: "L", meaning: "water let out by today's habit, mean a year" },
  supplied_L_year: { unit: "L", meaning: "water that the bed got, mean a year" },
  rain_used_mm_year: { unit: "mm", meaning: "rain that did not drain, mean a year" },
  drainage_mm_year: { unit: "mm", meaning: "water that drains below the roots, mean a year" },
  stressDays_year: { unit: "days", meaning: "days with Ks below 1, mean a year" },
  needByMonth_L: { unit: "L", meaning: "water let out to give the need, mean of the month" },
  establishing_L_year: { unit: "L", meaning: "water let out while plants establish, mean a year" },

  // watering
  flow_L_min: { unit: "L/min", meaning: "flow on to a bed while it is watered" },
  application_mm_h: { unit: "mm/h", meaning: "depth of water put on in an hour" },
  efficiency: { unit: "share", symbol: "Ea", meaning: "net watering over gross" },
  wettedShare: { unit: "share", symbol: "fw", meaning: "share of the surface that a watering wets" },
  distributionUniformity: {
    unit: "share",
    symbol: "DU",
    meaning: "lowest quarter of catch cans over their mean",
  },
  minutes: { unit: "min", meaning: "length of one watering" },
  maxMinutes: { unit: "min", meaning: "longest watering of a day" },

  // roofs and tanks
  runoff: { unit: "share", symbol: "C", meaning: "share of the rain that runs off a roof" },
  firstFlush_mm: { unit: "mm", symbol: "f", meaning: "first rain after a dry day that is sent away" },
  capacity_L: { unit: "L", symbol: "C", meaning: "water that a tank holds when full" },
  level_L: { unit: "L", symbol: "V", meaning: "water in a tank, with what lies below the outlet" },
  levelByDay_L: { unit: "L", symbol: "V", meaning: "water in a tank at the end of each day" },
  unusable_L: { unit: "L", meaning: "water below a tank's outlet" },
  belowShare: { unit: "share", meaning: "share of the capacity below which the mains fill a tank" },
  toShare: { unit: "share", meaning: "share of the capacity that the mains fill a tank to" },
  inflow_L: { unit: "L", symbol: "Q", meaning: "water that roofs bring" },
  draw_L: { unit: "L", symbol: "D", meaning: "water asked of a tank" },
  yield_L: { unit: "L", symbol: "Y", meaning: "water that a tank gave" },
  spill_L: { unit: "L", meaning: "water that a full tank lost" },
  topup_L: { unit: "L", meaning: "mains water that fills a tank" },
  topUp_L: { unit: "L", meaning: "mains water that fills a tank" },
  inflow_L_year: { unit: "L", symbol: "Q", meaning: "water that roofs bring, mean a year" },
  draw_L_year: { unit: "L", symbol: "D", meaning: "new draw on a tank, mean a year" },
  yield_L_year: { unit: "L", symbol: "Y", meaning: "water that a tank gave, mean a year" },
  spill_L_year: { unit: "L", meaning: "water that a full tank lost, mean a year" },
  topUp_L_year: { unit: "L", meaning: "mains water that fills a tank, mean a year" },
  shortDays_year: { unit: "days", meaning: "days on which a draw was not all met, mean a year" },
  reliability: { unit: "share", meaning: "share of days with a draw on which all of it was met" },
  volumetricReliability: { unit: "share", meaning: "yield over new draw" },
  litresPerDay: { unit: "L a day", meaning: "water drawn or lost on a day" },
  leaks_L_day: { unit: "L a day", meaning: "mains water lost to leaks" },

  // mains and money
  mains_L: { unit: "L", meaning: "mains water of a day" },
  kL: { unit: "kL", meaning: "water on a bill" },
  today_L: { unit: "L", meaning: "mains water of a year as watered today" },
  need_L: { unit: "L", meaning: "mains water of a year watered to need" },
  plan_L: { unit: "L", meaning: "mains water of a year with the measures chosen" },
  today_kL: { unit: "kL", meaning: "mains water of a year as watered today" },
  need_kL: { unit: "kL", meaning: "mains water of a year watered to need" },
  plan_kL: { unit: "kL", meaning: "mains water of a year with the measures chosen" },
  today_kL_year: { unit: "kL", meaning: "mains water as watered today, mean a year" },
  need_kL_year: { unit: "kL", meaning: "mains water watered to need, mean a year" },
  plan_kL_year: { unit: "kL", meaning: "mains water with the measures chosen, mean a year" },
  giveUp_kL_year: { unit: "kL", meaning: "mains water that could be given up in a year" },
  share_kL_year: { unit: "kL", meaning: "a measure's part of what could be given up, mean a year" },
  otherUse_kL_year: { unit: "kL", meaning: "other water on the same bill, a year" },
  fromKL: { unit: "kL", meaning: "use from which a price holds, in a billing period" },
  perKL: { unit: "money/kL", meaning: "price of mains water" },
  costPerKL: { unit: "money/kL", meaning: "yearly cost over yearly saving" },
  npv: { unit: "money", meaning: "present value of savings less costs" },
  payback_years: { unit: "years", meaning: "cost over yearly saving" },
  life_years: { unit: "years", meaning: "how long something lasts" },
  horizon_years: { unit: "years", meaning: "years looked ahead" },
} as const satisfies Record<string, Quantity>;

export type QuantityName = keyof typeof quantities;

/** Units that quantities are in. */
export type Unit = (typeof quantities)[QuantityName]["unit"];

/** The quantity of a name, where there is one. */
export function quantityOf(name: string): Quantity | undefined {
  return Object.hasOwn(quantities, name) ? quantities[name as QuantityName] : undefined;
}
