import { type SVGTemplateResult, svg } from "lit";
import type { RoundsWeek, RoundsWeekBed } from "../../src/report/week-schema.ts";
import { soilWords } from "../../src/words/en/rounds-page.ts";
import type { Formatter } from "../../src/words/format.ts";
import { fills } from "../charts/textures.ts";

/** A bed's soil as the week begins: shares of what the roots' soil holds for plants, 0–1. */
export interface SoilNow {
  id: string;
  /** Water in it: surely, likely, at most. */
  low: number;
  middle: number;
  high: number;
  /** Below this the plants suffer. */
  bears: number;
  missing_mm: RoundsWeekBed["missing_mm"];
  holds_mm: number;
}

/** Each bed's soil, the emptiest beside what its plants bear first. */
export function soilsNow({ beds }: RoundsWeek): SoilNow[] {
  const share = (mm: number, holds: number) => (holds > 0 ? Math.min(1, Math.max(0, 1 - mm / holds)) : 0);
  return beds
    .map(
      ({ id, missing_mm, holds_mm, mayLose_mm }): SoilNow => ({
        id,
        low: share(missing_mm.high, holds_mm),
        middle: share(missing_mm.middle, holds_mm),
        high: share(missing_mm.low, holds_mm),
        bears: share(mayLose_mm, holds_mm),
        missing_mm,
        holds_mm,
      }),
    )
    .sort((a, b) => a.middle - a.bears - (b.middle - b.bears));
}

/** The soil as a trough cut lengthwise: water that is surely there, water that may be, and the plants' mark. */
export function soilStrip(soil: SoilNow, name: string, width: number, say: Formatter): SVGTemplateResult {
  const tall = 20;
  const inner = width - 2;
  const x = (share: number) => 1 + share * inner;
  const mark = x(soil.bears);
  return svg`<svg viewBox="0 0 ${width} ${tall + 8}" width=${width} height=${tall + 8} role="img"
    aria-label=${soilWords.about(name, soil.missing_mm, soil.holds_mm, say)}>
    <rect x="1" y="4" width=${Math.max(0, x(soil.high) - 1)} height=${tall} fill=${fills.tankBeyond}></rect>
    <rect x="1" y="4" width=${Math.max(0, x(soil.low) - 1)} height=${tall} fill=${fills.tank}></rect>
    <line class="shore" x1=${x(soil.middle)} x2=${x(soil.middle)} y1="4" y2=${tall + 4}></line>
    <path class="wall" d="M1,2 V${tall + 4} H${width - 1} V2"></path>
    <path class="bears" d="M${mark},0 V${tall + 8}"></path>
  </svg>`;
}
