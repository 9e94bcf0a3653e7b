import { select } from "d3-selection";
import { html, LitElement, nothing } from "lit";
import { parseIso } from "../../src/engine/weather/dates.ts";
import type { LogEntry } from "../../src/survey/schema/log.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { roundsPage as words } from "../../src/words/en/rounds-page.ts";
import { type Formatter, formatter } from "../../src/words/format.ts";
import { drawing } from "../charts/styles.ts";
import { defineTextures } from "../charts/textures.ts";
import { base, pressable } from "../look/base.ts";
import { bedFacts } from "./bed-facts.ts";
import { RoundsCompute } from "./compute.ts";
import { entryLook } from "./entry-look.ts";
import { type LogStore, PassingLogStore, stillWaiting } from "./log-store.ts";
import type { FileAsked, RoundsAnswers, RoundsWithWeek } from "./messages.ts";
import { type Monday, mondayLog, weekSaid } from "./monday.ts";
import { mondayPart } from "./monday-part.ts";
import { type MondayTyped, mondayBlank, readMonday } from "./monday-read.ts";
import { printPages } from "./print-pages.ts";
import { sheetLook } from "./sheet-look.ts";
import { weekDrawn } from "./week-days.ts";
import { weekLook } from "./week-look.ts";
import { weekAnswer, weekNotes, weekOnFoot, weekRest } from "./week-part.ts";

export type RoundsPart = keyof typeof words.parts;
const partNames = Object.keys(words.parts) as RoundsPart[];

/** Typing settles for so long before the round is worked out again. */
const settle_ms = 350;

/**
 * The rounds of a site: this week's first, the months, what is printed, and the log.
 *
 * @property survey the survey that counts
 * @property record weather as the text of a record's CSV; null: the survey's own normals
 * @property log what is in the site's log
 * @property store where entries wait until the log has them
 * @property today the day that it is, as 2026-01-31
 * @property say units and numbers
 * @property view which part is open
 * @fires change `{ survey, words }`: a survey changed here
 * @fires log `{ entries }`: new lines of the log
 * @fires view `{ view }`: another part was opened
 */
export class RoundsPlace extends LitElement {
  static override properties = {
    survey: { attribute: false },
    record: { attribute: false },
    log: { attribute: false },
    store: { attribute: false },
    today: {},
    say: { attribute: false },
    view: {},
    typed: { state: true },
    told: { state: true },
    busy: { state: true },
    crash: { state: true },
    width: { state: true },
    kept: { state: true },
  };

  declare survey: Survey | null;
  declare record: string | null;
  declare log: readonly LogEntry[];
  declare store: LogStore;
  declare today: string;
  declare say: Formatter;
  declare view: RoundsPart;
  declare typed: MondayTyped;
  declare told: RoundsAnswers["rounds"] | null;
  declare busy: boolean;
  declare crash: string;
  declare width: number;
  declare kept: boolean;

  static override styles = [base, pressable, drawing, sheetLook, entryLook, weekLook];

  private readonly compute = new RoundsCompute();
  private timer = 0;
  private readonly sized = new ResizeObserver(([entry]) => {
    const width = Math.floor(entry?.contentRect.width ?? 0);
    if (width > 0 && width !== this.width) this.width = width;
  });
  private measured: Element | null = null;

  constructor() {
    super();
    this.survey = null;
    this.record = null;
    this.log = [];
    this.store = new PassingLogStore();
    this.today = "";
    this.say = formatter("metric", undefined);
    this.view = "week";
    this.typed = mondayBlank;
    this.told = null;
    this.busy = false;
    this.crash = "";
    this.width = 0;
    this.kept = false;
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    this.sized.disconnect();
    this.measured = null;
    this.compute.stop();
    super.disconnectedCallback();
  }

  private get firstDay(): number {
    return parseIso(this.today) ?? 0;
  }

  /** The log with what waits to be taken. */
  private get wholeLog(): readonly LogEntry[] {
    return [...this.log, ...stillWaiting(this.store.waiting(), this.log)];
  }

  private get read() {
    const { tanks } = this.survey!;
    return readMonday(this.typed, tanks, this.say);
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has("log") || changed.has("store")) this.store.taken(this.log);
    const inputs = ["survey", "record", "log", "store", "today"];
    if (inputs.some((name) => changed.has(name))) this.again(0);
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

  private again(wait_ms: number): void {
    clearTimeout(this.timer);
    if (!this.survey || !this.isConnected) return;
    this.busy = true;
    this.timer = window.setTimeout(() => void this.workOut(), wait_ms);
  }

  private async workOut(): Promise<void> {
    const week = weekSaid(this.read.monday, this.firstDay, this.wholeLog);
    try {
      const of = { survey: this.survey!, record: this.record, week };
      const told = await this.compute.ask({ kind: "rounds", of });
      if (told === null) return;
      this.told = told;
      this.crash = "";
    } catch (error) {
      this.crash = error instanceof Error ? error.message : String(error);
    }
    this.busy = false;
  }

  private readonly type = (part: Partial<MondayTyped>): void => {
    this.typed = { ...this.typed, ...part };
    this.kept = false;
    this.again(settle_ms);
  };

  private write(entries: readonly LogEntry[]): void {
    this.store.add(entries);
    this.dispatchEvent(new CustomEvent("log", { detail: { entries }, bubbles: true }));
    this.requestUpdate();
    this.again(0);
  }

  private readonly keepMonday = (): void => {
    this.write(this.mondayLines(this.read.monday));
    this.kept = true;
  };

  private mondayLines(monday: Monday): LogEntry[] {
    return stillWaiting(mondayLog(monday, this.firstDay), this.wholeLog);
  }

  private async fileText(file: FileAsked): Promise<string> {
    const told = await this.compute.ask({ kind: "file", file });
    return told?.text ?? "";
  }

  private readonly print = async (file: FileAsked): Promise<void> => {
    printPages(await this.fileText(file));
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
    return this.week(told.rounds);
  }

  private week(rounds: RoundsWithWeek) {
    const beds = bedFacts(this.survey!);
    const { monday, wrong } = this.read;
    const parts = {
      rounds,
      beds,
      drawn: weekDrawn(rounds.week, beds),
      say: this.say,
      width: this.width,
      print: () => {
        const file = { is: "sheets", kind: "week", paper: "A4", year: 2000, month: 1 } as const;
        void this.print(file);
      },
    };
    return html`<div class="spread">
      ${mondayPart({
        typed: this.typed,
        wrong,
        survey: this.survey!,
        firstDay: this.firstDay,
        say: this.say,
        canKeep: this.mondayLines(monday).length > 0,
        kept: this.kept,
        change: this.type,
        keep: this.keepMonday,
      })}
      <div class="measured-sheet" aria-busy=${this.busy}>
        ${weekAnswer(parts)}
        ${this.width > 0 ? html`${weekOnFoot(parts)} ${weekRest(parts)}` : nothing} ${weekNotes(parts)}
      </div>
    </div>`;
  }
}

customElements.define("gwb-rounds", RoundsPlace);
