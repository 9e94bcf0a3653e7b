import type { Corner } from "../../../src/survey/measuring/polygon.ts";
import type { Survey } from "../../../src/survey/survey.ts";

export interface PlacedArea {
  sort: "bed" | "roof";
  name: string;
  corners: Corner[];
  /** Whether it lies where it is on the ground; else it stands beside the plan as a square of its size. */
  isPlaced: boolean;
}

export interface PlacedPoint {
  sort: "tank" | "tap";
  name: string;
  at: Corner;
  /** Width of a tank, m: as of an upright one as high as wide. */
  across_m: number;
  isPlaced: boolean;
}

export interface SitePlan {
  areas: PlacedArea[];
  points: PlacedPoint[];
  west: number;
  east: number;
  south: number;
  north: number;
}

interface Loose {
  sort: PlacedArea["sort"];
  name: string;
  side: number;
}

/** Everything of a site on one plan in metres; what has no place yet stands in rows below it, to scale. */
export function sitePlan(survey: Survey): SitePlan {
  const { areas, loose } = areasOf(survey);
  const rounds = pointsOf(survey);
  const points = rounds.filter(({ isPlaced }) => isPlaced);
  const placed = [...areas.flatMap(({ corners }) => corners), ...points.map(({ at }) => at)];
  const west = Math.min(0, ...placed.map(([x]) => x));
  const east = placed.length > 0 ? Math.max(...placed.map(([x]) => x)) : widthFor(loose);
  const wide = Math.max(east - west, widthFor(loose));
  const top = placed.length > 0 ? Math.min(...placed.map(([, y]) => y)) : 0;
  const next = rowsBelow(west, top, wide);
  for (const one of loose.sort((a, b) => b.side - a.side)) areas.push(squareAt(next(one.side), one));
  for (const one of rounds.filter(({ isPlaced }) => !isPlaced)) {
    const room = Math.max(one.across_m, wide / 7);
    const [left, high] = next(room);
    points.push({ ...one, at: [left + room / 2, high - room / 2] });
  }
  const all = [...areas.flatMap(({ corners }) => corners), ...points.map(({ at }) => at)];
  return {
    ...{ areas, points },
    west: Math.min(...all.map(([x]) => x), 0),
    east: Math.max(...all.map(([x]) => x), west + wide),
    south: Math.min(...all.map(([, y]) => y), 0),
    north: Math.max(...all.map(([, y]) => y), 0),
  };
}

/** Beds and roofs: those with an outline, and the others as squares of their size. */
function areasOf({ beds, roofs }: Survey): { areas: PlacedArea[]; loose: Loose[] } {
  const areas: PlacedArea[] = [];
  const loose: Loose[] = [];
  const rows = [...beds.map((row) => ["bed", row] as const), ...roofs.map((row) => ["roof", row] as const)];
  for (const [sort, { name, area_m2, outline_m }] of rows) {
    if (outline_m)
      areas.push({ sort, name, corners: outline_m.map(([x, y]): Corner => [x, y]), isPlaced: true });
    else loose.push({ sort, name, side: Math.sqrt(Math.max(0.1, area_m2 ?? 1)) });
  }
  return { areas, loose };
}

/** Tanks and taps, where they stand or with no place yet. */
function pointsOf({ tanks, taps = [] }: Survey): PlacedPoint[] {
  const rows = [
    ...tanks.map((row) => ["tank", row, acrossOf(row.capacity_L)] as const),
    ...taps.map((row) => ["tap", row, 0.6] as const),
  ];
  return rows.map(([sort, { name, at_m }, across_m]) => ({
    ...{ sort, name, across_m },
    at: at_m ? [at_m[0], at_m[1]] : [0, 0],
    isPlaced: at_m !== undefined,
  }));
}

/** Deals out places in rows under the plan: the upper left corner of the next square of a side. */
function rowsBelow(west: number, top: number, wide: number): (side: number) => Corner {
  const gap = wide / 40;
  let [x, y, row] = [west, top, 0];
  return (side) => {
    if (x > west && x + side > west + wide) {
      x = west;
      y -= row + gap;
      row = 0;
    }
    if (row === 0) y -= 3 * gap;
    const corner: Corner = [x, y];
    x += side + 2 * gap;
    row = Math.max(row, side);
    return corner;
  };
}

function squareAt([left, top]: Corner, { sort, name, side }: Loose): PlacedArea {
  const corners: Corner[] = [
    [left, top],
    [left + side, top],
    [left + side, top - side],
    [left, top - side],
  ];
  return { sort, name, isPlaced: false, corners };
}

const widthFor = (loose: readonly { side: number }[]) =>
  Math.max(
    20,
    Math.sqrt(loose.reduce((sum, { side }) => sum + side * side, 0)) * 1.4,
    ...loose.map(({ side }) => side),
  );

/** An upright round tank as high as it is wide. */
function acrossOf(capacity_L: number): number {
  return Math.cbrt((4 * Math.max(100, capacity_L ?? 100)) / (1000 * Math.PI));
}

/** A length of 1, 2 or 5 and zeros for a scale bar, about a fifth of the width. */
export function barLength_m(width_m: number): number {
  const wanted = width_m / 5;
  const power = 10 ** Math.floor(Math.log10(wanted));
  return [5, 2, 1].map((step) => step * power).find((length) => length <= wanted) ?? power;
}
