const marks: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text as it may stand in HTML. */
export function text(value: string | number): string {
  return String(value).replace(/[&<>"]/g, (mark) => marks[mark]!);
}

export function row(cells: readonly string[], tag: "td" | "th" = "td"): string {
  return `<tr>${cells.map((cell) => `<${tag}>${cell}</${tag}>`).join("")}</tr>`;
}

/** A table of cells that are HTML already. */
export function table(head: readonly string[], rows: readonly (readonly string[])[], kind = ""): string {
  const body = rows.map((cells) => row(cells)).join("\n");
  return `<table class="${kind}"><thead>${row(head.map(text), "th")}</thead><tbody>\n${body}\n</tbody></table>`;
}

export function list(items: readonly string[]): string {
  return `<ul>${items.map((item) => `<li>${text(item)}</li>`).join("")}</ul>`;
}

/** A line to write on. */
export const blank = '<span class="blank"></span>';
export const tick = '<span class="tick"></span>';
