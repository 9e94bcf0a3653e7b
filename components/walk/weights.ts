import type { Points } from "../../src/engine/give-up.ts";
import type { UnknownShare } from "../../src/engine/spread.ts";
import type { Survey, SurveyBed } from "../../src/survey/survey.ts";
import type { Weighed } from "./context.ts";
import type { Weight } from "./order.ts";

/** How far the answer may be out, and what each unknown brings to that. */
export interface Width {
  giveUp_kL_year: Points | null;
  need_kL_year: Points | null;
  byUnknown: readonly UnknownShare[];
}

/** Standard errors of what no draw varies, as a share of a bed's need. Ours, for choosing what to measure first. */
const areaByEye = 0.25;
const habitUntold = 0.5;
/** Standard deviations of a normal distribution between its 10 and 90 % points. */
const deviations = 2.563;

/**
 * Shares of the answer's width by the field that a reading would settle. What rests on a table's row is divided among
 * the beds that use it, by their need; areas that nobody measured and habits that nobody told count beside it.
 */
export function weightsOf(
  survey: Survey,
  { giveUp_kL_year, need_kL_year, byUnknown }: Width,
  { beds }: Weighed,
): Weight[] {
  // where no habit is told nothing can be given up, and the width is that of the need
  const drawn = varianceOf(giveUp_kL_year) || varianceOf(need_kL_year);
  const need_kL = (bed: SurveyBed) => (beds.get(bed.id) ?? 0) / 1000;
  const beside = survey.beds.flatMap((bed, i) => undrawn(survey, bed, i, need_kL(bed)));
  const all = beside.reduce((sum, { share }) => sum + share, drawn);
  const pieces = byUnknown.flatMap(({ at, share }) => piecesOf(at, share * drawn, survey, need_kL));
  return all > 0 ? [...pieces, ...beside].map(({ at, share }) => ({ at, share: share / all })) : [];
}

function varianceOf(points: Points | null): number {
  return points ? ((points.p90 - points.p10) / deviations) ** 2 : 0;
}

/** Variances of a bed that no draw has in it. */
function undrawn({ found = [] }: Survey, bed: SurveyBed, i: number, need_kL: number): Weight[] {
  const area = `beds[${i}].area_m2`;
  const isMeasured = found.some(({ at, used }) => at === area && used !== false);
  const isTold = bed.watering.supply === "none" || bed.watering.habit !== undefined;
  return [
    ...(isMeasured ? [] : [{ at: area, share: (areaByEye * need_kL) ** 2 }]),
    ...(isTold ? [] : [{ at: `beds[${i}].watering.habit.minutes`, share: (habitUntold * need_kL) ** 2 }]),
  ];
}

/** Whose readings would settle an unknown that several beds share, and by which field. */
const shared: readonly { name: RegExp; end: string; isOf: (bed: SurveyBed, of: string) => boolean }[] = [
  {
    name: /^site\.soil$/,
    end: "soil.texture",
    isOf: ({ soil }) =>
      soil?.texture === undefined && soil?.sand_pct === undefined && soil?.fieldCapacity === undefined,
  },
  { name: /^soils\.([\w-]+)/, end: "soil.texture", isOf: ({ soil }, of) => soil?.texture === of },
  {
    name: /^site\.rainShed$/,
    end: "soil.slope_pct",
    isOf: ({ soil }) => soil?.slope_pct === undefined,
  },
  {
    name: /^methods\.([\w-]+)\.efficiency$/,
    end: "watering.distributionUniformity",
    isOf: ({ watering }, of) =>
      watering.method === of &&
      watering.efficiency === undefined &&
      watering.distributionUniformity === undefined,
  },
];

function piecesOf(
  unknown: string,
  variance: number,
  { beds }: Survey,
  need_kL: (bed: SurveyBed) => number,
): Weight[] {
  const [, planting] = /^(beds\[\d+\]\.plantings\[\d+\])\.[\w-]+\.\w+$/.exec(unknown) ?? [];
  if (planting) return [{ at: `${planting}.thirst`, share: variance }];
  if (/^(beds|roofs|tanks)\[/.test(unknown)) return [{ at: unknown, share: variance }];
  if (unknown.startsWith("found.")) return [{ at: unknown.slice("found.".length), share: variance }];
  for (const { name, end, isOf } of shared) {
    const found = name.exec(unknown);
    if (!found) continue;
    const those = beds.map((bed, i) => ({ bed, i })).filter(({ bed }) => isOf(bed, found[1] ?? ""));
    const all = those.reduce((sum, { bed }) => sum + need_kL(bed), 0);
    return those.map(({ bed, i }) => ({
      at: `beds[${i}].${end}`,
      share: all > 0 ? (variance * need_kL(bed)) / all : variance / those.length,
    }));
  }
  return [];
}
