import { html, nothing, type TemplateResult } from "lit";
import type { GroundsRounds } from "../../src/report/rounds-schema.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { weekdays } from "../../src/survey/words.ts";
import { shortDayNames } from "../../src/words/en/rounds.ts";
import { ruleWords as words } from "../../src/words/en/rounds-tanks.ts";
import { saidOf, type WeekSaidAloud } from "../../src/words/rounds-said.ts";
import type { Explain } from "../figure/figure.ts";
import { spoken } from "./figures.ts";
import { coolWindows, withHours, withoutRestriction, withRestriction } from "./hours.ts";

export interface RuleParts {
  survey: Survey;
  rounds: GroundsRounds;
  aloud: WeekSaidAloud;
  explain: Explain | undefined;
  firstDay: number;
  /** What is wrong with a restriction being added. */
  error: string;
  change(survey: Survey, words: string): void;
  refuse(why: string): void;
}

/** Hours, restrictions and absences as the survey has them, and where they stand against the need. */
export function rulesPart(parts: RuleParts): TemplateResult {
  const { survey, rounds, aloud, explain } = parts;
  const { conflicts } = rounds;
  const absences = survey.site.absences ?? [];
  return html`<section class="part">
    <h3 class="ruled">${words.heading}</h3>
    ${hours(parts)}
    ${restrictions(parts)}
    <h4 class="small-head">${words.absences}</h4>
    <ul class="rule-list">
      ${absences.map((absence) => html`<li><strong>${absence.name}</strong> <span>${words.absence(absence)}</span></li>`)}
      ${absences.length === 0 ? html`<li>${words.noAbsences}</li>` : nothing}
    </ul>
    ${
      conflicts.length > 0
        ? html`<h4 class="small-head">${words.conflicts}</h4>
            <ul class="plain-list">${conflicts.map(
              ({ id, month, sentence }) =>
                html`<li>${spoken(aloud[saidOf.conflict(id, month - 1)] ?? [sentence], explain)}</li>`,
            )}</ul>`
        : nothing
    }
  </section>`;
}

function hours({ survey, firstDay, change }: RuleParts): TemplateResult {
  const [dawn, dusk] = coolWindows(survey, firstDay);
  const own = survey.site.hours ?? [];
  const use = (window: { from: string; to: string }, label: string) =>
    html`<button type="button" class="plain" @click=${() => change(withHours(survey, window), words.usedHours)}>${label}</button>`;
  return html`<h4 class="small-head">${words.hours}</h4>
    <ul class="rule-list">
      ${own.map((row) => html`<li>${words.hour(row)}</li>`)}
      ${own.length === 0 ? html`<li>${words.anyHour}</li>` : nothing}
    </ul>
    ${
      dawn
        ? html`<p class="key">${words.cool(words.window(dawn.from, dawn.to), dusk ? words.window(dusk.from, dusk.to) : null)}</p>
            <p class="moves screen-only">${use(dawn, words.useDawn)} ${dusk ? use(dusk, words.useDusk) : nothing}</p>`
        : nothing
    }`;
}

function restrictions(parts: RuleParts): TemplateResult {
  const { survey, change } = parts;
  const rules = survey.restrictions ?? [];
  return html`<h4 class="small-head">${words.rules}</h4>
    <ul class="rule-list">
      ${rules.map(
        (rule) => html`<li>
          <strong>${rule.name}</strong> <span>${words.rule(rule)}</span>
          <button type="button" class="plain screen-only" aria-label=${words.remove(rule.name)}
            @click=${() => change(withoutRestriction(survey, rule.id), words.removed(rule.name))}>${words.removeShort}</button>
        </li>`,
      )}
      ${rules.length === 0 ? html`<li>${words.noRules}</li>` : nothing}
    </ul>
    ${adding(parts)}`;
}

function adding(parts: RuleParts): TemplateResult {
  return html`<details class="adding screen-only">
    <summary>${words.add}</summary>
    <form @submit=${(event: SubmitEvent) => add(parts, event)}>
      <div class="line-entry"><label for="rule-name">${words.name}</label>
        <span class="on-line"><input id="rule-name" name="name" type="text" class="long" maxlength="100" autocomplete="off" /></span></div>
      <fieldset class="choices ticks">
        <legend>${words.forbidden}</legend>
        ${weekdays.map((day) => html`<label><input type="checkbox" name="days" value=${day} /><span>${shortDayNames[day]}</span></label>`)}
      </fieldset>
      <div class="cells entry">
        <div class="line-entry"><label for="rule-from">${words.from}</label>
          <span class="on-line"><input id="rule-from" name="fromTime" type="text" autocomplete="off" aria-describedby="rule-hint" /></span></div>
        <div class="line-entry"><label for="rule-to">${words.to}</label>
          <span class="on-line"><input id="rule-to" name="toTime" type="text" autocomplete="off" aria-describedby="rule-hint" /></span></div>
        <label class="pick"><span>${words.parity}</span><select name="parity">
          ${Object.entries(words.parities).map(([value, text]) => html`<option value=${value}>${text}</option>`)}
        </select></label>
      </div>
      <p class="hint" id="rule-hint">${words.timesHint}</p>
      ${parts.error ? html`<p class="error" role="alert">${parts.error}</p>` : nothing}
      <p class="after"><button class="press">${words.addIt}</button></p>
    </form>
  </details>`;
}

const clock = /^([01]?\d|2[0-3]):[0-5]\d$/;

function add({ survey, change, refuse }: RuleParts, event: SubmitEvent): void {
  event.preventDefault();
  const form = event.target as HTMLFormElement;
  const data = new FormData(form);
  const text = (key: string) => String(data.get(key) ?? "").trim();
  const days = weekdays.filter((day) => data.getAll("days").includes(day));
  const times = [text("fromTime"), text("toTime")].map((time) => (time === "" ? "" : time.padStart(5, "0")));
  const [fromTime = "", toTime = ""] = times;
  const isTimed = fromTime !== "" || toTime !== "";
  const error =
    days.length === 0
      ? words.needsDay
      : isTimed && !times.every((time) => clock.test(time))
        ? words.needsTimes
        : "";
  refuse(error);
  if (error !== "") return;
  const parity = text("parity");
  const name = text("name") || words.nameDefault;
  change(
    withRestriction(survey, {
      name,
      ...(days.length < 7 && { days }),
      ...(isTimed && { fromTime, toTime }),
      ...((parity === "odd" || parity === "even") && { parity }),
    }),
    words.added(name),
  );
  form.reset();
}
