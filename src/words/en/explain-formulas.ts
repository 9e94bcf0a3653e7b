import type { TermKey } from "./explain-terms.ts";

/** A formula: what it gives, its letters in braces, what it says, and where it is published. */
export interface Formula {
  gives: TermKey;
  template: string;
  words: string;
  /** null: plain arithmetic. */
  source: string | null;
}

/** FAO Irrigation and Drainage Paper 56, for short. */
const fao56 = "FAO-56";
const fao = (place: string) => `${fao56}, ${place}`;
const eq = (number: string) => fao(`Eq. ${number}`);
const density =
  "Allen and Pereira (2009), Irrigation Science 28:17–34; 1.5 is the low end of its range, our choice";
const erbs = "Erbs, Klein and Duffie (1982), Solar Energy 28:293–302, daily form (coefficients from memory)";
const spillage = "Jenkins et al. (1978); Fewkes and Butler (2000)";
const shadeOurs = "method of this project: simple air mass, isotropic sky, level ground";
const mulchSource =
  "FAO-56, chapter 10: 5 % less evaporation for each 10 % covered; in proportion below full depth";
const saxton = "Saxton and Rawls (2006), Soil Science Society of America Journal 70:1569–1578";
const practice = "common practice";
const ours = "method of this project";

const f = (gives: TermKey, template: string, words: string, source: string | null = null): Formula => ({
  gives,
  template,
  words,
  source,
});

