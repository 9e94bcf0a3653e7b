/** A corner: x, y in one unit. */
export type Corner = readonly [number, number];

/** Area inside corners in order, either way round; in the square of their unit. Shoelace formula. */
export function polygonArea(corners: readonly Corner[]): number {
  // from the first corner, so that far-off coordinates lose nothing
  const [x0, y0] = corners[0] ?? [0, 0];
  const twice = corners.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length]!;
    return sum + (x - x0) * (nextY - y0) - (nextX - x0) * (y - y0);
  }, 0);
  return Math.abs(twice) / 2;
}

export function polygonPerimeter(corners: readonly Corner[]): number {
  return corners.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length]!;
    return sum + Math.hypot(nextX - x, nextY - y);
  }, 0);
}

/** The first two sides that cross or touch where they should not, numbered from 0 by their first corner; null for none. */
export function crossingSides(corners: readonly Corner[]): [number, number] | null {
  const count = corners.length;
  const side = (i: number) => [corners[i]!, corners[(i + 1) % count]!] as const;
  for (let i = 0; i < count; i++)
    for (let j = i + 1; j < count; j++) {
      const neighbours = j === i + 1 || (i === 0 && j === count - 1);
      if (neighbours ? foldsBack(side(i), side(j), j === i + 1) : meet(...side(i), ...side(j))) return [i, j];
    }
  return null;
}

/** Twice the area of a triangle, above 0 anticlockwise. */
function turn([ax, ay]: Corner, [bx, by]: Corner, [cx, cy]: Corner): number {
  return (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
}

function meet(a: Corner, b: Corner, c: Corner, d: Corner): boolean {
  const [abc, abd, cda, cdb] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  if (abc * abd < 0 && cda * cdb < 0) return true;
  return (
    (abc === 0 && within(a, b, c)) ||
    (abd === 0 && within(a, b, d)) ||
    (cda === 0 && within(c, d, a)) ||
    (cdb === 0 && within(c, d, b))
  );
}

/** Whether a point on the line of a side lies between its ends. */
function within([ax, ay]: Corner, [bx, by]: Corner, [px, py]: Corner): boolean {
  return Math.min(ax, bx) <= px && px <= Math.max(ax, bx) && Math.min(ay, by) <= py && py <= Math.max(ay, by);
}

/** Whether the second of two sides in a row runs back over the first. */
function foldsBack(
  one: readonly [Corner, Corner],
  other: readonly [Corner, Corner],
  inOrder: boolean,
): boolean {
  const [first, second] = inOrder ? [one, other] : [other, one];
  const [a, b] = first;
  const c = second[1];
  if (turn(a, b, c) !== 0) return false;
  return (a[0] - b[0]) * (c[0] - b[0]) + (a[1] - b[1]) * (c[1] - b[1]) > 0;
}
