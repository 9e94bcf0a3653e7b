import type { Planting } from "../engine/grounds.ts";
import { plantRow } from "../tables/plants.ts";
import type { Stands } from "./resolve-assumed.ts";
import type { SurveyBed, SurveyPlanting } from "./survey.ts";

const everyMonth: readonly number[] = Array(12).fill(1);

/** A bed's plantings, their blanks filled from the plants table. */
export function resolvePlantings(bed: SurveyBed, where: string, stands: Stands): Planting[] {
  const shares = plantedShares(bed.plantings);
  return bed.plantings.map((planting, i) =>
    resolvePlanting(bed, planting, shares[i]!, `${where}.plantings[${i}]`, stands),
  );
}

function resolvePlanting(
  bed: SurveyBed,
  planting: SurveyPlanting,
  share: number,
  where: string,
  stands: Stands,
): Planting {
  const { plant } = plantRow(planting.kind, planting.thirst);
  const kcb = resolveKcb(planting, where, stands);
  const standIn = (figure: "height_m" | "rootDepth_m" | "depletionFraction") =>
    stands.number(planting[figure], `${where}.${figure}`, plant[figure], `plants.${planting.kind}.${figure}`);
  const unused = { rootDepth: bed.rootDepth_m !== undefined, p: bed.depletionFraction !== undefined };
  return {
    share,
    ...kcb,
    height_m: standIn("height_m"),
    rootDepth_m: unused.rootDepth
      ? (planting.rootDepth_m ?? plant.rootDepth_m.middle)
      : standIn("rootDepth_m"),
    depletionFraction: unused.p
      ? (planting.depletionFraction ?? plant.depletionFraction.middle)
      : standIn("depletionFraction"),
    monthly: planting.monthly ?? everyMonth,
    establishing: planting.establishingUntil === undefined ? null : whileEstablishing(planting.kind, kcb),
  };
}

type KcbFull = Pick<Planting, "kcbFull" | "climateAdjusted">;

/** The survey's own figure takes Eq. 70, as FAO-56 rows do; a landscape plant factor does not. */
function resolveKcb(planting: SurveyPlanting, where: string, stands: Stands): KcbFull {
  if (planting.kcbFull !== undefined) return { kcbFull: planting.kcbFull, climateAdjusted: true };
  const { kcb, thirst, stoodIn } = plantRow(planting.kind, planting.thirst);
  if (stoodIn) stands.list(`${where}.thirst`, thirst, kcb.source);
  return {
    kcbFull: stands.list(
      `${where}.kcbFull`,
      stands.pick(`${where}.${planting.kind}.${thirst}`, kcb),
      kcb.source,
    ),
    climateAdjusted: kcb.basis === "basal",
  };
}

/** At least the moderate class while new: unadjusted figures compared, and an equal one stands. */
function whileEstablishing(kind: string, grown: KcbFull): KcbFull {
  const { kcb } = plantRow(kind, "moderate");
  if (grown.kcbFull >= kcb.middle) return { ...grown };
  return { kcbFull: kcb.middle, climateAdjusted: kcb.basis === "basal" };
}

/** Ground that the canopies of a counted planting cover, m²; null where the plants were not counted. */
export function canopyArea_m2({ count }: SurveyPlanting): number | null {
  return count ? (Math.PI / 4) * count.canopy_m ** 2 * count.plants : null;
}

/**
 * Shares of a bed's plantings: those counted divide what they have together by the area of their canopies,
 * all of the bed where every planting is counted.
 */
export function plantedShares(plantings: readonly SurveyPlanting[]): number[] {
  const canopies = plantings.map(canopyArea_m2);
  const canopy_m2 = canopies.reduce<number>((sum, area) => sum + (area ?? 0), 0);
  const counted = plantings.reduce((sum, { share }, i) => (canopies[i] === null ? sum : sum + share), 0);
  const toDivide = canopies.includes(null) ? counted : 1;
  return plantings.map(({ share }, i) => {
    const area = canopies[i]!;
    return area === null ? share : (toDivide * area) / canopy_m2;
  });
}
