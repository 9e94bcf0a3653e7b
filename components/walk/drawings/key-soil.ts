import { type SVGTemplateResult, svg } from "lit";

/** Finger over thumb, seen from the side, and what is pressed out between them. */
const hand = (between: SVGTemplateResult | string) => svg`<path class="leaf" d="M1 12H27q10 1 12 8t-8 9H1" />
  ${between}
  <path class="leaf" d="M1 58Q12 54 20 45l6 -7q5 -5 10 -1t0 11L24 62H1" />
  <path class="ink thin" d="M30 15q5 2 5 6M29 43l4 -4" />`;

const ribbon = (length: number) =>
  hand(
    svg`<path class="leaf" d="M24 29H40q${length * 0.7} 0 ${length} ${length * 0.6}l-6 4q${-length * 0.4} ${-length * 0.5} ${-length * 0.9 - 4} ${-length * 0.35 - 1}H24Z" />`,
  );

const crumbs = [
  [18, 50],
  [28, 54],
  [40, 50],
  [50, 55],
  [60, 51],
  [34, 44],
  [46, 42],
  [24, 41],
  [54, 45],
];

/** An even scatter without a pattern. */
const part = (i: number, step: number) => ((i + 1) * step) % 1;

const pinch = (dots: number, size: number) => svg`<ellipse class="leaf" cx="40" cy="38" rx="30" ry="20" />
  ${Array.from({ length: dots }, (_, i) => svg`<circle class="solid" cx=${18 + 44 * part(i, 0.618034)} cy=${26 + 24 * part(i, 0.7548777)} r=${size} />`)}`;

const drawings: Readonly<Record<string, SVGTemplateResult>> = {
  "falls-apart": svg`${crumbs.map(([x, y], i) => svg`<circle class="leaf" cx=${x} cy=${y} r=${3 + (i % 3) * 1.6} />`)}`,
  stays: svg`<circle class="leaf" cx="40" cy="40" r="21" /><path class="ink thin" d="M28 34q5 -6 12 -6M46 50q6 -3 8 -10" />`,
  none: hand(
    svg`${[
      [42, 40],
      [48, 47],
      [40, 50],
      [52, 54],
    ].map(([x, y]) => svg`<circle class="leaf" cx=${x} cy=${y} r="2.6" />`)}`,
  ),
  "under-25": ribbon(9),
  "25-to-50": ribbon(22),
  "over-50": ribbon(40),
  gritty: pinch(26, 1.9),
  smooth: pinch(0, 1),
  neither: pinch(12, 1.2),
  "like-flour-not-sticky": svg`<path class="leaf" d="M12 58Q40 8 68 58Z" />${Array.from({ length: 14 }, (_, i) => svg`<circle class="solid" cx=${24 + ((i * 11) % 32)} cy=${38 + ((i * 7) % 18)} r="0.8" />`)}`,
  "a-little-sticky": svg`<path class="leaf" d="M14 16q10 -8 18 2l-2 14q6 6 4 16l-14 4q-12 -14 -6 -36zM66 16q-10 -8 -18 2l2 14q-6 6 -4 16l14 4q12 -14 6 -36z" /><path class="ink thin" d="M31 34q9 5 18 0M32 42q8 4 16 0" />`,
};

/** What an answer of the soil key looks like in the hand. */
export function soilDrawing(answer: string): SVGTemplateResult | null {
  const drawing = drawings[answer];
  if (!drawing) return null;
  return svg`<svg viewBox="0 0 80 68" width="80" height="68" aria-hidden="true">${drawing}</svg>`;
}
