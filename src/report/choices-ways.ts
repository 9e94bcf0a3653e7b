import { changedRecord } from "../engine/weather/changed.ts";
import { fillGaps } from "../engine/weather/gaps.ts";
import { applyMeasures } from "../survey/measures/apply.ts";
import type { ChoicesContext } from "./choices-context.ts";
import type { WeatherQuestion } from "./choices-weather.ts";
import { type WorkedOut, workOutFilled } from "./work-out.ts";

/** How many are kept: a site worked out over fifty years holds tens of megabytes. */
const mostKept = 3;

/**
 * The whole site worked out anew, with a set of measures done or under other weather, so that a figure of either opens
 * down to a day. Made when first asked for; the last few are kept.
 */
export class Ways {
  readonly #kept = new Map<string, WorkedOut>();

  /** Watered to need it is the set done; as today, the set done and habits kept. */
  with({ worked, measures }: ChoicesContext, set: Uint8Array): WorkedOut {
    const ids = measures.filter((_, k) => set[k] === 1).map(({ id }) => id);
    return this.#once(`with ${ids.join(" ")}`, () => {
      const all = worked.survey.measures ?? [];
      // a use that a measure may move on to a tank counts as mains water until then; nothing else is planned
      const measuresLeft = all.map((measure) => ({ ...measure, chosen: measure.addDraw !== undefined }));
      const survey = applyMeasures({ ...worked.survey, measures: measuresLeft }, ids);
      return workOutFilled(survey, worked.filled, { notes: worked.notes });
    });
  }

  under({ worked }: ChoicesContext, { code, change }: WeatherQuestion): WorkedOut {
    return this.#once(`under ${code} ${JSON.stringify(change)}`, () =>
      workOutFilled(worked.survey, fillGaps(changedRecord(worked.filled, change)), { notes: worked.notes }),
    );
  }

  /** A changed quote makes another survey of the same water: what was worked out serves on. */
  #once(key: string, work: () => WorkedOut): WorkedOut {
    const found = this.#kept.get(key) ?? work();
    this.#kept.delete(key);
    this.#kept.set(key, found);
    const [oldest] = this.#kept.keys();
    if (this.#kept.size > mostKept && oldest !== undefined) this.#kept.delete(oldest);
    return found;
  }
}
