import { html, nothing, type TemplateResult } from "lit";
import { readHow } from "../../../src/survey/measuring/how.ts";
import type { SurveyFinding } from "../../../src/survey/survey.ts";
import { readingsWords as words } from "../../../src/words/en/walk-more.ts";
import { pacedWords, wayWords } from "../../../src/words/en/walk-ways.ts";
import type { Walk } from "../context.ts";
import { countReading } from "../keep.ts";
import { valueSaid } from "../said.ts";
import type { Stop } from "../stops.ts";

/** Every reading behind a stop's figure, as it was read: by whom, when, how; each can be left out and counted again. */
export function readingsPart(walk: Walk, stop: Stop): TemplateResult | typeof nothing {
  const rows = (walk.survey.found ?? []).filter(
    ({ at, how, guess }) =>
      at === stop.at && guess !== true && how.startsWith("sprinklers") === (stop.kind === "heads"),
  );
  if (rows.length === 0) return nothing;
  return html`<details class="readings">
    <summary class="plain">${words.heading(rows.length)}</summary>
    <ul>
      ${rows.map((row) => line(walk, stop, row))}
    </ul>
    <p class="hint">${words.hint}</p>
  </details>`;
}

function line(walk: Walk, stop: Stop, row: SurveyFinding): TemplateResult {
  const who = walk.survey.groups?.find(({ id }) => id === row.group)?.nickname ?? words.nobody;
  const isCounted = row.used !== false;
  const press = isCounted ? words.leave : words.count;
  return html`<li class=${isCounted ? "" : "left"}>
    <p>
      <bdi>${who}</bdi>, ${moment(row.when, walk.locale)}: ${howSaid(row.how)}${
        row.text ? html`, <bdi>${row.text}</bdi>` : nothing
      }. <strong>${valueSaid(walk, stop, row.figure) ?? row.figure}</strong>${isCounted ? "" : `, ${words.left}`}
    </p>
    <button
      class="plain"
      aria-label=${words.pressFor(press, who)}
      @click=${() => walk.change(countReading(walk.survey, row, !isCounted))}
    >
      ${press}
    </button>
  </li>`;
}

/** The ways of a reading by their names; as it was written where it is none of ours. */
function howSaid(how: string): string {
  const read = readHow(how);
  const names = read?.terms.map(({ way, sign }) => ({ name: wayWords[way]?.name, sign }));
  if (!read || !names || names.some(({ name }) => name === undefined)) return how;
  const shapes = names.map(({ name, sign }, i) => (i === 0 ? name! : words.joined(name!, sign > 0))).join("");
  return read.paced ? `${shapes} (${pacedWords.name.toLowerCase()})` : shapes;
}

function moment(when: string, locale: string | undefined): string {
  const hasTime = when.length > "2025-03-02".length;
  const form = new Intl.DateTimeFormat(locale, {
    dateStyle: "medium",
    ...(hasTime ? { timeStyle: "short" as const } : { timeZone: "UTC" }),
  });
  return form.format(new Date(when));
}