/** Formulas of the weather: FAO-56, chapter 3. */
const weather = {
  rainGiven: f("rain", "{rain}", "as recorded", ours),
  et0Given: f("et0", "max(0, {pm})", "ET0 as the record gives it, no less than 0", ours),
  et0Held: f("et0", "max(0, {pm})", "no less than 0", ours),
  tmean: f("tmean", "({tmin} + {tmax}) ÷ 2", "mean of the day’s two temperatures", fao("Eq. 9")),
  hargreaves: f(
    "pm",
    "0.0023 × ({tmean} + 17.8) × √({tmax} − {tmin}) × 0.408 × {ra}",
    "evaporation from warmth, its daily range and the sun above the air",
    fao("Eq. 52 (Hargreaves and Samani 1985), Ra in mm by Eq. 20"),
  ),
  pressure: f(
    "pressure",
    "101.3 × ((293 − 0.0065 × {elevation}) ÷ 293)^5.26",
    "air is thinner higher up",
    eq("7"),
  ),
  gamma: f("gamma", "0.000665 × {pressure}", "from the air pressure", eq("8")),
  eMean: f(
    "eMean",
    "0.6108 × exp(17.27 × {tmean} ÷ ({tmean} + 237.3))",
    "vapour that air of that warmth can hold",
    eq("11"),
  ),
  esMin: f(
    "esMin",
    "0.6108 × exp(17.27 × {tmin} ÷ ({tmin} + 237.3))",
    "vapour that air of that warmth can hold",
    eq("11"),
  ),
  esMax: f(
    "esMax",
    "0.6108 × exp(17.27 × {tmax} ÷ ({tmax} + 237.3))",
    "vapour that air of that warmth can hold",
    eq("11"),
  ),
  es: f("es", "({esMax} + {esMin}) ÷ 2", "mean of the two", eq("12")),
  slope: f("slope", "4098 × {eMean} ÷ ({tmean} + 237.3)^2", "how fast that rises with warmth", eq("13")),
  eaDew: f("ea", "0.6108 × exp(17.27 × {tdew} ÷ ({tdew} + 237.3))", "saturation at the dew point", eq("14")),
  eaGiven: f("ea", "{vp}", "as recorded", ours),
  eaRange: f(
    "ea",
    "({esMin} × {rhmax} ÷ 100 + {esMax} × {rhmin} ÷ 100) ÷ 2",
    "from both ends of the day’s humidity",
    eq("17"),
  ),
  eaMean: f("ea", "{rhmean} ÷ 100 × {es}", "from the mean humidity", eq("19")),
  eaTmin: f(
    "ea",
    "0.6108 × exp(17.27 × {tmin} ÷ ({tmin} + 237.3))",
    "no humidity was recorded: the dew point is taken as Tmin",
    eq("48, with Eq. 14"),
  ),
  rhminFromEa: f("rhmin", "100 × {ea} ÷ {esMax}", "humidity in the day’s warmest hour", eq("10, at Tmax")),
  rhminUsual: f(
    "rhmin",
    "45",
    "no humidity was recorded: the standard’s",
    fao("Eq. 70: the standard climate"),
  ),
  rhminGiven: f("rhmin", "{rhmin}", "as recorded", ours),
  wind2: f(
    "wind2",
    "{wind} × 4.87 ÷ ln(67.8 × {windHeight} − 5.42)",
    "wind is slower near the ground",
    eq("47"),
  ),
  windUsual: f(
    "wind2",
    "2",
    "no wind was recorded: the world’s mean",
    fao("chapter 3, text on missing wind"),
  ),
  windHeld: f(
    "windHeld",
    "max(0.5, {wind2})",
    "never still: no less than 0.5 m/s",
    fao("chapter 3, text on low wind"),
  ),
  distance: f(
    "distance",
    "1 + 0.033 × cos(2 × π × {dayOfYear} ÷ 365)",
    "the sun is nearest in January",
    eq("23"),
  ),
  declination: f(
    "declination",
    "0.409 × sin(2 × π × {dayOfYear} ÷ 365 − 1.39)",
    "how far the sun has come north",
    eq("24"),
  ),
  phi: f("phi", "π ÷ 180 × {latitude}", "degrees to radians", eq("22")),
  sunset: f(
    "sunset",
    "arccos(min(1, max(−1, −tan({phi}) × tan({declination}))))",
    "half the day’s turn; π where the sun stays up, 0 where it stays down",
    eq("25"),
  ),
  daylight: f("daylight", "24 ÷ π × {sunset}", "half the turn on each side of noon", eq("34")),
  ra: f(
    "ra",
    "max(0, 24 × 60 ÷ π × 0.082 × {distance} × ({sunset} × sin({phi}) × sin({declination}) + cos({phi}) × cos({declination}) × sin({sunset})))",
    "sun above the air, from latitude and date alone",
    eq("21"),
  ),
  rsGiven: f("rs", "{rs}", "as recorded", ours),
  rsSun: f("rs", "(0.25 + 0.5 × {sun} ÷ {daylight}) × {ra}", "from the hours of bright sun", eq("35")),
  rsNoDay: f("rs", "0", "the sun stays down", eq("35")),
  rsTemperature: f(
    "rs",
    "{kRs} × √({tmax} − {tmin}) × {ra}",
    "a clear day is warm by day and cold by night",
    eq("50"),
  ),
  rso: f("rso", "(0.75 + 0.00002 × {elevation}) × {ra}", "what a cloudless day would bring", eq("37")),
  rel: f("rel", "min(1, {rs} ÷ {rso})", "how clear the day was, 1 at most", fao("limit of Eq. 39")),
  relNoSun: f("rel", "1", "there is no sun at all: taken as clear", ours),
  rns: f("rns", "(1 − 0.23) × {rs}", "grass throws 23 % back", eq("38")),
  rnsShaded: f(
    "rns",
    "(1 − 0.23) × {received} × {rs}",
    "grass throws 23 % back of what reaches it",
    eq("38"),
  ),
  rnl: f(
    "rnl",
    "4.903 × 10^(−9) × (({tmax} + 273.16)^4 + ({tmin} + 273.16)^4) ÷ 2 × (0.34 − 0.14 × √({ea})) × (1.35 × {rel} − 0.35)",
    "warm ground loses heat; vapour and cloud hold it",
    eq("39"),
  ),
  rn: f("rn", "{rns} − {rnl}", "kept less lost", eq("40")),
  soilHeat: f("soilHeat", "0", "over a day the soil gives back what it took", eq("42")),
  penmanMonteith: f(
    "pm",
    "(0.408 × {slope} × ({rn} − {soilHeat}) + {gamma} × 900 ÷ ({tmean} + 273) × {windHeld} × ({es} − {ea})) ÷ ({slope} + {gamma} × (1 + 0.34 × {windHeld}))",
    "what short grass with enough water evaporates: sun’s part and drying air’s part",
    eq("6 (FAO Penman–Monteith)"),
  ),
  climate: f(
    "climate",
    "0.04 × ({wind2} − 2) − 0.004 × ({rhmin} − 45)",
    "more in wind and dry air than in the standard climate",
    eq("72"),
  ),
  climateLimited: f(
    "climateLimited",
    "0.04 × (min(6, max(1, {wind2})) − 2) − 0.004 × (min(80, max(20, {rhmin})) − 45)",
    "wind held to 1–6 m/s, humidity to 20–80 %",
    eq("70"),
  ),
} satisfies Record<string, Formula>;

