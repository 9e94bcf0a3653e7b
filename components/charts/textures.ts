import type { Svg } from "./measure.ts";

/**
 * Two inks and two textures of water, and rain. Tank water is solid; mains is hatched, as copper pipe is
 * drawn; rain falls in fine upright strokes; what is wasted is thin hatching of its source. They read in
 * black and white.
 */
export const fills = {
  tank: "var(--tank)",
  mains: "url(#mains)",
  mainsBeyond: "url(#mains-beyond)",
  tankBeyond: "url(#tank-beyond)",
  rain: "url(#rain)",
  /** Rain that nothing uses. */
  rainBeyond: "url(#rain-beyond)",
  /** Wasted of either. */
  bothBeyond: "url(#both-beyond)",
  otherBeyond: "url(#other-beyond)",
  /** Water of its own: bore, recycled, carted. */
  other: "url(#other)",
  below: "url(#below)",
  earth: "url(#earth)",
} as const;

interface Hatch {
  id: string;
  ink: string;
  spacing: number;
  thickness: number;
  angle: number;
  wash: number;
}

const hatches: readonly Hatch[] = [
  { id: "mains", ink: "mains", spacing: 5, thickness: 1.5, angle: 45, wash: 0.13 },
  { id: "mains-beyond", ink: "mains", spacing: 7, thickness: 0.7, angle: 45, wash: 0 },
  { id: "tank-beyond", ink: "tank", spacing: 5, thickness: 0.8, angle: 45, wash: 0 },
  { id: "rain", ink: "rain", spacing: 3.5, thickness: 1.1, angle: 0, wash: 0 },
  { id: "rain-beyond", ink: "rain", spacing: 7, thickness: 0.7, angle: 0, wash: 0 },
  { id: "other", ink: "grey", spacing: 6, thickness: 1, angle: 135, wash: 0.1 },
  { id: "other-beyond", ink: "grey", spacing: 7, thickness: 0.7, angle: 135, wash: 0 },
  { id: "below", ink: "tank", spacing: 4, thickness: 1, angle: 90, wash: 0.18 },
  { id: "earth", ink: "grey", spacing: 6, thickness: 1, angle: 45, wash: 0 },
];

/** Thin strokes of the tank's ink between the mains': what is wasted of either. */
function defineBothBeyond(svg: Svg): void {
  const size = 14;
  const pattern = svg
    .select("defs")
    .append("pattern")
    .attr("id", "both-beyond")
    .attr("width", size)
    .attr("height", size)
    .attr("patternUnits", "userSpaceOnUse")
    .attr("patternTransform", "rotate(45)");
  const stroke = (x: number, width: number, ink: string) =>
    pattern
      .append("rect")
      .attr("x", x)
      .attr("width", width)
      .attr("height", size)
      .attr("fill", `var(--${ink})`);
  stroke(0, 0.8, "tank");
  stroke(7, 0.7, "mains");
}

/** Puts the textures into a drawing that has none yet; ids are of the shadow root that it stands in. */
export function defineTextures(svg: Svg): void {
  if (!svg.select("defs").empty()) return;
  const defs = svg.append("defs");
  for (const hatch of hatches) {
    const pattern = defs
      .append("pattern")
      .attr("id", hatch.id)
      .attr("width", hatch.spacing)
      .attr("height", hatch.spacing)
      .attr("patternUnits", "userSpaceOnUse")
      .attr("patternTransform", `rotate(${hatch.angle})`);
    if (hatch.wash > 0) {
      pattern
        .append("rect")
        .attr("width", hatch.spacing)
        .attr("height", hatch.spacing)
        .attr("fill", `var(--${hatch.ink})`)
        .attr("class", "wash")
        .attr("fill-opacity", hatch.wash);
    }
    pattern
      .append("line")
      .attr("x1", hatch.thickness / 2)
      .attr("x2", hatch.thickness / 2)
      .attr("y1", 0)
      .attr("y2", hatch.spacing)
      .attr("stroke", `var(--${hatch.ink})`)
      .attr("stroke-width", hatch.thickness);
  }
  defineBothBeyond(svg);
}
