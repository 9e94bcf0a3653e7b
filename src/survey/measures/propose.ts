import { type Thirst, thirstClasses } from "../../tables/plants.ts";
import type { Survey, SurveyBed, SurveyMeasure } from "../survey.ts";
import { measuresApart } from "./apart.ts";

/** Why something is proposed; the sentences are in words. */
export type Reason =
  | { code: "tank-idle"; tank: string; capacity_L: number }
  | { code: "leak"; leak: string; litresPerDay: number }
  | { code: "bare"; bed: string; area_m2: number }
  | { code: "thirsty"; bed: string; thirst: Thirst; instead: Thirst }
  | { code: "sprays"; bed: string; method: string }
  | { code: "uneven"; bed: string; uniformity: number }
  | { code: "roof-unconnected"; roof: string; tank: string; area_m2: number }
  | { code: "first-flush"; roof: string; firstFlush_mm: number }
  | { code: "tank-small"; tank: string; capacity_L: number; enough_L: number }
  | { code: "tank-large"; tank: string; capacity_L: number; enough_L: number }
  | { code: "over-need"; bed: string; habit_kL_year: number; need_kL_year: number }
  | { code: "spills"; tank: string; spill_kL_year: number };

/** Something that might be done, with why. `measure` is null where nothing is to be bought, or too little is known. */
export interface Proposal {
  reason: Reason;
  measure: SurveyMeasure | null;
}

/** What the runs say that the survey does not. */
export interface RunFacts {
  /** By bed: gross litres a year by habit and to need; only beds whose habit is known. */
  watered: readonly { bed: string; habit_kL_year: number; need_kL_year: number }[];
  /** By tank in use. */
  tanks: readonly {
    tank: string;
    capacity_L: number;
    enough_L: number;
    spill_kL_year: number;
    draws: boolean;
  }[];
}

const lawns: readonly string[] = ["lawn-cool", "lawn-warm"];
const overhead: readonly string[] = ["spray", "rotor", "sprinkler", "hose"];
const ornamental: readonly string[] = [
  "groundcover",
  "perennials",
  "annuals",
  "ornamental-grasses",
  "shrubs",
  "hedge",
  ...lawns,
];

/** Below this, turf sprinklers are worth setting right. @source common practice: DU 0.7 is what a sound system reaches */
const soundUniformity = 0.7;
/** A diverter that takes more is worth a look. @source rules of thumb of rainwater manuals, 0.5 mm of roof */
const plainFirstFlush_mm = 0.5;
/** Habit this much over the need is said. */
const overShare = 1.1;
/** A tank below or above these shares of what is enough for its roof and draw is called small or large. */
const smallShare = 0.5;
const largeShare = 2;

/**
 * What might do something here, the free and the found before the bought: the tank one owns put to use, leaks, what is
 * watered over its need, then mulch, plants, drip, and only then more roof and more tank. Nothing that a measure of the
 * survey does already.
 */
export function proposals(survey: Survey, facts: RunFacts): Proposal[] {
  const all = [
    ...idleTanks(survey),
    ...leaks(survey),
    ...overNeed(facts),
    ...survey.beds.filter(isWatered).flatMap(bedProposals),
    ...firstFlushes(survey),
    ...roofs(survey, facts),
    ...tanks(facts),
  ];
  const { measures = [] } = survey;
  return all.filter(
    ({ measure }) =>
      measure === null ||
      (measures.every(({ id }) => id !== measure.id) &&
        !measuresApart([...measures, measure]).some(([, place]) => place === measures.length)),
  );
}

function isWatered({ watering }: SurveyBed): boolean {
  return watering.supply !== "none" && watering.supply !== "other" && watering.method !== "none";
}

function idleTanks({ tanks: all, beds }: Survey): Proposal[] {
  const onMains = beds.filter(({ watering }) => watering.supply === "mains-only").map(({ id }) => id);
  return all.flatMap(({ id, name, inUse, capacity_L }): Proposal[] => {
    if (inUse !== false) return [];
    const own = beds.filter(({ watering }) => watering.tank === id).map((bed) => bed.id);
    const measure = { id: `use-${id}`, name, useTank: { tank: id, beds: own.length > 0 ? own : onMains } };
    return [{ reason: { code: "tank-idle", tank: id, capacity_L }, measure }];
  });
}

function leaks({ leaks: all = [] }: Survey): Proposal[] {
  return all.map(({ id, name, litresPerDay }) => ({
    reason: { code: "leak", leak: id, litresPerDay },
    measure: { id: `mend-${id}`, name, mendLeak: { leaks: [id] } },
  }));
}

