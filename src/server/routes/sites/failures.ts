import type { Context } from "hono";
import { changesBetween, namesOf } from "../../../survey/changes.ts";
import type { Survey } from "../../../survey/survey.ts";
import { changeSentence } from "../../../words/en/changes.ts";
import { siteWords } from "../../../words/en/sites.ts";
import { quoted } from "../../preconditions.ts";
import { Problem, problemDocument } from "../../problem.ts";
import type { Store } from "../../store/open.ts";
import { NoSuchSite } from "../../store/sites.ts";
import { siteState } from "../../store/state.ts";
import { NothingToDo, Overtaken } from "../../store/surveys.ts";
import { stateAnswer } from "./answers.ts";

const reasons = {
  undo: siteWords.nothingToUndo,
  redo: siteWords.nothingToRedo,
  draft: siteWords.draftInTheWay,
} as const;

/** Runs what a request asks of the store; what the store refuses becomes the problem to answer with. */
export function ask<T>(run: () => T): T {
  try {
    return run();
  } catch (error) {
    throw problemOf(error);
  }
}

/** As `ask`, for a write of the survey: one that came too late is answered with both surveys. */
export function askWith(
  c: Context,
  store: Store,
  id: string,
  sent: object | null,
  run: () => Response,
): Response {
  try {
    return run();
  } catch (error) {
    if (error instanceof Overtaken) return conflict(c, store, id, sent);
    throw problemOf(error);
  }
}

function problemOf(error: unknown): unknown {
  if (error instanceof NoSuchSite) return new Problem(404, siteWords.noSuchSite);
  if (error instanceof NothingToDo) return new Problem(409, reasons[error.reason]);
  if (error instanceof Overtaken) return new Problem(412, siteWords.tableOvertaken);
  const code = String((error as { code?: unknown } | null)?.code ?? "");
  if (code.startsWith("SQLITE_FULL")) return new Problem(507, siteWords.diskFull);
  if (code.startsWith("SQLITE_BUSY")) return new Problem(503, siteWords.busy);
  if (/^SQLITE_(IOERR|READONLY|CANTOPEN)/.test(code)) return new Problem(503, siteWords.diskRefuses(code));
  return error;
}

function conflict(c: Context, store: Store, id: string, sent: object | null): Response {
  const state = ask(() => siteState(store, id));
  const survey = sent as Survey | null;
  const changes = survey === null ? [] : changesBetween(state.survey, survey);
  const names = namesOf(survey ?? state.survey);
  const document = {
    ...problemDocument(new Problem(412, siteWords.overtaken)),
    kept: stateAnswer(state),
    sent,
    changes: changes.map((change) => ({ path: change.path, sentence: changeSentence(change, names) })),
  };
  return c.body(JSON.stringify(document), 412, {
    "Content-Type": "application/problem+json",
    "Cache-Control": "no-store",
    ETag: quoted(state.row.tag),
  });
}
