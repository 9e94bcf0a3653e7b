import { html, nothing } from "lit";
import type { WateredAs } from "../../src/report/need-days.ts";
import type { ThirstBed, ThirstView } from "../../src/report/thirst-view.ts";
import { plate } from "../../src/words/en/plates.ts";
import { thirst as words } from "../../src/words/en/thirst.ts";
import type { Formatter } from "../../src/words/format.ts";
import { fromList, oneOf } from "../look/choose.ts";
import { inOrder, type OrderBy } from "./order/prepare.ts";

/** The order's measure, and the way into the guess. */
export function orderChooser(
  by: OrderBy,
  say: Formatter,
  { choose, guess }: { choose: (by: OrderBy) => void; guess: (() => void) | null },
) {
  const area = say.system === "us" ? words.orderPlate.byAreaUs : words.orderPlate.byArea;
  return html`<div slot="controls" class="choices">
    ${oneOf(
      "order",
      words.orderPlate.by,
      [
        { value: "area", text: area },
        { value: "all", text: words.orderPlate.byAll },
      ],
      by,
      choose,
    )}
    ${guess ? html`<button class="plain" @click=${guess}>${words.guess.begin}</button>` : nothing}
  </div>`;
}

/** Whose months are shown; thirstiest in all first. */
export function bedChooser(view: ThirstView, bed: string | null, choose: (bed: string | null) => void) {
  if (view.beds.length < 2) return nothing;
  const beds = inOrder(view.beds, "all").map(({ id, name }) => ({ value: id, text: name }));
  return html`<p class="choices which">
    ${fromList(plate.show, [{ value: "", text: plate.allBeds }, ...beds], bed ?? "", (id) => choose(id || null))}
  </p>`;
}

/** Which year is drawn, and how the bed is watered in it. */
export function yearChooser(
  { years, told }: ThirstView,
  bed: ThirstBed,
  year: number,
  as: WateredAs,
  choose: { year: (year: number) => void; as: (as: WateredAs) => void },
) {
  const at = years.indexOf(year);
  const kind = (y: number) =>
    y === told?.dry
      ? `, ${plate.bar.dry}`
      : y === told?.wet
        ? `, ${plate.bar.wet}`
        : y === told?.middle
          ? `, ${words.year.middle}`
          : "";
  const ways: { value: WateredAs; text: string }[] = [
    ...(bed.supply === "none" ? [] : [{ value: "need" as const, text: words.year.asNeed }]),
    ...(bed.underHabit && bed.supply !== "none"
      ? [{ value: "today" as const, text: words.year.asToday }]
      : []),
    { value: "rain", text: words.year.asRain },
  ];
  return html`<div slot="controls" class="choices">
    ${
      years.length > 1
        ? html`<span class="steps">${fromList(
            plate.year,
            years.map((y) => ({ value: String(y), text: `${y}${kind(y)}` })),
            String(year),
            (chosen) => choose.year(Number(chosen)),
          )}
            <button class="plain" ?disabled=${at <= 0} @click=${() => choose.year(years[at - 1]!)}>${plate.earlier}</button>
            <button class="plain" ?disabled=${at >= years.length - 1} @click=${() => choose.year(years[at + 1]!)}>
              ${plate.later}
            </button></span>`
        : nothing
    }
    ${ways.length > 1 ? oneOf("as", words.year.as, ways, as, choose.as) : nothing}
  </div>`;
}
