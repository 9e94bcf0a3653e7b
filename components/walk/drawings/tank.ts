import { type SVGTemplateResult, svg } from "lit";
import { lengthMark } from "./mark.ts";

/** What of a tank is known, m; the rest is drawn as such tanks usually are. */
export interface TankDrawing {
  way: string;
  /** By blank. */
  sizes: Readonly<Record<string, number | null>>;
  /** Words at a blank's length. */
  label(slot: string): string;
  now: string | null;
}

const usual: Readonly<Record<string, number>> = {
  across: 2.4,
  girth: 7.6,
  wall: 0.006,
  length: 2.4,
  width: 1.6,
  bottom: 1.4,
  top: 2,
  height: 2,
  depth: 1.4,
};

const foot = 196;

/** A tank cut open, with the water up to the depth that was dipped. */
export function tankDrawing({ way, sizes, label, now }: TankDrawing): SVGTemplateResult {
  const size = (slot: string) => {
    const value = sizes[slot];
    return value && value > 0 ? value : usual[slot]!;
  };
  if (way === "tank-lying") return lying(size, label, now);
  const bottom =
    way === "tank-cone"
      ? size("bottom")
      : way === "tank-girth"
        ? size("girth") / Math.PI
        : way === "tank-box"
          ? size("length")
          : size("across");
  const top = way === "tank-cone" ? size("top") : bottom;
  const depth = size("depth");
  const high = way === "tank-cone" ? size("height") : depth * 1.18;
  const scale = Math.min(150 / Math.max(top, bottom), 160 / high);
  const middle = 150;
  const half = (h: number) => ((bottom + ((top - bottom) * h) / high) * scale) / 2;
  const y = (h: number) => foot - h * scale;
  const level = Math.min(depth, high);
  const wide =
    way === "tank-cone" ? "top" : way === "tank-girth" ? "girth" : way === "tank-box" ? "length" : "across";
  return svg`<svg viewBox="0 0 330 232" width="330" height="232" aria-hidden="true">
    <path class="tank-water" d="M${middle - half(0)} ${y(0)}L${middle + half(0)} ${y(0)}L${middle + half(level)} ${y(level)}L${middle - half(level)} ${y(level)}Z" />
    <path class="ink strong" d="M${middle - half(high)} ${y(high)}L${middle - half(0)} ${y(0)}H${middle + half(0)}L${middle + half(high)} ${y(high)}" />
    <path class="ink thin" d="M40 ${foot + 1}H290" />
    ${lengthMark([middle - half(high), y(high) - 8], [middle + half(high), y(high) - 8], label(wide), now === wide, -1)}
    ${way === "tank-cone" ? lengthMark([middle - half(0), foot + 9], [middle + half(0), foot + 9], label("bottom"), now === "bottom") : ""}
    ${way === "tank-cone" ? lengthMark([middle - half(high) - 26, y(high)], [middle - half(high) - 26, y(0)], label("height"), now === "height") : ""}
    ${lengthMark([middle + half(0) + 26, y(level)], [middle + half(0) + 26, y(0)], label("depth"), now === "depth", -1)}
  </svg>`;
}

function lying(size: (slot: string) => number, label: (slot: string) => string, now: string | null) {
  const r = 74;
  const [cx, cy] = [110, 112];
  const share = Math.min(1, size("depth") / size("across"));
  const surface = cy + r - 2 * r * share;
  const half = Math.sqrt(Math.max(0, r * r - (surface - cy) ** 2));
  const large = share > 0.5 ? 1 : 0;
  return svg`<svg viewBox="0 0 330 232" width="330" height="232" aria-hidden="true">
    <path class="tank-water" d="M${cx - half} ${surface}A${r} ${r} 0 ${large} 0 ${cx + half} ${surface}Z" />
    <circle class="ink strong" cx=${cx} cy=${cy} r=${r} />
    <path class="ink thin" d="M20 ${cy + r + 1}H320" />
    ${lengthMark([cx - r, cy - r - 8], [cx + r, cy - r - 8], label("across"), now === "across", -1)}
    ${lengthMark([cx + r + 18, surface], [cx + r + 18, cy + r], label("depth"), now === "depth", -1)}
    ${sideView(share)}
    ${lengthMark([254, 40], [322, 40], label("length"), now === "length", -1)}
  </svg>`;
}

/** The same tank from the side, where its length is taped. */
function sideView(share: number) {
  const high = 34;
  return svg`<rect class="tank-water" x="254" y=${50 + high * (1 - share)} width="68" height=${high * share} />
    <rect class="ink" x="254" y="50" width="68" height=${high} />`;
}
