/** Areas of plain shapes from lengths, m and m²; closed forms of plane geometry. */

export function triangle_m2(a: number, b: number, c: number): number {
  const [long, middle, short] = [a, b, c].sort((x, y) => y - x) as [number, number, number];
  // Heron, in the order of brackets that stays exact for needles
  // @source Kahan 2014, Miscalculating area and angles of a needle-like triangle
  const product =
    (long + (middle + short)) *
    (short - (long - middle)) *
    (short + (long - middle)) *
    (long + (middle - short));
  return Math.sqrt(Math.max(0, product)) / 4;
}

/** The side that is longer than the other two together, or null where the three close. */
export function sideTooLong(a: number, b: number, c: number): number | null {
  const long = Math.max(a, b, c);
  return long > a + b + c - long ? long : null;
}

export function circle_m2(across: number): number {
  return (Math.PI / 4) * across ** 2;
}

export function ellipse_m2(long: number, short: number): number {
  return (Math.PI / 4) * long * short;
}

/** Two parallel sides and how far apart they are. */
export function trapezium_m2(one: number, other: number, apart: number): number {
  return ((one + other) / 2) * apart;
}

/** A rectangle with a rectangular corner left out. */
export function lShape_m2(length: number, width: number, cutLength: number, cutWidth: number): number {
  return length * width - cutLength * cutWidth;
}

/** Four sides in order round the bed and the diagonal that joins the second corner's two triangles. */
export function fourSides_m2(a: number, b: number, c: number, d: number, diagonal: number): number {
  return triangle_m2(a, b, diagonal) + triangle_m2(c, d, diagonal);
}

/** Two straights and two half circles: an oval as running tracks have it. */
export function stadium_m2(straight: number, radius: number): number {
  return 2 * radius * straight + Math.PI * radius ** 2;
}

/** A strip of even width, by its length along the middle; true for bends too (Pappus), short of folding on itself. */
export function path_m2(length: number, width: number): number {
  return length * width;
}

/** A ring round a circle: the inner radius and the ring's width. */
export function ring_m2(innerRadius: number, width: number): number {
  return Math.PI * width * (2 * innerRadius + width);
}
