import type { Question, Reply } from "../../src/report/questions.ts";

/** What a screen asks of the site that is worked out beside it; null where a later question overtook it. */
export type Ask = (question: Question) => Promise<Reply | null>;

/** Asks one thing after the other, so that no question of a screen overtakes another of its own. */
export function inTurn(ask: Ask): Ask {
  let last: Promise<unknown> = Promise.resolve();
  return (question) => {
    const reply = last.then(() => ask(question));
    last = reply.catch(() => null);
    return reply;
  };
}
