import { thirstKey } from "../../tables/keys.ts";
import { exactly } from "./figure.ts";
import { type Key, walkKey } from "./key.ts";
import { interceptShares, transectShares } from "./transect.ts";
import { impossible, type Outcome, type Read, type Way, worked } from "./way.ts";

/** A way that ends at a word by a key; the readings are the places of the answers, 0 the first. */
export function byKey(key: Key, field: string): (read: Read) => Outcome {
  return (read) => {
    const walk = walkKey(key, read.raw("answer"));
    if (!walk) return impossible("answer-not-there");
    if (!walk.end) return impossible("key-not-finished", { question: walk.next?.question ?? "" });
    const { is, reason, certainty } = walk.end;
    return {
      figures: {},
      words: { [field]: is },
      notes: [{ code: `because-${reason}`, facts: { certainty } }],
    };
  };
}

const key: Way = {
  code: "thirst-key",
  part: "thirst",
  slots: [{ name: "answer", unit: "code", list: true }],
  work: byKey(thirstKey, "thirst"),
};

/** Number of points along the tape on each planting, in the bed's order. */
const alongTape: Way = {
  code: "transect-points",
  part: "thirst",
  slots: [{ name: "points-on-planting", unit: "count", list: true }],
  work(read) {
    const counts = read.raw("points-on-planting");
    const all = counts.reduce((sum, count) => sum + count, 0);
    if (all === 0) return impossible("no-points");
    const shares = transectShares(counts);
    const notes = all < 20 ? [{ code: "few-points", facts: { found: all, wanted: 20 } }] : [];
    return worked(Object.fromEntries(shares.map((share, i) => [`plantings[${i}].share`, share])), notes);
  },
};

/** Stretches of tape: from, to, and the number of the planting below, 1 the first. */
const stretches: Way = {
  code: "transect-stretches",
  part: "thirst",
  slots: [{ name: "from-to-planting", unit: "m", list: true, together: 3, each: ["m", "m", "count"] }],
  work(read) {
    const flat = read.raw("from-to-planting");
    const pieces = Array.from({ length: flat.length / 3 }, (_, i) => ({
      from: flat[3 * i]!,
      to: flat[3 * i + 1]!,
      planting: Math.round(flat[3 * i + 2]!) - 1,
    }));
    if (pieces.length === 0) return impossible("no-points");
    if (pieces.some(({ planting }) => planting < 0)) return impossible("planting-from-one");
    // the error of a share along one tape is where the tape was laid, which one tape cannot tell
    const shares = interceptShares(pieces).map((share, i) => [`plantings[${i}].share`, exactly(share)]);
    return worked(Object.fromEntries(shares), [{ code: "one-tape" }]);
  },
};

export const thirstWays: readonly Way[] = [key, alongTape, stretches];
