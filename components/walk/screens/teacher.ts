import { css, html } from "lit";
import { standsFor } from "../../../src/survey/measuring/apply-found.ts";
import { stopWords } from "../../../src/words/en/walk-stops.ts";
import { teacherWords } from "../../../src/words/en/walk-teacher.ts";
import { dealBeds } from "../deal.ts";
import { usedByGroups } from "../judged.ts";
import { standsSaid, valueSaid } from "../said.ts";
import { Screen } from "../screen.ts";
import { stopsOf } from "../stops.ts";

/** The teacher's page: two lessons, who does what, the groups' nicknames, where their judgements differ. */
export class TeacherScreen extends Screen {
  static override properties = { ...Screen.properties, groups: { state: true } };

  declare groups: number;

  static override styles = [
    ...Screen.styles,
    css`
      .lessons {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 17rem), 1fr));
        gap: 0 2.5rem;
      }
      .lessons ul {
        padding-inline-start: 1.1rem;
      }
      .lessons li {
        padding: 0.2rem 0;
      }
      .screen {
        max-width: 60rem;
      }
      .number {
        display: flex;
        align-items: center;
        gap: 0.4rem;
        margin-top: 0.4rem;
      }
      .number button {
        width: 48px;
        min-height: 48px;
        border: 1.5px solid var(--ink);
        background: none;
        font-size: 1.3rem;
      }
      .number output {
        min-width: 2.5rem;
        text-align: center;
        font-size: 1.3rem;
      }
      table {
        width: 100%;
        margin-top: 0.6rem;
        border-collapse: collapse;
      }
      th {
        font-weight: 600;
        text-align: start;
        vertical-align: top;
      }
      thead th {
        color: var(--grey);
        font-weight: 400;
      }
      th,
      td {
        padding: 0.5rem 1rem 0.5rem 0;
        border-bottom: 1px solid var(--hair);
        vertical-align: top;
      }
      @media (max-width: 40rem) {
        thead {
          display: none;
        }
        tr,
        td,
        th {
          display: block;
          padding: 0.1rem 0;
          border: 0;
        }
        tr {
          padding: 0.6rem 0;
          border-bottom: 1px solid var(--hair);
        }
      }
    `,
  ];

  constructor() {
    super();
    this.groups = 6;
  }

  protected override render() {
    const lesson = ({ heading, lines }: { heading: string; lines: readonly string[] }) =>
      html`<section><h3>${heading}</h3><ul>${lines.map((line) => html`<li>${line}</li>`)}</ul></section>`;
    return html`<section class="screen" aria-labelledby="head">
      ${this.top(this.walk.draft.nickname ? "round" : "")}
      <h2 id="head" tabindex="-1">${teacherWords.heading}</h2>
      <p class="lead">${teacherWords.lead}</p>
      <div class="lessons">
        ${lesson(teacherWords.before)} ${lesson(teacherWords.first)} ${lesson(teacherWords.second)}
      </div>
      ${this.cautions("always")}
      <h3>${teacherWords.share}</h3>
      <p class="hint">${teacherWords.shareHint} ${teacherWords.codes}</p>
      <div class="number" role="group" aria-label=${teacherWords.groups}>
        <span>${teacherWords.groups}</span>
        <button aria-label="−" @click=${() => this.step(-1)}>−</button>
        <output>${this.groups}</output>
        <button aria-label="+" @click=${() => this.step(1)}>+</button>
      </div>
      ${this.table()}
      <h3>${teacherWords.judged}</h3>
      ${this.judged()}
      <div class="grow"></div>
      <div class="foot"><button class="main" @click=${() => print()}>${teacherWords.print}</button></div>
    </section>`;
  }

  private step(by: number): void {
    this.groups = Math.min(teacherWords.nicknames.length, Math.max(1, this.groups + by));
  }

  private table() {
    const { survey } = this.walk;
    const hands = dealBeds(survey, this.groups);
    const { also, table, nicknames } = teacherWords;
    const known = (survey.groups ?? []).map(({ id, nickname }) => ({ id, nickname }));
    const free = nicknames.filter((name) => !known.some(({ nickname }) => nickname === name));
    const rows = hands.map((beds, i) => ({
      beds,
      nickname: known[i]?.nickname ?? free[i - known.length] ?? "",
      id: known[i]?.id,
      also: also.filter((_, k) => k % this.groups === i),
    }));
    return html`<table>
      <thead>
        <tr>
          <th scope="col">${table.group}</th><th scope="col">${table.beds}</th>
          <th scope="col">${table.also}</th><th scope="col">${table.done}</th>
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) => html`<tr>
            <th scope="row"><bdi>${row.nickname}</bdi></th>
            <td>${row.beds.join(", ")}</td>
            <td>${row.also.join("; ")}</td>
            <td>${teacherWords.taken(row.id ? (survey.found ?? []).filter(({ group }) => group === row.id).length : 0)}</td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }

  private judged() {
    const { walk } = this;
    const stops = stopsOf(walk.survey);
    const several = [...usedByGroups(walk.survey)].flatMap(([at, rows]) => {
      const stop = stops.find((one) => one.at === at);
      return stop ? [{ stop, rows }] : [];
    });
    if (several.length === 0) return html`<p>${teacherWords.judgedNone}</p>`;
    return html`<ul class="answers">
      ${several.map(({ stop, rows }) => {
        const name = (group: string | undefined) =>
          walk.survey.groups?.find(({ id }) => id === group)?.nickname ?? "";
        const found = rows
          .map(({ figure, group }) => `${name(group)} ${valueSaid(walk, stop, figure) ?? figure}`)
          .join(", ");
        const what = `${stop.name}, ${stopWords[stop.kind]!.name.toLowerCase()}`;
        return html`<li class="answer"><span class="words">${teacherWords.judgedLine(what, found, standsSaid(walk, stop, standsFor(rows)))}</span></li>`;
      })}
    </ul>`;
  }
}

customElements.define("gwb-walk-teacher", TeacherScreen);
