import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { estimateRuns } from "../../src/engine/estimate.ts";
import { frameOf } from "../../src/engine/frame.ts";
import { setEvaluator } from "../../src/engine/set-evaluator.ts";
import { byYear_L, total_L } from "../../src/engine/tally.ts";
import { fillGaps } from "../../src/engine/weather/gaps.ts";
import { prepareWeather } from "../../src/engine/weather/series.ts";
import { applyMeasures } from "../../src/survey/measures/apply.ts";
import { variedGrounds } from "../../src/survey/measures/varied.ts";
import { resolve } from "../../src/survey/resolve.ts";
import { asRead, plainRecord, siteWithMeasures } from "../helpers/sites.ts";

const record = fillGaps(plainRecord(2));

describe("mains water of a set of measures, from parts kept and from the survey changed and run whole", () => {
  test("are the same for every set", () => {
    fc.assert(
      fc.property(siteWithMeasures(), fc.infiniteStream(fc.boolean()), (site, coins) => {
        const survey = asRead(site);
        const measures = survey.measures!;
        const chosen = measures.map((measure) => ({ ...measure, chosen: true }));
        const weather = prepareWeather(record, resolve(survey).grounds.place);
        const frame = frameOf([], weather);
        const evaluator = setEvaluator(
          variedGrounds({ ...survey, measures: chosen }, chosen, undefined),
          frame,
        );
        for (let trial = 0; trial < 4; trial++) {
          const groups = new Set<string>();
          const set = Uint8Array.from(chosen, ({ oneOf }) => {
            const isIn = trial === 0 || coins.next().value === true;
            if (!isIn || (oneOf !== undefined && groups.has(oneOf))) return 0;
            if (oneOf !== undefined) groups.add(oneOf);
            return 1;
          });
          const ids = chosen.filter((_, k) => set[k] === 1).map(({ id }) => id);
          const { grounds } = resolve(applyMeasures({ ...survey, measures: chosen }, ids));
          const { mains } = estimateRuns(grounds, weather).outcome;
          const [need, habit] = [evaluator.mains(set, "need"), evaluator.mains(set, "habit")];
          expect(total_L(need)).toBeCloseTo(mains.need_L, 4);
          expect(total_L(habit)).toBeCloseTo(mains.today_L, 4);
          mains.byYear.forEach(({ need_L, today_L }, k) => {
            expect(byYear_L(need)[k]).toBeCloseTo(need_L, 4);
            expect(byYear_L(habit)[k]).toBeCloseTo(today_L, 4);
          });
        }
      }),
      { numRuns: 25 },
    );
  });
});
