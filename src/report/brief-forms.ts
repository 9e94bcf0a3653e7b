import type { Block } from "./brief.ts";

/** The brief as Markdown. */
export function briefMarkdown(blocks: readonly Block[]): string {
  return `${blocks.map(markdownOf).join("\n\n")}\n`;
}

function markdownOf(block: Block): string {
  switch (block.kind) {
    case "title":
      return `# ${plain(block.text)}`;
    case "question":
      return `**${plain(block.text)}**`;
    case "heading":
      return `## ${plain(block.text)}`;
    case "paragraph":
      return plain(block.text);
    case "list":
      return block.items.map((item) => `- ${plain(item)}`).join("\n");
    case "steps":
      return block.items.map((item, k) => `${k + 1}. ${plain(item)}`).join("\n");
    case "table": {
      const row = (cells: readonly string[]) => `| ${cells.map((cell) => plain(cell) || " ").join(" | ")} |`;
      const rule = `| ${block.columns.map((_, k) => (k === 0 ? "---" : "---:")).join(" | ")} |`;
      return [`## ${plain(block.caption)}`, "", row(block.columns), rule, ...block.rows.map(row)].join("\n");
    }
  }
}

/** Names are somebody's own: nothing in them may act as markup. */
function plain(text: string): string {
  return text.replace(/[\\`*_[\]<>|#]/g, "\\$&");
}

/** The brief as one HTML file that asks for nothing from anywhere and prints on two pages. */
export function briefHtml(blocks: readonly Block[], lang: string): string {
  const title = blocks.find(({ kind }) => kind === "title");
  const name = title && "text" in title ? escaped(title.text) : "";
  return `<!doctype html>
<html lang="${escaped(lang)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${name}</title>
<style>${style}</style>
</head>
<body>
<main>
${blocks.map(htmlOf).join("\n")}
</main>
</body>
</html>
`;
}

const style = `
@page { margin: 16mm 18mm; }
body { margin: 0; color: #1d1b16; background: #fffdf8; font: 11pt/1.4 Georgia, "Times New Roman", serif; }
main { max-width: 44rem; margin: 0 auto; padding: 1.5rem; }
h1 { font-size: 1.6rem; margin: 0 0 0.3rem; }
h2, caption { font-size: 1.05rem; font-weight: 700; text-align: left; break-after: avoid; border-top: 1.5px solid #1d1b16; padding-top: 0.25rem; }
h2 { margin: 0.9rem 0 0.25rem; }
h1 { font-weight: 400; }
p, ul, ol { margin: 0.25rem 0; }
ul, ol { padding-left: 1.2rem; }
.question { font-size: 1.15rem; font-style: italic; }
li { margin: 0.15rem 0; }
table { border-collapse: collapse; width: 100%; font-size: 0.85em; font-variant-numeric: tabular-nums; margin-top: 0.9rem; }
caption { padding-bottom: 0.2rem; }
th, td { border-bottom: 1px solid #8a8372; padding: 0.15rem 0.35rem; text-align: right; vertical-align: top; }
th { font-weight: 600; border-bottom-width: 2px; }
th:first-child, td:first-child { text-align: left; }
td:last-child { white-space: nowrap; }
table, tr { break-inside: avoid; }
@media print { body { background: none; font-size: 9.5pt; } main { max-width: none; padding: 0; } }
@media (prefers-color-scheme: dark) { @media screen { body { color: #ece7da; background: #1a1915; } h2, caption { border-color: #ece7da; } } }
`;

function htmlOf(block: Block): string {
  switch (block.kind) {
    case "title":
      return `<h1>${escaped(block.text)}</h1>`;
    case "question":
      return `<p class="question">${escaped(block.text)}</p>`;
    case "heading":
      return `<h2>${escaped(block.text)}</h2>`;
    case "paragraph":
      return `<p>${escaped(block.text)}</p>`;
    case "list":
      return `<ul>${items(block.items)}</ul>`;
    case "steps":
      return `<ol>${items(block.items)}</ol>`;
    case "table": {
      const head = block.columns.map((cell) => `<th scope="col">${escaped(cell)}</th>`).join("");
      const rows = block.rows.map(
        (row) => `<tr>${row.map((cell) => `<td>${escaped(cell)}</td>`).join("")}</tr>`,
      );
      return `<table><caption>${escaped(block.caption)}</caption><thead><tr>${head}</tr></thead><tbody>${rows.join("")}</tbody></table>`;
    }
  }
}

function items(texts: readonly string[]): string {
  return texts.map((text) => `<li>${escaped(text)}</li>`).join("");
}

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (mark) => entities[mark]!);
}
