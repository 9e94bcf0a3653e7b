import { completeness } from "../../src/survey/measuring/completeness.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { type Stop, stopsOf } from "./stops.ts";

/** A field that is missing, with the stop that fills it and the name of what it is about. */
export interface MissingHere {
  code: string;
  at: string;
  /** Null for the site. */
  thing: string | null;
  stop: Stop | null;
}

export interface HowComplete {
  asked: number;
  filled: number;
  missing: MissingHere[];
}

/** How complete a survey is, each gap with the way to fill it. */
export function howComplete(survey: Survey): HowComplete {
  const { asked, filled, missing } = completeness(survey);
  const stops = stopsOf(survey);
  return {
    asked,
    filled,
    missing: missing.map(({ at, code }) => {
      const [, list, index] = /^(\w+)\[(\d+)\]/.exec(at) ?? [];
      const rows = list ? (survey[list as "beds"] as readonly { name: string }[] | undefined) : undefined;
      const stop = stops.find(
        (one) => one.list === list && one.index === Number(index) && isAbout(one, at) && one.kind !== "heads",
      );
      return { code, at, thing: rows?.[Number(index)]?.name ?? null, stop: stop ?? null };
    }),
  };
}

function isAbout(stop: Stop, at: string): boolean {
  return [stop.at, ...stop.also].some((path) => path === at || path.startsWith(`${at}.`));
}
