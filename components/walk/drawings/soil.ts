import { type SVGTemplateResult, svg } from "lit";
import { type TextureClass, textureClass } from "../../../src/engine/texture-class.ts";
import { lengthMark } from "./mark.ts";

/** A jar with its settled layers, to scale among themselves. */
export function jarDrawing(
  layers: readonly [number, number, number],
  names: readonly string[],
): SVGTemplateResult {
  const sum = layers[0] + layers[1] + layers[2];
  const scale = sum > 0 ? 120 / sum : 0;
  const heights = sum > 0 ? layers.map((mm) => mm * scale) : [48, 42, 30];
  let y = 190;
  const drawn = heights.map((high, i) => {
    y -= high;
    const top = y;
    const dots =
      i === 2
        ? []
        : Array.from({ length: i === 0 ? 60 : 40 }, (_, k) => ({
            x: 75 + 90 * fraction(k, 0.618034),
            y: top + 3 + Math.max(1, high - 6) * fraction(k, 0.7548777),
            r: i === 0 ? 1.5 : 0.8,
          }));
    return svg`<path class="ink thin" d="M70 ${top}H170" />
      ${high > 6 ? dots.map((dot) => svg`<circle class="solid" cx=${dot.x} cy=${dot.y} r=${dot.r} />`) : ""}
      ${i === 2 ? svg`<rect class="shade" x="70" y=${top} width="100" height=${high} />` : ""}
      <text class="measure" x="182" y=${top + high / 2 + 5}>${names[i] ?? ""}</text>`;
  });
  return svg`<svg viewBox="0 0 330 204" width="330" height="204" aria-hidden="true">
    ${drawn}
    <path class="ink strong" d="M70 40V182q0 10 10 10h80q10 0 10 -10V40" />
    <path class="ink strong" d="M64 18H176V32H64zM70 32v8M170 32v8" />
    <path class="ink thin" d="M70 56H170" stroke="var(--tank)" />
  </svg>`;
}

/** An even scatter without a pattern: the fraction of multiples of an irrational number. */
const fraction = (k: number, step: number) => ((k + 1) * step) % 1;

/** Corners of each class on the triangle, percent sand and clay, from the limits of the twelve classes. */
export const triangleOutlines: Readonly<Record<TextureClass, readonly (readonly [number, number])[]>> = {
  sand: [
    [100, 0],
    [90, 10],
    [85, 0],
  ],
  "loamy-sand": [
    [85, 0],
    [90, 10],
    [85, 15],
    [70, 0],
  ],
  "sandy-loam": [
    [70, 0],
    [85, 15],
    [80, 20],
    [52, 20],
    [52, 7],
    [43, 7],
    [50, 0],
  ],
  loam: [
    [43, 7],
    [52, 7],
    [52, 20],
    [45, 27],
    [23, 27],
  ],
  "silt-loam": [
    [50, 0],
    [23, 27],
    [0, 27],
    [0, 12],
    [8, 12],
    [20, 0],
  ],
  silt: [
    [20, 0],
    [8, 12],
    [0, 12],
    [0, 0],
  ],
  "sandy-clay-loam": [
    [80, 20],
    [65, 35],
    [45, 35],
    [45, 27],
    [52, 20],
  ],
  "clay-loam": [
    [45, 27],
    [45, 40],
    [20, 40],
    [20, 27],
  ],
  "silty-clay-loam": [
    [20, 27],
    [20, 40],
    [0, 40],
    [0, 27],
  ],
  "sandy-clay": [
    [65, 35],
    [45, 55],
    [45, 35],
  ],
  "silty-clay": [
    [20, 40],
    [0, 60],
    [0, 40],
  ],
  clay: [
    [45, 40],
    [45, 55],
    [0, 100],
    [0, 60],
    [20, 40],
  ],
};

/** Classes too narrow for their name: it stands outside, at this sand and clay. */
const outside: Readonly<Record<string, { at: readonly [number, number] }>> = {
  sand: { at: [94, 12] },
  "loamy-sand": { at: [80, 32] },
};

const side = 308;
const high = (side * Math.sqrt(3)) / 2;
const [left, top] = [14, 16];

