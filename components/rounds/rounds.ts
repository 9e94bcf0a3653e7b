import { select } from "d3-selection";
import { html, nothing } from "lit";
import { fromDay } from "../../src/engine/weather/dates.ts";
import type { LogEntry } from "../../src/survey/schema/log.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { roundsPage as words } from "../../src/words/en/rounds-page.ts";
import type { WeekSaidAloud } from "../../src/words/rounds-said.ts";
import { drawing } from "../charts/styles.ts";
import { defineTextures } from "../charts/textures.ts";
import { base, pressable } from "../look/base.ts";
import { printPages, saveText } from "../look/print-pages.ts";
import { bedFacts } from "./bed-facts.ts";
import { entryLook } from "./entry-look.ts";
import { stillWaiting } from "./log-store.ts";
import type { FileAsked, RoundsWithWeek } from "./messages.ts";
import { monthsPart } from "./months-part.ts";
import { firstPaper, type PaperChoice, paperPart } from "./paper-part.ts";
import { RoundsData } from "./rounds-data.ts";
import { sheetLook } from "./sheet-look.ts";
import { tableLook } from "./table-look.ts";
import { tankLook } from "./tank-look.ts";
import { weekLook } from "./week-look.ts";
import "./log.ts";
import { weekSheet } from "./week-sheet.ts";

export type RoundsPart = keyof typeof words.parts;
const partNames = Object.keys(words.parts) as RoundsPart[];

/**
 * The rounds of a site: this week's first, the months, what is printed, and the log.
 *
 * @property survey the survey that counts
 * @property record weather as the text of a record's CSV; null: the survey's own normals
 * @property log what is in the site's log
 * @property store where entries wait until the log has them
 * @property today the day that it is, as 2026-01-31
 * @property say units and numbers
 * @property explainSite hands out workings of the engine's figures, by address
 * @property view which part is open
 * @fires change `{ survey, words }`: a survey changed here
 * @fires log `{ entries }`: new lines of the log
 * @fires view `{ view }`: another part was opened
 */
export class RoundsPlace extends RoundsData {
  static override properties = {
    ...RoundsData.properties,
    view: {},
    width: { state: true },
    month: { state: true },
    paper: { state: true },
    refused: { state: true },
  };

  declare view: RoundsPart;
  declare width: number;
  /** Month of the table that is shown, 1–12; null: today's. */
  declare month: number | null;
  declare paper: PaperChoice;
  /** Why a restriction was not added. */
  declare refused: string;

  static override styles = [base, pressable, drawing, sheetLook, entryLook, weekLook, tankLook, tableLook];

  private readonly sized = new ResizeObserver(([entry]) => {
    const width = Math.floor(entry?.contentRect.width ?? 0);
    if (width > 0 && width !== this.width) this.width = width;
  });
  private measured: Element | null = null;

  constructor() {
    super();
    this.view = "week";
    this.width = 0;
    this.month = null;
    this.paper = firstPaper;
    this.refused = "";
  }

  override disconnectedCallback(): void {
    this.sized.disconnect();
    this.measured = null;
    super.disconnectedCallback();
  }

  protected override updated(): void {
    const sheet = this.renderRoot.querySelector(".measured-sheet");
    if (sheet !== this.measured) {
      if (this.measured) this.sized.unobserve(this.measured);
      if (sheet) this.sized.observe(sheet);
      this.measured = sheet;
    }
    const inks = this.renderRoot.querySelector<SVGSVGElement>("#inks");
    if (inks && inks.childElementCount === 0) defineTextures(select(inks) as never);
  }

  private readonly print = async (file: FileAsked): Promise<void> => {
    printPages(await this.fileText(file));
  };

  private readonly save = async (file: FileAsked, name: string, type: string): Promise<void> => {
    saveText(name, type, await this.fileText(file));
  };

  private readonly change = (survey: Survey, said: string): void => {
    this.dispatchEvent(new CustomEvent("change", { detail: { survey, words: said }, bubbles: true }));
  };

