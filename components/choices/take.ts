import type { Block } from "../../src/report/brief.ts";
import { briefMarkdown } from "../../src/report/brief-forms.ts";
import type { ChoicesTable } from "../../src/report/choices-tables.ts";

/** Hands a text over as a file. */
function take(text: string, type: string, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

export function takeMarkdown(blocks: readonly Block[], site: string): void {
  const name = site
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  take(briefMarkdown(blocks), "text/markdown", `${name || "brief"}.md`);
}

export async function takeTable({ name, header, rows }: ChoicesTable): Promise<void> {
  const { writeCsv } = await import("../../src/files/csv.ts");
  take(writeCsv(header, rows), "text/csv", `${name}.csv`);
}
