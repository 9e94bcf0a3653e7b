import { firstDocument } from "../../src/survey/first/document.ts";
import type { FirstEntries } from "../../src/survey/first/entries.ts";
import { firstNames, firstWords } from "../../src/words/en/first.ts";
import { keeping } from "../frame/keeping.ts";
import { Answered, NotReached } from "../kept/sites-api.ts";

/** One word for each set of entries, so that a press that was heard twice makes one site. */
let last: { of: string; key: string } | null = null;

/** Makes a kept site of a first answer's entries. @returns its id, or why it could not be kept */
export async function keepFirst(
  entries: FirstEntries,
  name: string,
): Promise<{ id: string } | { reason: string }> {
  const { api, freshWord } = await keeping();
  const on = new Date().toISOString().slice(0, 10);
  const document = firstDocument(entries, { name, names: firstNames, on });
  if (!document) return { reason: firstWords.keepPlace };
  const of = JSON.stringify([name, entries]);
  if (last?.of !== of) last = { of, key: freshWord() };
  try {
    const site = await api.create({ survey: document.survey }, last.key);
    if (document.typed !== document.survey) await api.saveTyped(site.id, site.etag, document.typed);
    return { id: site.id };
  } catch (error) {
    if (error instanceof NotReached) return { reason: firstWords.notReached };
    if (!(error instanceof Answered)) throw error;
    const { faults, detail } = error.problem;
    return { reason: faults[0]?.sentence ?? detail };
  }
}
