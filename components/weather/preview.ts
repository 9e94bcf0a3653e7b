import { css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Given } from "../../src/survey/record/mapping.ts";
import { weatherPlaceWords as words } from "../../src/words/en/frame.ts";
import type { Formatter } from "../../src/words/format.ts";
import type { MappedLine, RecordPreview } from "../frame/work/preview.ts";

export interface PreviewParts {
  isBusy: boolean;
  say: Formatter;
  /** Somebody says how the file is to be read. */
  answer(given: Given): void;
  use(record: NonNullable<RecordPreview["record"]>): void;
  leave(): void;
}

/** What was said about a file, and what is said now; the later wins. */
export function merged(before: Given, more: Given): Given {
  return {
    ...before,
    ...more,
    columns: { ...before.columns, ...more.columns },
    units: { ...before.units, ...more.units },
  };
}

const mostFaults = 20;

/** How a file is read, what is to be settled, what would be filled, what is wrong, and the first days of it. */
export function previewPart(preview: RecordPreview, parts: PreviewParts) {
  const { name, questions, faults, record, dates, unused } = preview;
  return html`<section id="preview" tabindex="-1" aria-label=${words.reads(name)} aria-busy=${parts.isBusy}>
    <h4>${words.reads(name)}</h4>
    ${dates ? html`<p>${words.datesLine(dates)}</p>` : nothing}
    ${questions.length > 0 ? asked(preview, parts) : nothing}
    ${
      faults.length > 0
        ? html`<div class="in-the-way" role="alert">
            <h3>${words.faults(faults.length)}</h3>
            <ol>
              ${faults.slice(0, mostFaults).map(({ path, sentence }) => html`<li>${path ? html`<code>${path}</code> ` : nothing}${sentence}</li>`)}
            </ol>
          </div>`
        : nothing
    }
    ${preview.lines.length > 0 ? mapping(preview, parts) : nothing}
    ${unused.length > 0 ? html`<p class="hint">${words.unusedLine(unused.join(", "))}</p>` : nothing}
    ${record ? ready(record) : nothing}
    <p class="row">
      ${record ? html`<button type="button" class="press primary" @click=${() => parts.use(record)}>${words.use}</button>` : nothing}
      <button type="button" class="plain" @click=${parts.leave}>${words.leave}</button>
    </p>
  </section>`;
}

function asked({ questions }: RecordPreview, { answer }: PreviewParts) {
  return html`<div class="in-the-way">
    <h3>${words.questions(questions.length)}</h3>
    ${questions.map(
      (question) => html`<p>${question.words}</p>
        <ul class="answers">
          ${question.answers.map(
            (one) => html`<li>
              <button type="button" class="plain" @click=${() => answer(one.given)}>${one.words}</button>
            </li>`,
          )}
        </ul>`,
    )}
  </div>`;
}

function mapping({ lines, headers }: RecordPreview, { answer, say }: PreviewParts) {
  const row = (line: MappedLine) => {
    const { column, header, unit, units, certainty } = line;
    const change = (event: Event, given: (value: string) => Given) => {
      event.stopPropagation();
      answer(given((event.target as HTMLSelectElement).value));
    };
    return html`<tr>
      <th scope="row">${line.words}</th>
      <td>
        <select
          aria-label="${line.words}: ${words.column}"
          .value=${live(header ?? "")}
          @change=${(event: Event) => change(event, (value) => ({ columns: { [column]: value } }))}
        >
          <option value="" ?selected=${header === null}>${words.nothing}</option>
          ${headers.map((one) => html`<option value=${one} ?selected=${one === header}>${one}</option>`)}
        </select>
      </td>
      <td>
        ${
          header === null
            ? nothing
            : html`<select
                aria-label="${line.words}: ${words.unit}"
                @change=${(event: Event) => change(event, (value) => ({ units: { [column]: value } }))}
              >
                ${units.map(({ id, words: shown }) => html`<option value=${id} ?selected=${id === unit}>${shown}</option>`)}
              </select>`
        }
      </td>
      <td class="sure">${header === null ? nothing : say.share(certainty)}</td>
    </tr>`;
  };
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${words.column}>
    <table>
      <thead>
        <tr>
          <td></td>
          <th scope="col">${words.column}</th>
          <th scope="col">${words.unit}</th>
          <th scope="col">${words.sure}</th>
        </tr>
      </thead>
      <tbody>
        ${[...lines].sort((a, b) => Number(a.header === null) - Number(b.header === null)).map(row)}
      </tbody>
    </table>
  </div>`;
}

function ready({ gaps, notes, firstRows }: NonNullable<RecordPreview["record"]>) {
  const [header = [], ...rows] = firstRows;
  return html`
    <h4>${words.gaps}</h4>
    ${gaps.map((line) => html`<p>${line}</p>`)}
    ${notes.length > 0 ? html`<h4>${words.notes}</h4>` : nothing} ${notes.map((line) => html`<p>${line}</p>`)}
    <h4 id="first-rows">${words.firstRows}</h4>
    <div class="scroll" tabindex="0" role="group" aria-labelledby="first-rows">
      <table class="rows">
        <thead>
          <tr>
            ${header.map((cell) => html`<th scope="col">${cell}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            (row) => html`<tr>
              ${row.map((cell) => html`<td>${cell}</td>`)}
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
  `;
}

export const previewLook = css`
  #preview {
    max-width: 48rem;
    margin-top: 1.4rem;
    scroll-margin-top: 1rem;
  }
  #preview:focus {
    outline: none;
  }
  h4 {
    margin: 1.2rem 0 0.2rem;
    font-size: 1rem;
    font-weight: 650;
    overflow-wrap: anywhere;
  }
  .scroll {
    overflow-x: auto;
    margin-top: 0.5rem;
  }
  table {
    border-collapse: collapse;
    font-size: 0.95rem;
  }
  th,
  td {
    padding: 0.25rem 1.1rem 0.25rem 0;
    border-bottom: 1px solid var(--hair);
    font-weight: 400;
    text-align: start;
  }
  thead th {
    color: var(--grey);
  }
  .rows td,
  .sure {
    text-align: end;
  }
  select {
    max-width: 14rem;
    min-height: 2.1rem;
    border: 0;
    border-bottom: 1.5px dashed var(--ink);
    background: transparent;
  }
  option {
    background: var(--leaf);
    color: var(--ink);
  }
  .answers {
    margin: 0.3rem 0 0.6rem;
    padding: 0;
    list-style: none;
  }
  .primary {
    background: var(--ink);
    color: var(--on-ink);
  }
  .primary:hover {
    background: transparent;
    color: var(--ink);
  }
  #preview > .row {
    margin-top: 1.2rem;
  }
  @media (pointer: coarse) {
    select {
      min-height: 44px;
    }
  }
`;
