import { type TextureClass, textureClass } from "../../engine/texture-class.ts";
import { type Figure, propagate } from "./figure.ts";

export interface JarShares {
  sand_pct: Figure;
  silt_pct: Figure;
  clay_pct: Figure;
}

/**
 * What a jar cannot tell, in percentage points of each layer: silt and clay settle looser than sand, and the
 * borders are judged. Ours, beside the error of the ruler.
 */
const ofTheMethod_pct = 5;

/** Shares of three settled layers, from how thick each is. */
export function jarShares(sand_mm: Figure, silt_mm: Figure, clay_mm: Figure): JarShares {
  const layers = [sand_mm, silt_mm, clay_mm];
  const share = (which: number) => {
    const read = propagate((mm) => (100 * mm[which]!) / (mm[0]! + mm[1]! + mm[2]!), layers);
    return { ...read, standardError: Math.hypot(read.standardError, ofTheMethod_pct) };
  };
  return { sand_pct: share(0), silt_pct: share(1), clay_pct: share(2) };
}

/** The class that sand and clay fall in, first, and those within a standard error of them. */
export function texturesWithin(sand: Figure, clay: Figure): TextureClass[] {
  const classes = new Set([textureClass(sand.figure, clay.figure)]);
  for (let turn = 0; turn < 16; turn++) {
    const angle = (turn * Math.PI) / 8;
    const clay_pct = clamp(clay.figure + clay.standardError * Math.sin(angle), 100);
    const sand_pct = clamp(sand.figure + sand.standardError * Math.cos(angle), 100 - clay_pct);
    classes.add(textureClass(sand_pct, clay_pct));
  }
  return [...classes];
}

function clamp(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}