/** Formulas of shade. */
const shade = {
  clearness: f("clearness", "{rs} ÷ {ra}", "sun that came through the air", erbs),
  clearnessNoSun: f("clearness", "0", "no sun above the air", ours),
  sunsetDeg: f("sunsetDeg", "{sunset} × 180 ÷ π", "radians to degrees"),
  diffuseLow: f(
    "diffuse",
    "1 − 0.2727 × {clearness} + 2.4495 × {clearness}^2 − 11.9514 × {clearness}^3 + 9.3879 × {clearness}^4",
    "sunset angle below 81.4°, clearness below 0.715",
    erbs,
  ),
  diffuseLowClear: f("diffuse", "0.143", "sunset angle below 81.4°, clearness 0.715 or more", erbs),
  diffuseHigh: f(
    "diffuse",
    "1 + 0.2832 × {clearness} − 2.5557 × {clearness}^2 + 0.8448 × {clearness}^3",
    "sunset angle 81.4° or more, clearness below 0.722",
    erbs,
  ),
  diffuseHighClear: f("diffuse", "0.175", "sunset angle 81.4° or more, clearness 0.722 or more", erbs),
  blockedMonth: f(
    "blocked",
    "{beamBehind} ÷ {beamAll}",
    "every ten minutes of the 15th with the sun up; w = sin(altitude) × 0.7^(1 ÷ sin(altitude))",
    shadeOurs,
  ),
  blockedDark: f("blocked", "{blockedBefore}", "the sun stays down: the nearest month with sun", ours),
  blockedDay: f(
    "blocked",
    "{blockedBefore} × (1 − {between}) + {blockedAfter} × {between}",
    "on a straight line from one 15th to the next",
    ours,
  ),
  skyHidden: f(
    "skyHidden",
    "({toAzimuth} − {fromAzimuth}) ÷ 360 × sin({skyline} × π ÷ 180)^2",
    "its width in the round, and its height",
    shadeOurs,
  ),
  skyView: f("skyView", "1 − {skyHidden}", "the rest of an evenly bright sky", shadeOurs),
  received: f(
    "received",
    "(1 − {diffuse}) × (1 − {blocked}) + {diffuse} × {skyView}",
    "beam past the skyline, and the part of the sky that the bed sees",
    shadeOurs,
  ),
  shade: f(
    "shade",
    "min(1, max(0, {pmShaded} ÷ {pmOpen}))",
    "Eq. 6 with the bed’s sun over Eq. 6 with all of it",
    ours,
  ),
  shadeByRadiation: f(
    "shade",
    "min(1, max(0, {received}))",
    "ET0 in proportion to radiation",
    "Hargreaves (1975): ET0 in proportion to radiation",
  ),
  bedEt0: f("bedEt0", "{et0} × {shade}", "shade takes its part off", ours),
} satisfies Record<string, Formula>;

