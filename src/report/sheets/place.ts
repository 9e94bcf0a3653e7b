type Outline = readonly (readonly [number, number])[];

const width = 190;
const height = 130;

/**
 * Where a bed lies: every outline of the site plan, the bed's filled in. Null where the bed has none.
 */
export function placeDrawing(
  outlines: ReadonlyMap<string, Outline>,
  id: string,
  title: string,
): string | null {
  if (!outlines.has(id)) return null;
  const corners = [...outlines.values()].flat();
  const [left, right] = ends(corners.map(([x]) => x));
  const [bottom, top] = ends(corners.map(([, y]) => y));
  const scale = Math.min((width - 8) / Math.max(1, right - left), (height - 8) / Math.max(1, top - bottom));
  const point = ([x, y]: readonly [number, number]) =>
    `${(4 + (x - left) * scale).toFixed(1)},${(height - 4 - (y - bottom) * scale).toFixed(1)}`;
  const shapes = [...outlines].map(([bed, outline]) => {
    const fill = bed === id ? "#000" : "none";
    return `<polygon points="${outline.map(point).join(" ")}" fill="${fill}" stroke="#000" stroke-width="0.8"/>`;
  });
  return `<svg width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-label="${title}">${shapes.join("")}</svg>`;
}

function ends(values: readonly number[]): [number, number] {
  return [Math.min(...values), Math.max(...values)];
}
