/** Published entries that this program does not answer, and why: none may be forgotten. */
const singleCoefficient = "Single crop coefficient; this program runs the dual one.";
const readByPeople = "A table for people to compare with; no figure of the program is worked from it.";

export const notUsed: Readonly<Record<string, string>> = {
  "fao56-ex07-latitude-radians":
    "Latitudes come in decimal degrees; no sum of the program turns minutes into them.",
  "fao56-ex19-hourly-day": "Hourly steps; this program runs by the day.",
  "fao56-ex21-pan-tables": "Pan evaporation; not a column of the record.",
  "fao56-eq68-alfalfa-grass-ratio": "Alfalfa reference; this program's reference is grass.",
  "fao56-ex28-kc-by-day": singleCoefficient,
  "fao56-ex23-wetting-interval": singleCoefficient,
  "fao56-ex25-kcini-interpolation": singleCoefficient,
  "fao56-ex26-kcini-partial-wetting": singleCoefficient,
  "fao56-ex30-kcb-by-day": "Growth stages of a field crop; beds have months and leaf cover instead.",
  "fao56-ex40-sparse-cover-first-guess":
    "Eq. 97 and 100; the density coefficient of Allen and Pereira 2009 stands in their place.",
  "fao56-ex41-kcb-from-cover":
    "Eq. 99's cover at midday's sun height; cover as seen from above is used instead.",
  "fao56-ex44-ks-from-yield": "Yield response; gardens have no yield.",
  "fao56-ex45-plastic-mulch": singleCoefficient,
  "fao56-ex46-intercrop": "Eq. 104 weights by height; a bed's plantings are weighted by share of area.",
  "fao56-citrus-from-eq98": "Eq. 98's 2 fc limit; 1.5 stands in its place.",
  "fao56-clothesline-eq105":
    "Lone rows of trees; not within the range of the plant table, whose hedge row says so.",
  "fao56-small-rain-rule": "Advice on leaving small rains out; every rain is run here.",
  "uc-guide-case1-kl":
    "A product of factors that this program does not multiply: density and place act through leaf cover and shade.",
  "uc-guide-factor-ranges":
    "As above; the species ranges stand in the plant table, whose test runs each row's stand.",
  "uc-guide-individual-plants": "As above.",
  "asabe-s623-plant-factors": "From memory in the list itself; the plant table's test runs each row's stand.",
  "research-plant-factors-sample": readByPeople,
  "county-monthly-rain-less-et": "A monthly balance without soil; this program runs soil by the day.",
  "fao56-table-21-cover": "Cover by growth stage; beds give their own.",
  "fao56-table-12-kc": singleCoefficient,
  "fao56-table-17-kcb": "Rows rest in the plant table, whose sources name them.",
  "fao56-table-22-root-depth-p": "Rows rest in the plant table, whose sources name them.",
  "fao56-table-4-wind-classes": readByPeople,
  "fao56-table-16-rh-by-climate": readByPeople,
  "fao56-table-25-plastic-mulch": "Its average reduction of evaporation is the sheet row of the mulch table.",
  "fao56-table-18-kcb-from-kc": "How the plant table's basal rows were had; its sources say so.",
  "du-field-averages-florida": readByPeople,
  "max-application-rate-by-soil-slope":
    "From memory in the list itself; its slope shares rest in the slope table.",
  "fao-basic-infiltration-rates": "From memory in the list itself; rests in the intake table.",
  "roof-runoff-coefficients": "Ranges that disagree; rests in the roof table.",
  "first-flush-guidance": readByPeople,
  "tank-model-time-step": readByPeople,
  "ashrae14-limits": "Limits for the meter's fit, which is not worked out yet.",
  "cvrmse-nmbe-numeric": "The meter's fit, which is not worked out yet.",
  "hose-flow-rates":
    "From memory in the list itself and open-ended; the method table's hose is of common practice.",
};

/** Entries that a test of their own answers, which names them. */
export const testedByName: readonly string[] = [
  "pv-annuity-7pct-20y",
  "fv-annuity-7p5pct-20y",
  "loan-payment-15y",
  "zero-rate-limits",
  "irr-examples",
  "nist-upv-factor",
  "richardson-residual-matrices",
  "markov-wet-day-fraction",
];
