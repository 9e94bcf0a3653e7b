import { cansFor, litresAPlant } from "../engine/rounds/cans.ts";
import type { Against, Conflict } from "../engine/rounds/conflicts.ts";
import { everyDays, type Pattern } from "../engine/rounds/pattern.ts";
import type { BedMonth, BedTable, TableCost } from "../engine/rounds/table.ts";
import { formatIso } from "../engine/weather/dates.ts";
import type { CautionCode } from "../survey/cautions.ts";
import { weekdays } from "../survey/words.ts";
import type { GroundsRounds, RoundsBedMonth, RoundsWatering } from "./rounds-schema.ts";
import type { RoundsWorked } from "./rounds-work.ts";
import { programVersion } from "./version.ts";
import type { RoundsWeek } from "./week-schema.ts";

/** What the tables are mended to stay within, over the whole record. */
export const roundingBounds = { overShare: 0.1, stressDays_year: 10 } as const;

/** Cautions that go with a round of watering, beside the survey's own. */
export const roundCautionCodes = [
  "people-first",
  "spray-drift",
  "stood-warm",
  "pump-electrics",
  "hoses-trip",
] as const;

export type RoundCautionCode = (typeof roundCautionCodes)[number];

/** Turns codes and facts into sentences; the words are not the report's. */
export interface RoundsWords {
  caution(code: CautionCode | RoundCautionCode): string;
  conflict(conflict: Conflict, names: RoundsNames): string;
}

/** Names of what the survey lists, by id. */
export interface RoundsNames {
  bed(id: string): string;
  restriction(id: string): string;
}

export function namesOf({ survey }: Pick<RoundsWorked, "survey">): RoundsNames {
  const beds = new Map(survey.beds.map(({ id, name }) => [id, name]));
  const rules = new Map((survey.restrictions ?? []).map(({ id, name }) => [id, name]));
  return { bed: (id) => beds.get(id) ?? id, restriction: (id) => rules.get(id) ?? id };
}

export interface RoundsOptions {
  /** 1–12 to show that month alone. */
  month?: number | null;
  madeOn?: string | null;
  week?: RoundsWeek;
}

/** The rounds document of a survey worked out. */
export function roundsDocument(
  worked: RoundsWorked,
  words: RoundsWords,
  { month = null, madeOn = null, week }: RoundsOptions = {},
): GroundsRounds {
  const { survey, resolved, filled, table, conflicts, programme } = worked;
  const beds = wateredBeds(worked);
  const months = month === null ? Array.from({ length: 12 }, (_, m) => m) : [month - 1];
  const yearsOf = (group: readonly number[]) => group.map((k) => table.years[k]!.year);
  return {
    format: "grounds-rounds",
    version: 1,
    engine: programVersion,
    survey: survey.site.name,
    madeOn,
    weather: {
      from: formatIso(filled.firstDay),
      to: formatIso(filled.firstDay + filled.days - 1),
      days: filled.days,
      filled: filled.filledDays,
    },
    years: { middle: yearsOf(table.groups.middle), dry: table.groups.dry && yearsOf(table.groups.dry) },
    bounds: { ...roundingBounds },
    assumed: resolved.assumed,
    cautions: cautionsOf(worked).map(words.caution),
    months: months.map((m) => ({ month: m + 1, beds: beds.map((bed) => bedMonthRow(worked, bed, m)) })),
    rounding: beds.map(({ id, cost }) => ({
      id,
      middle: costRow(cost.middle),
      dry: cost.dry && costRow(cost.dry),
      allYears: costRow(cost.allYears),
      within: isWithin(cost.allYears),
    })),
    conflicts: conflicts
      .filter((conflict) => months.includes(conflict.month))
      .map((conflict) => ({
        id: conflict.bed,
        month: conflict.month + 1,
        stressDays_year: conflict.stressDays,
        against: conflict.against.map(againstWord),
        sentence: words.conflict(conflict, namesOf(worked)),
      })),
    programme: programme && {
      startTimes: programme.startTimes,
      days: dayWords(programme.weekdays),
      percentByMonth: [...programme.percentByMonth],
      beds: programme.beds.map(({ id, minutes, cost }) => ({ id, minutes, cost: costRow(cost) })),
    },
    ...(week && { week }),
  };
}

/** Beds that somebody or something waters, in the survey's order. */
function wateredBeds({ survey, table }: RoundsWorked): BedTable[] {
  return table.beds.filter((_, k) => survey.beds[k]!.watering.supply !== "none");
}

function bedMonthRow({ need }: RoundsWorked, { id, middle, dry }: BedTable, month: number): RoundsBedMonth {
  const row = middle[month]!;
  const { counted } = need.site.beds.find((bed) => bed.id === id)!;
  return {
    id,
    ...wateringRow(row),
    plants: counted.map((group) => {
      const litresEach = litresAPlant(row.litres, group);
      return { plants: group.plants, litresEach, cansEach: cansFor(litresEach) };
    }),
    dry: dry && wateringRow(dry[month]!),
  };
}

function wateringRow(row: BedMonth): RoundsWatering {
  const { pattern } = row;
  return {
    minutes: row.minutes,
    everyDays: everyDays(pattern),
    cycles: row.cycles,
    soak_min: row.soak_min,
    litres: row.litres,
    net_mm: row.net_mm,
    days: patternDays(pattern),
    turns: pattern.kind === "turns" ? [...pattern.turns] : null,
    dates: pattern.kind === "dates" ? [...pattern.dates] : null,
    wetted_m: row.wetted_m,
    leaveAfterRain_mm: row.leaveAfterRain_mm,
    month_L: row.month_L,
  };
}

function patternDays(pattern: Pattern): RoundsWatering["days"] {
  if (pattern.kind === "turns") return [weekdays[pattern.weekday]!];
  return pattern.kind === "week" ? dayWords(pattern.weekdays) : [];
}

export function dayWords(flags: readonly boolean[]): RoundsWatering["days"] {
  return weekdays.filter((_, day) => flags[day]);
}

function costRow({ need_L, given_L, needStressDays, stressDays }: TableCost) {
  return {
    need_L_year: need_L,
    given_L_year: given_L,
    needStressDays_year: needStressDays,
    stressDays_year: stressDays,
  };
}

function isWithin({ need_L, given_L, needStressDays, stressDays }: TableCost): boolean {
  const { overShare, stressDays_year } = roundingBounds;
  return given_L <= (1 + overShare) * need_L + 1e-6 && stressDays <= needStressDays + stressDays_year;
}

function againstWord(against: Against): string {
  return typeof against === "string" ? against : against.restriction;
}

/** The survey's cautions that bear on watering, then the round's own. */
function cautionsOf({ survey, resolved }: RoundsWorked): (CautionCode | RoundCautionCode)[] {
  const bearing: readonly CautionCode[] = [
    "local-rules-first",
    "tank-not-for-drinking",
    "no-cross-connection",
  ];
  const { beds, tanks } = survey;
  const methods = beds.map(({ watering }) => watering.method);
  const isSprayed = methods.some((method) => ["spray", "rotor", "sprinkler", "hose"].includes(method));
  const calls: Record<RoundCautionCode, boolean> = {
    "people-first": true,
    "spray-drift": isSprayed,
    "stood-warm": isSprayed,
    "pump-electrics": tanks.length > 0 || methods.some((method) => method === "spray" || method === "rotor"),
    "hoses-trip": methods.some((method) => method === "hose" || method === "sprinkler"),
  };
  return [
    ...resolved.cautions.filter((code) => bearing.includes(code)),
    ...roundCautionCodes.filter((code) => calls[code]),
  ];
}