/** Formulas of plants and of the soil that they stand in. */
const plants = {
  leafCover: f(
    "leafCover",
    "min(0.99, max(0.01, {leafCover} × {coverMonth}))",
    "held within 0.01–0.99",
    fao("text of Eq. 74–76"),
  ),
  density: f(
    "density",
    "min(1, 1.5 × {leafCover}, {leafCover}^(1 ÷ (1 + {height})))",
    "thin cover draws less than full",
    density,
  ),
  kcbAdjusted: f(
    "kcbAdjusted",
    "{kcbFull} + {climateLimited} × (min(10, max(0.1, {height})) ÷ 3)^0.3",
    "more in wind and dry air, the taller the more",
    eq("70"),
  ),
  kcbPart: f(
    "kcbPart",
    "{share} × {monthly} × {density} × {kcbAdjusted}",
    "bare ground between plants counts as 0",
    fao("the form of Eq. 98, with Kc min 0"),
  ),
  kcbPartPlain: f(
    "kcbPart",
    "{share} × {monthly} × {density} × {kcbFull}",
    "bare ground between plants counts as 0",
    fao("the form of Eq. 98, with Kc min 0"),
  ),
  kcb: f("kcb", "Σ {kcbPart}", "all plantings of the bed"),
  partOf: f("part", "{share} × {part}", "weighted by the share of the bed"),
  rootDepth: f("rootDepth", "Σ {part}", "mean of the plantings by their shares", ours),
  fraction: f("fraction", "Σ {part}", "mean of the plantings by their shares", ours),
  height: f("height", "Σ {part}", "mean of the plantings by their shares", ours),
  taw: f(
    "taw",
    "1000 × ({fieldCapacity} − {wiltingPoint}) × {rootDepth}",
    "what the root zone holds for plants",
    eq("82"),
  ),
  trigger: f("trigger", "{fraction} × {taw}", "refill when plants are about to feel it", eq("83")),
  mulch: f(
    "mulch",
    "{mulchFull} × {mulchCover} × min(1, {mulchDepth} ÷ {mulchFullDepth})",
    "its cover and its depth",
    mulchSource,
  ),
  mulchAnyDepth: f("mulch", "{mulchFull} × {mulchCover}", "its cover; depth does not matter", mulchSource),
  mulchNone: f("mulch", "0", "no mulch", ours),
  tew: f(
    "tew",
    "{tewSoil} × (1 − {mulch})",
    "mulch also cuts what one wetting can lose",
    fao("chapters 10 and 11"),
  ),
  rew: f(
    "rew",
    "min({tew}, {rewSoil} × (1 − {mulch}))",
    "mulch also cuts what one wetting can lose",
    fao("chapters 10 and 11"),
  ),
  fieldCapacityFirst: f(
    "thetaFirst",
    "−0.251 × {sand} ÷ 100 + 0.195 × {clay} ÷ 100 + 0.011 × {organicMatter} + 0.006 × {sand} ÷ 100 × {organicMatter} − 0.027 × {clay} ÷ 100 × {organicMatter} + 0.452 × {sand} ÷ 100 × {clay} ÷ 100 + 0.299",
    "from sand, clay and organic matter",
    `${saxton}, Eq. 2`,
  ),
  fieldCapacity: f(
    "fieldCapacity",
    "{thetaFirst} + 1.283 × {thetaFirst}^2 − 0.374 × {thetaFirst} − 0.015",
    "water held at 33 kPa",
    `${saxton}, Eq. 2`,
  ),
  wiltingPointFirst: f(
    "thetaFirst",
    "−0.024 × {sand} ÷ 100 + 0.487 × {clay} ÷ 100 + 0.006 × {organicMatter} + 0.005 × {sand} ÷ 100 × {organicMatter} − 0.013 × {clay} ÷ 100 × {organicMatter} + 0.068 × {sand} ÷ 100 × {clay} ÷ 100 + 0.031",
    "from sand, clay and organic matter",
    `${saxton}, Eq. 1`,
  ),
  wiltingPoint1500: f(
    "theta1500",
    "{thetaFirst} + 0.14 × {thetaFirst} − 0.02",
    "water held at 1,500 kPa",
    `${saxton}, Eq. 1`,
  ),
  wiltingPoint: f(
    "wiltingPoint",
    "min({theta1500}, {fieldCapacity} − 0.01)",
    "something is always left between the two",
    ours,
  ),
  asSurveyedFieldCapacity: f("fieldCapacity", "{fieldCapacity}", "as it stands", ours),
  asSurveyedWiltingPoint: f("wiltingPoint", "{wiltingPoint}", "as it stands", ours),
  asSurveyedRootDepth: f("rootDepth", "{rootDepth}", "as it stands", ours),
  asSurveyedFraction: f("fraction", "{fraction}", "as it stands", ours),
  asSurveyedEfficiency: f("efficiency", "{efficiency}", "as it stands", ours),
  asSurveyedFlow: f("flow", "{flow}", "as it stands", ours),
  asSurveyedArea: f("area", "{area}", "as it stands", ours),
  asSurveyedWetted: f("wettedShare", "{wettedShare}", "as it stands", ours),
  rewHeld: f("rewSoil", "min({rewSoil}, {tewSoil})", "never above TEW", ours),
  tewSandClay: f(
    "tewSoil",
    "1000 × ({fieldCapacity} − 0.5 × {wiltingPoint}) × 0.1",
    "of the top 0.10 m",
    eq("73"),
  ),
  most: f(
    "most",
    "{maxMinutes} × {flow} ÷ {area} × {efficiency}",
    "the longest watering, as depth over the bed",
    practice,
  ),
  efficiencyOfTest: f(
    "efficiency",
    "0.4 + 0.6 × {uniformity}",
    "the drier quarter sets how long one waters",
    practice,
  ),
  rate: f(
    "rate",
    "60 × {flow} ÷ ({area} × {wettedShare})",
    "where the water falls; 1 mm on 1 m² is 1 L",
    practice,
  ),
} satisfies Record<string, Formula>;

