import type { TemplateResult } from "lit";
import type { Outcome } from "../../../src/survey/measuring/way.ts";
import type { Walk } from "../context.ts";
import type { Entry } from "../entry.ts";
import type { Stop } from "../stops.ts";

/** What an aid is given: the entry, and how to tell of a new one. */
export interface AidProps {
  walk: Walk;
  stop: Stop;
  entry: Entry;
  /** The shape of the entry that is being filled. */
  term: number;
  /** The blank that is being filled; null for none. */
  slot: number | null;
  outcome: Outcome | null;
  tell(entry: Entry): void;
}

/** A drawing or a tool beside the blanks of a way. */
export interface Aid {
  show(props: AidProps): TemplateResult;
  /** Blanks that it fills itself; all of them where it stands alone. */
  fills?: readonly string[] | "all";
}
