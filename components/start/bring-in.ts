import { startWords } from "../../src/words/en/frame.ts";
import type { Keeping } from "../frame/keeping.ts";
import type { ToldFault } from "../frame/work/messages.ts";
import { Answered } from "../kept/sites-api.ts";

export type BroughtIn =
  | { is: "kept"; id: string }
  | { is: "refused"; title: string; faults: readonly ToldFault[] };

/** The server's own limit is near; larger files are not sent. */
const most_bytes = 60_000_000;

/**
 * Brings a file in as a new site: a site's file with its versions, or a survey alone. What is refused changes nothing.
 * @throws NotReached
 */
export async function bringIn(file: File, { api, freshWord }: Keeping): Promise<BroughtIn> {
  const refused = (title: string, faults: readonly ToldFault[] = []): BroughtIn => ({
    is: "refused",
    title,
    faults,
  });
  if (file.size > most_bytes) return refused(startWords.tooLarge(file.name));
  let read: unknown;
  try {
    read = JSON.parse((await file.text()).replace(/^\uFEFF/, ""));
  } catch (error) {
    return refused(
      error instanceof SyntaxError ? startWords.notJson(file.name) : startWords.unread(file.name),
    );
  }
  if (typeof read !== "object" || read === null || Array.isArray(read))
    return refused(startWords.notJson(file.name));
  const isSurvey = "format" in read && read.format === "grounds-survey";
  try {
    const { id } = await api.create(isSurvey ? { survey: read } : read, freshWord());
    return { is: "kept", id };
  } catch (error) {
    if (!(error instanceof Answered)) throw error;
    const { faults, detail } = error.problem;
    const listed = faults.length > 0 ? faults : [{ path: "", sentence: detail }];
    return refused(startWords.refused(file.name, listed.length), listed);
  }
}
