import type { Ban, BedUse, Hours, RoundsBed, RoundsSite, RoundsTap } from "../engine/rounds/site.ts";
import { textureClass } from "../engine/texture-class.ts";
import { parseIso } from "../engine/weather/dates.ts";
import { defaultChoice } from "../tables/defaults.ts";
import { intakeRate_mm_h, slope as slopeBand } from "../tables/intake.ts";
import { weekdayFlags } from "./resolve-days.ts";
import { canopyArea_m2, plantedShares } from "./resolve-plantings.ts";
import type { Survey, SurveyBed, SurveyRestriction, SurveySoil, SurveyTap } from "./survey.ts";
import { weekdays } from "./words.ts";

/** What the rounds need of a survey beside the engine's grounds. */
export function resolveRounds(survey: Survey): RoundsSite {
  const { beds, taps = [], restrictions = [], site } = survey;
  return {
    beds: beds.map(roundsBed),
    taps: taps.map(roundsTap),
    bans: restrictions.map(ban),
    hours: (site.hours ?? []).map(
      ({ days, fromTime, toTime }): Hours => ({
        weekdays: weekdayFlags(days),
        fromMinute: minuteOf(fromTime),
        toMinute: minuteOf(toTime),
      }),
    ),
  };
}

function roundsBed(bed: SurveyBed): RoundsBed {
  const slope_pct = bed.soil?.slope_pct ?? 0;
  const dry = bed.dryOn ?? [];
  return {
    id: bed.id,
    method: bed.watering.method,
    intake_mm_h: bed.soil?.intake_mm_h ?? intakeRate_mm_h(textureOf(bed.soil), slope_pct),
    surfaceStorage_mm: slopeBand(slope_pct).surfaceStorage_mm.middle,
    priority: bed.priority ?? null,
    use: useOf(bed),
    youngUntilDay: youngUntil(bed),
    inPots: bed.soil?.texture === "potting-mix",
    dryDays: dry.map(parseIso).filter((day) => day !== null),
    dryWeekdays: weekdays.map((day) => dry.includes(day)),
    counted: countedPlants(bed),
    tap: bed.watering.tap ?? null,
    ownFlow_L_min: bed.watering.flow_L_min ?? null,
    at_m: middleOf(bed.outline_m),
  };
}

function textureOf(soil: SurveySoil | undefined): string {
  if (soil?.texture !== undefined) return soil.texture;
  if (soil?.sand_pct !== undefined && soil.clay_pct !== undefined)
    return textureClass(soil.sand_pct, soil.clay_pct);
  return String(defaultChoice("bed.soil.texture").is);
}

const useOfKind: Readonly<Record<string, BedUse>> = {
  vegetables: "food",
  "fruit-trees": "food",
  trees: "trees",
  hedge: "shrubs",
  shrubs: "shrubs",
  "lawn-cool": "lawn",
  "lawn-warm": "lawn",
};

/** What most of the bed is grown for. */
function useOf({ plantings }: SurveyBed): BedUse {
  const shares = new Map<BedUse, number>();
  for (const { kind, share } of plantings) {
    const use = useOfKind[kind] ?? "flowers";
    shares.set(use, (shares.get(use) ?? 0) + share);
  }
  return [...shares].reduce((best, next) => (next[1] > best[1] ? next : best))[0];
}

function youngUntil({ plantings }: SurveyBed): number | null {
  const days = plantings.flatMap(({ establishingUntil }) =>
    establishingUntil === undefined ? [] : [parseIso(establishingUntil)!],
  );
  return days.length > 0 ? Math.max(...days) : null;
}

function countedPlants(bed: SurveyBed): RoundsBed["counted"] {
  const shares = plantedShares(bed.plantings);
  return bed.plantings.flatMap((planting, i) =>
    planting.count && canopyArea_m2(planting) ? [{ plants: planting.count.plants, share: shares[i]! }] : [],
  );
}

/** Middle of a bed's corners. */
function middleOf(outline: readonly (readonly number[])[] | undefined): [number, number] | null {
  if (!outline) return null;
  const mean = (axis: 0 | 1) => outline.reduce((sum, corner) => sum + corner[axis]!, 0) / outline.length;
  return [mean(0), mean(1)];
}

function roundsTap({ id, source, flow_L_min, flowAt, line, at_m }: SurveyTap): RoundsTap {
  return {
    id,
    source,
    flow_L_min: flow_L_min ?? null,
    flowAt: flowAt ?? [],
    line: line ?? null,
    at_m: at_m ?? null,
  };
}

function ban(restriction: SurveyRestriction): Ban {
  const { id, from, to, days, fromTime, toTime, methods, supplies, parity, exempt } = restriction;
  return {
    id,
    from: from ?? null,
    to: to ?? null,
    weekdays: weekdayFlags(days),
    minutes:
      fromTime === undefined || toTime === undefined
        ? null
        : { from: minuteOf(fromTime), to: minuteOf(toTime) },
    methods: methods ?? null,
    supplies: supplies ?? null,
    parity: parity ?? null,
    exempt: exempt ?? [],
  };
}

/** Minutes from midnight of HH:MM; 24:00 is the day's end. */
function minuteOf(time: string): number {
  return 60 * Number(time.slice(0, 2)) + Number(time.slice(3, 5));
}
