import { html, type SVGTemplateResult, svg, type TemplateResult } from "lit";
import type { RoundsWeek } from "../../src/report/week-schema.ts";
import { logPage as words } from "../../src/words/en/rounds-months.ts";
import type { Formatter } from "../../src/words/format.ts";
import { roundAt } from "../../src/words/round-at.ts";
import type { Explain } from "../figure/figure.ts";
import { spoken } from "./figures.ts";

type Done = RoundsWeek["done"][number];

/** Planned and done by month, the newest first; only beds with either. */
export function doneByMonth(done: readonly Done[]): { month: string; rows: Done[] }[] {
  const months = [...new Set(done.map(({ month }) => month))].sort().reverse();
  return months.map((month) => ({
    month,
    rows: done.filter((row) => row.month === month && (row.planned_L >= 1 || row.done_L >= 1)),
  }));
}

/** Planned beside done, a bar a bed: the outline what the month table gives it, the ink what the log has. */
export function donePart(
  { done }: RoundsWeek,
  name: (id: string) => string,
  say: Formatter,
  explain: Explain | undefined,
): TemplateResult {
  const months = doneByMonth(done);
  return html`<section class="part">
    <h3 class="ruled">${words.done}</h3>
    ${
      months.length === 0
        ? html`<p class="rest">${words.nothingDone}</p>`
        : html`<p class="key">${words.doneLead}</p>`
    }
    ${months.map(({ month, rows }) => {
      const [year = "", number = "1"] = month.split("-");
      return html`<h4 class="small-head">${say.month(Number(number) - 1)} ${year}</h4>
        <ul class="done-rows">
          ${rows.map((row) => {
            const texts = [say.litres(row.planned_L), say.litres(row.done_L)] as const;
            return html`<li><span>${name(row.id)}</span> ${doneBar(row, words.doneAbout(name(row.id), ...texts))}
              <span class="quiet">${spoken(doneSaid(row, Number(number), texts), explain)}</span></li>`;
          })}
        </ul>`;
    })}
  </section>`;
}

/** What was done and planned, each opening; nothing done is no sum. */
function doneSaid({ id, month, done_L }: Done, number: number, [planned, done]: readonly [string, string]) {
  const doneSlot = done_L > 0 ? { at: roundAt.done(id, month), text: done } : done;
  return words.doneRow({ at: roundAt.month(id, number - 1, "month"), text: planned }, doneSlot);
}

function doneBar({ planned_L, done_L }: Done, about: string): SVGTemplateResult {
  const [wide, tall] = [220, 16];
  const most = Math.max(planned_L, done_L, 1);
  const part = (L: number) => (L / most) * (wide - 2);
  return svg`<svg viewBox="0 0 ${wide} ${tall}" width=${wide} height=${tall} role="img" aria-label=${about}>
    <rect class="bar" x="1" y="4" width=${part(done_L)} height=${tall - 8}></rect>
    <rect class="bar hollow" x="1" y="1" width=${Math.max(1, part(planned_L))} height=${tall - 2}></rect>
  </svg>`;
}
