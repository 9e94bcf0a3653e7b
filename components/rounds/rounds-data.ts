import { LitElement } from "lit";
import { parseIso } from "../../src/engine/weather/dates.ts";
import { usualStarts } from "../../src/report/rounds-starts.ts";
import type { LogEntry } from "../../src/survey/schema/log.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { type Formatter, formatter } from "../../src/words/format.ts";
import { isRoundAddress } from "../../src/words/round-at.ts";
import type { Explain } from "../figure/figure.ts";
import { RoundsCompute } from "./compute.ts";
import { type LogStore, PassingLogStore, stillWaiting } from "./log-store.ts";
import type { FileAsked, RoundsAnswers } from "./messages.ts";
import { type Monday, mondayLog, weekSaid } from "./monday.ts";
import { type MondayTyped, mondayBlank, readMonday } from "./monday-read.ts";

/** Typing settles for so long before the round is worked out again. */
const settle_ms = 350;

/** What the rounds are worked out from, and the working out beside the page; the sheets are drawn by who extends it. */
export abstract class RoundsData extends LitElement {
  static override properties = {
    survey: { attribute: false },
    record: { attribute: false },
    log: { attribute: false },
    store: { attribute: false },
    today: {},
    say: { attribute: false },
    explainSite: { attribute: false },
    typed: { state: true },
    starts: { state: true },
    told: { state: true },
    busy: { state: true },
    crash: { state: true },
    kept: { state: true },
  };

  declare survey: Survey | null;
  declare record: string | null;
  declare log: readonly LogEntry[];
  declare store: LogStore;
  declare today: string;
  declare say: Formatter;
  declare explainSite: Explain | undefined;
  declare typed: MondayTyped;
  /** Start times of a day that the simple timer has. */
  declare starts: number;
  declare told: RoundsAnswers["rounds"] | null;
  declare busy: boolean;
  declare crash: string;
  /** Whether Monday's rain and dips went into the log. */
  declare kept: boolean;

  protected readonly compute = new RoundsCompute();
  private timer = 0;

  constructor() {
    super();
    this.survey = null;
    this.record = null;
    this.log = [];
    this.store = new PassingLogStore();
    this.today = "";
    this.say = formatter("metric", undefined);
    this.typed = mondayBlank;
    this.starts = usualStarts;
    this.told = null;
    this.busy = false;
    this.crash = "";
    this.kept = false;
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    this.compute.stop();
    super.disconnectedCallback();
  }

  protected get firstDay(): number {
    return parseIso(this.today) ?? 0;
  }

  /** The log with what waits to be taken. */
  protected get wholeLog(): readonly LogEntry[] {
    return [...this.log, ...stillWaiting(this.store.waiting(), this.log)];
  }

  protected get read() {
    const { tanks } = this.survey!;
    return readMonday(this.typed, tanks, this.say);
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has("log") || changed.has("store")) this.store.taken(this.log);
    const inputs = ["survey", "record", "log", "store", "today", "starts"];
    const before = changed.get("say") as Formatter | undefined;
    const otherUnits = before !== undefined && before.system !== this.say.system;
    if (otherUnits || inputs.some((name) => changed.has(name))) this.again(0);
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
      const of = {
        survey: this.survey!,
        record: this.record,
        units: this.say.system,
        starts: this.starts,
        week,
      };
      const told = await this.compute.ask({ kind: "rounds", of });
      if (told === null) return;
      this.told = told;
      this.crash = "";
    } catch (error) {
      this.crash = error instanceof Error ? error.message : String(error);
    }
    this.busy = false;
  }

  protected readonly type = (part: Partial<MondayTyped>): void => {
    this.typed = { ...this.typed, ...part };
    this.kept = false;
    this.again(settle_ms);
  };

  protected write(entries: readonly LogEntry[]): void {
    this.store.add(entries);
    this.dispatchEvent(new CustomEvent("log", { detail: { entries }, bubbles: true }));
    this.requestUpdate();
    this.again(0);
  }

  protected readonly keepMonday = (): void => {
    this.write(this.mondayLines(this.read.monday));
    this.kept = true;
  };

  protected mondayLines(monday: Monday): LogEntry[] {
    return stillWaiting(mondayLog(monday, this.firstDay), this.wholeLog);
  }

  /** A figure's working: the rounds' own from beside the page, the engine's from the site. */
  protected readonly explain: Explain = async (at) => {
    if (!isRoundAddress(at)) return (await this.explainSite?.(at)) ?? null;
    const { system } = this.say;
    const working = await this.compute.ask({
      kind: "explain",
      at,
      units: system,
      locale: navigator.language,
    });
    if (!working) return null;
    // no page of its own: that is for the engine's figures
    const { at: _own, ...rest } = working;
    return rest;
  };

  protected async fileText(file: FileAsked): Promise<string> {
    if (this.busy) {
      // what was typed last is in the file too
      clearTimeout(this.timer);
      await this.workOut();
    }
    const told = await this.compute.ask({ kind: "file", file });
    return told?.text ?? "";
  }
}
