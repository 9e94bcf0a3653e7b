import { type SVGTemplateResult, svg } from "lit";

/** A leaf from its stalk at 0, 0 along x, to be turned and placed. */
const blade = (length: number, width: number) =>
  `M0 0Q${length * 0.4} ${-width} ${length} 0Q${length * 0.4} ${width} 0 0Z`;

const placed = (x: number, y: number, turn: number, length: number, width: number, look = "leaf") =>
  svg`<path class=${look} transform="translate(${x} ${y}) rotate(${turn})" d=${blade(length, width)} />`;

const ground = svg`<path class="ink" d="M8 58H72" />`;

/** A plant standing on the ground: its stem, and leaves at the angles given. */
const plant = (
  x: number,
  leaves: readonly number[],
  look = "leaf",
  lean = 0,
) => svg`<path class="ink" d="M${x} 58Q${x} 36 ${x + lean} 20" />
  ${leaves.map((turn, i) => placed(x + lean * (0.25 + 0.22 * i), 46 - i * 8.5, i % 2 === 0 ? turn : 180 - turn, 20, 7, look))}`;

const upright = [-38, -38, -42, -50];
const hanging = [52, 56, 60, 66];

const fleshy = svg`${[-90, -128, -52, -160, -20].map((turn) => placed(40, 52, turn, turn === -90 ? 40 : 34, 11))}
  ${ground}`;

const hairs = Array.from({ length: 11 }, (_, i) => {
  const x = 16 + i * 5;
  const lift = 13 * Math.sin((Math.PI * (i + 0.8)) / 12.5);
  return svg`<path class="ink thin" d="M${x} ${33 - lift}l-2 -6M${x} ${33 + lift}l-2 6" />`;
});
const hairy = svg`${placed(10, 33, 0, 60, 26)}<path class="ink thin" d="M10 33H66" />${hairs}`;

const needles = svg`<path class="ink" d="M12 58Q36 40 66 10" />
  ${Array.from({ length: 12 }, (_, i) => {
    const [x, y] = [16 + i * 4.1, 55 - i * 3.7];
    return svg`<path class="ink strong" d="M${x} ${y}l9 3M${x} ${y}l-2 -10" />`;
  })}`;

const broad = svg`<path class="leaf" d="M40 62C2 54 4 18 40 4C76 18 78 54 40 62Z" />
  <path class="ink thin" d="M40 62V12M40 52L18 40M40 52L62 40M40 40L18 28M40 40L62 28M40 28L24 18M40 28L56 18" />`;

const hills = svg`<path class="ink" d="M4 54Q20 22 38 38Q52 16 76 54" />
  ${[
    [16, 50],
    [24, 44],
    [46, 46],
    [58, 50],
    [52, 38],
    [34, 52],
  ].map(([x, y]) => svg`<circle class="solid" cx=${x} cy=${y} r="1.6" />`)}
  <circle class="ink" cx="64" cy="14" r="7" />`;

const tree = (x: number, high: number) =>
  svg`<path class="leaf" d="M${x} ${58 - high}c-14 2 -16 18 -10 24c-2 8 6 12 10 10c4 2 12 -2 10 -10c6 -6 4 -22 -10 -24Z" /><path class="ink" d="M${x} ${90 - high}V58" />`;
const wood = svg`${tree(20, 44)}${tree(60, 46)}${tree(40, 54)}${ground}`;

const meadow = svg`${Array.from({ length: 17 }, (_, i) => {
  const x = 10 + i * 3.8;
  const lean = ((i * 7) % 11) - 5;
  return svg`<path class="ink thin" d="M${x} 58q0 -14 ${lean} ${-22 - ((i * 5) % 14)}" />`;
})}
  ${[
    [22, 22],
    [40, 16],
    [58, 24],
  ].map(([x, y]) => svg`<circle class="leaf" cx=${x} cy=${y} r="4" />`)}${ground}`;

const wet = svg`${[18, 26, 58].map((x) => svg`<path class="ink" d="M${x} 56V16" /><path class="solid" d="M${x - 2.4} 12h4.8v14h-4.8z" />`)}
  ${[50, 57].map((y, i) => svg`<path class="tank-line" d="M${6 + i * 4} ${y}q6 -5 12 0t12 0t12 0t12 0t12 0" />`)}`;

const drawings: Readonly<Record<string, SVGTemplateResult>> = {
  fleshy,
  "grey-or-hairy": hairy,
  "small-and-hard": needles,
  "large-and-thin": broad,
  untouched: svg`${plant(40, upright)}${ground}`,
  duller: svg`${plant(40, [-20, 8, -34, -44])}${placed(56, 55, -8, 14, 5)}${ground}`,
  "drooped-and-came-back": svg`${plant(22, hanging.slice(0, 3), "leaf", -6)}${plant(60, upright.slice(0, 3))}${ground}`,
  browned: svg`${plant(40, hanging, "solid", 10)}${ground}`,
  "dry-hills-or-sand": hills,
  woodland: wood,
  meadow,
  "wet-ground": wet,
  "by-afternoon": svg`${plant(34, hanging, "leaf", 4)}${ground}<circle class="ink" cx="66" cy="30" r="7" />`,
  "only-when-dry": svg`${plant(40, hanging, "leaf", 4)}${ground}<path class="ink thin" d="M14 58l4 6M30 58l-3 7M52 58l4 7M66 58l-4 6" />`,
};

/** What an answer of the thirst key looks like; nothing where only words tell. */
export function plantDrawing(answer: string): SVGTemplateResult | null {
  const drawing = drawings[answer];
  if (!drawing) return null;
  return svg`<svg viewBox="0 0 80 68" width="80" height="68" aria-hidden="true">${drawing}</svg>`;
}
