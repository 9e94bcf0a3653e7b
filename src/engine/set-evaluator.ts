import { asked_L, type BedVariant, bedVariant, type WateredBy } from "./bed-variant.ts";
import type { Frame } from "./frame.ts";
import { addTally, blankTally, type Tally, tallyOf } from "./tally.ts";
import { drawVariant, runGroup, type TankInputs, tankInputs } from "./tank-inputs.ts";
import { type MeasureSet, onceEach, type VariedGrounds } from "./varied.ts";

/** Mains water of any set of measures. Each bed, roof and tank is run once for each way that it can be. */
export interface SetEvaluator {
  /** Mains water with the set done and beds watered in the way said. */
  mains(set: MeasureSet, by: WateredBy): Tally;
  /** A bed as it is in a set. */
  bed(place: number, set: MeasureSet): BedVariant;
  /** Every tank, or joined tanks, with what comes in and what is asked of it in a set. */
  tanks(set: MeasureSet, by: WateredBy): TankInputs[];
}

/** @throws ShadeNeedsSky where a shaded bed's record has neither temperatures nor sun */
export function setEvaluator(grounds: VariedGrounds, frame: Frame): SetEvaluator {
  const { days } = frame.weather.calendar;

  const beds = grounds.beds.map((part) => onceEach(part.changedBy, (set) => bedVariant(part.in(set), frame)));
  const bedTallies = (["habit", "need", "least"] as const).map((by) =>
    grounds.beds.map((part, k) =>
      onceEach(part.changedBy, (set) => {
        const variant = beds[k]!(set);
        const { supply } = variant.bed.watering;
        return supply === "mains-only" ? tallyOf(asked_L(variant, by), frame) : null;
      }),
    ),
  );
  const mainsDraws = grounds.mainsDraws.map((part) =>
    onceEach(part.changedBy, (set) => {
      const use = drawVariant(part.in(set), frame);
      return use && tallyOf(use.asks_L, frame);
    }),
  );
  const leaks = onceEach(grounds.leaks_L_day.changedBy, (set) =>
    tallyOf(new Float64Array(days).fill(grounds.leaks_L_day.in(set)), frame),
  );
  const inputs = grounds.tanks.map((tanks) => tankInputs(tanks, beds, frame));
  const tankTallies = (["habit", "need", "least"] as const).map((by) =>
    grounds.tanks.map(({ changedBy }, k) =>
      onceEach(changedBy, (set) => {
        const sum = blankTally(frame);
        for (const group of inputs[k]!(set, by)) addTally(sum, runGroup(group, frame));
        return sum;
      }),
    ),
  );

  return {
    mains(set, by) {
      const at = by === "habit" ? 0 : by === "need" ? 1 : 2;
      const sum = leaks(set).slice();
      for (const tally of bedTallies[at]!) addIf(sum, tally(set));
      for (const tally of mainsDraws) addIf(sum, tally(set));
      for (const tally of tankTallies[at]!) addTally(sum, tally(set));
      return sum;
    },
    bed: (place, set) => beds[place]!(set),
    tanks: (set, by) => inputs.flatMap((of) => of(set, by)),
  };
}

function addIf(sum: Tally, more: Tally | null): void {
  if (more) addTally(sum, more);
}
