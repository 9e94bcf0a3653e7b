import { svg } from "lit";
import type { Corner } from "../../../src/survey/measuring/polygon.ts";
import { type Traced, toScreen, type View } from "./state.ts";

function path(view: View, corners: readonly Corner[], close: boolean): string {
  if (corners.length === 0) return "";
  const points = corners.map((corner) =>
    toScreen(view, corner)
      .map((n) => n.toFixed(1))
      .join(" "),
  );
  return `M${points.join("L")}${close ? "Z" : ""}`;
}

/** What is marked on a plan: shapes before, this shape, the known length, and the keys' cross. */
export function marksOf(
  view: View,
  { known, corners }: Traced,
  outlines: readonly (readonly Corner[])[],
  cross: Corner | null,
) {
  const dot = (corner: Corner, look: string) => {
    const [x, y] = toScreen(view, corner);
    return svg`<circle class="dot ${look}" cx=${x} cy=${y} r="7" /><circle class="heart" cx=${x} cy=${y} r="1.5" />`;
  };
  const shape = path(view, corners, corners.length > 2);
  const length = path(view, known, false);
  const [cx, cy] = cross ?? [0, 0];
  return svg`${outlines.map((outline) => svg`<path class="other" d=${path(view, outline, true)} />`)}
    <path class="shape halo" d=${shape} /><path class="shape" d=${shape} />
    <path class="known halo" d=${length} /><path class="known" d=${length} />
    ${corners.map((corner) => dot(corner, ""))} ${known.map((corner) => dot(corner, "end"))}
    ${cross ? svg`<path class="cross halo" d="M${cx - 16} ${cy}h32M${cx} ${cy - 16}v32" /><path class="cross" d="M${cx - 16} ${cy}h32M${cx} ${cy - 16}v32" />` : ""}`;
}
