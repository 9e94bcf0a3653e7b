import { html, LitElement, nothing, type TemplateResult } from "lit";
import { parseIso } from "../../src/engine/weather/dates.ts";
import type { RoundsWeek } from "../../src/report/week-schema.ts";
import type { LogEntry, LogKind } from "../../src/survey/schema/log.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { toSI } from "../../src/units.ts";
import { logPage as words } from "../../src/words/en/rounds-months.ts";
import { dayWords } from "../../src/words/en/rounds-week.ts";
import { type Formatter, formatter } from "../../src/words/format.ts";
import { drawing } from "../charts/styles.ts";
import { readNumber } from "../fields/writing/number.ts";
import type { Explain } from "../figure/figure.ts";
import { base, pressable } from "../look/base.ts";
import { donePart } from "./done-part.ts";
import { entryLook } from "./entry-look.ts";
import { lineOf, newestFirst, plannedOn } from "./log-lines.ts";
import { logLook } from "./log-look.ts";
import type { RoundsAnswers, Wrong } from "./messages.ts";
import { choices } from "./monday-part.ts";
import { sheetLook } from "./sheet-look.ts";

const shownLines = 40;

/**
 * The log, for one thumb: what was done of the round, rain, dips; planned beside done below.
 *
 * @property week the week's round that plans come from
 * @property log every line, those that wait on this device included
 * @property waiting how many of them wait
 * @property explain hands out workings by address
 * @property readCsv reads a log that is brought in
 * @fires write `{ entries }`: lines written down here
 */
export class RoundsLog extends LitElement {
  static override properties = {
    survey: { attribute: false },
    week: { attribute: false },
    log: { attribute: false },
    waiting: { attribute: false },
    today: { attribute: false },
    say: { attribute: false },
    readCsv: { attribute: false },
    explain: { attribute: false },
    day: { state: true },
    kind: { state: true },
    fault: { state: true },
    faults: { state: true },
    told: { state: true },
  };

  declare survey: Survey;
  declare week: RoundsWeek;
  declare log: readonly LogEntry[];
  declare waiting: number;
  /** Day number. */
  declare today: number;
  declare say: Formatter;
  declare explain: Explain | undefined;
  declare readCsv: (text: string) => Promise<RoundsAnswers["log"] | null>;
  /** Days before today that are written down. */
  declare day: number;
  declare kind: LogKind;
  declare fault: string;
  declare faults: readonly Wrong[];
  declare told: string;

  static override styles = [base, pressable, drawing, sheetLook, entryLook, logLook];

  constructor() {
    super();
    this.log = [];
    this.waiting = 0;
    this.today = 0;
    this.say = formatter("metric", undefined);
    this.readCsv = async () => null;
    this.day = 0;
    this.kind = "watering";
    this.fault = "";
    this.faults = [];
    this.told = "";
  }

  private write(entries: readonly LogEntry[]): void {
    this.told = words.wrote;
    this.dispatchEvent(new CustomEvent("write", { detail: { entries } }));
  }

  private get on(): number {
    return this.today - this.day;
  }

  private bedName(id: string | undefined): string {
    return this.survey.beds.find((bed) => bed.id === id)?.name ?? id ?? "";
  }

  private tankName(id: string | undefined): string {
    return this.survey.tanks.find((tank) => tank.id === id)?.name ?? id ?? "";
  }

  protected override render() {
    return html`<div class="sheet-top">
      <h2 class="headline">${words.headline}</h2>
      <p class="lead">${words.lead}</p>
      <label class="pick"><span>${words.day}</span>
        <select @change=${(event: Event) => {
          this.day = Number((event.target as HTMLSelectElement).value);
          this.told = "";
        }}>
          ${[0, 1, 2, 3, 4, 5, 6, 7].map((ago) => html`<option value=${ago} ?selected=${ago === this.day}>${dayWords(this.today - ago)}</option>`)}
        </select></label>
      ${this.planned()} ${this.other()}
      <p class="after" role="status">${this.told}${this.waiting > 0 ? html` ${words.waiting(this.waiting)}` : nothing}</p>
      ${donePart(this.week, (id) => this.bedName(id), this.say, this.explain)}
      ${this.lines()} ${this.bringIn()}
    </div>`;
  }

  /** A line a bed that the round has on that day: one tap, and it is written down. */
  private planned(): TemplateResult {
    const rows = plannedOn(this.week, this.log, this.on);
    const date = new Date(this.on * 86_400_000).toISOString().slice(0, 10);
    const write = (id: string, minutes: number) => () =>
      this.write([{ date, kind: "watering", id, minutes }]);
    if (rows.length === 0) return html`<p class="rest">${words.none}</p>`;
    return html`<ul class="planned">
      ${rows.map(({ id, minutes, written }) => {
        const name = this.bedName(id);
        return written === null
          ? html`<li>
              <button type="button" class="thumb" aria-label=${words.doIt(name, minutes)} @click=${write(id, minutes)}>
                <span class="box"></span><span><strong>${name}</strong><span>${words.planned(minutes)}</span></span>
              </button>
              <button type="button" class="plain" aria-label=${words.leftOut(name)} @click=${write(id, 0)}>${words.leftOutShort}</button>
            </li>`
          : html`<li><span class="thumb done"><span class="box ticked"></span><span><strong>${name}</strong><span>${words.written(written)}</span></span></span></li>`;
      })}
    </ul>`;
  }

