import { html, nothing, type TemplateResult } from "lit";
import type { Survey } from "../../src/survey/survey.ts";
import { mondayWords as words } from "../../src/words/en/rounds-page.ts";
import { dayWords } from "../../src/words/en/rounds-week.ts";
import type { Formatter } from "../../src/words/format.ts";
import type { MondayTyped } from "./monday-read.ts";

export interface MondayParts {
  typed: MondayTyped;
  wrong: Readonly<Record<string, string>>;
  survey: Survey;
  firstDay: number;
  say: Formatter;
  /** Whether anything there can go into the log. */
  canKeep: boolean;
  kept: boolean;
  change(part: Partial<MondayTyped>): void;
  keep(): void;
}

/** The five entries, each a line to write on. */
export function mondayPart(parts: MondayParts): TemplateResult {
  const { typed, survey, say, change } = parts;
  return html`<section class="monday screen-only" aria-labelledby="monday-name">
    <h2 id="monday-name">${words.heading}</h2>
    <p class="hint">${words.lead}</p>
    <div class="entry">
      ${line(parts, "rain", words.rain, typed.rain, say.depthSymbol, (rain) => change({ rain }))}
      ${line(parts, "rainDays", words.rainOver, typed.rainDays, "", (rainDays) => change({ rainDays }))}
    </div>
    ${choices("last", words.lastRound, words.done, typed.lastRound, (lastRound) => change({ lastRound }), words.lastRoundHint)}
    <div class="entry">
      ${survey.tanks
        .filter(({ inUse }) => inUse !== false)
        .map((tank) =>
          line(
            parts,
            `dip:${tank.id}`,
            words.dip(tank.name),
            typed.dips[tank.id] ?? "",
            say.volumeSymbol,
            (text) => change({ dips: { ...typed.dips, [tank.id]: text } }),
            words.dipHint(`${say.litresBare(tank.capacity_L)} ${say.volumeSymbol}`),
          ),
        )}
      ${survey.tanks.length === 0 ? html`<p class="hint">${words.noTank}</p>` : nothing}
    </div>
    ${choices("heat", words.heat, words.heats, typed.heat, (heat) => change({ heat }))}
    ${typed.heat === "typed" ? degrees(parts) : nothing}
    ${choices("forecast", words.forecast, words.forecasts, typed.forecast, (forecast) => change({ forecast }))}
    ${typed.forecast === "rain" ? rainAhead(parts) : nothing}
    ${typed.forecast === "hot" ? html`<div class="entry cells">${chanceOf(parts)}</div>` : nothing}
    <p class="after">
      ${
        parts.canKeep
          ? html`<button type="button" class="plain" @click=${parts.keep}>${words.keep}</button>`
          : nothing
      }
      <span role="status">${parts.kept ? words.kept : ""}</span>
    </p>
  </section>`;
}

function degrees(parts: MondayParts): TemplateResult {
  const { typed, change, say } = parts;
  const unit = say.system === "us" ? "°F" : words.degrees;
  return html`<div class="entry cells">
    ${line(parts, "tmin", words.tmin, typed.tmin, unit, (tmin) => change({ tmin }))}
    ${line(parts, "tmax", words.tmax, typed.tmax, unit, (tmax) => change({ tmax }))}
  </div>`;
}

function rainAhead(parts: MondayParts): TemplateResult {
  const { typed, change, say, firstDay } = parts;
  return html`<div class="entry cells">
    <label class="pick">
      <span>${words.forecastDay}</span>
      <select @change=${(event: Event) => change({ forecastIn: Number(textOf(event)) })}>
        ${[0, 1, 2, 3, 4, 5, 6].map(
          (ahead) =>
            html`<option value=${ahead} ?selected=${ahead === typed.forecastIn}>${dayWords(firstDay + ahead)}</option>`,
        )}
      </select>
    </label>
    ${line(parts, "forecastRain", words.forecastRain, typed.forecastRain, say.depthSymbol, (forecastRain) => change({ forecastRain }))}
    ${chanceOf(parts)}
  </div>`;
}

function chanceOf({ typed, change }: MondayParts): TemplateResult {
  return html`<label class="pick">
    <span>${words.chance}</span>
    <select @change=${(event: Event) => change({ chance: Number(textOf(event)) })}>
      ${words.chances.map(({ share, words: text }) => html`<option value=${share} ?selected=${share === typed.chance}>${text}</option>`)}
    </select>
  </label>`;
}

export function textOf(event: Event): string {
  return (event.target as HTMLInputElement | HTMLSelectElement).value;
}

function line(
  { wrong }: Pick<MondayParts, "wrong">,
  key: string,
  label: string,
  value: string,
  unit: string,
  told: (text: string) => void,
  hint = "",
): TemplateResult {
  const error = wrong[key] ?? "";
  const id = `line-${key.replace(/\W/g, "-")}`;
  const described = [hint ? `${id}-hint` : "", error ? `${id}-error` : ""].filter(Boolean).join(" ");
  return html`<div class="line-entry ${error ? "wrong" : ""}">
    <label for=${id}>${label}</label>
    <span class="on-line">
      <input
        id=${id}
        type="text"
        inputmode="decimal"
        autocomplete="off"
        .value=${value}
        aria-invalid=${error ? "true" : "false"}
        aria-describedby=${described || nothing}
        @input=${(event: Event) => told(textOf(event))}
      />${unit ? html`<span class="unit">${unit}</span>` : nothing}
      ${hint ? html`<span id="${id}-hint" class="hint">${hint}</span>` : nothing}
    </span>
    ${error ? html`<p id="${id}-error" class="error">${error}</p>` : nothing}
  </div>`;
}

/** A few words in a row, one of them chosen. */
export function choices<T extends string>(
  name: string,
  label: string,
  options: Readonly<Record<T, string>>,
  chosen: T,
  choose: (value: T) => void,
  hint = "",
): TemplateResult {
  const rows = Object.entries(options) as [T, string][];
  return html`<fieldset class="choices">
    <legend>${label}${hint ? html` <span class="hint">${hint}</span>` : nothing}</legend>
    ${rows.map(
      ([value, words_]) => html`<label>
        <input type="radio" name=${name} .checked=${value === chosen} @change=${() => choose(value)} />
        <span>${words_}</span>
      </label>`,
    )}
  </fieldset>`;
}
