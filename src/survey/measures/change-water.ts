import type { Survey, SurveyDraw, SurveyLeak, SurveyMeasure, SurveyRoof, SurveyTank } from "../survey.ts";
import type { Acting } from "./acting.ts";

/** A roof with a set's measures done. */
export function changedRoof(roof: SurveyRoof, { measures }: Acting): SurveyRoof {
  return measures.reduce(roofWith, roof);
}

function roofWith(roof: SurveyRoof, { connectRoof, firstFlush }: SurveyMeasure): SurveyRoof {
  if (connectRoof?.roof === roof.id) {
    const { tank, share } = connectRoof;
    return { ...roof, tank, ...(share !== undefined && { share }) };
  }
  return firstFlush?.roofs.includes(roof.id) ? { ...roof, firstFlush_mm: firstFlush.firstFlush_mm } : roof;
}

/** A tank with a set's measures done; water that a smaller one could not hold is gone. */
export function changedTank(tank: SurveyTank, { measures }: Acting): SurveyTank {
  return measures.reduce(tankWith, tank);
}

function tankWith(tank: SurveyTank, { resizeTank, useTank }: SurveyMeasure): SurveyTank {
  if (resizeTank?.tank === tank.id) return resized(tank, resizeTank.capacity_L);
  return useTank?.tank === tank.id ? { ...tank, inUse: true } : tank;
}

function resized({ level_L, ...tank }: SurveyTank, capacity_L: number): SurveyTank {
  return { ...tank, capacity_L, ...(level_L !== undefined && { level_L: Math.min(level_L, capacity_L) }) };
}

/** The tanks that a set adds, behind those that stand there, and each with what else the set does to it. */
export function tanksWith({ tanks }: Survey, acting: Acting): SurveyTank[] {
  const added = acting.measures.flatMap(({ addTank }) => addTank ?? []);
  return [...tanks, ...added].map((tank) => changedTank(tank, acting));
}

/** Draws on tanks, with those that a set moves on to one behind them. */
export function drawsWith({ draws = [] }: Survey, { measures }: Acting): SurveyDraw[] {
  return [...draws, ...measures.flatMap(({ addDraw }) => addDraw ?? [])];
}

/** Leaks that a set leaves. */
export function leaksWith({ leaks = [] }: Survey, { measures }: Acting): SurveyLeak[] {
  const mended = new Set(measures.flatMap(({ mendLeak }) => mendLeak?.leaks ?? []));
  return leaks.filter(({ id }) => !mended.has(id));
}