  private open(part: RoundsPart): void {
    this.view = part;
    this.dispatchEvent(new CustomEvent("view", { detail: { view: part }, bubbles: true }));
  }

  protected override render() {
    if (!this.survey) return nothing;
    return html`<svg id="inks" class="unseen" aria-hidden="true"></svg>
      <nav class="parts screen-only" aria-label=${words.partsName}>
        ${partNames.map(
          (part) =>
            html`<button type="button" aria-current=${part === this.view ? "true" : nothing} @click=${() => this.open(part)}>
              ${words.parts[part]}
            </button>`,
        )}
      </nav>
      ${this.sheet()}`;
  }

  private sheet() {
    const { told } = this;
    if (this.crash) return html`<div class="faults"><p>${words.crashed(this.crash)}</p></div>`;
    if (!told) return html`<p class="headline quiet" role="status">${words.working}</p>`;
    if ("faults" in told)
      return html`<div class="faults">
        <p>${words.wrong[told.of]}</p>
        <ul>${told.faults.map(({ path, sentence }) => html`<li><code>${path}</code> ${sentence}</li>`)}</ul>
      </div>`;
    if (told.rounds.rounding.length === 0) return html`<p class="lead">${words.noBeds}</p>`;
    if (this.view === "months") return this.months(told.rounds);
    if (this.view === "paper") return this.paperSheet();
    return this.view === "log" ? this.logSheet(told.rounds) : this.weekSheet(told.rounds, told.aloud);
  }

  private months(rounds: RoundsWithWeek) {
    const { say, width, explain } = this;
    return monthsPart({
      rounds,
      explain,
      beds: bedFacts(this.survey!),
      say,
      month: this.month ?? fromDay(this.firstDay).month,
      width,
      choose: (month) => {
        this.month = month;
      },
      starts: this.starts,
      chooseStarts: (starts) => {
        this.starts = starts;
      },
    });
  }

  private paperSheet() {
    const { year, month } = fromDay(this.firstDay);
    return paperPart({
      choice: this.paper,
      year,
      month,
      hasLog: this.wholeLog.length > 0,
      now_ms: () => Date.now(),
      change: (part) => {
        this.paper = { ...this.paper, ...part };
      },
      print: this.print,
      save: this.save,
      saveLog: (name) => this.save({ is: "log", log: this.wholeLog }, name, "text/csv"),
    });
  }

  private logSheet({ week }: RoundsWithWeek) {
    return html`<gwb-rounds-log
      .survey=${this.survey}
      .week=${week}
      .log=${this.wholeLog}
      .waiting=${stillWaiting(this.store.waiting(), this.log).length}
      .today=${this.firstDay}
      .say=${this.say}
      .explain=${this.explain}
      .readCsv=${(text: string) => this.compute.ask({ kind: "log", text })}
      @write=${(event: CustomEvent<{ entries: LogEntry[] }>) => this.write(event.detail.entries)}
    ></gwb-rounds-log>`;
  }

  private weekSheet(rounds: RoundsWithWeek, aloud: WeekSaidAloud) {
    const { monday, wrong } = this.read;
    return weekSheet({
      rounds,
      aloud,
      explain: this.explain,
      survey: this.survey!,
      firstDay: this.firstDay,
      say: this.say,
      width: this.width,
      busy: this.busy,
      monday: {
        typed: this.typed,
        wrong,
        canKeep: this.mondayLines(monday).length > 0,
        kept: this.kept,
        change: this.type,
        keep: this.keepMonday,
      },
      refused: this.refused,
      refuse: (why) => {
        this.refused = why;
      },
      change: this.change,
      print: () => {
        const { year, month } = fromDay(this.firstDay);
        void this.print({ is: "sheets", kind: "week", paper: this.paper.paper, year, month });
      },
    });
  }
}

customElements.define("gwb-rounds", RoundsPlace);
