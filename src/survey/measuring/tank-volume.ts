/** Water in tanks of plain shapes up to a depth: lengths in m inside the wall, volumes in L. Flat ends and bottoms. */
export type TankShape =
  | { shape: "upright"; across_m: number }
  | { shape: "box"; length_m: number; width_m: number }
  | { shape: "lying"; across_m: number; length_m: number }
  | { shape: "cone"; bottom_m: number; top_m: number; height_m: number };

const litresPerCubicMetre = 1000;

/** Litres in the tank when the water stands so deep. */
export function volume_L(tank: TankShape, depth_m: number): number {
  return litresPerCubicMetre * volume_m3(tank, depth_m);
}

function volume_m3(tank: TankShape, depth_m: number): number {
  switch (tank.shape) {
    case "upright":
      return (Math.PI / 4) * tank.across_m ** 2 * depth_m;
    case "box":
      return tank.length_m * tank.width_m * depth_m;
    case "lying":
      return segment_m2(tank.across_m / 2, depth_m) * tank.length_m;
    case "cone":
      return frustum_m3(
        tank.bottom_m,
        tank.bottom_m + ((tank.top_m - tank.bottom_m) * depth_m) / tank.height_m,
        depth_m,
      );
  }
}

/** Area of a circle's segment up to a depth from its lowest point, by the angle that its chord takes. */
function segment_m2(radius: number, depth: number): number {
  const share = Math.min(1, Math.max(0, depth / (2 * radius)));
  const angle = 4 * Math.asin(Math.sqrt(share));
  return (radius ** 2 * (angle - Math.sin(angle))) / 2;
}

/** A cone with its tip cut off, from the width of its two ends. */
function frustum_m3(bottom_m: number, top_m: number, height_m: number): number {
  return (Math.PI / 12) * height_m * (bottom_m ** 2 + bottom_m * top_m + top_m ** 2);
}

/** Greatest depth that the shape itself has; Infinity where only a measured height ends it. */
export function deepest_m(tank: TankShape): number {
  if (tank.shape === "lying") return tank.across_m;
  return tank.shape === "cone" ? tank.height_m : Number.POSITIVE_INFINITY;
}

/** A line of a dip table: the stick's wet length and the water then in the tank. */
export interface DipLine {
  depth_m: number;
  litres: number;
}

/** Dip table from empty to a depth, at even steps, the depth itself last. */
export function dipTable(tank: TankShape, to_m: number, step_m: number): DipLine[] {
  const steps = Math.floor(to_m / step_m + 1e-9);
  const depths = Array.from({ length: steps + 1 }, (_, i) => i * step_m);
  if (to_m - depths.at(-1)! > 1e-9) depths.push(to_m);
  return depths.map((depth_m) => ({ depth_m, litres: volume_L(tank, depth_m) }));
}
