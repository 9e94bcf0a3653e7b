import type { UnitSystem } from "../../units.ts";
import { amountsIn } from "../amounts.ts";

const wholePercent = new Intl.NumberFormat("en", { style: "percent", maximumFractionDigits: 0 });

type Facts = Readonly<Record<string, string | number>>;

const weatherNames: Readonly<Record<string, string>> = {
  record: "As recorded",
  "driest-years": "Its thirstiest years again and again",
  "less-rain": "A fifth less rain",
  "longer-dry-spells": "Dry spells half as long again",
  "own-rain": "Rain as entered",
  "own-warmer": "Warmer as entered",
  "own-dry-spells": "Dry spells as entered",
};

/** What is asked of the weather, in words. */
export function weatherName(code: string, units: UnitSystem = "metric"): string {
  if (code === "warmer") return units === "us" ? "3.6 °F warmer" : "2 °C warmer";
  return weatherNames[code] ?? code;
}

/** Why something is proposed, and what it is. */
export function proposalSentence(
  code: string,
  facts: Facts,
  units: UnitSystem = "metric",
  opens: Opens = (text) => text,
): string {
  return proposalWords[code]?.(facts, amountsIn(units), opens) ?? code;
}

/** Marks the figure of a fact where it opens to its working. */
export type Opens = (text: string, fact: string) => string;

type Amounts = ReturnType<typeof amountsIn>;

const proposalWords: Readonly<Record<string, (facts: Facts, say: Amounts, opens: Opens) => string>> = {
  "tank-idle": ({ tank, capacity_L }, { size }) =>
    `${tank} (${size(Number(capacity_L))}) is there and not used: open its valve, or see to its pump and changeover.`,
  leak: ({ litresPerDay }, { size }) => `A leak of ${size(Number(litresPerDay))} a day runs on: mend it.`,
  bare: ({ bed, area_m2 }, { area, layer }, opens) =>
    `${bed}: ${opens(area(Number(area_m2)), "area_m2")} of bare soil; lay ${layer(75)} of wood chip.`,
  thirsty: ({ bed, thirst, instead }) =>
    `${bed}: plants of ${thirst} thirst; ${instead} ones would do, 1 class less.`,
  sprays: ({ bed, method }) => `${bed}: watered by ${method} from above, 1 bed that could have a drip line.`,
  uneven: ({ bed, uniformity }) =>
    `The sprinklers of ${bed} water unevenly (uniformity ${wholePercent.format(Number(uniformity))}): set heads and pressure right, to 70%.`,
  "roof-unconnected": ({ roof, tank, area_m2 }, { area }, opens) =>
    `A roof of ${opens(area(Number(area_m2)), "area_m2")} (${roof}) drains away: lead it to ${tank}.`,
  "first-flush": ({ roof, firstFlush_mm }, { fineDepth }) =>
    `The first flush of ${roof} takes ${fineDepth(Number(firstFlush_mm))} off each rain: ${fineDepth(0.5)} is usual.`,
  "tank-small": ({ tank, capacity_L, enough_L }, { size }, opens) =>
    `${tank} (${size(Number(capacity_L))}) is small for its roof and draw: ${opens(size(Number(enough_L)), "enough_L")} would be enough.`,
  "tank-large": ({ tank, capacity_L, enough_L }, { size }, opens) =>
    `${tank} (${size(Number(capacity_L))}) is larger than its roof and draw can use: ${opens(size(Number(enough_L)), "enough_L")} would do.`,
  "over-need": ({ bed, habit_kL_year, need_kL_year }, { water }, opens) =>
    `${bed}: ${opens(water(Number(habit_kL_year)), "habit_kL_year")} a year given, ${opens(water(Number(need_kL_year)), "need_kL_year")} needed.`,
  spills: ({ tank, spill_kL_year }, { water }, opens) =>
    `${tank} spills ${opens(water(Number(spill_kL_year)), "spill_kL_year")} a year and nothing but beds draws on it: toilets or washing could.`,
};

/** Every reason that has a sentence. */
export const proposalsWithWords = Object.keys(proposalWords);

const cautionWords = {
  footing:
    "A full tank weighs 1 tonne for each 1,000 L, 8.3 pounds for each gallon: its footing, and anything that it stands on, is an engineer’s to say.",
  planning: "Ask before ordering whether the tank’s size and place need a permit.",
  backflow: "Any join of tank and mains, with its backflow protection, is a licensed plumber’s work.",
  electrics: "A pump’s power supply is a licensed electrician’s work.",
  overflow: "Overflow must run to where it harms no footing, path or neighbour.",
  "old-roof":
    "Old roofs may hold asbestos or lead: have them looked at first, and keep everybody off them who is not equipped for it.",
  "eaten-raw": "Ask the health authority before tank water goes on vegetables or fruit eaten raw.",
} as const;

/** The sentence of a caution that a committee should read before it orders work. */
export function choiceCautionSentence(code: keyof typeof cautionWords): string {
  return cautionWords[code];
}
