import { html, nothing } from "lit";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import { unknownAdvice, unknownName } from "../../../src/words/en/unknowns.ts";
import { planOf } from "../edits.ts";
import { cell, cellFigure, figures, openedBelow } from "../opening.ts";
import type { Screen } from "../screen.ts";
import { setOrPlan } from "../verdict.ts";

const words = choicesPage.draws;
const mostUnknown = 5;
/** A share of the width that is worth a line. */
const leastShare = 0.005;

/** How far the draws have come, and their stop. */
export function drawsLine({ drawing, say, acts }: Screen) {
  const { done, of, isGoing } = drawing;
  const text = isGoing
    ? words.going(say.number(done, 0), say.number(of, 0))
    : done === 0
      ? words.none
      : words.done(say.number(done, 0));
  const next = [200, 1000, 2500, 10_000].find((n) => n > done);
  return html`<p class="draws screen-only">
    <progress max=${Math.max(1, of)} value=${done} aria-label=${text}></progress>
    <span>${text}</span>
    ${
      isGoing
        ? html`<button class="plain" @click=${acts.stopDraws}>${words.stop}</button>`
        : next
          ? html`<button class="plain" @click=${() => acts.drawOn(next)}>${words.more(say.number(next, 0))}</button>`
          : nothing
    }
  </p>`;
}

/** What the draws say: widths, what is a draw, and which unknown matters. */
export function surePart(screen: Screen) {
  const { choices, drawing, isStale } = screen;
  const { spread } = choices;
  return html`<section id="sure" tabindex="-1" aria-labelledby="sure-name">
    <h2 id="sure-name">${choicesPage.parts.sure}</h2>
    <div class="spread">
      <div class="main">
        ${drawsLine(screen)}
        ${isStale ? html`<p class="quiet">${choicesPage.stale}</p>` : nothing}
        ${spread ? html`${rivals(screen)} ${unknowns(screen)}` : nothing}
      </div>
      <div class="margin">
        <p class="note">${words.what} ${spread && drawing.isGoing ? words.partial : nothing}</p>
      </div>
    </div>
  </section>`;
}

function rivals(screen: Screen) {
  const { choices, said, survey } = screen;
  const plan = planOf(survey);
  const setOf = (ids: readonly string[]) => setOrPlan(ids, plan, said);
  const spread = choices.spread!;
  const [first, second] = spread.rivals;
  if (!first || !second) return html`<p class="lead">${words.one}</p>`;
  const [one, other] = [setOf(first.measures), setOf(second.measures)];
  const n = said.opens(String(Math.round(100 * spread.chance[0]![1]!)), "choices/sure/chance/0/1");
  const range = (k: number, what: "saved" | "worth", low: string, high: string) => {
    const figure = (text: string, point: string) =>
      cellFigure(screen, `rival-${k}`, text, `choices/sure/rival/${k}/${what}/${point}`);
    return html`${figure(low, "p10")} ${words.to} ${figure(high, "p90")}`;
  };
  return html`<p class="lead capital">${
    spread.isDraw ? words.isDraw(one, other) : figures(words.notDraw(one, other, n), screen)
  }</p>
    <div class="scroll" tabindex="0" role="region" aria-label=${words.rivals}>
      <table class="ruled">
        <caption>${words.rivals}</caption>
        <thead><tr>${words.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
        <tbody>
          ${spread.rivals.map(({ measures, saved_kL_year: saved, npv }, k) => {
            const name = setOf(measures);
            return html`<tr>
              <th scope="row" class="capital">${name}</th>
              <td>${saved.p10 === null ? "" : range(k, "saved", said.water(saved.p10), said.water(saved.p90!))}</td>
              <td>${npv.p10 === null ? "–" : range(k, "worth", said.money(npv.p10), said.money(npv.p90))}</td>
              ${
                k === 0
                  ? html`<td>${words.itself}</td>`
                  : cell(
                      screen,
                      `rival-${k}`,
                      words.ofHundred(String(Math.round(100 * spread.chance[k]![0]!))),
                      `choices/sure/chance/${k}/0`,
                    )
              }
            </tr>
            ${openedBelow(screen, `rival-${k}`, 4)}`;
          })}
        </tbody>
      </table>
    </div>`;
}

function unknowns(screen: Screen) {
  const { choices, survey, say, said } = screen;
  const { byUnknown, byUnknownOfChoice } = choices.spread!;
  const list = (heading: string, rows: typeof byUnknown, topic: "unknown" | "choice") => {
    const told = rows.filter(({ share }) => share >= leastShare).slice(0, mostUnknown);
    return told.length === 0
      ? nothing
      : html`<h3>${heading}</h3>
          <ol class="plain-list">
            ${told.map(({ at, share }) => {
              const place = /^beds\[(\d+)\]/.exec(at)?.[1];
              const bed = place === undefined ? null : (survey.beds[Number(place)]?.name ?? null);
              return html`<li>${figures(
                words.unknown(
                  unknownName(at, bed),
                  said.opens(say.share(share), `choices/sure/${topic}/${at}`),
                  unknownAdvice(at),
                ),
                screen,
              )}</li>`;
            })}
          </ol>`;
  };
  return html`${list(words.choice, byUnknownOfChoice, "choice")} ${list(words.width, byUnknown, "unknown")}`;
}
