import { html, nothing } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { GroundsChoices } from "../../../src/report/choices-schema.ts";
import type { SurveyMeasure } from "../../../src/survey/survey.ts";
import { measuresPage } from "../../../src/words/en/choices-measures.ts";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import { proposalSentence } from "../../../src/words/en/choices-reasons.ts";
import { note } from "../../answer/parts.ts";
import { withChosen, withProposal } from "../edits.ts";
import { figures } from "../opening.ts";
import { measureOf, type Said, type Screen } from "../screen.ts";
import { quotePart } from "./quote.ts";

type Row = GroundsChoices["measures"][number];

/** The measures of the survey, each with its tick and its quote, and what the survey suggests. */
export function measuresPart(screen: Screen) {
  const { choices } = screen;
  return html`<section id="measures" tabindex="-1" aria-labelledby="measures-name">
    <h2 id="measures-name">${choicesPage.parts.measures}</h2>
    <div class="spread">
      <div class="main">
        ${
          choices.measures.length === 0
            ? html`<p class="lead">${measuresPage.none}</p>`
            : html`<ul class="lines">${repeat(
                choices.measures,
                ({ id }) => id,
                (row) => measureLine(screen, row),
              )}</ul>`
        }
        ${proposals(screen)}
      </div>
      <div class="margin">
        <p class="note">${measuresPage.lead}</p>
        ${note(
          choicesPage.cautions,
          html`${choices.beforeWork.map((words) => html`<span class="said">${words}</span> `)}`,
        )}
      </div>
    </div>
  </section>`;
}

function measureLine(screen: Screen, row: Row) {
  const { survey, acts } = screen;
  const measure = measureOf(survey, row.id);
  if (!measure) return nothing;
  const tick = (event: Event) =>
    acts.water((now) => withChosen(now, row.id, (event.target as HTMLInputElement).checked));
  return html`<li>
    <label class="tick-line">
      <input type="checkbox" .checked=${measure.chosen !== false} @change=${tick} />
      <span>${row.name}</span>
    </label>
    <p>${figures(verdictOf(screen, row), screen)}</p>
    ${row.oneOf === null ? nothing : html`<p class="quiet">${measuresPage.oneOf(row.oneOf)}</p>`}
    ${
      row.againstNeed.length === 0
        ? nothing
        : html`<p class="quiet">${measuresPage.againstNeed(screen.said.list(row.againstNeed.map(screen.said.bed)))}</p>`
    }
    ${quotePart(screen, measure)}
  </li>`;
}

/** What it saves, and whether it is worth it, said plainly. */
function verdictOf({ said }: Screen, row: Row): string {
  const saves =
    row.after_kL_year < 0 && row.worth === "saves-nothing"
      ? measuresPage.takes(said.opens(said.water(-row.after_kL_year), `choices/measure/${row.id}/after`))
      : savesWords(said, row.id, row.alone_kL_year, row.after_kL_year);
  const { verdict } = measuresPage;
  const cost = row.cost === null ? "" : said.opens(said.money(row.cost), `choices/cost/${row.id}`);
  const worth = (npv: number) => said.opens(said.money(npv), `choices/worth/${row.id}`);
  const npv = row.npv ?? 0;
  switch (row.worth) {
    case "pays":
      return `${saves} ${verdict.pays(worth(npv), cost)}`;
    case "does-not-pay":
      return `${saves} ${verdict["does-not-pay"](worth(-npv), cost)}`;
    case "saves-nothing":
      return `${saves} ${row.cost === null ? "" : verdict["saves-nothing"](cost)}`;
    case "not-priced":
      return `${saves} ${row.cost === null ? measuresPage.inWater : verdict["not-priced"]}`;
  }
}

function savesWords(said: Said, id: string, alone_kL: number, after_kL: number): string {
  const [alone, after] = [said.water(alone_kL), said.water(after_kL)];
  const lastly = said.opens(after, `choices/measure/${id}/after`);
  return alone === after
    ? measuresPage.savesBoth(lastly)
    : measuresPage.saves(said.opens(alone, `choices/measure/${id}/alone`), lastly);
}

function proposals(screen: Screen) {
  const { choices, said, acts, survey } = screen;
  const { proposals: rows } = choices;
  if (rows.length === 0) return nothing;
  const known = new Set((survey.measures ?? []).map(({ id }) => id));
  const line = ({ code, facts, measure, alone_kL_year, after_kL_year, worthUpTo }: (typeof rows)[number]) => {
    const sentence = proposalSentence(code, named(screen, facts), screen.say.system, (text, fact) => {
      const at = factAddress(fact, facts);
      return at === null ? text : said.opens(text, at);
    });
    const proposed = measure as SurveyMeasure | null;
    const saves =
      alone_kL_year === null || after_kL_year === null
        ? code === "over-need"
          ? measuresPage.free
          : ""
        : savesWords(said, proposed?.id ?? "", alone_kL_year, after_kL_year);
    const upTo =
      worthUpTo === null
        ? ""
        : worthUpTo > 0
          ? measuresPage.upTo(
              said.opens(said.money(worthUpTo), `choices/purse/offer/${proposed?.id}/pays-up-to`),
            )
          : measuresPage.neverPays;
    return html`<li>
      <p>${figures(`${sentence} ${saves} ${upTo}`, screen)}</p>
      ${
        proposed && !known.has(proposed.id)
          ? html`<button class="plain" aria-label=${measuresPage.takeOf(proposed.name)}
              @click=${() => acts.water((now) => withProposal(now, proposed))}>${measuresPage.take}</button>`
          : nothing
      }
    </li>`;
  };
  const sorted = [...rows].sort((a, b) => Number(a.measure !== null) - Number(b.measure !== null));
  return html`<h3>${measuresPage.proposed}</h3>
    <p class="quiet">${measuresPage.proposedLead}</p>
    <ul class="lines">${sorted.map(line)}</ul>`;
}

/** Where a fact of a reason opens; null where it stands in the survey as it is. */
function factAddress(fact: string, { bed, tank, enough_L }: Readonly<Record<string, string | number>>) {
  switch (fact) {
    case "habit_kL_year":
      return `bed/${bed}/habit`;
    case "need_kL_year":
      return `bed/${bed}/need`;
    case "spill_kL_year":
      return `tank/${tank}/spill`;
    case "enough_L":
      return `choices/size/${tank}/${enough_L}/part`;
    case "area_m2":
      return bed === undefined ? null : `bed/${bed}/area`;
    default:
      return null;
  }
}

/** Ids among the facts of a reason as the names that people know. */
function named({ said }: Screen, facts: Readonly<Record<string, string | number>>) {
  const { bed, tank, roof } = facts;
  return {
    ...facts,
    ...(typeof bed === "string" && { bed: said.bed(bed) }),
    ...(typeof tank === "string" && { tank: said.tank(tank) }),
    ...(typeof roof === "string" && { roof: said.tank(roof) }),
  };
}
