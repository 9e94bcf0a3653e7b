import { css, html, LitElement } from "lit";
import { changesBetween, namesOf } from "../../src/survey/changes.ts";
import { withId } from "../../src/survey/edit/change-id.ts";
import { type Address, type Draft, keyOf, withField, withValue } from "../../src/survey/edit/document.ts";
import { idFrom, type NamedList, takenIds } from "../../src/survey/edit/ids.ts";
import { begin, type Edit, edit, redo, type Session, undo } from "../../src/survey/edit/session.ts";
import { withoutCompiling } from "../../src/survey/edit/without-compiling.ts";
import { type Assumed, resolve } from "../../src/survey/resolve.ts";
import type { Survey } from "../../src/survey/survey.ts";
import type { UnitSystem } from "../../src/units.ts";
import { changesText } from "../../src/words/en/changes.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import type { Field } from "../fields/field.ts";
import { base, pressable } from "../look/base.ts";
import { contents } from "./contents.ts";
import { drawingStyles } from "./drawings/styles.ts";
import { type Editing, placed } from "./editing.ts";
import { faultList } from "./fault-list.ts";
import { fieldAround, fieldFor } from "./find-field.ts";
import { frame } from "./frame-styles.ts";
import { screenAt } from "./layout/address.ts";
import { link } from "./link.ts";
import { nodes } from "./nodes.ts";
import { pieces } from "./piece-styles.ts";
import { sheet } from "./sheet.ts";

withoutCompiling();

/**
 * The survey's editor: every field of the document, in the words of those who walked the grounds. Entries with faults
 * keep what was typed; the survey told is always one in order.
 *
 * @property survey the survey edited; another one begins anew, the one that was told goes on
 * @property draft entries with faults kept from before, beside the survey
 * @property at the screen: blank, `beds`, `beds/oval`, `beds/oval/soil`
 * @property base what the addresses of links begin with
 * @property system units shown
 * @property locale how numbers and days are written; the browser's where not given
 * @fires change `{ survey, words }`: the whole survey after an edit, and what changed, in words
 * @fires draft-change `{ draft }`: entries with faults to keep beside the survey; null where there are none
 * @fires at-change `{ at }`: another screen was opened
 */
export class Editor extends LitElement {
  static override properties = {
    survey: { attribute: false },
    draft: { attribute: false },
    at: { attribute: false },
    base: { attribute: false },
    system: { attribute: false },
    locale: { attribute: false },
    session: { state: true },
    opened: { state: true },
    told: { state: true },
  };

  declare survey: Survey | null;
  declare draft: Draft | null;
  declare at: string;
  declare base: string;
  declare system: UnitSystem;
  declare locale: string | undefined;
  declare session: Session | null;
  declare opened: ReadonlySet<string>;
  /** What was done last, shown and spoken. */
  declare told: string;

  private assumed: ReadonlyMap<string, Assumed> = new Map();
  private assumedOf: Survey | null = null;
  private hadDraft = false;
  /** The entry added last, by its address: its id follows its first name. */
  private fresh: string | null = null;

  /** Ids by which entries were known before, so that fields stay where they are while an id changes. */
  private readonly identities = new Map<string, string>();

  static override styles = [base, pressable, frame, pieces, drawingStyles, css``];

  constructor() {
    super();
    this.survey = null;
    this.draft = null;
    this.at = "";
    this.base = "#";
    this.system = "metric";
    this.session = null;
    this.opened = new Set();
    this.told = "";
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("pagehide", this.commit);
    this.addEventListener("keydown", this.keys);
  }

