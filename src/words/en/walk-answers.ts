import { count } from "./count.ts";
import { kindWords, thirstWords } from "./page.ts";

/** What a stop's field holds, as people say it: by kind of stop and value. */
const mulches: Readonly<Record<string, string>> = {
  "wood-chip": "wood chip",
  bark: "bark",
  straw: "straw",
  "leaf-litter": "leaf litter",
  compost: "compost",
  stone: "stone",
  sheet: "sheet",
  none: "bare soil",
};

const roofs: Readonly<Record<string, string>> = {
  metal: "metal",
  tile: "tile",
  concrete: "concrete",
  membrane: "flat roof with a membrane",
  shingle: "shingle",
  green: "planted roof",
};

export const mulchWords = mulches;
export const roofWords = roofs;
export const plantKinds = kindWords;

export function thirstSaid(thirst: string): string {
  return `watered ${thirstWords[thirst] ?? thirst}`;
}

export function textureSaid(texture: string): string {
  return texture.replaceAll("-", " ");
}

/** A value in words; null where there is nothing to say. */
export function answerWords(kind: string, value: unknown): string | null {
  if (Array.isArray(value)) return listSaid(kind, value.length);
  if (typeof value === "boolean") return value ? "in use" : "not used";
  if (typeof value !== "string") return null;
  if (kind === "thirst") return thirstSaid(value);
  if (kind === "soil") return textureSaid(value);
  if (kind === "mulch") return mulches[value] ?? value;
  if (kind === "roof-material") return roofs[value] ?? value;
  return value;
}

function listSaid(kind: string, length: number): string {
  if (kind === "shade")
    return length === 0
      ? "open sky"
      : length === 1
        ? "one thing in the way"
        : `${count(length)} things in the way`;
  return length === 1 ? "one reading" : `${count(length)} readings`;
}

export const methodWords: Readonly<Record<string, string>> = {
  drip: "drip line on the ground",
  "subsurface-drip": "drip line under the ground",
  spray: "spray heads that do not turn",
  rotor: "heads that turn",
  sprinkler: "sprinkler on a hose, moved about",
  hose: "hose in the hand",
  can: "watering can",
  none: "nothing but rain",
};
