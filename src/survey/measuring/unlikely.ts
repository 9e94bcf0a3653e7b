import { usual } from "../../tables/usual.ts";
import type { Survey, SurveyBed } from "../survey.ts";

/** A question about a reading: what was found and what is usual. An honest reading answers it by staying. */
export interface Question {
  /** Path of the field that it asks about. */
  at: string;
  code:
    | "unusually-large"
    | "unusually-small"
    | "comes-fast"
    | "comes-slowly"
    | "no-cover-but-plants"
    | "mulch-without-depth"
    | "roots-below-pot"
    | "fuller-than-full"
    | "all-below-outlet"
    | "two-flows"
    | "canopies-beyond-bed";
  found: number;
  /** Usual range, where there is one. */
  low?: number;
  high?: number;
  source?: string;
}

/** Everything in a survey that is worth a second look, in its order. Fields that are not there ask nothing. */
export function questionsAbout(survey: Survey): Question[] {
  const questions: Question[] = [];
  const ask = (at: string, field: string, found: number | undefined, kind?: string) => {
    const range = usual(field, kind);
    if (found === undefined || !range) return;
    const { low, high, source } = range;
    if (found > high) questions.push({ at, code: "unusually-large", found, low, high, source });
    if (found < low) questions.push({ at, code: "unusually-small", found, low, high, source });
  };
  survey.beds.forEach((bed, i) => {
    askOfBed(bed, `beds[${i}]`, ask, questions);
    questions.push(...tiesOfBed(bed, `beds[${i}]`, survey));
  });
  survey.roofs.forEach((roof, i) => {
    ask(`roofs[${i}].area_m2`, "roofs.area_m2", roof.area_m2);
    ask(`roofs[${i}].firstFlush_mm`, "roofs.firstFlush_mm", roof.firstFlush_mm);
  });
  survey.tanks.forEach(({ capacity_L, level_L = 0, unusable_L = 0 }, i) => {
    // a tank of 0 L is one that is thought of, not a reading
    if (capacity_L > 0) ask(`tanks[${i}].capacity_L`, "tanks.capacity_L", capacity_L);
    if (level_L > capacity_L)
      questions.push({
        at: `tanks[${i}].level_L`,
        code: "fuller-than-full",
        found: level_L,
        high: capacity_L,
      });
    if (capacity_L > 0 && unusable_L > capacity_L / 2)
      questions.push({
        at: `tanks[${i}].unusable_L`,
        code: "all-below-outlet",
        found: unusable_L,
        high: capacity_L,
      });
  });
  survey.taps?.forEach((tap, i) => {
    // the valve of laid pipes is held to what its beds' method gives
    const laid = survey.beds.some(
      ({ watering }) => watering.tap === tap.id && laidMethods.includes(watering.method),
    );
    if (tap.source === "mains" && !laid) ask(`taps[${i}].flow_L_min`, "taps.flow_L_min", tap.flow_L_min);
  });
  survey.draws?.forEach((draw, i) => {
    ask(`draws[${i}].litresPerDay`, "draws.litresPerDay", draw.litresPerDay);
  });
  survey.leaks?.forEach((leak, i) => {
    ask(`leaks[${i}].litresPerDay`, "leaks.litresPerDay", leak.litresPerDay);
  });
  return questions;
}

const laidMethods: readonly string[] = ["drip", "subsurface-drip", "spray", "rotor"];

type Ask = (at: string, field: string, found: number | undefined, kind?: string) => void;

function askOfBed(bed: SurveyBed, at: string, ask: Ask, questions: Question[]): void {
  const { watering, soil, mulch } = bed;
  ask(`${at}.area_m2`, "beds.area_m2", bed.area_m2, mainKind(bed));
  // bare ground with plants on it has a question of its own
  if (bed.leafCover !== 0) ask(`${at}.leafCover`, "beds.leafCover", bed.leafCover);
  ask(`${at}.rootDepth_m`, "beds.rootDepth_m", bed.rootDepth_m);
  if (mulch && mulch.material !== "sheet" && mulch.depth_mm > 0)
    ask(`${at}.mulch.depth_mm`, "beds.mulch.depth_mm", mulch.depth_mm);
  ask(`${at}.soil.slope_pct`, "beds.soil.slope_pct", soil?.slope_pct);
  ask(`${at}.soil.intake_mm_h`, "beds.soil.intake_mm_h", soil?.intake_mm_h);
  bed.obstructions?.forEach(({ elevation_deg }, i) => {
    ask(`${at}.obstructions[${i}].elevation_deg`, "beds.obstructions.elevation_deg", elevation_deg);
  });
  ask(`${at}.watering.flow_L_min`, "beds.watering.flow_L_min", watering.flow_L_min, watering.method);
  ask(
    `${at}.watering.distributionUniformity`,
    "beds.watering.distributionUniformity",
    watering.distributionUniformity,
  );
  // 0 minutes says that it is not watered
  if (watering.habit && watering.habit.minutes > 0)
    ask(`${at}.watering.habit.minutes`, "beds.watering.habit.minutes", watering.habit.minutes);
  if (watering.flow_L_min && ["spray", "rotor", "sprinkler"].includes(watering.method)) {
    const wetted_m2 = bed.area_m2 * (watering.wettedShare ?? 1);
    askRate(`${at}.watering.flow_L_min`, (60 * watering.flow_L_min) / wetted_m2, questions);
  }
}

/** Flow and area together: a depth an hour that no sprinkler of the kind gives. */
function askRate(at: string, found: number, questions: Question[]): void {
  const range = usual("beds.application_mm_h");
  if (!range) return;
  const { low, high, source } = range;
  if (found > high) questions.push({ at, code: "comes-fast", found, low, high, source });
  if (found < low) questions.push({ at, code: "comes-slowly", found, low, high, source });
}

/** The kind that most of a bed is planted with. */
function mainKind({ plantings }: SurveyBed): string {
  return plantings.reduce((most, planting) => (planting.share > most.share ? planting : most)).kind;
}

/** The most by which two flows of one hose differ before it is worth asking. Ours. */
const mostFlowRatio = 1.5;

function tiesOfBed(bed: SurveyBed, at: string, { taps = [] }: Survey): Question[] {
  const { mulch, soil, rootDepth_m, watering } = bed;
  const questions: Question[] = [];
  if (bed.leafCover === 0) questions.push({ at: `${at}.leafCover`, code: "no-cover-but-plants", found: 0 });
  if (mulch && mulch.material !== "sheet" && mulch.cover > 0 && mulch.depth_mm === 0)
    questions.push({ at: `${at}.mulch.depth_mm`, code: "mulch-without-depth", found: 0 });
  if (soil?.texture === "potting-mix" && rootDepth_m !== undefined && rootDepth_m > 1)
    questions.push({ at: `${at}.rootDepth_m`, code: "roots-below-pot", found: rootDepth_m, high: 1 });
  const canopies_m2 = bed.plantings.reduce(
    (sum, { count }) => sum + (count ? (Math.PI / 4) * count.canopy_m ** 2 * count.plants : 0),
    0,
  );
  if (canopies_m2 > 1.5 * bed.area_m2)
    questions.push({
      at: `${at}.area_m2`,
      code: "canopies-beyond-bed",
      found: bed.area_m2,
      low: canopies_m2,
    });
  const tapFlow = taps.find(({ id }) => id === watering.tap)?.flow_L_min;
  const flow = watering.flow_L_min;
  if (tapFlow && flow && flow > mostFlowRatio * tapFlow)
    questions.push({ at: `${at}.watering.flow_L_min`, code: "two-flows", found: flow, high: tapFlow });
  return questions;
}
