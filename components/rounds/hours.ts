import { coolHours } from "../../src/engine/rounds/cool-hours.ts";
import { clockTime } from "../../src/report/local-time.ts";
import { sunMinutes } from "../../src/report/sun-minutes.ts";
import type { Survey, SurveyRestriction } from "../../src/survey/survey.ts";
import { weekdays } from "../../src/survey/words.ts";

export interface CoolWindow {
  from: string;
  to: string;
}

/** The cool and still hours of a day at the site, the best first: about dawn, then about dusk. */
export function coolWindows({ site }: Survey, day: number): CoolWindow[] {
  return coolHours(sunMinutes(day, site), 0).map(({ from, to }) => ({
    from: clockTime(from),
    to: clockTime(Math.min(1439, to)),
  }));
}

/** The survey with somebody there in these hours, on the days that it had. */
export function withHours(survey: Survey, { from, to }: CoolWindow): Survey {
  const { site } = survey;
  const had = new Set((site.hours ?? []).flatMap(({ days }) => days));
  const days = weekdays.filter((day) => had.size === 0 || had.has(day));
  return { ...survey, site: { ...site, hours: [{ days, fromTime: from, toTime: to }] } };
}

/** The survey with one more restriction; its id is made from its name and is its own. */
export function withRestriction(survey: Survey, rule: Omit<SurveyRestriction, "id">): Survey {
  const rules = survey.restrictions ?? [];
  const taken = new Set(
    [...rules, ...survey.beds, ...survey.tanks, ...survey.roofs, ...(survey.taps ?? [])].map(({ id }) => id),
  );
  const plain = rule.name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 40);
  const stem = /^[a-z]/.test(plain) ? plain : "rule";
  let id = stem;
  for (let k = 2; taken.has(id); k++) id = `${stem}-${k}`;
  return { ...survey, restrictions: [...rules, { ...rule, id }] };
}

export function withoutRestriction(survey: Survey, id: string): Survey {
  return { ...survey, restrictions: (survey.restrictions ?? []).filter((rule) => rule.id !== id) };
}
