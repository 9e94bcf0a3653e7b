import type { Unit } from "../../src/quantities.ts";
import type { WalkPart } from "../../src/survey/measuring/way.ts";
import type { Survey, SurveyBed, SurveyTap } from "../../src/survey/survey.ts";
import { type StopKind, stopSorts } from "./stop-sorts.ts";

/** Lists of the survey that a walk goes round. */
export type WalkList = "beds" | "roofs" | "tanks" | "taps" | "draws" | "leaks";

/** One thing to find out about one bed, roof, tank, tap, draw or leak. */
export interface Stop {
  /** Names the stop in addresses and drafts: `beds/oval/area`. */
  key: string;
  kind: StopKind;
  part: WalkPart;
  list: WalkList;
  index: number;
  id: string;
  name: string;
  /** Which planting of the bed; 0 where the stop is not about one. */
  planting: number;
  /** Path of the field that it fills, and of others that the same readings may fill. */
  at: string;
  also: readonly string[];
  ways: readonly string[];
  minutes: number;
  /** Unit of the figure; null where it is a word or more than a number. */
  unit: Unit | null;
}

/** Every stop of a walk, thing by thing: beds, roofs, tanks, taps, draws, leaks. */
export function stopsOf(survey: Survey): Stop[] {
  return [
    ...survey.beds.flatMap((bed, i) => bedStops(survey, bed, i)),
    ...survey.roofs.flatMap((roof, i) => {
      const kinds: StopKind[] = ["roof-area", "roof-material", "downpipe"];
      if (roof.tank !== undefined) kinds.push("roof-share", "first-flush");
      return kinds.map((kind) => stop("roofs", roof, i, kind));
    }),
    ...survey.tanks.flatMap((tank, i) =>
      (["capacity", "level", "outlet", "tank-use"] as const).map((kind) => stop("tanks", tank, i, kind)),
    ),
    ...(survey.taps ?? []).map((tap, i) => tapStop(survey, tap, i)),
    ...(survey.draws ?? []).map((draw, i) => stop("draws", draw, i, "cistern")),
    ...(survey.leaks ?? []).map((leak, i) => stop("leaks", leak, i, "leak")),
  ];
}

/** A tap of a tank is timed at levels; where a pump cuts out, the tank keeps the rest. */
function tapStop({ tanks }: Survey, tap: SurveyTap, index: number): Stop {
  const tank = tanks.findIndex(({ id }) => id === tap.source);
  if (tank === -1) return stop("taps", tap, index, "tap-flow");
  const hose = stop("taps", tap, index, "hose-flow");
  return { ...hose, also: [...hose.also, `tanks[${tank}].unusable_L`] };
}

const laid = ["spray", "rotor", "sprinkler"];

function bedStops(survey: Survey, bed: SurveyBed, index: number): Stop[] {
  const { plantings, mulch, watering } = bed;
  const of = (kind: StopKind, planting = 0) => stop("beds", bed, index, kind, planting);
  const stops = [of("area"), ...plantings.map((_, k) => of("thirst", k))];
  if (plantings.length > 1) {
    const shares = plantings.map((_, k) => `beds[${index}].plantings[${k}].share`);
    stops.push({ ...of("shares"), at: shares[0]!, also: shares.slice(1) });
  }
  stops.push(of("cover"), of("mulch"));
  const hasMulch = mulch ? mulch.cover > 0 : sawMulch(survey, index);
  if (hasMulch) stops.push(of("mulch-cover"), of("mulch-depth"));
  stops.push(of("soil"), of("slope"), of("intake"), of("shade"));
  if (watering.supply === "none") return stops;
  stops.push(of("flow"), of("habit"));
  if (laid.includes(watering.method)) stops.push(of("heads"), of("cans"));
  return stops;
}

/** Whether a group wrote down a mulch that is not measured yet. */
function sawMulch({ found = [] }: Survey, bed: number): boolean {
  return found.some(({ at, used }) => at === `beds[${bed}].mulch.material` && used !== false);
}

function stop(
  list: WalkList,
  { id, name }: { id: string; name: string },
  index: number,
  kind: StopKind,
  planting = 0,
): Stop {
  const { part, at, also = [], ways, minutes, unit } = stopSorts[kind];
  const from = `${list}[${index}]`;
  const path = (end: string) => `${from}.${end.replace("*", String(planting))}`;
  const key = `${list}/${id}/${kind}${kind === "thirst" && planting > 0 ? `-${planting + 1}` : ""}`;
  return {
    ...{ key, kind, part, list, index, id, name, planting, ways, minutes, unit },
    at: path(at),
    also: also.map(path),
  };
}
