import { type SVGTemplateResult, svg } from "lit";
import { lengthMark } from "./mark.ts";

interface RoofDrawing {
  /** Pitch of the roof, degrees. */
  pitch_deg: number;
  label(slot: string): string;
  now: string | null;
  byRise: boolean;
  words: { rain: string; plan: string };
}

/** Why a roof counts in plan: rain falls straight down, and only as much as the ground below would get. */
export function roofDrawing({ pitch_deg, label, now, byRise, words }: RoofDrawing): SVGTemplateResult {
  const run = 176;
  const angle = (Math.min(68, Math.max(2, pitch_deg)) * Math.PI) / 180;
  const scale = Math.min(1, 96 / (run * Math.tan(angle)));
  const wide = run * scale;
  const rise = wide * Math.tan(angle);
  const [x0, eave] = [70, 176];
  const [ridgeX, ridgeY] = [x0 + wide, eave - rise];
  const drops = Array.from({ length: 9 }, (_, i) => x0 + (wide * (i + 0.5)) / 9);
  return svg`<svg viewBox="0 0 330 262" width="330" height="262" aria-hidden="true">
    ${drops.map((x) => svg`<path class="rain" d="M${x} 26v14M${x} 48v${Math.max(4, eave - ((x - x0) / wide) * rise - 58)}" />`)}
    <text class="small" x=${x0} y="16">${words.rain}</text>
    <path class="ink strong" d="M${x0} ${eave}L${ridgeX} ${ridgeY}" />
    <path class="ink thin" d="M${ridgeX} ${ridgeY}V228M${x0} ${eave}V228" stroke-dasharray="3 4" />
    <path class="ink" d="M${x0 + 8} ${eave - 4}V228" />
    <path class="ground" d="M20 228H310V236H20Z" />
    ${lengthMark([x0, 228], [ridgeX, 228], words.plan, false)}
    ${lengthMark([x0 + 10, eave + 12], [ridgeX - 2, ridgeY + 16], label("slope"), now === "slope")}
    ${byRise ? lengthMark([ridgeX + 20, ridgeY], [ridgeX + 20, eave], label("rise"), now === "rise", -1) : pitchMark(x0, eave, angle, label("pitch"), now === "pitch")}
  </svg>`;
}

function pitchMark(x: number, y: number, angle: number, words: string, now: boolean) {
  const r = 58;
  const [ax, ay] = [x + r * Math.cos(angle), y - r * Math.sin(angle)];
  return svg`<path class="ink thin" d="M${x} ${y}h${r + 16}" />
    <path class="ink ${now ? "strong" : "thin"}" d="M${x + r} ${y}A${r} ${r} 0 0 0 ${ax} ${ay}" />
    <text class="measure ${now ? "now" : ""}" x=${x + 14} y=${y + 18}>${words}</text>`;
}
