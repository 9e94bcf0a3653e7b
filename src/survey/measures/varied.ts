import type { MeasureSet, VariedGrounds, VariedPart, VariedTanks } from "../../engine/varied.ts";
import { type PickFigure, standsIn } from "../resolve-assumed.ts";
import { resolveBed } from "../resolve-bed.ts";
import { resolveDraw, resolveRoof, resolveTank } from "../resolve-tanks.ts";
import type { Survey, SurveyDraw, SurveyMeasure, SurveyTank } from "../survey.ts";
import { type Acting, actingTogether, tankWanted } from "./acting.ts";
import { changedBed } from "./change-bed.ts";
import { changedRoof, changedTank, leaksWith } from "./change-water.ts";
import { tankSystems } from "./tank-systems.ts";

/**
 * The grounds as they are in every set of the measures given: the same as `applyMeasures` and `resolve` would make
 * them, a part at a time, so that what a set leaves alone is not made again.
 * @param measures what may be chosen, in the survey's order
 * @param pick chooses from the tables' ranges; the middle where not given
 */
export function variedGrounds(
  survey: Survey,
  measures: readonly SurveyMeasure[],
  pick?: PickFigure,
): VariedGrounds {
  const { beds, roofs, tanks, draws = [], taps = [], site } = survey;
  const stands = standsIn([], pick);
  const changedBy = changesOf(measures);
  const actingIn = (set: MeasureSet): Acting =>
    actingTogether(
      survey,
      measures.filter((_, k) => set[k] === 1),
    );
  const part = <T>(
    changes: (measure: SurveyMeasure) => boolean,
    as: (acting: Acting) => T,
  ): VariedPart<T> => ({
    changedBy: changedBy(changes),
    in: (set) => as(actingIn(set)),
  });

  const bedParts = beds.map((bed, i) =>
    part(
      (measure) => bedsOf(measure).includes(bed.id),
      (acting) => resolveBed(changedBed(bed, acting), `beds[${i}]`, taps, stands),
    ),
  );
  const roofParts = roofs.map((roof, i) =>
    part(
      ({ connectRoof, firstFlush }) =>
        connectRoof?.roof === roof.id || firstFlush?.roofs.includes(roof.id) === true,
      (acting) => resolveRoof(changedRoof(roof, acting), `roofs[${i}]`, stands),
    ),
  );
  const tankPart = (tank: SurveyTank, where: string, adds: SurveyMeasure | null) =>
    part(
      (measure) =>
        measure === adds || measure.resizeTank?.tank === tank.id || measure.useTank?.tank === tank.id,
      (acting) =>
        adds && !acting.measures.includes(adds)
          ? null
          : resolveTank(changedTank(tank, acting), where, stands),
    );
  const drawPart = (draw: SurveyDraw, where: string, moves: SurveyMeasure | null, onTank: boolean) =>
    part(
      (measure) => measure === moves,
      (acting) =>
        (moves === null || acting.measures.includes(moves)) === onTank
          ? resolveDraw(draw, where, stands)
          : null,
    );
  const added = measures.flatMap((measure) => {
    const k = survey.measures?.indexOf(measure);
    return measure.addTank ? { tank: measure.addTank, where: `measures[${k}].addTank`, adds: measure } : [];
  });
  const moved = measures.flatMap((measure) => {
    const k = survey.measures?.indexOf(measure);
    return measure.addDraw ? { draw: measure.addDraw, where: `measures[${k}].addDraw`, moves: measure } : [];
  });
  const tankParts = [
    ...tanks.map((tank, i) => tankPart(tank, `tanks[${i}]`, null)),
    ...added.map(({ tank, where, adds }) => tankPart(tank, where, adds)),
  ];
  const drawParts = [
    ...draws.map((draw, i) => drawPart(draw, `draws[${i}]`, null, true)),
    ...moved.map(({ draw, where, moves }) => drawPart(draw, where, moves, true)),
  ];
  const systems: VariedTanks[] = tankSystems(survey, measures).map((system) => {
    const parts = {
      tanks: system.tanks.map((k) => tankParts[k]!),
      roofs: system.roofs.map((k) => roofParts[k]!),
      beds: system.beds,
      draws: system.draws.map((k) => drawParts[k]!),
    };
    const changes = [...parts.tanks, ...parts.roofs, ...parts.draws, ...parts.beds.map((k) => bedParts[k]!)];
    return { ...parts, changedBy: joined(changes) };
  });
  return {
    measures: measures.length,
    absences: (site.absences ?? []).map(({ from, to, carer }) => ({
      from,
      to,
      hasCarer: carer !== undefined,
    })),
    beds: bedParts,
    tanks: systems,
    leaks_L_day: part(
      ({ mendLeak }) => mendLeak !== undefined,
      (acting) => leaksWith(survey, acting).reduce((sum, { litresPerDay }) => sum + litresPerDay, 0),
    ),
    mainsDraws: moved.map(({ draw, where, moves }) => drawPart(draw, where, moves, false)),
  };
}

/** Beds that a measure changes. */
function bedsOf({ mulch, replant, changeWatering, useTank }: SurveyMeasure): readonly string[] {
  return (mulch ?? replant ?? changeWatering ?? useTank)?.beds ?? [];
}

/**
 * Places of the measures that change something, with those that bring the tanks which they cannot do without: what
 * a part is in a set hangs on these alone.
 */
function changesOf(measures: readonly SurveyMeasure[]) {
  const bringing = new Map<string, number[]>();
  measures.forEach(({ addTank }, k) => {
    if (addTank) bringing.set(addTank.id, [...(bringing.get(addTank.id) ?? []), k]);
  });
  return (changes: (measure: SurveyMeasure) => boolean): number[] => {
    const places = new Set<number>();
    measures.forEach((measure, k) => {
      if (!changes(measure)) return;
      places.add(k);
      const tank = tankWanted(measure) ?? measure.changeWatering?.tank;
      for (const place of (tank !== undefined && bringing.get(tank)) || []) places.add(place);
    });
    return [...places].sort((a, b) => a - b);
  };
}

function joined(parts: readonly VariedPart<unknown>[]): number[] {
  return [...new Set(parts.flatMap(({ changedBy }) => changedBy))].sort((a, b) => a - b);
}
