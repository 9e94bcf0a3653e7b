import { html, type TemplateResult } from "lit";
import type { Cell, Chart, ChartTable } from "./chart.ts";

function shown(table: ChartTable, cell: Cell, column: number): string {
  return typeof cell === "number" ? (table.columns[column]!.show?.(cell) ?? String(cell)) : cell;
}

/** The table behind a drawing, from the same rows; it scrolls on its own where it is wide or long. */
export function tableOf(chart: Pick<Chart, "finding" | "table">): TemplateResult {
  const { table } = chart;
  return html`
    <div class="scroll" tabindex="0" role="region" aria-label=${chart.finding}>
      <table>
        <thead>
          <tr>${table.columns.map((c) => html`<th scope="col" class=${c.show ? "number" : ""}>${c.name}</th>`)}</tr>
        </thead>
        <tbody>
          ${table.rows.map(
            (row) => html`<tr>
              ${row.map((cell, i) =>
                i === 0
                  ? html`<th scope="row">${shown(table, cell, i)}</th>`
                  : html`<td class=${table.columns[i]!.show ? "number" : ""}>${shown(table, cell, i)}</td>`,
              )}
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
  `;
}

/** A text that a spreadsheet would take for a formula stays a text. */
function asCell(cell: Cell): string {
  return typeof cell === "string" && /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : String(cell);
}

/** Hands the table over as a file: numbers in full, in the units shown. */
export async function takeCsv(chart: Pick<Chart, "id" | "table">): Promise<void> {
  const { writeCsv } = await import("../../src/files/csv.ts");
  const { columns, rows } = chart.table;
  const text = writeCsv(
    columns.map((c) => c.name),
    rows.map((row) => row.map(asCell)),
  );
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "text/csv" }));
  link.download = `${chart.id}.csv`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
