import { oneOf } from "./lists.ts";
import { reasonWords } from "./walk-keys.ts";
import { type Show, showMetric } from "./walk-show.ts";
import { slotLabel } from "./walk-slots.ts";

/** A code about readings with the facts of its sentence. */
interface NoteFacts {
  code: string;
  facts?: Readonly<Record<string, number | string>>;
}

type Facts = Readonly<Record<string, number | string>>;
type Sentence = (facts: Facts, show: Show) => string;

const n = (facts: Facts, name: string) => Number(facts[name]);
const textures = (facts: Facts, name: string) =>
  String(facts[name])
    .split(",")
    .map((word) => word.replaceAll("-", " "));

/** Why readings cannot be of such a thing, and what to look at. */
const impossible: Readonly<Record<string, Sentence>> = {
  "side-too-long": (facts, show) =>
    `No triangle closes: one side is ${show(n(facts, "longest_m"), "m")}, the other two together only ${show(n(facts, "others_m"), "m")}. Tape them again.`,
  "cut-too-large": (facts, show) =>
    `The missing corner (${show(n(facts, "cutLong"), "m")} by ${show(n(facts, "cutWide"), "m")}) is as large as the whole. Tape it again.`,
  "too-few-offsets": (facts) =>
    `${n(facts, "found")} measured across; at least ${n(facts, "wanted")} are needed, the two ends included.`,
  "along-not-rising": () => "The places along the line go back. Write them in order from one end.",
  "sides-cross": (facts) =>
    `Side ${n(facts, "one")} and side ${n(facts, "other")} cross or touch. Mark the corners in order round the edge.`,
  "too-few-corners": (facts) =>
    `${n(facts, "found")} corners marked; a shape has at least ${n(facts, "wanted")}.`,
  "nothing-left": () => "More is taken away than there is. Look which shapes are added and which taken away.",
  "only-areas-add": () => "Only shapes can be added or taken away.",
  "only-areas-are-paced": () => "Only shapes can be paced.",
  "readings-do-not-fit": (facts) =>
    `The readings (${n(facts, "found")}) do not fill the blanks. Look for one left out.`,
  "readings-left-over": (facts) => `${n(facts, "found")} readings are left over.`,
  "reading-missing": (facts) => `${slotLabel("", String(facts.slot))}: a reading is missing.`,
  "not-a-number": (facts) => `${slotLabel("", String(facts.slot))}: a number is needed there.`,
  "below-nothing": (facts) =>
    `${slotLabel("", String(facts.slot))} must be a number of 0 or more. You entered ${n(facts, "found")}.`,
  "nothing-comes-of-it": () =>
    "No figure comes of these readings. Look for a 0, or a reading in the wrong blank.",
  "answer-not-there": () => "That answer is not among the choices of the question.",
  "key-not-finished": () => "There is a question more to answer.",
  "no-points": () => "No points were counted.",
  "planting-from-one": () => "Plantings are numbered from 1.",
  "more-hits-than-points": (facts) =>
    `${n(facts, "hits")} points hit, but only ${n(facts, "points")} were counted in all.`,
  "share-above-one": () => "Cover is at most the whole ground: 100%.",
  "no-layers": () => "All three layers are 0. Measure how thick each one is.",
  "no-fill": () => "No time was written for the water to go in.",
  "nothing-along": () => "A length of 0 cannot be measured against.",
  "no-skyline": () => "No wall or tree was written. Where the sky is open all round, say so instead.",
  "above-overhead": () => "Nothing stands higher than straight overhead: 90°.",
  "bearing-above-360": (facts) => `A compass goes up to 360°. You entered ${n(facts, "found")}.`,
  "no-time": () => "The time is 0.",
  "register-ran-back": (facts) =>
    `The meter read ${n(facts, "before")} before and ${n(facts, "after")} after. Meters do not run back: read it again.`,
  "one-level-only": () => "Time the hose at two levels of the tank, high and low.",
  "no-head-or-flow": () => "One of the timings has no height above the hose’s end, or caught nothing.",
  "too-few-cans": (facts) =>
    `${n(facts, "found")} cans; at least ${n(facts, "wanted")} are needed to speak of a quarter of them.`,
  "cans-empty": () => "Every can is empty.",
  "not-a-week": (facts) =>
    `${n(facts, "found")} days written; a week has seven. Write 0 for a day without watering.`,
  "deeper-than-tank": (facts, show) =>
    `${show(n(facts, "depth_m"), "m")} deep, but the tank is only ${show(n(facts, "most_m"), "m")} deep.`,
  "rise-above-slope": (facts, show) =>
    `The ridge rises ${show(n(facts, "rise_m"), "m")}, more than the slope is long (${show(n(facts, "slope_m"), "m")}).`,
};

