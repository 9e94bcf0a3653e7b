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

/** Everything of a site on one plan in metres; what has no place yet stands in rows below it, to scale. */
export function sitePlan(survey: Survey): SitePlan {
  const areas: PlacedArea[] = [];
  const points: PlacedPoint[] = [];
  const loose: { sort: "bed" | "roof"; name: string; side: number }[] = [];
  const looseRound: { sort: "tank" | "tap"; name: string; across_m: number }[] = [];
  const sorts = [
    ...survey.beds.map((row) => ["bed", row] as const),
    ...survey.roofs.map((row) => ["roof", row] as const),
  ];
  for (const [sort, { name, area_m2, outline_m }] of sorts) {
    if (outline_m)
      areas.push({ sort, name, corners: outline_m.map(([x, y]): Corner => [x, y]), isPlaced: true });
    else loose.push({ sort, name, side: Math.sqrt(Math.max(0.1, area_m2 ?? 1)) });
  }
  const rounds = [
    ...survey.tanks.map((row) => ["tank", row, acrossOf(row.capacity_L)] as const),
    ...(survey.taps ?? []).map((row) => ["tap", row, 0.6] as const),
  ];
  for (const [sort, { name, at_m }, across_m] of rounds) {
    if (at_m) points.push({ sort, name, at: [at_m[0], at_m[1]], across_m, isPlaced: true });
    else looseRound.push({ sort, name, across_m });
  }
  const placed = [...areas.flatMap(({ corners }) => corners), ...points.map(({ at }) => at)];
  const west = Math.min(0, ...placed.map(([x]) => x));
  const east = placed.length > 0 ? Math.max(...placed.map(([x]) => x)) : widthFor(loose);
  let y = placed.length > 0 ? Math.min(...placed.map(([, north]) => north)) : 0;
  let x = west;
  let row = 0;
  const wide = Math.max(east - west, widthFor(loose));
  const gap = wide / 40;
  const next = (side: number): Corner => {
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
  for (const { sort, name, side } of loose.sort((a, b) => b.side - a.side)) {
    const [left, top] = next(side);
    areas.push({
      sort,
      name,
      isPlaced: false,
      corners: [
        [left, top],
        [left + side, top],
        [left + side, top - side],
        [left, top - side],
      ],
    });
  }
  for (const { sort, name, across_m } of looseRound) {
    const room = Math.max(across_m, wide / 7);
    const [left, top] = next(room);
    points.push({ sort, name, across_m, isPlaced: false, at: [left + room / 2, top - room / 2] });
  }
  const all = [...areas.flatMap(({ corners }) => corners), ...points.map(({ at }) => at)];
  return {
    ...{ areas, points },
    west: Math.min(...all.map(([one]) => one), 0),
    east: Math.max(...all.map(([one]) => one), west + wide),
    south: Math.min(...all.map(([, one]) => one), 0),
    north: Math.max(...all.map(([, one]) => one), 0),
  };
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
