import type { Survey, SurveyBed } from "./survey.ts";

/** What a reader should bear in mind, by what the survey holds; the sentences are in words. */
export const cautionCodes = [
  "local-rules-first",
  "survey-safety",
  "tank-not-for-drinking",
  "no-cross-connection",
  "tank-work",
  "roof-work",
  "standing-water",
  "tank-spray",
  "clay-beyond-fit",
] as const;

export type CautionCode = (typeof cautionCodes)[number];

const sprays: readonly string[] = ["spray", "rotor", "sprinkler", "hose"];

/** Saxton and Rawls 2006 fitted their equations on soils of no more clay than this. */
const mostFittedClay_pct = 60;

/** The cautions that a survey calls for, in a fixed order. */
export function cautionsOf(survey: Survey): CautionCode[] {
  const { beds, roofs, tanks, draws = [], measures = [] } = survey;
  const anyTank = tanks.length > 0 || measures.some(({ addTank }) => addTank);
  const calls: Record<CautionCode, boolean> = {
    "local-rules-first": true,
    "survey-safety": true,
    "tank-not-for-drinking": anyTank,
    "no-cross-connection":
      draws.length > 0 ||
      tanks.some(({ topUp }) => topUp) ||
      beds.some(({ watering }) => watering.supply === "tank-then-mains"),
    "tank-work": anyTank,
    "roof-work": roofs.length > 0,
    "standing-water": anyTank,
    "tank-spray": beds.some(spraysTankWater),
    "clay-beyond-fit": beds.some(({ soil }) => (soil?.clay_pct ?? 0) > mostFittedClay_pct),
  };
  return cautionCodes.filter((code) => calls[code]);
}

function spraysTankWater({ watering: { supply, method } }: SurveyBed): boolean {
  return (supply === "tank-then-mains" || supply === "tank-only") && sprays.includes(method);
}
