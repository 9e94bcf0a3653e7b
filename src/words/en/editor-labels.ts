/** What each field of the survey is called in its editor, what to look for, and what leaving it out means. */
import { fieldName } from "./fields.ts";

/** The entry for the end of a path, list positions left out; the longest that fits wins. */
export function byEnd<T>(entries: Readonly<Record<string, T>>, path: string): T | undefined {
  const steps = path.replaceAll(/\[\d*\]/g, "").split(".");
  for (let from = 0; from < steps.length; from++) {
    const key = steps.slice(from).join(".");
    if (Object.hasOwn(entries, key)) return entries[key];
  }
  return undefined;
}

/** Where the name that faults use would not stand well above a field. */
const labels: Readonly<Record<string, string>> = {
  "site.name": "Name of the place",
  leafCoverMonthly: "Cover by month",
  monthly: "Need by month",
  coastal: "Is it on or near a coast?",
  source: "Where its water comes from",
  "normals.source": "Where these means come from",
  "roofs.tank": "Where its water goes",
  "roofs.share": "Share of the roof that drains there",
  inUse: "Is it used today?",
  fromTime: "From",
  toTime: "To",
  carer: "Who waters by hand meanwhile",
  "habit.days": "On which days",
  "habit.months": "In which months",
  "quote.from": "Who quoted",
  line: "Pipe shared with other taps",
  "meters.parent": "The meter it is behind",
  "readings.meter": "Meter",
  "readings.tank": "Tank",
  value: "What the register showed",
  chosen: "Part of the plan?",
  pausesWhenAbsent: "Does it pause while nobody is there?",
  "changeWatering.tank": "Tank",
  "changeWatering.tap": "Tap",
  "useTank.tank": "Tank",
  "resizeTank.tank": "Tank",
  "connectRoof.roof": "Roof",
  "connectRoof.tank": "Tank",
  "addDraw.tank": "Tank",
  "watering.tank": "Tank",
  "watering.tap": "Tap",
  "draws.tank": "Tank it draws from",
  estimated: "Was it an estimate?",
  used: "Does the survey rest on it?",
  "found.text": "As it was typed",
};

/** The label of a field. */
export function labelOf(path: string): string {
  const own = byEnd(labels, path);
  if (own !== undefined) return own;
  const name = fieldName(path).replace(/^The (?=\w)/, "");
  return name.charAt(0).toUpperCase() + name.slice(1);
}

