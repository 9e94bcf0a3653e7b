import { html, nothing } from "lit";
import type { SurveyMeasure } from "../../../src/survey/survey.ts";
import { measuresPage } from "../../../src/words/en/choices-measures.ts";
import { linesOf, type QuoteLine, withGrant, withLines, withUpkeep } from "../edits.ts";
import { entry, wantAmount, wantYears } from "../entry.ts";
import { measureOf, type Screen } from "../screen.ts";

const words = measuresPage;

/** A measure's quote in lines, each with its price and its life; the grant and the upkeep apart. */
export function quotePart(screen: Screen, measure: SurveyMeasure) {
  const { said, acts } = screen;
  const { id, name, quote, upkeepPerYear } = measure;
  const lines = linesOf(measure);
  // of the lines as they stand by then: the screen is drawn a moment after each keystroke
  const put = (edit: (lines: QuoteLine[]) => QuoteLine[], isDone: boolean) =>
    acts.money((now) => withLines(now, id, edit(linesOf(measureOf(now, id) ?? measure))), isDone);
  const set = (place: number, change: Partial<QuoteLine>, isDone: boolean) =>
    put((all) => all.map((line, k) => (k === place ? { ...line, ...change } : line)), isDone);
  const sum = lines.reduce((total, { cost }) => total + cost, 0) - (quote?.grant ?? 0);
  return html`<details class="quote">
    <summary aria-label="${words.quoteOf(name)}">${words.quote}${lines.length > 0 ? `: ${said.money(sum)}` : nothing}</summary>
    ${quote?.from ? html`<p class="quiet">${words.by(quote.from, quote.on ?? null)}</p>` : nothing}
    ${
      lines.length === 0
        ? html`<p class="quiet">${words.inWater}</p>`
        : html`<ul class="quote-lines">
            ${lines.map(
              (line, k) => html`<li>
                <span class="what">${line.what}</span>
                ${entry(screen, {
                  ...wantAmount,
                  field: `${id}-line-${k}-cost`,
                  label: words.price,
                  value: line.cost,
                  take: (value, isDone) => set(k, { cost: value ?? 0 }, isDone),
                })}
                ${entry(screen, {
                  ...wantYears,
                  field: `${id}-line-${k}-life`,
                  label: words.life,
                  isOptional: true,
                  value: line.life_years ?? measure.life_years ?? null,
                  take: (value, isDone) => set(k, { life_years: value ?? undefined }, isDone),
                })}
                <button class="plain" aria-label=${words.dropOf(line.what)}
                  @click=${() => put((all) => all.filter((_, place) => place !== k), true)}>${words.drop}</button>
              </li>`,
            )}
          </ul>`
    }
    <div class="quote-foot">
      <button class="plain" @click=${() => put((all) => [...all, { what: all.length === 0 ? name : words.newLine, cost: 0 }], true)}>${words.add}</button>
      ${
        lines.length === 0
          ? nothing
          : entry(screen, {
              ...wantAmount,
              field: `${id}-grant`,
              label: words.grant,
              isOptional: true,
              value: quote?.grant ?? null,
              take: (value, isDone) => acts.money((now) => withGrant(now, id, value), isDone),
            })
      }
      ${entry(screen, {
        ...wantAmount,
        field: `${id}-upkeep`,
        label: words.upkeep,
        isOptional: true,
        value: upkeepPerYear ?? null,
        take: (value, isDone) => acts.money((now) => withUpkeep(now, id, value), isDone),
      })}
    </div>
  </details>`;
}
