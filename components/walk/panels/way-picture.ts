import { nothing, type SVGTemplateResult, svg } from "lit";
import { frameFor, pathOf } from "../drawings/shape.ts";
import { shapeFigure, usualSizes } from "../drawings/shape-geometry.ts";

const drawn: Readonly<Record<string, SVGTemplateResult>> = {
  plan: svg`<path class="ink thin" d="M3 3H61V41H3Z" /><path class="area" d="M12 30L20 12L44 9L52 27L34 35Z" />
    ${[
      [12, 30],
      [20, 12],
      [44, 9],
      [52, 27],
      [34, 35],
    ].map(([x, y]) => svg`<circle class="solid" cx=${x} cy=${y} r="2.6" />`)}`,
  plants: svg`${[
    [14, 14, 9],
    [34, 11, 8],
    [52, 16, 9],
    [22, 32, 9],
    [44, 33, 8],
  ].map(([x, y, r]) => svg`<circle class="area" cx=${x} cy=${y} r=${r} />`)}`,
  "tank-upright": svg`<path class="tank-water" d="M19 22H45V40H19Z" /><path class="ink" d="M19 5V40H45V5" />`,
  "tank-girth": svg`<path class="tank-water" d="M19 22H45V40H19Z" /><path class="ink" d="M19 5V40H45V5M19 14q13 8 26 0" />`,
  "tank-box": svg`<path class="tank-water" d="M8 20H56V36H8Z" /><path class="ink" d="M8 9V36H56V9" />`,
  "tank-lying": svg`<path class="tank-water" d="M15.5 26A17 17 0 0 0 48.5 26Z" /><circle class="ink" cx="32" cy="22" r="17" />`,
  "tank-cone": svg`<path class="tank-water" d="M15 20H49L44 40H20Z" /><path class="ink" d="M11 5L20 40H44L53 5" />`,
  "roof-pitch": svg`<path class="ink" d="M6 32L46 8V40M6 32H26M6 32V40" /><path class="ink thin" d="M22 32A16 16 0 0 0 19.500 24" />`,
  "roof-rise": svg`<path class="ink" d="M6 32L46 8V40M6 32V40" /><path class="ink thin" d="M54 8V32M50 8h8M50 32h8" />`,
};

/** A small drawing of a shape beside its name. */
export function wayPicture(way: string) {
  const own = drawn[way];
  if (own) return svg`<svg viewBox="0 0 64 44" width="64" height="44" aria-hidden="true">${own}</svg>`;
  const sizes = usualSizes[way];
  const figure = sizes ? shapeFigure(way, sizes) : null;
  if (!figure) return nothing;
  const frame = frameFor(figure.corners, 64, 46, 4);
  const hole = figure.hole ? pathOf(figure.hole, frame) : "";
  return svg`<svg viewBox="0 0 64 ${Math.max(frame.height, 40)}" width="64" height=${Math.max(frame.height, 40)} aria-hidden="true">
    <path class="area" fill-rule="evenodd" transform="translate(0 ${Math.max(0, (40 - frame.height) / 2)})" d="${pathOf(figure.corners, frame)}${hole}" />
  </svg>`;
}
