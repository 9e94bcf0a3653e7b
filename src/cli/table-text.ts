/** Lays text out for a terminal: wrapped paragraphs, and tables whose columns line up. */

/** Width that any terminal and any printed page has. */
export const pageWidth = 80;

/** Breaks a paragraph at spaces so that no line is wider than the page, unless a word is. */
export function wrapped(text: string, indent = ""): string {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(/[ \n]+/)) {
    const longer = line === indent ? `${indent}${word}` : `${line} ${word}`;
    if (longer.length > pageWidth && line !== indent) {
      lines.push(line);
      line = `${indent}${word}`;
    } else {
      line = longer;
    }
  }
  return [...lines, line].join("\n");
}

/** Rows under a header: the first column to the left, the others to the right, `gap` between. */
export function tableText(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  widestFirst = 22,
  gap = "  ",
): string {
  const all = [header, ...rows].map((row) => row.map((cell, k) => (k === 0 ? cut(cell, widestFirst) : cell)));
  const widths = header.map((_, k) => Math.max(...all.map((row) => row[k]!.length)));
  return all
    .map((row) =>
      row
        .map((cell, k) => (k === 0 ? cell.padEnd(widths[k]!) : cell.padStart(widths[k]!)))
        .join(gap)
        .trimEnd(),
    )
    .join("\n");
}

function cut(text: string, widest: number): string {
  return text.length > widest ? `${text.slice(0, widest - 1)}…` : text;
}