  override disconnectedCallback(): void {
    removeEventListener("pagehide", this.commit);
    this.removeEventListener("keydown", this.keys);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has("at") && changed.get("at") !== undefined) this.opened = new Set();
    if (!changed.has("survey") || this.survey === null) return;
    const { survey, session } = this;
    if (session && (session.right === survey || changesBetween(session.right, survey).length === 0)) return;
    this.session = begin(survey, this.draft ?? undefined);
    this.hadDraft = this.session.faults.length > 0;
  }

  /** Takes in what is typed and not yet left. */
  readonly commit = (): void => {
    for (const field of this.renderRoot.querySelectorAll<Field>("[data-at]")) field.commit?.();
  };

  private readonly keys = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const target = event.composedPath()[0];
    const isWriting =
      target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.type === "text");
    if (isWriting || (key !== "z" && key !== "y")) return;
    event.preventDefault();
    this.step(key === "y" || event.shiftKey ? "redo" : "undo");
  };

  private step(way: "undo" | "redo"): void {
    this.commit();
    const { session } = this;
    if (!session) return;
    const next = way === "undo" ? undo(session) : redo(session);
    if (next === session) {
      this.told = editorWords.nothingMore;
      return;
    }
    const words =
      way === "undo" ? this.wordsOf(next.right, session.right) : this.wordsOf(session.right, next.right);
    this.told = way === "undo" ? editorWords.undone(words) : editorWords.redone(words);
    this.take(next);
  }

  private wordsOf(before: Survey, after: Survey): string {
    return changesText(changesBetween(before, after), new Map([...namesOf(before), ...namesOf(after)]));
  }

  private edit(made: Edit): void {
    if (this.session) this.take(edit(this.session, made));
  }

  /** Goes on with a session, and tells what changed in what counts and in what does not count yet. */
  private take(session: Session): void {
    const before = this.session?.right;
    this.session = session;
    if (before && before !== session.right) {
      const words = this.wordsOf(before, session.right);
      if (changesBetween(before, session.right).length > 0)
        this.tell("change", { survey: session.right, words });
    }
    const hasDraft = session.faults.length > 0;
    if (hasDraft || this.hadDraft) this.tell("draft-change", { draft: hasDraft ? session.draft : null });
    this.hadDraft = hasDraft;
  }

  private tell(name: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }

  private put(address: Address, value: unknown, text?: string): void {
    const key = keyOf(address);
    this.told = "";
    const isName = address.at(-1) === "name" || address.at(-1) === "nickname";
    if (isName && typeof value === "string" && key === `${this.fresh}/${String(address.at(-1))}`) {
      this.name(address, value);
      return;
    }
    this.edit({
      change: (draft) => withField(draft, address, value),
      key,
      ...(text !== undefined && { typed: { text, value } }),
    });
  }

  /** The first name of an entry just added: its id is made from it. */
  private name(address: Address, name: string): void {
    const [list, step] = address as [NamedList, { id: string }];
    const { draft } = this.session!;
    const id = idFrom(name, list, new Set([...takenIds(draft, list)].filter((one) => one !== step.id)));
    this.edit({ change: (document) => withId(withValue(document, address, name), list, step.id, id) });
    this.identities.set(id, step.id);
    this.fresh = null;
    this.show(`${list}/${encodeURIComponent(id)}`);
  }

  private async go(at: string, key?: string): Promise<void> {
    this.commit();
    this.told = "";
    this.show(at);
    await this.updateComplete;
    if (key !== undefined) return this.focusOn(key);
    this.renderRoot.querySelector<HTMLElement>(".title[tabindex], h2 a")?.focus({ preventScroll: true });
    const { top } = this.getBoundingClientRect();
    if (top < 0) this.scrollIntoView({ block: "start" });
  }

  private show(at: string): void {
    if (at === this.at) return;
    this.at = at;
    this.tell("at-change", { at });
  }

  /** Goes to a field, or the part of the screen that it is in; behind what is folded up, too. */
  private async focusOn(key: string): Promise<void> {
    await this.updateComplete;
    if (!fieldFor(this.renderRoot, key)) {
      this.opened = new Set([...this.opened, "more"]);
      await this.updateComplete;
    }
    const found = fieldFor(this.renderRoot, key) ?? fieldAround(this.renderRoot, key);
    found?.scrollIntoView({ block: "center" });
    found?.focus({ preventScroll: true });
  }

  private get editing(): Editing | null {
    const { session } = this;
    if (!session) return null;
    if (this.assumedOf !== session.right) {
      this.assumed = new Map(resolve(session.right).assumed.map((one) => [one.where, one]));
      this.assumedOf = session.right;
    }
    const editing: Editing = {
      session,
      draft: session.draft,
      right: session.right,
      faults: placed(session.draft, session.faults),
      assumed: this.assumed,
      system: this.system,
      locale: this.locale,
      opened: this.opened,
      put: (address, value, text) => this.put(address, value, text),
      note: (key, text) => {
        if (!this.session) return;
        const typed = new Map(this.session.typed);
        if (text === undefined) typed.delete(key);
        else typed.set(key, { text, value: text });
        this.session = { ...this.session, typed };
      },
      act: (change, said = "", goTo, focus) => {
        this.commit();
        this.told = said;
        this.edit({ change });
        if (goTo !== undefined)
          void this.go(goTo).then(() => {
            this.told = said;
          });
        else if (focus !== undefined) void this.focusOn(focus);
      },
      add: (change, list, id) => {
        this.commit();
        this.edit({ change });
        this.fresh = `${list}/${id}`;
        void this.go(
          `${list}/${encodeURIComponent(id)}`,
          `${list}/${id}/${list === "found" ? "at" : list === "groups" ? "nickname" : "name"}`,
        );
      },
      identity: (id) => this.identities.get(id) ?? id,
      go: (at, key) => void this.go(at, key),
      href: (at) => `${this.base}${at}`,
      open: (key, isOpen) => {
        if (this.opened.has(key) === isOpen) return;
        const opened = new Set(this.opened);
        if (isOpen) opened.add(key);
        else opened.delete(key);
        this.opened = opened;
      },
      show: (list, at) => nodes(editing, list, at),
    };
    return editing;
  }

  protected override render() {
    const { editing, session } = this;
    if (!editing || !session) return html``;
    const screen = screenAt(this.at);
    return html`
      <div class="head">
        <h2>${link(editing, "", editorWords.contents, { isHere: screen.part === null })}</h2>
        <div class="ways">
          <button type="button" class="plain" ?disabled=${session.past.length === 0} @click=${() => this.step("undo")}>
            ${editorWords.undo}
          </button>
          <button type="button" class="plain" ?disabled=${session.future.length === 0} @click=${() => this.step("redo")}>
            ${editorWords.redo}
          </button>
        </div>
      </div>
      <div class="notes">
        <p class="told" role="status">${this.told}</p>
        ${faultList(editing)}
      </div>
      <div class="spread ${screen.part === null ? "" : "inner"}">
        ${contents(editing, screen)}
        <div class="sheet">${sheet(editing, screen)}</div>
      </div>
    `;
  }
}

customElements.define("gwb-editor", Editor);
