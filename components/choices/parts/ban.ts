import { html, nothing } from "lit";
import type { GroundsChoices } from "../../../src/report/choices-schema.ts";
import { measuresPage } from "../../../src/words/en/choices-measures.ts";
import { sizeText } from "../../charts/size-curve/prepare.ts";
import { cellFigure, openedBelow } from "../opening.ts";
import type { Screen } from "../screen.ts";

const words = measuresPage.sizes;
type TankRow = GroundsChoices["tanks"][number];
type BanBed = GroundsChoices["rainOnly"][number];

/** Beds under a ban on mains watering: on the tank at each size marked, or on rain alone. */
export function banPart(screen: Screen, row: TankRow | undefined) {
  const { choices, said, say } = screen;
  const sizes = row?.ban ?? [];
  const ids = [...new Set(sizes.flatMap(({ beds }) => beds.map(({ bed }) => bed)))];
  if (ids.length + choices.rainOnly.length === 0) return nothing;
  const cell = (bed: BanBed | undefined, on: string) => (bed ? banCell(screen, bed, on) : html`<td></td>`);
  const none = sizes.find(({ capacity_L }) => capacity_L === 0)?.beds ?? [];
  const tanks = sizes.filter(({ capacity_L }) => capacity_L > 0);
  const isOnTank = (id: string) => none.some(({ bed }) => bed === id);
  const rain = new Map([...none, ...choices.rainOnly].map((bed) => [bed.bed, bed]));
  const all = [...new Set([...ids, ...choices.rainOnly.map(({ bed }) => bed)])];
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${words.banHeading}>
      <table class="ruled ban">
        <caption>${words.banHeading}</caption>
        <thead><tr>
          <th scope="col">${words.banBed}</th>
          <th scope="col">${words.rainAlone}</th>
          ${tanks.map(({ capacity_L }) => html`<th scope="col">${words.banTank(sizeText(capacity_L, say))}</th>`)}
        </tr></thead>
        <tbody>${all.map(
          (id) => html`<tr>
              <th scope="row">${said.bed(id)}</th>
              ${cell(rain.get(id), isOnTank(id) ? `${row!.tank}/0` : "rain")}
              ${tanks.map(({ beds, capacity_L }) =>
                cell(
                  beds.find(({ bed }) => bed === id),
                  `${row!.tank}/${capacity_L}`,
                ),
              )}
            </tr>
            ${openedBelow(screen, `ban-${id}`, tanks.length + 2)}`,
        )}</tbody>
      </table>
    </div>
    <p class="under-table">${words.banRule}</p>`;
}

/** Whether a bed lives, and the days that say so. */
function banCell(screen: Screen, { bed, lives, stressDays_year, longestDry_days }: BanBed, on: string) {
  const { say } = screen;
  const days = (count: number, what: string) =>
    cellFigure(screen, `ban-${bed}`, say.number(count, 0), `choices/ban/${bed}/${on}/${what}`);
  return html`<td>${lives ? words.lives : html`<strong>${words.dies}</strong>`}<br /><span class="quiet"
      >${days(stressDays_year, "short")} ${words.daysShort}, ${days(longestDry_days, "dry")} ${words.dryInARow}</span
    ></td>`;
}
