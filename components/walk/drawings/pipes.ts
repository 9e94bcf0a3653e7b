import { type SVGTemplateResult, svg } from "lit";
import { lengthMark } from "./mark.ts";

type Label = (slot: string) => string;

/** A toilet's cistern cut open: its water before and after a flush. */
export function cisternDrawing(label: Label, now: string | null): SVGTemplateResult {
  return svg`<svg viewBox="0 0 330 190" width="330" height="190" aria-hidden="true">
    <rect class="tank-water" x="90" y="62" width="130" height="86" />
    <path class="ink strong" d="M88 34V150H222V34" />
    <path class="ink dashed" stroke="var(--paper)" d="M90 120H220" />
    <path class="ink" d="M70 30H240" />
    ${lengthMark([240, 62], [240, 120], label("drop"), now === "drop", -1)}
    ${lengthMark([90, 164], [220, 164], label("length"), now === "length")}
    <path class="ink thin" d="M222 34l18 -16M88 34l18 -16M106 18H240" />
    ${lengthMark([228, 14], [246, 0], label("width"), now === "width")}
  </svg>`;
}

/** A first-flush diverter: the upright pipe that fills before the tank gets anything. */
export function divertDrawing(label: Label, now: string | null): SVGTemplateResult {
  return svg`<svg viewBox="0 0 330 220" width="330" height="220" aria-hidden="true">
    <path class="ink" d="M20 26H130V52M20 44H112V52" />
    <rect class="tank-water" x="112" y="52" width="18" height="120" />
    <path class="ink strong" d="M111 52V180H131V66" />
    <path class="ink" d="M131 52H210M131 66H210" />
    <path class="ink thin" d="M117 180v8h8v-8" />
    <path class="ink thin" d="M210 46V196H300V46Z" />
    <path class="ink thin" d="M20 197H320" />
    ${lengthMark([96, 52], [96, 180], label("pipe-length"), now === "pipe-length")}
    ${lengthMark([111, 202], [131, 202], label("pipe-across"), now === "pipe-across")}
  </svg>`;
}

/** A hose from a tank: the water's surface above the hose's end is what drives it. */
export function hoseDrawing(words: { head: string; level: string }, share = 0.7): SVGTemplateResult {
  const surface = 150 - 100 * share;
  return svg`<svg viewBox="0 0 330 190" width="330" height="190" aria-hidden="true">
    <rect class="tank-water" x="42" y=${surface} width="96" height=${150 - surface} />
    <path class="ink strong" d="M40 36V151H140V36" />
    <path class="ink" d="M140 140h26q16 0 24 12t24 12h30" />
    <path class="tank-line" d="M246 166q12 2 14 12" />
    <path class="ink thin" d="M20 182H320" />
    <path class="ink thin dashed" d="M140 ${surface}H292M244 164H292" />
    ${lengthMark([292, surface], [292, 164], words.head, true, 1)}
    <text class="small" x="46" y="28">${words.level}</text>
  </svg>`;
}
