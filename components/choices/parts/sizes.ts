import { html, nothing } from "lit";
import type { GroundsChoices } from "../../../src/report/choices-schema.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { measuresPage } from "../../../src/words/en/choices-measures.ts";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import { choicesPlates } from "../../../src/words/en/choices-plates.ts";
import { sizeChart } from "../../charts/size-curve/chart.ts";
import { prepareSizes, sizeText } from "../../charts/size-curve/prepare.ts";
import { cell, cellFigure, figures, openedBelow } from "../opening.ts";
import type { Screen } from "../screen.ts";
import { banPart } from "./ban.ts";

const words = measuresPage.sizes;
type TankRow = GroundsChoices["tanks"][number];

/** How large a tank: the curve, why it flattens, and what lives under a ban. */
export function sizesPart(screen: Screen) {
  const { choices, state } = screen;
  const ids = [...new Set(choices.sizes.map(({ tank }) => tank))];
  const tank = ids.find((id) => id === state.tank) ?? ids.at(-1);
  const row = choices.tanks.find((each) => each.tank === tank);
  return html`<section id="sizes" tabindex="-1" aria-labelledby="sizes-name">
    <h2 id="sizes-name">${choicesPage.parts.sizes}</h2>
    <div class="spread">
      <div class="main">
        ${
          tank === undefined
            ? html`<p class="lead">${words.none}</p>`
            : html`<gwb-plate .chart=${curveOf(screen, tank)}>${ids.length > 1 ? chooser(screen, ids, tank) : nothing}</gwb-plate>`
        }
        ${tank === undefined ? nothing : marks(screen, tank)} ${row ? byRoof(screen, row) : nothing}
      </div>
      <div class="margin">${row ? why(screen, row) : nothing} <p class="note">${words.money}</p></div>
    </div>
    ${banPart(screen, row)}
  </section>`;
}

/** Drawn anew only where what it shows has changed: a quote changes no more than what is said of its worth. */
function curveOf(screen: Screen, tank: string) {
  const { choices, said, survey } = screen;
  const curve = prepareSizes(choices, tank, said.tank(tank), quotesOf(survey, tank));
  return screen.chart(`sizes ${tank} ${curve.nonePays}`, choices.sizes, () => sizeChart(curve, said.say));
}

/** Measures that build this tank or resize it. */
function quotesOf({ measures = [] }: Survey, tank: string): string[] {
  return measures
    .filter(({ addTank, resizeTank }) => addTank?.id === tank || resizeTank?.tank === tank)
    .map(({ id }) => id);
}

function chooser({ said, acts }: Screen, ids: readonly string[], tank: string) {
  const choose = (event: Event) => acts.state({ tank: (event.target as HTMLSelectElement).value });
  return html`<div slot="controls">
    <label>${words.which} <select @change=${choose}>
      ${ids.map((id) => html`<option value=${id} ?selected=${id === tank}>${said.tank(id)}</option>`)}
    </select></label>
  </div>`;
}

/** The runs that prove what holds it back. */
function why(screen: Screen, row: TankRow) {
  const { said, say } = screen;
  const { tank, limit, moreTank_kL_year, moreRoof_kL_year, moreDemand_kL_year, enough_L, capacity_L } = row;
  const tonnes = say.number(Math.round(capacity_L / 100) / 10, 1);
  const more = (kL: number, what: string) => said.opens(said.water(kL), `choices/more/${tank}/${what}`);
  const enough = said.opens(sizeText(enough_L, say), `choices/size/${tank}/${enough_L}/part`);
  return html`<p class="note"><strong>${words.whyHeading}</strong> ${words.why[limit]}
      ${figures(
        words.proof(
          more(moreTank_kL_year, "tank"),
          more(moreRoof_kL_year, "roof"),
          more(moreDemand_kL_year, "demand"),
        ),
        screen,
      )}
      ${limit === "nothing-asked" ? nothing : figures(words.enough(enough), screen)}</p>
    <p class="note"><strong>${choicesPage.cautions}</strong> ${words.weight(sizeText(capacity_L, say), tonnes)}</p>`;
}

/** Today's, the quoted and the smallest size that is enough, each figure with its working. */
function marks(screen: Screen, tank: string) {
  const { choices, said, say } = screen;
  const rows = choices.sizes.filter((row) => row.tank === tank);
  const told = rows.filter(({ mark }) => mark !== null);
  if (told.length === 0) return nothing;
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${words.marked}>
    <table class="ruled">
      <caption>${words.marked}</caption>
      <thead><tr>${words.markedColumns(said.stepSize).map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
      <tbody>${told.map((row) => {
        const next = rows[rows.indexOf(row) + 1];
        const key = `size-${tank}-${row.capacity_L}`;
        const at = (what: string) => `choices/size/${tank}/${row.capacity_L}/${what}`;
        const { p10, p50, p90 } = row.saved_kL_year;
        const point = (kL: number | null, what: string) =>
          cellFigure(screen, key, kL === null ? "–" : said.water(kL), kL === null ? null : at(what));
        return html`<tr>
            <th scope="row">${sizeText(row.capacity_L, say)}<br /><span class="quiet">${choicesPlates.sizes.marks[row.mark!]}</span></th>
            ${cell(screen, key, said.water(row.mean_kL_year), at("mean"))}
            <td>${point(p50, "p50")}<br /><span class="quiet">${point(p10, "p10")} – ${point(p90, "p90")}</span></td>
            ${cell(screen, key, row.marginal_kL === null ? "–" : said.perStep(row.marginal_kL), next ? at(`marginal/${next.capacity_L}`) : null)}
            ${cell(screen, key, say.share(row.reliability), at("reliability"))}
            ${cell(screen, key, say.number(row.emptyDays_year, 0), at("empty"))}
          </tr>
          ${openedBelow(screen, key, 6)}`;
      })}</tbody>
    </table>
  </div>`;
}

function byRoof(screen: Screen, { tank, byRoof: rows }: TankRow) {
  const { said, say } = screen;
  if (rows.length === 0) return nothing;
  return html`<table class="ruled small">
    <caption>${words.roofHeading}</caption>
    <thead><tr>${words.roofColumns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
    <tbody>${rows.map(({ times, saved_kL_year }) => {
      const key = `roof-${tank}-${times}`;
      return html`<tr>
          <th scope="row">${say.share(times)}</th>
          ${cell(screen, key, said.water(saved_kL_year), `choices/roof/${tank}/${times}`)}
        </tr>
        ${openedBelow(screen, key, 2)}`;
    })}</tbody>
  </table>`;
}
