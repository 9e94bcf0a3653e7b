/** A can as it is carried, full. Common practice. */
export const can_L = 10;

/** Litres for each plant of a counted planting, by its share of the bed's water. */
export function litresAPlant(litres: number, { plants, share }: { plants: number; share: number }): number {
  return (litres * share) / plants;
}

/** Cans for a watering, to the half. */
export function cansFor(litres: number): number {
  return Math.round((2 * litres) / can_L) / 2;
}
