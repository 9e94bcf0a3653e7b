import { applyFound } from "../../src/survey/measuring/apply-found.ts";
import { pathSteps, setAt } from "../../src/survey/measuring/field-path.ts";
import { findingOf } from "../../src/survey/measuring/finding.ts";
import type { Survey, SurveyFinding } from "../../src/survey/survey.ts";

/** What a group read or saw at a stop. */
export interface Taken {
  /** The field it is about, and others that the same readings may fill. */
  at: string;
  also: readonly string[];
  how: string;
  readings: readonly number[];
  /** What was seen or chosen, where nothing was read. */
  word?: string | number;
  group?: string;
  when: string;
  guess?: number | string;
  text?: string;
  /** Whether the field rests on it; true where not said. */
  used?: boolean;
}

/** Parts of the survey that stand only when they are whole. */
const wholes: readonly { path: RegExp; isWhole: (part: Record<string, unknown>) => boolean }[] = [
  {
    path: /^(beds\[\d+\]\.mulch)\./,
    isWhole: ({ material, cover, depth_mm }) =>
      material !== undefined && cover !== undefined && depth_mm !== undefined,
  },
  {
    path: /^(beds\[\d+\]\.soil)\./,
    isWhole: ({ texture, sand_pct, clay_pct, fieldCapacity }) =>
      texture !== undefined ||
      (sand_pct !== undefined && clay_pct !== undefined) ||
      fieldCapacity !== undefined,
  },
  {
    path: /^(beds\[\d+\]\.watering\.habit)\./,
    isWhole: ({ minutes, days, months }) =>
      minutes !== undefined && days !== undefined && months !== undefined,
  },
  {
    path: /^(beds\[\d+\]\.plantings\[\d+\]\.count)\./,
    isWhole: ({ plants, canopy_m }) => plants !== undefined && canopy_m !== undefined,
  },
];

function wholeOf(at: string): string | null {
  for (const { path } of wholes) {
    const [, part] = path.exec(at) ?? [];
    if (part) return part;
  }
  return null;
}

/**
 * The survey with what was taken kept as found and put into its fields. A group that measures the same again
 * replaces its own reading, which stays in the notebook, unused. Null where nothing comes of the readings.
 */
export function keepTaken(survey: Survey, taken: Taken): Survey | null {
  const rows = rowsOf(survey, taken);
  if (rows.length === 0) return null;
  const touched = new Set(rows.map(({ at }) => at));
  // what is told stands in place of everything that was read there
  const replaced = new Set(taken.used === false ? [taken.at, ...taken.also] : touched);
  const found = [
    ...(survey.found ?? []).map((row) =>
      replaced.has(row.at) && row.group === taken.group && row.used !== false ? { ...row, used: false } : row,
    ),
    ...rows,
  ];
  return put({ ...survey, found }, touched);
}

/**
 * The survey with a measuring counted or left out, and its fields worked out anew; a field stays as it is where no
 * reading of it is left. One measuring may have made several rows.
 */
export function countReading(survey: Survey, reading: SurveyFinding, used: boolean): Survey {
  const { how, when, group } = reading;
  const isOfIt = (row: SurveyFinding) => row.how === how && row.when === when && row.group === group;
  const touched = new Set((survey.found ?? []).filter(isOfIt).map(({ at }) => at));
  const found = (survey.found ?? []).map((row) => (isOfIt(row) ? { ...row, used } : row));
  return put({ ...survey, found }, touched);
}

/** Rows that what was taken makes, one for each field that it fills. */
function rowsOf(
  survey: Survey,
  { at, also, how, readings, word, group, when, guess, text, used = true }: Taken,
): SurveyFinding[] {
  const taken = new Set((survey.found ?? []).map(({ id }) => id));
  let number = taken.size;
  const id = () => {
    do number++;
    while (taken.has(`f${number}`));
    return `f${number}`;
  };
  const base = { how, readings: [...readings], when, used };
  const more = {
    ...(group === undefined ? {} : { group }),
    ...(text ? { text } : {}),
  };
  const rows: SurveyFinding[] = [];
  for (const path of [at, ...also]) {
    const asked = path === at && guess !== undefined ? { guess } : {};
    if (word !== undefined) {
      if (path === at) rows.push({ id: id(), at: path, ...base, figure: word, ...more, ...asked });
      continue;
    }
    const made = findingOf({ id: "", at: path, ...base, ...more, ...asked });
    if ("finding" in made) rows.push({ ...made.finding, id: id() });
  }
  return rows;
}

/** Fills the fields touched, and the rest of each part that they belong to, from what is found. */
function put(survey: Survey, touched: ReadonlySet<string>): Survey {
  const parts = new Set([...touched].map(wholeOf).filter((part) => part !== null));
  const isAbout = ({ at }: SurveyFinding) => touched.has(at) || parts.has(wholeOf(at) ?? "");
  const found = survey.found ?? [];
  const { survey: filled } = applyFound({ ...survey, found: found.filter(isAbout) });
  for (const part of parts) dropUnfinished(filled, part);
  return { ...filled, found };
}

function dropUnfinished(survey: Survey, part: string): void {
  const steps = pathSteps(part)!;
  const last = steps.at(-1)!;
  let holder: unknown = survey;
  for (const step of steps.slice(0, -1)) holder = (holder as Record<string | number, unknown>)?.[step];
  const value = (holder as Record<string | number, unknown> | undefined)?.[last];
  const rule = wholes.find(({ path }) => path.test(`${part}.`));
  if (value && rule && !rule.isWhole(value as Record<string, unknown>))
    delete (holder as Record<string | number, unknown>)[last];
}

/** The survey with a field set as chosen or told, nothing being measured; undefined takes it out. */
export function setField(survey: Survey, at: string, value: unknown): Survey {
  const changed = structuredClone(survey);
  const steps = pathSteps(at);
  if (!steps) return survey;
  if (value !== undefined) return setAt(changed, steps, value) ? changed : survey;
  let holder: unknown = changed;
  for (const step of steps.slice(0, -1)) holder = (holder as Record<string | number, unknown>)?.[step];
  if (holder && typeof holder === "object")
    delete (holder as Record<string | number, unknown>)[steps.at(-1)!];
  return changed;
}

/** A group's id from its nickname, adding the group where it is new. */
export function withGroup(survey: Survey, nickname: string): { survey: Survey; id: string } {
  const groups = survey.groups ?? [];
  const same = groups.find((group) => group.nickname.toLowerCase() === nickname.toLowerCase());
  if (same) return { survey, id: same.id };
  let number = groups.length + 1;
  while (groups.some(({ id }) => id === `g${number}`)) number++;
  const id = `g${number}`;
  return { survey: { ...survey, groups: [...groups, { id, nickname }] }, id };
}
