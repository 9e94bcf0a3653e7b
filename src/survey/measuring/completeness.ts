import type { Survey, SurveyBed } from "../survey.ts";

/** A field that a walk could still fill. */
export interface Missing {
  at: string;
  code: string;
}

export interface Completeness {
  /** Fields that a whole walk fills. */
  asked: number;
  filled: number;
  missing: Missing[];
}

/** How much of what a whole walk measures is in a survey; what is missing, in the order of the walk. */
export function completeness(survey: Survey): Completeness {
  const missing: Missing[] = [];
  let asked = 0;
  const want = (at: string, code: string, value: unknown) => {
    asked++;
    if (value === undefined) missing.push({ at, code });
  };
  survey.beds.forEach((bed, i) => {
    wantOfBed(bed, `beds[${i}]`, survey, want);
  });
  survey.roofs.forEach((roof, i) => {
    if (roof.tank !== undefined) want(`roofs[${i}].firstFlush_mm`, "first-flush", roof.firstFlush_mm);
    if (roof.tank !== undefined) want(`roofs[${i}].share`, "roof-share", roof.share);
  });
  survey.tanks.forEach((tank, i) => {
    want(`tanks[${i}].level_L`, "tank-level", tank.level_L);
    want(`tanks[${i}].unusable_L`, "below-outlet", tank.unusable_L);
    want(`tanks[${i}].inUse`, "tank-in-use", tank.inUse);
  });
  survey.taps?.forEach((tap, i) => {
    want(`taps[${i}].flow_L_min`, "tap-flow", tap.flow_L_min ?? tap.flowAt);
  });
  want("site.absences", "absences", survey.site.absences);
  want("site.elevation_m", "elevation", survey.site.elevation_m);
  want("meters", "meters", survey.meters?.length ? survey.meters : undefined);
  return { asked, filled: asked - missing.length, missing };
}

type Want = (at: string, code: string, value: unknown) => void;

function wantOfBed(bed: SurveyBed, at: string, { taps = [] }: Survey, want: Want): void {
  const { watering, soil } = bed;
  want(`${at}.leafCover`, "leaf-cover", bed.leafCover);
  want(`${at}.mulch`, "mulch", bed.mulch);
  want(`${at}.soil`, "soil", soil?.texture ?? soil?.sand_pct ?? soil?.fieldCapacity);
  want(`${at}.soil.slope_pct`, "slope", soil?.slope_pct);
  want(`${at}.obstructions`, "skyline", bed.obstructions);
  if (watering.supply === "none") return;
  const tap = taps.find(({ id }) => id === watering.tap);
  want(`${at}.watering.flow_L_min`, "flow", watering.flow_L_min ?? tap?.flow_L_min ?? tap?.flowAt);
  want(`${at}.watering.habit`, "habit", watering.habit);
  if (["spray", "rotor", "sprinkler"].includes(watering.method))
    want(
      `${at}.watering.distributionUniformity`,
      "catch-cans",
      watering.distributionUniformity ?? watering.efficiency,
    );
}