const hints: Readonly<Record<string, string>> = {
  latitude: "Such as 47.55, 34.9 S or 34° 54′ S",
  longitude: "Such as −122.45, 138.6 E or 2° 20′ W",
  elevation_m: "From a map; a hundred metres more or less change little",
  timeZone: "By its name, such as Europe/Madrid",
  coastal: "Where the sea shapes the air, nights are milder",
  windHeight_m: "Only for a weather record with wind: 10 m at most weather stations",
  rainDays: "Days with as much rain as a wet day has at least",
  wetDay_mm: "Met offices count from 1 mm, or from 0.1 or 0.2",
  "absences.from": "As 25 June for every year, or 25 June 2026 for once",
  "absences.to": "The last day, itself included",
  "restrictions.from": "As 1 May for every year, or 1 May 2026 for once",
  "restrictions.to": "The last day, itself included",
  carer: "A name, or “the gardener”",
  "beds.area_m2": "What is watered, seen from above: also as 20 ft² or 0.5 ha",
  "roofs.area_m2": "Seen from above, not along the slope: eaves to eaves",
  "plantings.share": "Of the planted ground; the shares of a bed add to 100%",
  height_m: "Of the grown plants",
  canopy_m: "From one side of a plant’s leaves to the other",
  monthly: "Times the year’s figure: 0.5 where the plants rest, 1 where they grow",
  establishingUntil: "New plants are watered more until then",
  kcbFull: "FAO-56 Kcb of a stand that covers the ground, as a share of ET0",
  depletionFraction: "Part of the water held in the soil that may go before the plants suffer: FAO-56 p",
  rootDepth_m: "As deep as you find most roots with a spade",
  leafCover: "Stand over the bed: how much of the ground is hidden by leaves?",
  leafCoverMonthly: "Times the cover above: 0.2 where branches are bare",
  "mulch.cover": "How much of the ground it hides",
  depth_mm: "Push a ruler down to the soil, in a few places",
  texture: "By feel: roll a moist ball, then press a ribbon from it",
  slope_pct: "Metres down for every hundred along: on a steep bank water runs off",
  intake_mm_h: "If you measured it with a ring",
  fieldCapacity: "Water that stays a day after a soaking, by volume",
  wiltingPoint: "Water that plants cannot take any more, by volume",
  tew_mm: "Most that can evaporate from the top 10 cm",
  rew_mm: "Part of it that evaporates without hindrance",
  fromAzimuth_deg: "From the bed’s middle, looking out: its left end. North 0, east 90, south 180, west 270",
  toAzimuth_deg: "Its right end; it may go round through north",
  elevation_deg: "Up to its top: a fist at arm’s length is about 10°",
  rainShare: "Less than all where a roof or a dense tree keeps rain off",
  "watering.flow_L_min": "Hold a bucket under it: litres, times 60, over the seconds it took",
  "taps.flow_L_min": "Hold a bucket under it: litres, times 60, over the seconds it took",
  distributionUniformity: "From a test with cans on the lawn: the lowest quarter over the mean of all",
  efficiency: "Share of the water let out that roots can get, if you know it",
  wettedShare: "Share of the ground that a watering wets",
  maxMinutes: "On one day, for whatever reason: noise, a timer, the neighbours",
  allowedDays: "By your own rules; those of the town stand under restrictions",
  dryOn: "Sports days, mowing days: days of every week, and single dates",
  priority: "1 first, where water is short",
  outline_m: "Corners on your plan, one a line: metres east, metres north",
  at_m: "On your plan: metres east; metres north",
  initial: "Only where you know how dry the soil was on the first day of the weather record",
  runoff: "What reaches the gutter of the rain that falls on it",
  firstFlush_mm: "Rain thrown away after a dry day, so that the dirt goes with it",
  capacity_L: "Up to the overflow; as 5 kL, 22,500 or 1,000 gal",
  level_L: "By dipping it, or by the gauge",
  unusable_L: "What stays below the outlet",
  linked: "Tanks joined by a pipe at the bottom fill and empty as one",
  belowShare: "The mains start to fill it below this",
  toShare: "And stop here",
  line: "A name for the pipe: taps on one pipe share its flow",
  flowAt: "Where the tank’s level moves the flow: measure it at two levels",
  litresPerDay: "On a day when it is used",
  "leaks.litresPerDay": "Count drips, or read the meter when everything is shut",
  methods: "None ticked: it speaks of every way of watering",
  supplies: "None ticked: it speaks of every sort of water",
  exempt: "Beds that the rule leaves alone",
  currency: "Three letters, such as EUR",
  periodMonths: "Months that a bill covers",
  otherUse_kL_year: "All that is not for the gardens: it moves the price step that a saving is taken from",
  riseShare: "Above what everything else gets dearer by, each year",
  discountShare: "What money could earn otherwise, above inflation, each year",
  oneOf: "Measures under one name exclude each other: two sizes of one tank",
  "found.readings": "As they were read, one after another",
  feeds: "What gets its water through it",
  nickname: "No real names",
  id: "Made from the name. It heads columns of tables; change it only if you want to",
};

export function hintOf(path: string): string {
  return byEnd(hints, path) ?? "";
}

/** What leaving a field out is, as an answer. */
const blanks: Readonly<Record<string, string>> = {
  windHeight_m: "no wind, or at 2 m",
  carer: "nobody",
  maxMinutes: "no limit",
  priority: "none",
  allowedDays: "any day",
  "draws.days": "every day",
  "addDraw.days": "every day",
  "draws.months": "every month",
  "addDraw.months": "every month",
  "restrictions.days": "every day",
  "restrictions.from": "from ever",
  "restrictions.to": "until further notice",
  "restrictions.fromTime": "all day",
  "restrictions.toTime": "all day",
  methods: "every way of watering",
  supplies: "every sort of water",
  exempt: "no bed",
  parity: "Every date",
  establishingUntil: "grown already",
  leafCoverMonthly: "the same all year",
  monthly: "the same all year",
  rootDepth_m: "as its kind",
  depletionFraction: "as its kind",
  height_m: "as its kind",
  kcbFull: "as its kind and thirst",
  slope_pct: "level",
  outline_m: "not drawn",
  at_m: "not on the plan",
  dryOn: "no such days",
  "roofs.tank": "Nowhere: it is not connected",
  "watering.tank": "No tank",
  "watering.tap": "No tap named",
  "changeWatering.tank": "As it is",
  "changeWatering.tap": "As it is",
  line: "its own",
  linked: "none",
  feeds: "not said",
  "meters.parent": "None: it is at the street",
  upkeepPerYear: "none",
  grant: "none",
  oneOf: "stands alone",
  standardError: "not known",
  "found.group": "Not said",
  text: "not kept",
  guess: "none made",
  perKLAlso: "none",
  otherUse_kL_year: "not known",
  chosen: "not said",
  estimated: "not said",
  used: "not said",
  budget: "not said",
  budgetPerYear: "not said",
  "quote.from": "not said",
  "quote.on": "not said",
};

export function blankOf(path: string): string {
  if (/changeWatering\.\w+$/.test(path) && byEnd(blanks, path) === undefined) return "as it is";
  return byEnd(blanks, path) ?? "not known";
}
