import { html, nothing } from "lit";
import type { GroundsChoices } from "../../../src/report/choices-schema.ts";
import { measuresPage } from "../../../src/words/en/choices-measures.ts";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import { sizeChart } from "../../charts/size-curve/chart.ts";
import { prepareSizes, sizeText } from "../../charts/size-curve/prepare.ts";
import type { Screen } from "../screen.ts";

const words = measuresPage.sizes;
type TankRow = GroundsChoices["tanks"][number];
type BanBed = GroundsChoices["rainOnly"][number];

/** How large a tank: the curve, why it flattens, and what lives under a ban. */
export function sizesPart(screen: Screen) {
  const { choices, state, said, say } = screen;
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
            : html`<gwb-plate .chart=${screen.chart(`sizes ${tank}`, choices.sizes, () =>
                sizeChart(prepareSizes(choices, tank, said.tank(tank)), say),
              )}>${ids.length > 1 ? chooser(screen, ids, tank) : nothing}</gwb-plate>`
        }
        ${row ? byRoof(screen, row) : nothing} ${ban(screen, row)}
      </div>
      <div class="margin">${row ? why(screen, row) : nothing}</div>
    </div>
  </section>`;
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
function why({ said, say }: Screen, row: TankRow) {
  const { limit, moreTank_kL_year, moreRoof_kL_year, moreDemand_kL_year, enough_L, capacity_L } = row;
  const tonnes = say.number(Math.round(capacity_L / 100) / 10, 1);
  return html`<p class="note"><strong>${words.whyHeading}</strong> ${words.why[limit]}
      ${words.proof(said.water(moreTank_kL_year), said.water(moreRoof_kL_year), said.water(moreDemand_kL_year))}
      ${limit === "nothing-asked" ? nothing : words.enough(sizeText(enough_L, say))}</p>
    <p class="note"><strong>${choicesPage.cautions}</strong> ${words.weight(sizeText(capacity_L, say), tonnes)}</p>`;
}

function byRoof({ said, say }: Screen, { byRoof: rows }: TankRow) {
  if (rows.length === 0) return nothing;
  return html`<table class="ruled small">
    <caption>${words.roofHeading}</caption>
    <thead><tr>${words.roofColumns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
    <tbody>${rows.map(
      ({ times, saved_kL_year }) =>
        html`<tr><th scope="row">${say.share(times)}</th><td>${said.water(saved_kL_year)}</td></tr>`,
    )}</tbody>
  </table>`;
}

/** Beds under a ban on mains watering: on the tank at each size marked, and on rain alone. */
function ban({ choices, said, say }: Screen, row: TankRow | undefined) {
  const onTank = (row?.ban ?? []).flatMap(({ capacity_L, beds }) =>
    beds.map((bed) => ({ size: sizeText(capacity_L, say), bed })),
  );
  const rows = [...onTank, ...choices.rainOnly.map((bed) => ({ size: words.rainAlone, bed }))];
  if (rows.length === 0) return nothing;
  const line = ({ size, bed }: { size: string; bed: BanBed }) => html`<tr>
    <th scope="row">${size}</th>
    <td class="text">${said.bed(bed.bed)}</td>
    <td>${say.number(bed.stressDays_year, 0)}</td>
    <td>${say.number(bed.longestDry_days, 0)}</td>
    <td>${bed.lives ? words.lives : html`<strong>${words.dies}</strong>`}</td>
  </tr>`;
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${words.banHeading}>
      <table class="ruled">
        <caption>${words.banHeading}</caption>
        <thead><tr>${words.banColumns.map((column, k) => html`<th scope="col" class=${k === 1 ? "text" : ""}>${column}</th>`)}</tr></thead>
        <tbody>${rows.map(line)}</tbody>
      </table>
    </div>
    <p class="under-table">${words.banRule}</p>`;
}
