import { count } from "./count.ts";
import { normalsCaution } from "./normals.ts";

/** What a caution's sentence needs to know of it. */
interface CautionFacts {
  code: string;
  days?: number;
  filled?: number;
  years?: number;
  seed?: number;
  beds?: readonly string[];
}

const sentences: Readonly<Record<string, (facts: CautionFacts) => string>> = {
  "record-short": ({ days }) =>
    `The weather record has ${count(days!)} days, less than a year: what it says of a year is a guess from a part of one.`,
  "record-filled": ({ filled, days }) =>
    `${count(filled!)} of ${count(days!)} days of the weather record had a gap and were filled, more than one in ten.`,
  "record-generated": ({ years, seed }) =>
    `There was no weather record: ${count(years!)} years were generated from monthly means (seed ${seed}). A record from nearby says more.`,
  "no-whole-year": () =>
    "The weather record holds no whole calendar year, so no middle, dry or wet year can be told.",
  "today-unknown": ({ beds }) =>
    `How ${names(beds!)} ${beds!.length === 1 ? "is" : "are"} watered today is not known; what ${beds!.length === 1 ? "it needs" : "they need"} stands in, and no saving is claimed from ${beds!.length === 1 ? "it" : "them"}.`,
  "own-water": ({ beds }) =>
    `${names(beds!)} ${beds!.length === 1 ? "has" : "have"} water of ${beds!.length === 1 ? "its" : "their"} own, which counts in no figure of mains or tank water.`,
  "shade-by-radiation": ({ beds }) =>
    `The record has sun but no temperatures, so the shade on ${names(beds!)} is taken in proportion to sunshine (Hargreaves 1975).`,
  "local-rules-first": () => "Local watering restrictions and codes come before anything said here.",
  "survey-safety": () =>
    "Groups that measure the grounds: gloves, sun cover and an adult in sight; no ladders, no roofs, no traffic.",
  "tank-not-for-drinking": () =>
    "Tank water is not for drinking unless it is treated and approved by the health authority.",
  "no-cross-connection": () =>
    "Tank water must never be able to flow into the mains: the join and its backflow protection are a licensed plumber’s work.",
  "tank-work": () =>
    "A full tank weighs a tonne for each 1,000 L: its footing, and the electrics of its pump, are for those licensed for them. Never enter a tank.",
  "roof-work": () => "Work on roofs and ladders is for those trained and equipped for it.",
  "standing-water": () => "Keep screens on every opening of a tank, or mosquitoes breed in it.",
  "tank-spray": () =>
    "Water that stood warm can carry legionella: do not spray it where people breathe it in; use drip, or water when nobody is near.",
  "clay-beyond-fit": () =>
    "A soil has more than 60% clay, beyond what the equations used for it were fitted on (Saxton and Rawls 2006).",
};

/** The sentence of a caution. */
export function cautionSentence(caution: CautionFacts): string {
  const say = sentences[caution.code];
  return say ? say(caution) : normalsCaution(caution);
}

/** Every caution that has a sentence. */
export const cautionsWithWords = Object.keys(sentences);

function names(beds: readonly string[]): string {
  return new Intl.ListFormat("en", { type: "conjunction" }).format(beds);
}