/** Formulas of a bed's day: FAO-56, chapters 7 and 8. */
const day = {
  bedRain: f("bedRain", "{rain} × {rainShare}", "the part that reaches the bed", ours),
  few: f("few", "min(1 − {leafCover}, {wetted})", "bare, and wet", eq("75")),
  fewDrip: f(
    "few",
    "min(1 − {leafCover}, (1 − 0.67 × {leafCover}) × {wetted})",
    "drippers wet mostly shaded ground",
    fao("Eq. 75, with its text on drip"),
  ),
  wettedAll: f(
    "wetted",
    "1",
    "rain of 3 mm or more, or no wetting yet, wets all of the surface",
    `${ours}, after ${fao("Table 20")}`,
  ),
  wettedMethod: f("wetted", "{wettedShare}", "the last wetting was a watering", fao("Table 20")),
  kcMax: f(
    "kcMax",
    "max(1.2 + {climate} × ({height} ÷ 3)^0.3, {kcb} + 0.05)",
    "energy sets a limit",
    eq("72"),
  ),
  surfaceWetted: f(
    "surfaceWetted",
    "max(0, {surfaceBefore} − {bedRain} − {net} ÷ {wetted})",
    "rain and watering wet it",
    eq("77"),
  ),
  krFull: f("kr", "1", "De* is REW or less: nothing hinders it", eq("74")),
  krNone: f("kr", "0", "De* is TEW: the surface is dry", eq("74")),
  kr: f("kr", "({tew} − {surfaceWetted}) ÷ ({tew} − {rew})", "between REW and TEW", eq("74")),
  ke: f(
    "ke",
    "(1 − {mulch}) × min({kr} × ({kcMax} − {kcb}), {few} × {kcMax})",
    "what the surface adds to the plants, less what mulch takes",
    eq("71, less the mulch’s cut"),
  ),
  fractionDay: f(
    "fractionDay",
    "min(0.8, max(0.1, {fraction} + 0.04 × (5 − ({kcb} + {ke}) × {bedEt0})))",
    "on a hot day plants feel it sooner",
    fao("Table 22, footnote"),
  ),
  raw: f("raw", "{fractionDay} × {taw}", "what plants take without stress", eq("83")),
  rootWetted: f(
    "rootWetted",
    "max(0, {rootBefore} − {bedRain} − {net})",
    "rain and watering fill it",
    eq("85"),
  ),
  ksFull: f("ks", "1", "Dr* is RAW or less: no stress", eq("84")),
  ks: f(
    "ks",
    "({taw} − {rootWetted}) ÷ ((1 − {fractionDay}) × {taw})",
    "Dr* is above RAW: plants hold water back",
    eq("84"),
  ),
  asked: f("asked", "({ks} × {kcb} + {ke}) × {bedEt0}", "plants and surface, times the reference", eq("80")),
  held: f("held", "{taw} − {rootBefore} + {bedRain} + {net}", "what is there to take", ours),
  etc: f("etc", "min({asked}, {held})", "no more than the soil holds", eq("80")),
  limit: f("limit", "min(1, {held} ÷ {asked})", "share of it that could be had", ours),
  limitNone: f("limit", "1", "nothing was asked", ours),
  drainage: f(
    "drainage",
    "max(0, {bedRain} + {net} − {etc} − {rootBefore})",
    "what the soil cannot hold",
    eq("88"),
  ),
  root: f("root", "{rootBefore} − {bedRain} − {net} + {etc} + {drainage}", "the day’s balance", eq("85")),
  surface: f(
    "surface",
    "min({tew}, max(0, {surfaceWetted} + {limit} × {ke} × {bedEt0} ÷ {few}))",
    "what evaporated is missing",
    eq("77, without transpiration from the surface layer"),
  ),
  stressDay: f("stressDay", "1", "Ks is below 1"),
  stressNot: f("stressDay", "0", "Ks is 1"),
  netClosed: f("net", "0", "", ours),
  netNotYet: f("net", "0", "Dr before is below the trigger: not yet", ours),
  netRefill: f("net", "{rootBefore}", "the trigger is reached: fill it up again", ours),
  netMost: f(
    "net",
    "min({rootBefore}, {most})",
    "fill it up again, as far as the longest watering goes",
    ours,
  ),
  netGot: f("net", "{gets} ÷ {area} × {efficiency}", "what the tank gave, as depth over the bed", practice),
  gross: f(
    "gross",
    "{net} ÷ {efficiency} × {area}",
    "more is let out than the roots get; 1 mm on 1 m² is 1 L",
    practice,
  ),
  asks: f(
    "asks",
    "{net} ÷ {efficiency} × {area}",
    "more is let out than the roots get; 1 mm on 1 m² is 1 L",
    practice,
  ),
  refill: f("refill", "{root} ÷ {efficiency} × {area}", "to field capacity", practice),
  habit: f("habit", "{minutes} × {flow}", "as it is done today", practice),
  habitNone: f("habit", "0", "", ours),
  rainUsed: f("rainUsed", "{bedRain} − {drainage}", "rain that did not drain away", ours),
} satisfies Record<string, Formula>;

