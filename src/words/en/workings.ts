/** Words of the margin of sums that a figure opens to. */

/** A measure's name; watering to need has one of its own. */
export function measureName(name: string): string {
  return name === "water-to-need" ? "Watering to need" : name;
}

export const working = {
  giveUp: "How the middle year came about",
  middleFormula: "middle year: half of all years give up more, half less",
  year: (year: string) => `How ${year} came about`,
  yearFormula: "given up = today − watered to need",
  shortFormula: "short = watered to need − today",
  needYear: (year: string) => `What was needed in ${year}`,
  today: "How today’s mains water came about",
  mainsFormula: "mains = asked by beds, draws, top-up and leaks − what tanks give in their place",
  habitFormula: "habit of a bed = minutes × litres a minute, on its days",
  asked: (all: string, tanks: string) => `${all} − ${tanks}`,
  draws: "draws on tanks, all that they ask",
  topUp: "filled up from the mains",
  yearPlanFormula: "given up = today − as planned",
  shortPlanFormula: "short = as planned − today",
  plan: "How the plan’s mains water came about",
  planFormula: "planned = today − Σ of what each measure gives up, mean a year",
  planSource: "Each measure’s share is the same whatever order they are done in (Shapley value)",
  need: "How the need came about",
  tanks: "what tanks give in place of mains",
  always: "leaks, and uses not on a tank yet",
  habit: (name: string) => `${name}, by today’s habit`,
  bedNeed: (name: string) => `${name}, to need`,
  tanksTitle: "How the tanks’ part came about",
  tanksFormula: "yield of a day = the lesser of what is asked and what was in the tank the evening before",
  unknownTitle: "What stands in where today is not known",
  unknownFormula: "Σ of what these beds take, watered to need",
  shortTitle: "How the shortfall came about",
  shortBedFormula: "short = need − given today, a mean year",
  standsIn: "need stands in: today is not known",
  sources: {
    kc: "FAO Irrigation and Drainage Paper 56, chapters 3, 6, 7, 8 (dual crop coefficient)",
    tank: "Yield after spillage: Jenkins et al. 1978; Fewkes and Butler 2000",
    quantile: "10, 50 and 90% points linear between order statistics",
  },
} as const;

/** Of a working below the row of a table. */
export const openedWords = {
  asked: "Working it out …",
  nowhere: "There is no working of this figure yet.",
} as const;
