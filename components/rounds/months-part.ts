import { html, nothing, type SVGTemplateResult, svg, type TemplateResult } from "lit";
import type { GroundsRounds, RoundsBedMonth, RoundsWatering } from "../../src/report/rounds-schema.ts";
import type { Sentence } from "../../src/words/en/page.ts";
import { minutesSaid, monthNames, whenWords } from "../../src/words/en/rounds.ts";
import { monthsPage as words } from "../../src/words/en/rounds-months.ts";
import type { Formatter } from "../../src/words/format.ts";
import { type MonthFigure, roundAt } from "../../src/words/round-at.ts";
import { said } from "../../src/words/said.ts";
import type { Explain } from "../figure/figure.ts";
import { figure, spoken } from "./figures.ts";
import type { BedFacts } from "./week-days.ts";

export interface MonthParts {
  rounds: GroundsRounds;
  explain: Explain | undefined;
  beds: ReadonlyMap<string, BedFacts>;
  say: Formatter;
  /** 1–12 */
  month: number;
  width: number;
  choose(month: number): void;
  starts: number;
  chooseStarts(starts: number): void;
}

/** Litres of each month by the table, middle and dry year; dry is null where the record has one year. */
export function monthTotals({ months }: GroundsRounds): { middle_L: number; dry_L: number | null }[] {
  return months.map(({ beds }) => {
    const hasDry = beds.some(({ dry }) => dry !== null);
    return {
      middle_L: beds.reduce((sum, { month_L }) => sum + month_L, 0),
      dry_L: hasDry ? beds.reduce((sum, { dry }) => sum + (dry?.month_L ?? 0), 0) : null,
    };
  });
}

/** The month table: one month at a time, the year beside it. */
export function monthsPart(parts: MonthParts): TemplateResult {
  const { rounds, beds, explain, say, month, choose } = parts;
  const totals = monthTotals(rounds);
  const this_L = totals[month - 1]!.middle_L;
  const isMost = this_L > 0 && totals.every(({ middle_L }) => middle_L <= this_L);
  const all = rounds.months.find((one) => one.month === month)?.beds ?? [];
  const rows = all.filter(({ minutes, dry }) => minutes > 0 || (dry?.minutes ?? 0) > 0);
  const resting = all.filter((row) => !rows.includes(row)).map(({ id }) => beds.get(id)?.name ?? id);
  return html`<div class="measured-sheet sheet-top">
    <h2 class="headline">${
      this_L < 1
        ? words.nothing(month)
        : spoken(
            words.headline(month, { at: roundAt.months(month - 1), text: say.litres(this_L) }, isMost),
            explain,
          )
    }</h2>
    <label class="pick month-pick screen-only"><span>${words.month}</span>
      <select @change=${(event: Event) => choose(Number((event.target as HTMLSelectElement).value))}>
        ${monthNames.map((name, k) => html`<option value=${k + 1} ?selected=${k + 1 === month}>${name}</option>`)}
      </select></label>
    <section class="part">
      ${
        rows.length > 0
          ? laidTable(
              "rows wide",
              words.head,
              rows.map((row) => bedRows(row, parts)),
            )
          : nothing
      }
      ${resting.length > 0 ? html`<p class="rest">${words.resting(resting)}</p>` : nothing}
      <p class="key">${words.years(rounds.years.middle, rounds.years.dry)}</p>
    </section>
    <section class="part">
      <h3 class="ruled">${words.year}</h3>
      ${parts.width > 0 ? yearDrawing(totals, month, Math.min(parts.width, 760), say) : nothing}
      <p class="key">${words.yearAbout}.</p>
    </section>
    ${programmePart(parts)} ${roundingPart(parts)}
  </div>`;
}

function bedRows(row: RoundsBedMonth, parts: MonthParts): TemplateResult {
  const { beds, say } = parts;
  const name = beds.get(row.id)?.name ?? row.id;
  const plants = row.plants.map(({ plants: n, litresEach, cansEach }) =>
    words.plants(n, say.litres(litresEach), cansEach, say),
  );
  return html`<tr role="row">
      <th role="rowheader" scope="row">${name}${plants.map((text) => html`<span class="below">${text}</span>`)}</th>
      ${cells(row, row.id, false, parts)}
    </tr>
    ${
      row.dry
        ? html`<tr role="row" class="second"><th role="rowheader" scope="row"><span class="unseen">${name} </span>${words.dryRow}</th>${cells(row.dry, row.id, true, parts)}</tr>`
        : nothing
    }`;
}

function cells(
  row: RoundsWatering,
  id: string,
  isDry: boolean,
  { say, month, explain }: MonthParts,
): TemplateResult {
  const [, ...names] = words.head;
  const at = (what: MonthFigure) => roundAt.month(id, month - 1, what, isDry);
  const slot = (what: MonthFigure, text: string): Sentence => [{ at: at(what), text }];
  const isNone = row.minutes === 0;
  const texts: Sentence[] = isNone
    ? [[whenWords(row)], [], [], [], [], []]
    : [
        slot("interval", whenWords(row)),
        minutesSaid(row, at),
        said`${slot("litres", say.litres(row.litres))}, ${slot("net", say.depth(row.net_mm))}`,
        slot("month", say.litres(row.month_L)),
        slot("wetted", words.cm(row.wetted_m, say)),
        row.leaveAfterRain_mm === null ? [words.noRain] : slot("rain", say.depth(row.leaveAfterRain_mm)),
      ];
  return html`${texts.map(
    (text, k) =>
      html`<td role="cell" class=${text.length === 0 ? "empty" : ""}><span class="in-row">${names[k]}</span><span class="value">${spoken(text, explain)}</span></td>`,
  )}`;
}

