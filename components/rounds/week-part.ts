import { html, nothing, type TemplateResult } from "lit";
import { formatIso, parseIso } from "../../src/engine/weather/dates.ts";
import type { RoundsWeek } from "../../src/report/week-schema.ts";
import { minutesSaid } from "../../src/words/en/rounds.ts";
import { soilWords, weekPage as words } from "../../src/words/en/rounds-page.ts";
import { dayWords, weekText } from "../../src/words/en/rounds-week.ts";
import type { Formatter } from "../../src/words/format.ts";
import { type RunFigure, roundAt } from "../../src/words/round-at.ts";
import { saidOf, type WeekSaidAloud } from "../../src/words/rounds-said.ts";
import type { Explain } from "../figure/figure.ts";
import { figure, spoken } from "./figures.ts";
import type { RoundsWithWeek } from "./messages.ts";
import { soilStrip, soilsNow } from "./soil.ts";
import type { BedFacts, Stop, WeekDayDrawn, WeekDrawn } from "./week-days.ts";
import { dayDrawing } from "./week-draw.ts";

export interface WeekParts {
  rounds: RoundsWithWeek;
  aloud: WeekSaidAloud;
  explain: Explain | undefined;
  drawn: WeekDrawn;
  beds: ReadonlyMap<string, BedFacts>;
  say: Formatter;
  /** Width of the sheet in px. */
  width: number;
  print(): void;
}

const nameOf = ({ beds }: Pick<WeekParts, "beds">, id: string) => beds.get(id)?.name ?? id;

/** The answer: what to water this week, in a sentence. */
export function weekAnswer(parts: WeekParts): TemplateResult {
  const { rounds, drawn, say, explain } = parts;
  const { week } = rounds;
  const watered = week.beds.filter(({ waterings }) => waterings.length > 0);
  const days = drawn.days.filter(({ stops }) => stops.length > 0).map(({ day }) => day);
  const codes = week.beds.flatMap(({ leave }) => (leave ? [leave.code] : []));
  const without = codes.filter((code) => code === "closed" || code === "tank-short").length;
  const left = codes.filter((code) => code !== "nobody-waters").length - without;
  const all_L = watered.reduce((sum, { litres }) => sum + litres, 0);
  const tank_L = week.tanks.reduce(
    (sum, { rations }) => sum + rations.reduce((s, r) => s + r.fromTank_L, 0),
    0,
  );
  const check = drawn.days.flatMap(({ stops }) =>
    stops.filter(({ checkFirst }) => checkFirst).map(({ name }) => name),
  );
  return html`<h2 class="headline">${words.headline(watered.length, days, left, without)}</h2>
    ${
      watered.length > 0
        ? html`<p class="lead">
            ${spoken(
              words.total(
                { at: roundAt.all("litres"), text: say.litres(all_L) },
                tank_L >= 1 ? { at: roundAt.all("tank"), text: say.litres(tank_L) } : null,
              ),
              explain,
            )}
            ${check.length > 0 ? words.checkFirst([...new Set(check)]) : nothing}
          </p>`
        : nothing
    }
    <p class="screen-only after"><button type="button" class="press" @click=${parts.print}>${words.print}</button></p>`;
}

/** The week drawn as rounds on foot, a day a drawing, the same in words below. */
export function weekOnFoot(parts: WeekParts): TemplateResult | typeof nothing {
  const { drawn } = parts;
  const rest = drawn.days
    .filter(({ stops, left }) => stops.length === 0 && left.length === 0)
    .map(({ day }) => day);
  const busy = drawn.days.filter(({ stops, left }) => stops.length > 0 || left.length > 0);
  if (busy.length === 0) return nothing;
  return html`<section class="part">
    <h3 class="ruled">${words.heading}</h3>
    ${busy.map((day) => oneDay(parts, day))}
    ${rest.length > 0 ? html`<p class="rest">${words.restDays(rest)}</p>` : nothing}
    <p class="key">${words.key}</p>
  </section>`;
}

