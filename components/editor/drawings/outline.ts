import { html, nothing } from "lit";
import { type Address, pathOf, valueIn } from "../../../src/survey/edit/document.ts";
import { type Corner, crossingSides, polygonArea } from "../../../src/survey/measuring/polygon.ts";
import { drawingWords } from "../../../src/words/en/editor-drawings.ts";
import type { Editing, Shown } from "../editing.ts";
import { shownValue } from "../shown.ts";

const size = 200;

/** An outline to scale, and what it encloses beside what the survey says. */
export function outline(editing: Editing, entry: unknown, at: Address): Shown {
  const list = valueIn(entry, ["outline_m"]);
  const corners = (Array.isArray(list) ? list : []).filter(isCorner);
  if (corners.length < 3) return nothing;
  const x = corners.map(([east]) => east);
  const y = corners.map(([, north]) => north);
  const [west, south] = [Math.min(...x), Math.min(...y)];
  const scale = size / Math.max(Math.max(...x) - west, Math.max(...y) - south, 1e-9);
  const width = (Math.max(...x) - west) * scale;
  const height = (Math.max(...y) - south) * scale;
  const points = corners.map(
    ([east, north]) => `${(east - west) * scale},${height - (north - south) * scale}`,
  );
  const path = pathOf(editing.draft, [...at, "area_m2"]);
  const area = (value: unknown) =>
    path && typeof value === "number" ? shownValue(editing, path, Number(value.toPrecision(4))) : "";
  const words = crossingSides(corners)
    ? drawingWords.crossing
    : drawingWords.encloses(area(polygonArea(corners)), area(valueIn(entry, ["area_m2"])));
  return html`<figure class="outline">
    <svg viewBox="-4 -4 ${width + 8} ${height + 8}" width=${width + 8} height=${height + 8} aria-hidden="true">
      <polygon points=${points.join(" ")} />
    </svg>
    <figcaption>${words}</figcaption>
  </figure>`;
}

function isCorner(point: unknown): point is Corner {
  return Array.isArray(point) && point.length === 2 && point.every((one) => Number.isFinite(one));
}