  private other(): TemplateResult {
    const { survey, say, kind } = this;
    const { dip, ...without } = words.kinds;
    const kinds: Readonly<Record<string, string>> = survey.tanks.length > 0 ? { ...without, dip } : without;
    const line = (name: string, label: string, unit: string, value = "") => html`<div class="line-entry">
      <label for="other-${name}">${label}</label>
      <span class="on-line"><input id="other-${name}" name=${name} type="text" inputmode="decimal" autocomplete="off" value=${value} />${unit ? html`<span class="unit">${unit}</span>` : nothing}</span>
    </div>`;
    const pick = (
      name: string,
      label: string,
      rows: readonly { id: string; name: string }[],
    ) => html`<label class="pick"><span>${label}</span>
      <select name=${name}>${rows.map((row) => html`<option value=${row.id}>${row.name}</option>`)}</select></label>`;
    const fields = {
      watering: () =>
        html`${pick(
          "bed",
          words.bed,
          survey.beds.filter(({ watering }) => watering.supply !== "none"),
        )} ${line("minutes", words.minutes, "min")}`,
      rain: () => html`${line("rain", words.rain, say.depthSymbol)} ${line("days", words.days, "", "1")}`,
      dip: () =>
        html`${pick("tank", words.tank, survey.tanks)} ${line("level", words.level, say.volumeSymbol)}`,
    };
    return html`<section class="part">
      <h3 class="ruled">${words.other}</h3>
      <form @submit=${this.submit}>
        ${choices("kind", words.kind, kinds, kind, (chosen) => {
          this.kind = chosen as LogKind;
          this.fault = "";
        })}
        <div class="cells entry">${fields[kind]()}</div>
        ${this.fault ? html`<p class="error" role="alert">${this.fault}</p>` : nothing}
        <p class="after"><button class="press">${words.write}</button></p>
      </form>
    </section>`;
  }

  private readonly submit = (event: SubmitEvent): void => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const data = new FormData(form);
    const text = (name: string) => String(data.get(name) ?? "").trim();
    const us = this.say.system === "us";
    const number = (name: string) => readNumber(text(name));
    const scaled = (name: string, unit: string, si: "mm" | "L") => {
      const read = number(name);
      return read === null ? null : (toSI(read, us ? unit : si, si) ?? null);
    };
    const made = lineOf(
      {
        kind: this.kind,
        bed: text("bed"),
        tank: text("tank"),
        minutes: number("minutes"),
        rain_mm: scaled("rain", "in", "mm"),
        days: number("days"),
        level_L: scaled("level", "gal", "L"),
      },
      this.on,
    );
    if ("lacks" in made) {
      this.fault = words.notNumber(words[made.lacks], text(made.lacks));
      return;
    }
    this.fault = "";
    this.write([made.entry]);
    form.reset();
  };

  private lines(): TemplateResult | typeof nothing {
    const { say } = this;
    if (this.log.length === 0) return nothing;
    const inWords = (entry: LogEntry) => {
      if (entry.kind === "rain") return words.line.rain(say.depth(entry.rain_mm ?? 0), entry.days ?? 1);
      if (entry.kind === "dip")
        return words.line.dip(this.tankName(entry.id), say.litres(entry.level_L ?? 0));
      const litres = entry.litres === undefined ? null : say.litres(entry.litres);
      return words.line.watering(this.bedName(entry.id), entry.minutes, litres);
    };
    return html`<section class="part">
      <h3 class="ruled">${words.lines}</h3>
      <ul class="log-lines">
        ${newestFirst(this.log, shownLines).map(
          (entry) =>
            html`<li><span class="quiet">${dayWords(parseIso(entry.date)!)}</span> <span>${inWords(entry)}</span></li>`,
        )}
      </ul>
    </section>`;
  }

  private bringIn(): TemplateResult {
    return html`<section class="part screen-only">
      <h3 class="ruled">${words.bring}</h3>
      <p class="hint" id="bring-hint">${words.bringHint}</p>
      <p class="after"><input class="file" type="file" accept=".csv,text/csv,text/plain" aria-label=${words.bring} aria-describedby="bring-hint" @change=${this.bring} /></p>
      ${
        this.faults.length > 0
          ? html`<div class="faults" role="alert"><p>${words.faults}</p>
              <ul>${this.faults.map(({ path, sentence }) => html`<li><code>${path}</code> ${sentence}</li>`)}</ul></div>`
          : nothing
      }
    </section>`;
  }

  private readonly bring = async (event: Event): Promise<void> => {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (!file) return;
    const told = await this.readCsv(await file.text());
    input.value = "";
    if (!told) return;
    this.faults = "faults" in told ? told.faults : [];
    if ("faults" in told) return;
    const known = new Set(this.log.map((entry) => JSON.stringify(Object.entries(entry).sort())));
    const fresh = told.entries.filter((entry) => !known.has(JSON.stringify(Object.entries(entry).sort())));
    this.write(fresh);
    this.told = words.brought(fresh.length);
  };
}

customElements.define("gwb-rounds-log", RoundsLog);
