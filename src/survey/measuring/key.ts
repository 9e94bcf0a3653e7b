/** A decision key: questions, each answer leading to another question or to an end. */
export interface KeyEnd {
  /** A word of the survey's lists. */
  is: string;
  /** Code of the reason, for its sentence. */
  reason: string;
  /** 0–1: how sure the key is there. */
  certainty: number;
  source: string;
}

export interface KeyQuestion {
  question: string;
  answers: readonly { answer: string; next?: string; ends?: KeyEnd }[];
}

export type Key = readonly KeyQuestion[];

/** Where a walk through a key stands: the question asked next, or the end reached. */
export interface KeyWalk {
  /** Question and answer so far, by code. */
  path: readonly { question: string; answer: string }[];
  next: KeyQuestion | null;
  end: KeyEnd | null;
}

/**
 * Walks a key by the answers' places, 0 the first; the first question is the key's first row. Null where an
 * answer is not there, or answers go on past an end.
 */
export function walkKey(key: Key, answers: readonly number[]): KeyWalk | null {
  const path: { question: string; answer: string }[] = [];
  let next: KeyQuestion | null = key[0]!;
  let end: KeyEnd | null = null;
  for (const place of answers) {
    const chosen: KeyQuestion["answers"][number] | undefined = next?.answers[place];
    if (!next || !chosen) return null;
    path.push({ question: next.question, answer: chosen.answer });
    end = chosen.ends ?? null;
    next = key.find(({ question }) => question === chosen.next) ?? null;
  }
  return { path, next, end };
}
