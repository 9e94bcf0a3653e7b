import { plate } from "../../../src/words/en/plates.ts";
import { type Svg, textWidth } from "../measure.ts";
import { fills } from "../textures.ts";

/** Where the section stands and how high its water may. */
export interface SectionPlace {
  left: number;
  right: number;
  /** y of a full tank, of its bottom, and of a level. */
  full: number;
  floor: number;
  y: (level_L: number) => number;
}

/**
 * The tank cut open: inlet from the roof, overflow at the rim, outlet above what it cannot give, earth below.
 * @param room free width to the right of it, px
 * @returns what sets its water to a level.
 */
export function drawSection(
  svg: Svg,
  place: SectionPlace,
  unusable_L: number,
  room: number,
): (level_L: number) => void {
  const { left, right, full, floor, y } = place;
  const inner = { left: left + 1, right: right - 1 };
  const rim = full - 12;
  const water = svg
    .append("rect")
    .attr("fill", fills.tank)
    .attr("x", inner.left)
    .attr("width", inner.right - inner.left);
  const below = svg
    .append("rect")
    .attr("fill", "var(--paper)")
    .attr("x", inner.left)
    .attr("width", inner.right - inner.left);
  const belowHatch = svg
    .append("rect")
    .attr("fill", fills.below)
    .attr("x", inner.left)
    .attr("width", inner.right - inner.left);
  svg
    .append("rect")
    .attr("fill", fills.earth)
    .attr("x", left - 8)
    .attr("y", floor + 1)
    .attr("width", right - left + 16)
    .attr("height", 8);
  svg
    .append("line")
    .attr("class", "ground")
    .attr("x1", left - 8)
    .attr("x2", right + 8)
    .attr("y1", floor + 1)
    .attr("y2", floor + 1);
  const middle = (left + right) / 2;
  // walls up to a shallow lid, a pipe in from above, one out over the rim
  svg
    .append("path")
    .attr("class", "wall")
    .attr(
      "d",
      `M${left},${floor}V${rim}Q${middle},${rim - 14} ${right},${rim}V${full - 6}M${right},${full + 1}V${floor}`,
    );
  svg
    .append("path")
    .attr("class", "pipe")
    .attr("d", `M${left + 14},${rim - 22}V${rim + 3}M${left + 20},${rim - 22}V${rim + 3}`);
  svg
    .append("path")
    .attr("class", "pipe")
    .attr(
      "d",
      `M${right},${full - 6}H${right + 9}V${full + 5}M${right},${full + 1}H${right + 3}V${full + 5}`,
    );
  if (unusable_L > 0) {
    const outlet = y(unusable_L);
    svg
      .append("path")
      .attr("class", "pipe")
      .attr("d", `M${left},${outlet - 3}H${left - 7}M${left},${outlet + 2}H${left - 7}`);
    svg
      .append("line")
      .attr("class", "outlet")
      .attr("x1", inner.left)
      .attr("x2", inner.right)
      .attr("y1", outlet)
      .attr("y2", outlet);
    // beside the tank, where there is room before the year begins
    if (room > textWidth(plate.tank.outlet, 13) + 8)
      svg
        .append("text")
        .attr("class", "outlet-word")
        .attr("x", right + 5)
        .attr("y", Math.min(outlet + 4, floor - 3))
        .text(plate.tank.outlet);
  }
  return (level_L) => {
    const top = y(Math.max(0, level_L));
    water.attr("y", top).attr("height", Math.max(0, floor - top));
    const dead = y(Math.min(unusable_L, Math.max(0, level_L)));
    for (const rect of [below, belowHatch]) rect.attr("y", dead).attr("height", Math.max(0, floor - dead));
  };
}
