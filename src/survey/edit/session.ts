import type { Fault } from "../faults.ts";
import { readSurvey } from "../read.ts";
import type { Survey } from "../survey.ts";
import type { Draft } from "./document.ts";
import { healed, same } from "./heal.ts";

/** What was typed into a field, while it stands for the value it gave. */
export interface Typed {
  text: string;
  value: unknown;
}

interface Moment {
  right: Survey;
  draft: Draft;
  typed: ReadonlyMap<string, Typed>;
}

/** A survey being edited: what counts, what was typed, what is wrong with that, and the way back. */
export interface Session extends Moment {
  faults: readonly Fault[];
  past: readonly Moment[];
  future: readonly Moment[];
  /** Key of the field changed last, so that going on in it is one step back. */
  last: string | null;
}

const mostSteps = 200;

/**
 * @param draft entries with faults kept from before, else the survey itself
 * @param typed what was typed for values, kept from before
 */
export function begin(
  survey: Survey,
  draft: Draft = survey,
  typed: Readonly<Record<string, Typed>> = {},
): Session {
  return {
    right: survey,
    draft,
    typed: new Map(Object.entries(typed)),
    faults: faultsOf(draft),
    past: [],
    future: [],
    last: null,
  };
}

export interface Edit {
  /** Made to the draft and to what counts, so that both stay the same survey. */
  change: (document: Draft) => Draft;
  /** The field it is about, and what was typed there; none for what is done to entries. */
  key?: string;
  typed?: Typed;
}

/** The session after an edit; the same one where it changed nothing. */
export function edit(session: Session, { change, key, typed }: Edit): Session {
  const draft = change(session.draft);
  const texts = new Map(session.typed);
  if (key !== undefined && typed) texts.set(key, typed);
  else if (key !== undefined) texts.delete(key);
  if (same(draft, session.draft)) return { ...session, typed: texts };
  const { right, typed: before } = session;
  const isSameField = key !== undefined && key === session.last && session.future.length === 0;
  const past = isSameField ? session.past : [...session.past, { right, draft: session.draft, typed: before }];
  return {
    ...after(draft, right, change),
    typed: texts,
    past: past.slice(-mostSteps),
    future: [],
    last: key ?? null,
  };
}

/** The session with a text kept where it could not be put; undefined forgets it. */
export function noted(session: Session, key: string, text: string | undefined): Session {
  const typed = new Map(session.typed);
  if (text === undefined) typed.delete(key);
  else typed.set(key, { text, value: text });
  return { ...session, typed };
}

function after(
  draft: Draft,
  right: Survey,
  change: Edit["change"],
): Pick<Session, "draft" | "right" | "faults"> {
  const outcome = readSurvey(draft);
  if ("survey" in outcome) return { draft, right: same(draft, right) ? right : outcome.survey, faults: [] };
  const changed = readSurvey(change(right));
  return {
    draft,
    right: healed(draft, "survey" in changed ? changed.survey : right),
    faults: outcome.faults,
  };
}

export function undo(session: Session): Session {
  const before = session.past[session.past.length - 1];
  if (!before) return session;
  const { right, draft, typed, future } = session;
  return {
    ...before,
    faults: faultsOf(before.draft),
    past: session.past.slice(0, -1),
    future: [{ right, draft, typed }, ...future],
    last: null,
  };
}

export function redo(session: Session): Session {
  const [next, ...future] = session.future;
  if (!next) return session;
  const { right, draft, typed, past } = session;
  return {
    ...next,
    faults: faultsOf(next.draft),
    past: [...past, { right, draft, typed }],
    future,
    last: null,
  };
}

function faultsOf(draft: Draft): readonly Fault[] {
  const outcome = readSurvey(draft);
  return "faults" in outcome ? outcome.faults : [];
}