/** Formulas of roofs and tanks. */
const tanks = {
  flushDirty: f("firstFlush", "{firstFlush}", "the day before had less than 1 mm: the roof is dirty", ours),
  flushClean: f("firstFlush", "0", "the day before had 1 mm or more: the roof is clean", ours),
  roofInflow: f(
    "roofInflow",
    "{area} × {runoff} × max(0, {rain} − {firstFlush}) × {roofShare}",
    "1 mm on 1 m² is 1 L",
    "common practice, from catchment to tank",
  ),
  inflow: f("inflow", "Σ {roofInflow}", "all roofs that drain to the tank"),
  nothing: f("inflow", "0", "the tank is not in use", ours),
  draw: f("draw", "Σ {asks}", "all that ask the tank for water"),
  drawAsks: f("asks", "{litresPerDay}", "it draws on this day", ours),
  drawPauses: f("asks", "0", "", ours),
  usableBefore: f("usableBefore", "{levelBefore} − {unusable}", "what lies above the outlet"),
  usable: f("usable", "{capacity} − {unusable}", "what lies above the outlet"),
  yieldAfter: f(
    "yield",
    "min({draw}, {usableBefore})",
    "today’s draw sees yesterday’s level",
    `${spillage}: yield after spillage`,
  ),
  yieldBefore: f(
    "yield",
    "min({draw}, {usableBefore} + {inflow})",
    "today’s draw sees today’s rain too",
    `${spillage}: yield before spillage`,
  ),
  yieldNone: f("yield", "0", "the tank is not in use", ours),
  keptAfter: f(
    "kept",
    "min({usableBefore} + {inflow} − {yield}, {usable} − {yield})",
    "no more than it holds before the draw",
    `${spillage}: yield after spillage`,
  ),
  keptBefore: f(
    "kept",
    "min({usableBefore} + {inflow} − {yield}, {usable})",
    "no more than it holds",
    `${spillage}: yield before spillage`,
  ),
  spill: f(
    "spill",
    "max(0, {usableBefore} + {inflow} − {yield} − {kept})",
    "what a full tank lost",
    spillage,
  ),
  spillNone: f("spill", "0", "the tank is not in use", ours),
  topUpNot: f("topUp", "0", "the level is not below its trigger, or nothing tops it up", ours),
  topUp: f(
    "topUp",
    "{toShare} × {capacity} − ({kept} + {unusable})",
    "the mains fill it to its target",
    ours,
  ),
  level: f("level", "{kept} + {topUp} + {unusable}", "with what lies below the outlet", spillage),
  levelStands: f("level", "{levelBefore}", "the tank is not in use: its level stands", ours),
  short: f("short", "1", "Y is less than D", ours),
  shortNot: f("short", "0", "all that was asked for was met", ours),
  drawDay: f("drawDay", "1", "something was asked for", ours),
  drawDayNot: f("drawDay", "0", "nothing was asked for", ours),
  reliability: f(
    "reliability",
    "1 − {shortDays} ÷ {drawDays}",
    "share of days with a draw on which all of it was met",
    ours,
  ),
  reliabilityNone: f("reliability", "1", "nothing was asked of it", ours),
  volumetric: f("volumetric", "{yield} ÷ {newDraw}", "what it gave over what was asked", ours),
  volumetricNone: f("volumetric", "1", "nothing was asked of it", ours),
  newDraw: f(
    "newDraw",
    "max(0, {asks} − {outstanding})",
    "what was asked for already does not count again",
    ours,
  ),
  newDrawKnown: f("newDraw", "{asks}", "each day’s request is new", ours),
  newDrawAll: f("newDraw", "Σ {newDraw}", "all that ask the tank for water"),
  outstanding: f(
    "outstanding",
    "min(max({outstanding}, {asks}) − {gets}, {refill})",
    "not got, and no more than would refill the bed",
    ours,
  ),
  outstandingStart: f("outstanding", "0", "nothing stood out before day 1", ours),
  gets: f(
    "gets",
    "min({asks}, max(0, {yield} − {askedBefore}))",
    "what the tank has left when its turn comes",
    ours,
  ),
  getsNone: f("gets", "0", "no tank serves it", ours),
  getsAll: f("gets", "{asks}", "the tank gave all that was asked", ours),
  askedBefore: f("askedBefore", "Σ {asks}", "those whose turn comes first"),
  mainsRest: f("mains", "{asks} − {gets}", "the mains give what the tank cannot", ours),
  mainsAll: f("mains", "{asks}", "the mains give all of it", ours),
  mainsNone: f("mains", "0", "", ours),
  mainsTopUp: f("mains", "{topUp}", "the mains fill the tank", ours),
  leaks: f("mains", "Σ {litresPerDay}", "leaks run all day, every day", ours),
} satisfies Record<string, Formula>;