/** Where a soil lies: sand grows to the left, clay upwards. */
function at([sand, clay]: readonly [number, number]): [number, number] {
  const silt = 100 - sand - clay;
  return [left + (side * (silt + clay / 2)) / 100, top + high * (1 - clay / 100)];
}

const points = (corners: readonly (readonly [number, number])[]) =>
  corners
    .map((corner) =>
      at(corner)
        .map((n) => n.toFixed(1))
        .join(","),
    )
    .join(" ");

interface TriangleDrawing {
  soil: { sand: number; clay: number; error: number } | null;
  words: { sand: string; silt: string; clay: string };
  name(texture: string): string;
}

/** The USDA triangle with the soil on it and how far it may lie off. @source USDA, Soil Survey Manual, chapter 3 */
export function triangleDrawing({ soil, words, name }: TriangleDrawing): SVGTemplateResult {
  const here = soil ? textureClass(soil.sand, soil.clay) : null;
  const classes = Object.entries(triangleOutlines);
  const dot = soil ? at([soil.sand, soil.clay]) : null;
  return svg`<svg viewBox="0 0 336 ${top + high + 34}" width="336" height=${top + high + 34} aria-hidden="true">
    ${classes.map(([texture, corners]) => svg`<polygon class="class ${texture === here ? "here" : ""}" points=${points(corners)} />`)}
    ${classes.map(([texture, corners]) => {
      const out = outside[texture];
      const [x, y] = out ? at(out.at) : at(middle(corners));
      const anchor = out ? "end" : "middle";
      const leader = out
        ? svg`<path class="hair" d="M${x + 4} ${y}L${at(middle(corners)).join(" ")}" />`
        : "";
      return [
        leader,
        ...name(texture)
          .split(" ")
          .map(
            (word, i, all) =>
              svg`<text class="texture ${texture === here ? "here" : ""}" x=${x} y=${y + 4 + (i - (all.length - 1) / 2) * 13} text-anchor=${anchor}>${word}</text>`,
          ),
      ];
    })}
    ${dot && soil ? svg`<circle class="ink thin" cx=${dot[0]} cy=${dot[1]} r=${(side * soil.error) / 100} /><circle class="solid" cx=${dot[0]} cy=${dot[1]} r="5" />` : ""}
    <text class="small" x=${left} y=${top + high + 20}>${words.sand}</text>
    <text class="small" x=${left + side} y=${top + high + 20} text-anchor="end">${words.silt}</text>
    <text class="small" x=${left + side / 2 + 12} y=${top + 6}>${words.clay}</text>
  </svg>`;
}

function middle(corners: readonly (readonly [number, number])[]): [number, number] {
  const xs = corners.map(([sand]) => sand);
  const ys = corners.map(([, clay]) => clay);
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const clay = ys.length === 5 && Math.max(...ys) === 100 ? 62 : mean(ys);
  return [mean(xs), clay];
}

/** A ring in the ground with water going in. */
export function ringDrawing(words: string): SVGTemplateResult {
  return svg`<svg viewBox="0 0 330 150" width="330" height="150" aria-hidden="true">
    <rect class="ground" x="10" y="84" width="310" height="62" />
    <path class="ink" d="M10 84H108M222 84H320" />
    <rect class="tank-water" x="110" y="52" width="110" height="32" />
    <path class="ink strong" d="M109 26V116M221 26V116" />
    ${[128, 148, 168, 188, 206].map((x) => svg`<path class="tank-line" d="M${x} 92v16m-4 -5l4 6 4 -6" />`)}
    ${lengthMark([244, 52], [244, 84], words, true, -1)}
  </svg>`;
}

/** A level line over sloping ground. */
export function slopeDrawing(
  label: (slot: string) => string,
  now: string | null,
  share: number,
): SVGTemplateResult {
  const drop = Math.min(90, Math.max(10, share * 230));
  return svg`<svg viewBox="0 0 330 170" width="330" height="170" aria-hidden="true">
    <path class="ground" d="M20 42L270 ${42 + drop}V160H20Z" />
    <path class="ink strong" d="M20 42L270 ${42 + drop}" />
    <path class="ink dashed" d="M20 42H270" />
    ${lengthMark([20, 32], [270, 32], label("run"), now === "run", -1)}
    ${lengthMark([276, 42], [276, 42 + drop], label("rise"), now === "rise", -1)}
  </svg>`;
}
