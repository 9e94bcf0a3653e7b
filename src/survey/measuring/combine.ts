import { textures, thirsts } from "../words.ts";
import type { Figure } from "./figure.ts";
import { deviation } from "./repeats.ts";

/** What several groups found of one thing: the middle one stands, and the spread widens it. */
export interface CombinedFigure extends Figure {
  lowest: number;
  highest: number;
  groups: number;
}

/** Variance of the median of many normal readings over that of their mean. */
const medianCost = Math.PI / 2;

function middleOf(sorted: readonly number[]): number {
  const half = sorted.length / 2;
  return sorted.length % 2 === 1 ? sorted[Math.floor(half)]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

/**
 * Median of the groups' figures. Standard error: the groups' spread over √n, for a median dearer by √(π/2) from
 * three on; never less than the middle of what the groups gave for their own, since groups share an instrument
 * and its faults.
 * @source asymptotic variance of a median, Kendall and Stuart, The Advanced Theory of Statistics, volume 1
 */
export function combineFigures(found: readonly Figure[]): CombinedFigure {
  const figures = found.map(({ figure }) => figure).sort((a, b) => a - b);
  const own = middleOf(found.map(({ standardError }) => standardError).sort((a, b) => a - b));
  const cost = found.length > 2 ? Math.sqrt(medianCost) : 1;
  const spread = (cost * deviation(figures)) / Math.sqrt(found.length);
  return {
    figure: middleOf(figures),
    standardError: Math.max(own, spread),
    lowest: figures[0]!,
    highest: figures.at(-1)!,
    groups: found.length,
  };
}

export interface CombinedWord {
  word: string;
  /** The words found, each once, in their order. */
  found: string[];
  groups: number;
}

/**
 * Thirst runs from least to most and textures from coarse to fine: the middle word stands, the later of two as
 * near (the thirstier, the finer). Other words: the one said most often, the first of two as often.
 */
export function combineWords(found: readonly string[]): CombinedWord {
  const order = [thirsts, textures].find((list) =>
    found.every((word) => (list as readonly string[]).includes(word)),
  );
  if (!order) {
    const often = (word: string) => found.filter((other) => other === word).length;
    const distinct = [...new Set(found)];
    const word = distinct.reduce((best, next) => (often(next) > often(best) ? next : best));
    return { word, found: distinct, groups: found.length };
  }
  const places = found.map((word) => (order as readonly string[]).indexOf(word)).sort((a, b) => a - b);
  const words = places.map((place) => order[place]!);
  return {
    word: words[Math.floor(words.length / 2)]!,
    found: [...new Set(words)],
    groups: found.length,
  };
}
