import { resolve } from "../../src/survey/resolve.ts";
import type { Survey } from "../../src/survey/survey.ts";
import type { BedFacts } from "./week-days.ts";

/** What the drawings need of each bed: its name, who turns its water on, and where that comes from. */
export function bedFacts(survey: Survey): Map<string, BedFacts> {
  const { grounds } = resolve(survey, []);
  return new Map(
    survey.beds.map(({ id, name, watering }, k) => [
      id,
      { name, byHand: grounds.beds[k]!.watering.byHand, supply: watering.supply },
    ]),
  );
}
