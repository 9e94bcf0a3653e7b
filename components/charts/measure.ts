import type { select } from "d3-selection";

export type Svg = ReturnType<typeof select<SVGSVGElement, undefined>>;
export type Group = ReturnType<typeof select<SVGGElement, undefined>>;

let context: CanvasRenderingContext2D | null | undefined;

/** Width of a label in px, as the page's own type sets it. */
export function textWidth(text: string, size_px: number, weight = 400): number {
  if (context === undefined) context = document.createElement("canvas").getContext("2d");
  if (!context) return text.length * size_px * 0.5;
  context.font = `${weight} ${size_px}px "Source Serif 4 Variable", Georgia, serif`;
  return context.measureText(text).width;
}

/** The text cut to a width with an ellipsis, whole where it fits. */
export function fit(text: string, width_px: number, size_px: number, weight = 400): string {
  if (textWidth(text, size_px, weight) <= width_px) return text;
  const letters = Array.from(text);
  while (letters.length > 1 && textWidth(`${letters.join("").trimEnd()}…`, size_px, weight) > width_px)
    letters.pop();
  return `${letters.join("").trimEnd()}…`;
}

/** The text broken into at most `most` lines of a width, the last one cut. */
export function wrap(text: string, width_px: number, size_px: number, most: number, weight = 400): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    const longer = line ? `${line} ${word}` : word;
    if (line && textWidth(longer, size_px, weight) > width_px) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  if (line) lines.push(line);
  const kept = lines.slice(0, most);
  if (lines.length > most) kept[most - 1] = lines.slice(most - 1).join(" ");
  return kept.map((l) => fit(l, width_px, size_px, weight));
}
