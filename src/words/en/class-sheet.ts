/** The worked example for a class: one bed, one week, blanks on one sheet and answers on another. */
export const classSheetWords = {
  language: "en",
  title: (bed: string, from: string, to: string) => `${bed}: a week of water, ${from} to ${to}`,
  blanks: "Sheet 1: fill in the blanks",
  answers: "Sheet 2: the answers",
  group: "Group",
  date: "Date",
  invented:
    "Soil is a store of water that roots draw on. Rain and watering fill it; plants and the drying surface empty it. A millimetre on a square metre is a litre.",
  given: "What is known of the bed",
  givenRows: {
    area: "Area A",
    available: "The roots can reach, when the soil is full (TAW)",
    start: (day: string) => `Missing from it on the evening before ${day} (Dr)`,
    trigger: "It is watered when at least this is missing (trigger)",
    efficiency: "Share of the water let out that the roots get (Ea)",
  },
  rules: "How a day is worked out, in this order",
  rule: {
    water:
      "Watering I. Is the Dr of the evening before at the trigger or above, and may the bed be watered that day? Then I is that Dr: the store is filled up. If not, I is 0.",
    waterMost: (most: string) =>
      `Watering I. Is the Dr of the evening before at the trigger or above, and may the bed be watered that day? Then I is that Dr, but no more than ${most}. If not, I is 0.`,
    waterGiven: "Watering I is given: this bed gets what there is, not what it asks for.",
    wetted: "Dr* = Dr of the evening before − P − I, but not below 0.",
    stress: "Ks = 1 if Dr* is p × TAW or less. If it is more, Ks = (TAW − Dr*) ÷ ((1 − p) × TAW).",
    use: "ETc = (Ks × Kcb + Ke) × ET0, but no more than the store holds: TAW − Dr of the evening before + P + I.",
    drain: "Drainage DP = P + I − ETc − Dr of the evening before, but not below 0.",
    evening: "Dr of this evening = Dr of the evening before − P − I + ETc + DP.",
  },
  source:
    "FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith 1998), Eq. 80, 82, 84, 85 and 88. Numbers are rounded to hundredths: an answer within 0.1 mm is right.",
  columns: {
    day: "Day",
    mayWater: "May it be watered?",
    et0: "ET0 mm",
    rain: "P mm",
    kcb: "Kcb",
    ke: "Ke",
    p: "p",
    water: "I mm",
    wetted: "Dr* mm",
    ks: "Ks",
    etc: "ETc mm",
    drainage: "DP mm",
    evening: "Dr mm",
  },
  yes: "yes",
  no: "no",
  week: "The week",
  questions: "Then say",
  question: [
    "On which days was it watered, and how many litres were let out in all? (I ÷ Ea × A)",
    "How many litres did plants and surface take in the week? (sum of ETc × A)",
    "On which days did the plants go short (Ks below 1)?",
    "Does the water close? Rain + watering − ETc − drainage, added over the week, must be Dr at its start − Dr at its end.",
  ],
  where:
    "ET0 is what short grass with enough water evaporates in that day’s weather. Kcb is the plants’ share of it, Ke the drying surface’s.",
  said: {
    watered: (day: string, dr: string, trigger: string, net: string, litres: string) =>
      `${day}: ${dr} was missing in the morning, and the trigger is ${trigger}. It was watered: ${net} to the roots, ${litres} let out.`,
    got: (day: string, net: string, litres: string) => `${day}: it got ${net}; ${litres} were let out.`,
    rain: (day: string, rain: string) => `${day}: ${rain} of rain.`,
    rainDrained: (day: string, rain: string, drained: string) =>
      `${day}: ${rain} of rain, more than the soil could hold; ${drained} drained away.`,
    short: (day: string, ks: string) => `${day}: the plants went short. Ks is ${ks}.`,
    neverWatered: "It was not watered this week.",
    neverShort: "The plants never went short this week: Ks is 1 on every day.",
    let: (litres: string) => `In all ${litres} were let out.`,
    took: (depth: string, litres: string) =>
      `Plants and surface took ${depth}, which is ${litres} on this bed.`,
    closes: (
      rain: string,
      water: string,
      etc: string,
      drained: string,
      change: string,
      start: string,
      end: string,
    ) =>
      `The water closes: ${rain} + ${water} − ${etc} − ${drained} = ${change} mm, and ${start} − ${end} = ${change} mm.`,
  },
} as const;

export type ClassSheetWords = typeof classSheetWords;
