import type { Survey } from "../survey/survey.ts";

/** What a committee should bear in mind before it orders work; the sentences are in words. */
export const choiceCautionCodes = [
  "footing",
  "planning",
  "backflow",
  "electrics",
  "overflow",
  "old-roof",
  "eaten-raw",
] as const;

export type ChoiceCaution = (typeof choiceCautionCodes)[number];

/** The cautions that a survey's measures and tanks call for, in a fixed order. */
export function choiceCautions({ beds, measures = [] }: Survey): ChoiceCaution[] {
  const builds = measures.some(({ addTank, resizeTank }) => addTank || resizeTank);
  const plumbs =
    builds || measures.some(({ useTank, connectRoof, addDraw }) => useTank || connectRoof || addDraw);
  const onTank = (tank: string | undefined, id: string) =>
    tank !== undefined || measures.some(({ useTank }) => useTank?.beds.includes(id));
  const calls: Record<ChoiceCaution, boolean> = {
    footing: builds,
    planning: builds,
    backflow: plumbs,
    electrics: plumbs,
    overflow: builds || measures.some(({ connectRoof }) => connectRoof),
    "old-roof": measures.some(({ connectRoof, firstFlush }) => connectRoof || firstFlush),
    "eaten-raw": beds.some(
      ({ id, plantings, watering }) =>
        plantings.some(({ kind }) => kind === "vegetables" || kind === "fruit-trees") &&
        onTank(watering.tank, id),
    ),
  };
  return choiceCautionCodes.filter((code) => calls[code]);
}
