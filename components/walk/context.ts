import type { Survey } from "../../src/survey/survey.ts";
import type { UnitSystem } from "../../src/units.ts";
import type { Show } from "../../src/words/en/walk-show.ts";
import type { AtStop, WalkDraft } from "./draft.ts";
import type { TypedIn } from "./entry.ts";
import type { Weight } from "./order.ts";
import type { ShowFigure } from "./show.ts";
import type { WalkStore } from "./store.ts";

/** Water that a survey comes to: what a reading means in litres. */
export interface Weighed {
  /** By bed: litres let out a year, in a mean year. */
  beds: ReadonlyMap<string, number>;
  /** Mains water to need, kL a year. */
  need_kL_year: number;
}

export type Weigh = (survey: Survey) => Promise<Weighed>;

/** What every screen of the walk is given, and what it may do. A new one comes with every change. */
export interface Walk {
  /** The survey as it stands; the practice school's in practice. */
  survey: Survey;
  draft: WalkDraft;
  /** The group's id in the survey; undefined before its first reading. */
  group: string | undefined;
  system: UnitSystem;
  locale: string | undefined;
  typed: TypedIn;
  show: Show;
  /** Writes what was worked out, as roughly as it is known. */
  about: Show;
  /** A figure with its doubt. */
  figure: ShowFigure;
  weights: readonly Weight[];
  weigh: Weigh | null;
  /** The address of the survey's field editor at a screen of it; null where there is none. */
  fields: ((at: string) => string) | null;
  store: WalkStore;
  /** Names the site's things in the store. */
  site: string;
  /** Date and time, as findings keep them. */
  now(): string;
  /** The group's id, made where it is new: with the survey that has it. */
  withGroup(): { survey: Survey; group: string };
  change(survey: Survey): void;
  go(route: string): void;
  keepDraft(patch: Partial<WalkDraft>): void;
  atStop(key: string): AtStop;
  keepStop(key: string, patch: Partial<AtStop>): void;
}