function overNeed({ watered }: RunFacts): Proposal[] {
  return watered
    .filter(({ habit_kL_year, need_kL_year }) => habit_kL_year > overShare * need_kL_year)
    .map(({ bed, habit_kL_year, need_kL_year }) => ({
      reason: { code: "over-need", bed, habit_kL_year, need_kL_year },
      measure: null,
    }));
}

function bedProposals(bed: SurveyBed): Proposal[] {
  const isLawn = bed.plantings.some(({ kind }) => lawns.includes(kind));
  return [
    ...(isLawn || (bed.mulch?.cover ?? 0) > 0 ? [] : [mulched(bed)]),
    ...lessThirsty(bed),
    ...(isLawn ? setRight(bed) : dripped(bed)),
  ];
}

function mulched({ id, name, area_m2 }: SurveyBed): Proposal {
  const mulch = { beds: [id], material: "wood-chip" as const, cover: 0.9, depth_mm: 75 };
  return { reason: { code: "bare", bed: id, area_m2 }, measure: { id: `mulch-${id}`, name, mulch } };
}

/** Plants for looks of the thirstiest class; food is left alone. */
function lessThirsty({ id, name, plantings }: SurveyBed): Proposal[] {
  const thirst: Thirst = "high";
  const instead = thirstClasses[thirstClasses.indexOf(thirst) - 1]!;
  const isToo = (planting: SurveyBed["plantings"][number]) =>
    planting.thirst === thirst && planting.kcbFull === undefined && ornamental.includes(planting.kind);
  if (!plantings.some(isToo)) return [];
  const changed = plantings.map((planting) =>
    isToo(planting) ? { ...planting, thirst: instead } : planting,
  );
  const measure = { id: `replant-${id}`, name, replant: { beds: [id], plantings: changed } };
  return [{ reason: { code: "thirsty", bed: id, thirst, instead }, measure }];
}

function dripped({ id, name, watering }: SurveyBed): Proposal[] {
  if (!overhead.includes(watering.method)) return [];
  const changeWatering = { beds: [id], method: "drip" as const, runBy: "timer" as const };
  return [
    {
      reason: { code: "sprays", bed: id, method: watering.method },
      measure: { id: `drip-${id}`, name, changeWatering },
    },
  ];
}

function setRight({ id, name, watering }: SurveyBed): Proposal[] {
  const { distributionUniformity: uniformity, efficiency } = watering;
  if (uniformity === undefined || efficiency !== undefined || uniformity >= soundUniformity) return [];
  const changeWatering = { beds: [id], distributionUniformity: soundUniformity };
  return [
    {
      reason: { code: "uneven", bed: id, uniformity },
      measure: { id: `even-${id}`, name, changeWatering },
    },
  ];
}

function firstFlushes({ roofs: all }: Survey): Proposal[] {
  return all.flatMap(({ id, name, firstFlush_mm = 0, tank }): Proposal[] => {
    if (tank === undefined || firstFlush_mm <= plainFirstFlush_mm) return [];
    const firstFlush = { roofs: [id], firstFlush_mm: plainFirstFlush_mm };
    return [
      {
        reason: { code: "first-flush", roof: id, firstFlush_mm },
        measure: { id: `flush-${id}`, name, firstFlush },
      },
    ];
  });
}

/** Each roof that is led nowhere, to each tank in use: the runs say which of them is worth saying. */
function roofs({ roofs: all }: Survey, { tanks: inUse }: RunFacts): Proposal[] {
  return all
    .filter(({ tank }) => tank === undefined)
    .flatMap(({ id, name, area_m2 }) =>
      inUse.map(
        ({ tank }): Proposal => ({
          reason: { code: "roof-unconnected", roof: id, tank, area_m2 },
          measure: { id: `connect-${id}-${tank}`, name, connectRoof: { roof: id, tank } },
        }),
      ),
    );
}

function tanks({ tanks: inUse }: RunFacts): Proposal[] {
  return inUse.flatMap(({ tank, capacity_L, enough_L, spill_kL_year, draws }): Proposal[] => {
    const proposed: Proposal[] = [];
    if (enough_L > 0 && capacity_L < smallShare * enough_L) {
      const size_L = Math.ceil(Math.min(enough_L, 2 * capacity_L) / 500) * 500;
      const resizeTank = { tank, capacity_L: size_L };
      const measure = { id: `larger-${tank}`, name: tank, resizeTank };
      proposed.push({ reason: { code: "tank-small", tank, capacity_L, enough_L }, measure });
    }
    if (enough_L > 0 && capacity_L > largeShare * enough_L)
      proposed.push({ reason: { code: "tank-large", tank, capacity_L, enough_L }, measure: null });
    if (!draws && spill_kL_year >= 1)
      proposed.push({ reason: { code: "spills", tank, spill_kL_year }, measure: null });
    return proposed;
  });
}
