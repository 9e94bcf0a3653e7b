import type { AnswerView } from "../../src/report/view.ts";

/** Address of the working behind a slot of the answer's sentences; undefined where the page has one of its own. */
export function addressOf(slot: string, { mains }: AnswerView): string | undefined {
  const { dry, wet } = mains;
  const addresses: Readonly<Record<string, string | undefined>> = {
    "give-up": "mains/give-up",
    today: "mains/today",
    need: "mains/need",
    plan: "mains/plan",
    tanks: "mains/tanks",
    unknown: "mains/unknown",
    dry: dry ? `mains/give-up/${dry.year}` : undefined,
    wet: wet ? `mains/give-up/${wet.year}` : undefined,
    "dry-need": dry ? `mains/need/${dry.year}` : undefined,
    "wet-need": wet ? `mains/need/${wet.year}` : undefined,
  };
  return addresses[slot];
}
