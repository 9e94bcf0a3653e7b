import { svg, type TemplateResult } from "lit";
import type { Thirst } from "../../src/survey/words.ts";

/** What plants of a thirst look like, drawn by a pen: leaf, stance, and how much ground is bare between them. */
export const pictures: Readonly<Record<Thirst, () => TemplateResult>> = {
  "very-low": () => drawn([...rosette(38, 74, 23, 9), ...cushion(104, 74, 17), ...stones()]),
  low: () => drawn([...bush(40, 74, 9, 44), ...bush(96, 74, 8, 38), ...spires(70, 74, 5, 50)]),
  moderate: () => drawn([...flowers(30, 74, 5, 46), ...leafy(76, 74, 7, 40), ...flowers(116, 74, 4, 36)]),
  high: () => drawn([...broad(36, 75, 6, 42), ...broad(86, 75, 7, 50), ...blades(112, 138, 75)]),
};

function drawn(paths: readonly string[]): TemplateResult {
  return svg`<svg viewBox="0 18 140 62" aria-hidden="true" focusable="false">
    ${paths.map((d) => svg`<path d=${d} />`)}
    <path class="ground" d="M0 75.5H140" />
  </svg>`;
}

const round = (x: number) => Math.round(x * 10) / 10;

/** A leaf from a foot to a tip, as wide as told, with or without its middle vein. */
function leaf(x: number, y: number, angle_deg: number, length: number, width: number, vein = false): string {
  const a = (angle_deg * Math.PI) / 180;
  const [dx, dy] = [Math.sin(a), -Math.cos(a)];
  const tip = [x + dx * length, y + dy * length] as const;
  const side = (s: number) =>
    [x + dx * length * 0.5 - dy * width * s, y + dy * length * 0.5 + dx * width * s] as const;
  const at = (point: readonly [number, number]) => `${round(point[0])} ${round(point[1])}`;
  const outline = `M${round(x)} ${round(y)}Q${at(side(1))} ${at(tip)}Q${at(side(-1))} ${round(x)} ${round(y)}`;
  return vein
    ? `${outline}M${round(x)} ${round(y)}L${round(x + dx * length * 0.8)} ${round(y + dy * length * 0.8)}`
    : outline;
}

/** Thick pointed leaves from one foot. */
function rosette(x: number, y: number, length: number, leaves: number): string[] {
  return Array.from({ length: leaves }, (_, i) => {
    const angle = -78 + (156 * i) / (leaves - 1);
    return leaf(x, y, angle, length * (1 - (0.25 * Math.abs(angle)) / 90) * 1.5, 5);
  });
}

/** A low grey cushion of dots and dashes. */
function cushion(x: number, y: number, size: number): string[] {
  const dashes = Array.from({ length: 26 }, (_, i) => {
    const angle = Math.PI * ((i % 13) / 12);
    const far = size * (i < 13 ? 1 : 0.62);
    const [px, py] = [x - Math.cos(angle) * far, y - Math.sin(angle) * far * 0.75 - 1];
    return `M${round(px)} ${round(py)}l${round(-Math.cos(angle) * 3.2)} ${round(-Math.sin(angle) * 3.2)}`;
  });
  return [`M${x - size} ${y}A${size} ${size * 0.75} 0 0 1 ${x + size} ${y}`, ...dashes];
}

function stones(): string[] {
  return [
    "M66 75a5 3.4 0 0 1 10 0",
    "M78 75a3 2 0 0 1 6 0",
    "M8 75a3.6 2.6 0 0 1 7.2 0",
    "M126 75a4 2.6 0 0 1 8 0",
  ];
}

/** Woody stems with small hard leaves in pairs. */
function bush(x: number, y: number, stems: number, height: number): string[] {
  return Array.from({ length: stems }, (_, i) => {
    const lean = (i - (stems - 1) / 2) / stems;
    const top = [x + lean * height * 1.15, y - height * (1 - 0.5 * lean * lean * 4 * 0.35)] as const;
    const stem = `M${round(x + lean * 5)} ${y}Q${round(x + lean * 14)} ${round(y - height * 0.5)} ${round(top[0])} ${round(top[1])}`;
    const pairs = Array.from({ length: 6 }, (_leaf, k) => {
      const t = 0.34 + k * 0.13;
      const [px, py] = [x + lean * 5 + (top[0] - x - lean * 5) * t, y + (top[1] - y) * t];
      return leaf(px, py, -58 + lean * 60, 5, 1.7) + leaf(px, py, 58 + lean * 60, 5, 1.7);
    });
    return stem + pairs.join("");
  });
}

/** Bare flower stalks of a scented shrub. */
function spires(x: number, y: number, stems: number, height: number): string[] {
  return Array.from({ length: stems }, (_, i) => {
    const lean = (i - (stems - 1) / 2) * 5;
    const buds = Array.from({ length: 4 }, (_bud, k) => {
      const py = y - height + k * 4.2;
      const px = x + lean * (1 - (k * 4.2) / height);
      return `M${round(px - 1.7)} ${round(py)}h3.4`;
    });
    return `M${x} ${y}L${round(x + lean)} ${y - height}${buds.join("")}`;
  });
}

/** Soft leaves at the foot, flowers above. */
function flowers(x: number, y: number, stems: number, height: number): string[] {
  const foot = Array.from({ length: stems + 2 }, (_, i) =>
    leaf(x, y, -72 + (144 * i) / (stems + 1), height * 0.5, 5, true),
  );
  const heads = Array.from({ length: stems }, (_, i) => {
    const lean = (i - (stems - 1) / 2) * 8;
    const top = y - height + Math.abs(lean) * 0.4;
    const petals = Array.from({ length: 8 }, (_petal, k) => leaf(x + lean, top, k * 45, 5, 1.8));
    return `M${x} ${y}Q${round(x + lean * 0.2)} ${round(y - height * 0.6)} ${round(x + lean)} ${round(top)}${petals.join("")}`;
  });
  return [...foot, ...heads];
}

/** A clump of middling leaves that hides the ground. */
function leafy(x: number, y: number, leaves: number, height: number): string[] {
  return Array.from({ length: leaves * 2 - 1 }, (_, i) => {
    const angle = -80 + (160 * i) / (leaves * 2 - 2);
    return leaf(x, y, angle, height * (i % 2 === 0 ? 1 : 0.68) * (1 - Math.abs(angle) / 320), 7, true);
  });
}

/** Large thin leaves. */
function broad(x: number, y: number, leaves: number, height: number): string[] {
  return Array.from({ length: leaves }, (_, i) => {
    const angle = -68 + (136 * i) / (leaves - 1);
    return leaf(x, y, angle, height * (1 - Math.abs(angle) / 260), 17, true);
  });
}

/** Thick grass. */
function blades(from: number, to: number, y: number): string[] {
  return Array.from({ length: Math.floor((to - from) / 2) }, (_, i) => {
    const x = from + i * 2;
    return `M${x} ${y}q${(i % 3) - 1} -7 ${((i * 5) % 7) - 3} ${-10 - ((i * 7) % 6)}`;
  });
}