/** A table whose rows are laid on lines of their own, so that a working opens below its row. */
function laidTable(kind: string, head: readonly string[], rows: readonly TemplateResult[]): TemplateResult {
  return html`<table role="table" class=${kind}>
    <thead role="rowgroup"><tr role="row">${head.map(
      (name) => html`<th role="columnheader" scope="col">${name}</th>`,
    )}</tr></thead>
    <tbody role="rowgroup">${rows}</tbody>
  </table>`;
}

/** Twelve months as upright bars on one line, the month shown filled, a dry year's height marked. */
function yearDrawing(
  totals: ReturnType<typeof monthTotals>,
  month: number,
  width: number,
  say: Formatter,
): SVGTemplateResult {
  const tall = 170;
  const most = Math.max(1, ...totals.flatMap(({ middle_L, dry_L }) => [middle_L, dry_L ?? 0]));
  const step = width / 12;
  const y = (L: number) => tall - 26 - (L / most) * (tall - 56);
  const bar = Math.min(40, step * 0.6);
  return svg`<svg viewBox="0 0 ${width} ${tall}" width=${width} height=${tall} role="img" aria-label=${words.yearAbout}>
    <line class="ground" x1="0" x2=${width} y1=${tall - 26} y2=${tall - 26}></line>
    ${totals.map(({ middle_L, dry_L }, k) => {
      const x = step * k + (step - bar) / 2;
      const isShown = k + 1 === month;
      return svg`<rect class=${isShown ? "bar" : "bar hollow"} x=${x} y=${y(middle_L)} width=${bar} height=${tall - 26 - y(middle_L)}></rect>
        ${dry_L === null || dry_L < 1 ? svg`` : svg`<line class="span" x1=${x - 4} x2=${x + bar + 4} y1=${y(dry_L)} y2=${y(dry_L)}></line>`}
        <text class=${isShown ? "tick full" : "tick"} x=${x + bar / 2} y=${tall - 8} text-anchor="middle">${say.month(k, width < 480 ? "narrow" : "short")}</text>
        ${isShown && middle_L > 0 ? svg`<text class="tick full" x=${Math.min(width - 50, Math.max(50, x + bar / 2))} y=${Math.min(y(middle_L), y(dry_L ?? 0)) - 8} text-anchor="middle">${say.litres(middle_L)}</text>` : svg``}`;
    })}
  </svg>`;
}

const share = (given: number, need: number) => (need > 0 ? given / need - 1 : 0);

function programmePart({ rounds, beds, say, explain, starts, chooseStarts }: MonthParts): TemplateResult {
  const { programme } = rounds;
  if (!programme)
    return html`<section class="part"><h3 class="ruled">${words.programme}</h3><p class="rest">${words.noProgramme}</p></section>`;
  return html`<section class="part">
    <h3 class="ruled">${words.programme}</h3>
    <p class="lead">${words.programmeSays(programme.startTimes, programme.days)}</p>
    <label class="pick month-pick screen-only"><span>${words.starts}</span>
      <select @change=${(event: Event) => chooseStarts(Number((event.target as HTMLSelectElement).value))}>
        ${[1, 2, 3, 4, 6, 8].map((n) => html`<option value=${n} ?selected=${n === starts}>${n}</option>`)}
      </select></label>
    ${laidTable(
      "rows",
      words.programmeHead,
      programme.beds.map(({ id, minutes, cost }) => {
        const at = (what: "minutes" | "water" | "stress") => roundAt.timer(id, what);
        return costRow(beds.get(id)?.name ?? id, words.programmeHead, [
          figure(at("minutes"), words.minutes(minutes), explain),
          figure(at("water"), words.over(share(cost.given_L_year, cost.need_L_year)), explain),
          figure(at("stress"), words.stress(cost.stressDays_year - cost.needStressDays_year), explain),
        ]);
      }),
    )}
    <p class="small-head">${words.percent}</p>
    <ol class="percents">${programme.percentByMonth.map(
      (percent, k) =>
        html`<li><span>${say.month(k, "short")}</span> ${figure(roundAt.percent(k), String(percent), explain)}</li>`,
    )}</ol>
  </section>`;
}

function costRow(
  name: string,
  head: readonly string[],
  figures: readonly (TemplateResult | string)[],
): TemplateResult {
  return html`<tr role="row"><th role="rowheader" scope="row">${name}</th>${figures.map(
    (one, k) =>
      html`<td role="cell"><span class="in-row">${head[k + 1]}</span><span class="value">${one}</span></td>`,
  )}</tr>`;
}

function roundingPart({ rounds, beds, explain }: MonthParts): TemplateResult {
  const { overShare, stressDays_year } = rounds.bounds;
  return html`<section class="part">
    <h3 class="ruled">${words.rounding}</h3>
    <p class="key">${words.roundingLead(overShare, stressDays_year)}</p>
    ${laidTable(
      "rows",
      words.roundingHead,
      rounds.rounding.map(({ id, allYears, within }) => {
        const over = words.over(share(allYears.given_L_year, allYears.need_L_year));
        const stress = words.stress(allYears.stressDays_year - allYears.needStressDays_year);
        return costRow(beds.get(id)?.name ?? id, words.roundingHead, [
          figure(roundAt.rounding(id, "water"), over, explain),
          figure(roundAt.rounding(id, "stress"), stress, explain),
          within ? words.within : words.beyond,
        ]);
      }),
    )}
  </section>`;
}