/** Formulas of sums over days and years. */
const sums = {
  mainsDay: f("mains", "Σ {mains}", "beds, draws that a tank is short of, top-up and leaks", ours),
  mainsToKL: f("mainsKL", "{mains} ÷ 1000", "1,000 L are 1 kL"),
  giveUpYear: f("giveUp", "{todayKL} − {planKL}", "as watered today, less as planned", ours),
  place: f(
    "order",
    "{point} × ({count} − 1)",
    "the years in order, the least first",
    "Hyndman and Fan (1996), American Statistician 50:361–365, type 7",
  ),
  between: f(
    "giveUp",
    "{below} + ({order} − {placeBelow}) × ({above} − {below})",
    "on a straight line between two years",
    "Hyndman and Fan (1996), American Statistician 50:361–365, type 7",
  ),
  needPoint: f(
    "yearsNeed",
    "{below} + ({order} − {placeBelow}) × ({above} − {below})",
    "on a straight line between two years",
    "Hyndman and Fan (1996), American Statistician 50:361–365, type 7",
  ),
  nearestYear: f("year", "{year}", "the year whose need lies nearest to it", ours),
} satisfies Record<string, Formula>;

export const formulas = { ...weather, ...shade, ...plants, ...day, ...tanks, ...sums };

/** Sources for a list of them: the places in FAO-56 in one line, under its full name. */
export function citations(sources: readonly string[]): string[] {
  const places = sources
    .filter((source) => source.startsWith(`${fao56}, `))
    .map((source) => source.slice(fao56.length + 2));
  const others = sources.filter((source) => !source.startsWith(`${fao56}, `));
  if (places.length === 0) return others;
  const book = "FAO Irrigation and Drainage Paper 56, FAO-56 (Allen, Pereira, Raes and Smith 1998)";
  return [`${book}: ${places.join("; ")}`, ...others];
}

export type FormulaKey = keyof typeof formulas;