function oneDay(parts: WeekParts, day: WeekDayDrawn): TemplateResult {
  const { drawn, beds, width, say, explain } = parts;
  const facts = [
    words.hoses(day.hoseMoves),
    words.walk(day.walk_m, say),
    words.sun(day.dawn, day.dusk),
  ].filter(Boolean);
  const finish = roundAt.finish(formatIso(day.day));
  return html`<div class="day">
    <h4>${dayWords(day.day)}</h4>
    <p class="quiet">${day.finish === null ? nothing : html`${figure(finish, words.doneBy(day.finish), explain)} · `}${facts.join(" · ")}</p>
    ${dayDrawing(drawn, day, (id) => beds.get(id)?.supply ?? "mains-only", width)}
    <ul class="stops">
      ${day.stops.map((stop) => stopLine(parts, stop, day.day))}
    </ul>
    ${
      day.left.length > 0
        ? html`<p class="aside"><strong>${words.doesNotFit(day.left)}</strong> ${day.help ?? ""}</p>`
        : nothing
    }
  </div>`;
}

function stopLine({ say, explain, aloud }: WeekParts, stop: Stop, day: number): TemplateResult {
  const at = (what: RunFigure) => roundAt.run(stop.id, formatIso(day), what);
  const times = words.from(stop.times);
  return html`<li>
    <p class="what"><strong>${stop.step === null ? nothing : html`<span class="step">${stop.step}</span> `}${stop.name}</strong>
      <span class="how-long">${spoken(minutesSaid(stop, at), explain)}</span>
      <span>${stop.times.length === 0 ? times : figure(at("times"), times, explain)}</span>
      <span class="quiet">${figure(at("litres"), say.litres(stop.litres), explain)}</span></p>
    <p class="why">${spoken(aloud[saidOf.water(stop.id, day)] ?? [stop.sentence], explain)}</p>
  </li>`;
}

/** What is left, and why; then what changed. */
export function weekRest(parts: WeekParts): TemplateResult {
  const { aloud, explain } = parts;
  const { week } = parts.rounds;
  const left = week.beds.flatMap(({ id, leave }) => (leave ? [{ id, sentence: leave.sentence }] : []));
  return html`${
    left.length > 0
      ? html`<section class="part">
          <h3 class="ruled">${words.leave}</h3>
          <dl class="pairs">
            ${left.map(({ id, sentence }) => html`<div><dt>${nameOf(parts, id)}</dt><dd>${spoken(aloud[saidOf.leave(id)] ?? [sentence], explain)}</dd></div>`)}
          </dl>
        </section>`
      : nothing
  }
  ${soilPart(parts, week)}
  <section class="part">
    <h3 class="ruled">${words.changed}</h3>
    <dl class="pairs">
      ${week.beds
        .filter(({ leave }) => leave?.code !== "nobody-waters")
        .map(
          ({ id, changed }) =>
            html`<div><dt>${nameOf(parts, id)}</dt><dd>${spoken(aloud[saidOf.changed(id)] ?? [changed], explain)}</dd></div>`,
        )}
    </dl>
  </section>`;
}

function soilPart(parts: WeekParts, week: RoundsWeek): TemplateResult {
  const { say, width, explain } = parts;
  const soils = soilsNow(week);
  const dry = soils.filter(({ middle, bears }) => middle < bears).map(({ id }) => nameOf(parts, id));
  const room = width < 560 ? width : width - 390;
  return html`<section class="part">
    <h3 class="ruled">${words.soil}</h3>
    <p class="finding">${words.goneSoil(dry)}.</p>
    <ul class="soils">
      ${soils.map(
        (soil) => html`<li>
          <span class="soil-name">${nameOf(parts, soil.id)}</span>
          ${soilStrip(soil, nameOf(parts, soil.id), room, say)}
          <span class="quiet">${figure(roundAt.soil(soil.id), soilWords.missing(soil.missing_mm, say), explain)}</span>
        </li>`,
      )}
    </ul>
    <p class="key">${words.soilKey}</p>
  </section>`;
}

/** What to do about a day too short, before an absence, and what to bear in mind. */
export function weekNotes({ rounds, aloud, explain }: WeekParts): TemplateResult {
  return html`${rounds.week.holidays.map(
    (holiday, place) => html`<section class="part">
      <h3 class="ruled">${weekText.holidays} ${holiday.name}</h3>
      <p class="rest">${weekText.away(parseIso(holiday.from)!, parseIso(holiday.to)!, parseIso(holiday.firstDayBack)!)}</p>
      <ul class="plain-list">${holiday.beds.map(({ id, sentence }) => html`<li>${spoken(aloud[saidOf.holiday(place, id)] ?? [sentence], explain)}</li>`)}</ul>
    </section>`,
  )}
  <section class="part cautions">
    <h3 class="ruled">${words.cautions}</h3>
    <ul class="plain-list">${rounds.cautions.map((caution) => html`<li>${caution}</li>`)}</ul>
  </section>`;
}
