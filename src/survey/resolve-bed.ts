import type { Bed, Mulch, Planting } from "../engine/grounds.ts";
import { defaultChoice, defaultNumber } from "../tables/defaults.ts";
import { slope } from "../tables/intake.ts";
import { mulchMaterial } from "../tables/mulches.ts";
import { plantKind } from "../tables/plants.ts";
import type { Stands } from "./resolve-assumed.ts";
import { canopyArea_m2, resolvePlantings } from "./resolve-plantings.ts";
import { resolveSoil } from "./resolve-soil.ts";
import { resolveWatering } from "./resolve-watering.ts";
import type { SurveyBed, SurveyMulch, SurveyTap } from "./survey.ts";

/** A bed with every blank filled. */
export function resolveBed(bed: SurveyBed, where: string, taps: readonly SurveyTap[], stands: Stands): Bed {
  const plantings = resolvePlantings(bed, where, stands);
  return {
    id: bed.id,
    area_m2: bed.area_m2,
    plantings,
    leafCover: resolveLeafCover(bed, plantings, where, stands),
    rootDepth_m: bed.rootDepth_m ?? null,
    depletionFraction: bed.depletionFraction ?? null,
    mulch: bed.mulch ? resolveMulch(bed.mulch, stands) : null,
    soil: resolveSoil(bed.soil, `${where}.soil`, stands),
    obstructions: bed.obstructions ?? [],
    rainShare: resolveRainShare(bed, where, stands),
    watering: resolveWatering(bed, `${where}.watering`, taps, stands),
    initial: bed.initial ?? null,
    stand: {
      thin: stands.pick("plants.thinCover", defaultNumber("bed.stand.thin")),
      kcMin: stands.pick("plants.bareGround", defaultNumber("bed.stand.kcMin")),
    },
  };
}

/** What reaches the bed, less what a steep or trodden one sheds; an estimate lets all of it in. */
function resolveRainShare({ rainShare, soil }: SurveyBed, where: string, stands: Stands): number {
  const reaches = stands.number(rainShare, `${where}.rainShare`, defaultNumber("bed.rainShare"));
  return reaches * (1 - stands.pick("site.rainShed", slope(soil?.slope_pct ?? 0).rainShed));
}

function resolveMulch({ material, cover, depth_mm }: SurveyMulch, { pick }: Stands): Mulch {
  const { cut, fullDepth_mm } = mulchMaterial(material);
  return {
    cut: pick(`mulches.${material}.cut`, cut),
    fullDepth_mm: pick(`mulches.${material}.fullDepth_mm`, fullDepth_mm),
    cover,
    depth_mm,
  };
}

/** Leaf cover of the twelve months. */
function resolveLeafCover(
  bed: SurveyBed,
  plantings: readonly Planting[],
  where: string,
  stands: Stands,
): number[] {
  const cover =
    bed.leafCover === undefined
      ? standInCover(bed, plantings, `${where}.leafCover`, stands)
      : judgedCover(bed.leafCover, `${where}.leafCover`, stands);
  return Array.from({ length: 12 }, (_, month) => cover * (bed.leafCoverMonthly?.[month] ?? 1));
}

/** As surveyed, give or take what two people differ by. */
function judgedCover(cover: number, where: string, { pick }: Stands): number {
  const { low, high } = defaultNumber("bed.leafCover.judged");
  return pick(where, { low: Math.max(0, cover + low), middle: cover, high: Math.min(1, cover + high) });
}

/** From the canopies where every planting is counted, else the stand that the coefficients describe. */
function standInCover(bed: SurveyBed, plantings: readonly Planting[], where: string, stands: Stands): number {
  const canopies = bed.plantings.map(canopyArea_m2).filter((area) => area !== null);
  if (canopies.length === bed.plantings.length) {
    const canopy_m2 = canopies.reduce((sum, area) => sum + area, 0);
    return stands.list(
      where,
      Math.min(0.99, canopy_m2 / bed.area_m2),
      defaultChoice("bed.leafCover.counted").source,
    );
  }
  const cover = bed.plantings.reduce(
    (sum, { kind }, i) => sum + plantings[i]!.share * plantKind(kind).fcStandard.middle,
    0,
  );
  const { low, high, source } = defaultNumber("bed.leafCover");
  const range = { low: Math.min(low, cover), middle: cover, high: Math.max(high, cover) };
  return stands.list(where, stands.pick(where, range), source);
}