/** What to say beside a figure. */
const beside: Readonly<Record<string, Sentence>> = {
  "rule-simpson": () => "Simpson’s rule: the edge bends and the number of measures is odd.",
  "rule-trapezoid": () => "The trapezoid rule: straight from measure to measure.",
  "one-offset-more-for-simpson": () =>
    "With one measure more, an odd number, Simpson’s rule would follow the bend.",
  "potting-mix": () =>
    "Roots go no deeper than the pot, and potting mix holds water its own way (common practice).",
  "few-points": (facts) => `${n(facts, "found")} points are few; ${n(facts, "wanted")} or more say more.`,
  "few-spots": (facts) => `${n(facts, "found")} spots are few; ${n(facts, "wanted")} or more say more.`,
  "one-tape": () => "One tape says little of how sure this is. Lay another elsewhere in the bed.",
  "share-between": (facts, show) =>
    `Between ${show(n(facts, "low"), "share")} and ${show(n(facts, "high"), "share")}, nineteen times in twenty.`,
  "photograph-is-a-help": () =>
    "A help, not the truth: grey, red and dry leaves are missed, weeds are counted, shade fools it. Compare with the bed.",
  "texture-is": (facts) => `This is ${textures(facts, "texture")[0]}.`,
  "texture-may-be": (facts) =>
    `Within what a jar can tell it may also be ${oneOf(textures(facts, "textures"))}.`,
  "one-fill-only": () => "Dry soil drinks the first fill. Fill the ring again until two take about as long.",
  "intake-still-falling": () =>
    "The last fill took longer than the one before: the soil still slows down. Fill it again.",
  "repeat-the-jug": () => "Three jugs are better than one.",
  "line-loses": (facts, show) =>
    `With a second outlet open each gives ${show(n(facts, "share"), "share")} less.`,
  "flow-at-one-metre": (facts, show) =>
    `${show(n(facts, "flow_L_min"), "L/min")} with the water ${show(1, "m")} above the hose’s end; half the height gives seven tenths of it (common practice: the square root).`,
  "not-square-root": (facts, show) =>
    `One timing is ${show(n(facts, "miss"), "share")} off the square-root rule. Was the hose kinked, longer, or turned down?`,
  "drop-size-disputed": (facts, show) =>
    `Sources disagree on the size of a drop: ${show(n(facts, "low"), "L a day")} to ${show(n(facts, "high"), "L a day")}.`,
  "uniformity-between": (facts, show) =>
    `Between ${show(n(facts, "low"), "share")} and ${show(n(facts, "high"), "share")} if other cans had been set, nineteen times in twenty.`,
  "precipitation-rate": (facts, show) => `The sprinklers put on ${show(n(facts, "rate_mm_h"), "mm/h")}.`,
  "few-cans": (facts) =>
    `${n(facts, "found")} cans are few; ${n(facts, "wanted")} or more are common practice.`,
  windy: () => "It was windy: sprinklers spread worse than on a still day.",
  "one-week-only": () => "One week. Ask whether it was a usual one.",
  "a-flush-is": (facts, show) => `A flush is ${show(n(facts, "litres"), "L")}.`,
  "diverter-holds": (facts, show) => `The diverter holds ${show(n(facts, "litres"), "L")}.`,
};

/** The sentence of a note or of a refusal. */
export function noteSentence({ code, facts = {} }: NoteFacts, show: Show = showMetric): string {
  const reason = code.startsWith("because-") ? reasonWords[code.slice("because-".length)] : undefined;
  if (reason) return `${reason} ${sureness(n(facts, "certainty"))}`;
  return (impossible[code] ?? beside[code])!(facts, show);
}

/** Codes that have a sentence. */
export const noteCodes = [...Object.keys(impossible), ...Object.keys(beside)];

function sureness(certainty: number): string {
  if (certainty >= 0.7) return "Fairly sure.";
  return certainty >= 0.5 ? "More likely than not." : "A guess: look again after a dry spell.";
}
