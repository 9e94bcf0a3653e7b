import { dayFormulas } from "./formulas/bed-day.ts";
import { choicesFormulas } from "./formulas/choices.ts";
import { fao56 } from "./formulas/formula.ts";
import { plantsFormulas } from "./formulas/plants.ts";
import { roundsFormulas } from "./formulas/rounds.ts";
import { shadeFormulas } from "./formulas/shade.ts";
import { sumsFormulas } from "./formulas/sums.ts";
import { tanksFormulas } from "./formulas/tanks.ts";
import { weatherFormulas } from "./formulas/weather.ts";

export type { Formula } from "./formulas/formula.ts";

/** Every formula that a working shows. */
export const formulas = {
  ...weatherFormulas,
  ...shadeFormulas,
  ...plantsFormulas,
  ...dayFormulas,
  ...tanksFormulas,
  ...sumsFormulas,
  ...roundsFormulas,
  ...choicesFormulas,
};

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
