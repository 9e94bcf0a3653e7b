/** Place of the column that somebody names: as written, in any case, or by its place (`column 3`); −1 for none. */
export function columnNamed(headers: readonly string[], name: string): number {
  const exact = headers.indexOf(name.trim());
  if (exact >= 0) return exact;
  const wanted = name.trim().toLowerCase();
  const alike = headers.findIndex((header) => header.toLowerCase() === wanted);
  if (alike >= 0) return alike;
  const place = /^column (\d+)$/.exec(wanted);
  const at = place ? Number(place[1]) - 1 : -1;
  return at < headers.length ? at : -1;
}
