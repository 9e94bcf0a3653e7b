import { html, LitElement, nothing } from "lit";
import { withId } from "../../src/survey/edit/change-id.ts";
import {
  type Address,
  type Draft,
  keyOf,
  valueIn,
  withField,
  withValue,
} from "../../src/survey/edit/document.ts";
import { idFrom, type NamedList, takenIds } from "../../src/survey/edit/ids.ts";
import { begin, type Edit, edit, noted, type Session, type Typed } from "../../src/survey/edit/session.ts";
import type { Survey } from "../../src/survey/survey.ts";
import type { UnitSystem } from "../../src/units.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import type { Field } from "../fields/field.ts";
import { base, pressable } from "../look/base.ts";
import { assumedOf } from "./assumed.ts";
import { contents } from "./contents.ts";
import { drawingStyles } from "./drawings/styles.ts";
import { type Editing, placed } from "./editing.ts";
import { fieldAround, fieldFor } from "./find-field.ts";
import { frame } from "./frame-styles.ts";
import { head } from "./head.ts";
import { screenAt, screenOfPath } from "./layout/address.ts";
import { nodes } from "./nodes.ts";
import { pieces } from "./piece-styles.ts";
import { sheet } from "./sheet.ts";
import { type Beyond, canStep, isOther, stepAsked, stepped, steppedBeyond } from "./steps.ts";
import { wordsOfChange } from "./words-of-change.ts";

/**
 * Every field of the survey. Entries with faults keep what was typed; the survey told is always one in order.
 *
 * @property survey the survey edited; another one begins anew, the one that was told goes on
 * @property draft entries with faults kept from before, beside the survey
 * @property typed what was typed for values, kept from before: 700 sq ft stays that
 * @property at the screen: blank, `beds`, `beds/oval`, `beds/oval/soil`
 * @property base what the addresses of links begin with
 * @property system units shown
 * @property beyond what can be undone and done again where it is kept, in words, once this session has no step left
 * @property locale how numbers and days are written; the browser's where not given
 * @fires change `{ survey, words, typed }`: the whole survey after an edit, what changed in words, and what was typed
 * @fires draft-change `{ draft, typed }`: entries with faults to keep beside the survey; null where there are none
 * @fires step-beyond `{ way }`: undo or redo past the beginning of this session
 * @fires at-change `{ at }`: another screen was opened
 */
export class Editor extends LitElement {
  static override properties = {
    survey: { attribute: false },
    draft: { attribute: false },
    typed: { attribute: false },
    at: { attribute: false },
    base: { attribute: false },
    system: { attribute: false },
    beyond: { attribute: false, hasChanged: isOther },
    locale: { attribute: false },
    session: { state: true },
    opened: { state: true },
    told: { state: true },
  };

  declare survey: Survey | null;
  declare draft: Draft | null;
  declare typed: Readonly<Record<string, Typed>> | null;
  declare at: string;
  declare base: string;
  declare system: UnitSystem;
  declare beyond: Beyond;
  declare locale: string | undefined;
  declare session: Session | null;
  declare opened: ReadonlySet<string>;
  /** What was done last, shown and spoken. */
  declare told: string;

  private hadDraft = false;
  /** The entry added last, by its address: its id follows its first name. */
  private fresh: string | null = null;
  /** Ids by which entries were known before, so that fields stay where they are while an id changes. */
  private readonly identities = new Map<string, string>();

  static override styles = [base, pressable, frame, pieces, drawingStyles];

  constructor() {
    super();
    this.survey = null;
    this.draft = null;
    this.typed = null;
    this.at = "";
    this.base = "#";
    this.system = "metric";
    this.beyond = { undo: null, redo: null };
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
    if (session && wordsOfChange(session.right, survey) === null) return;
    this.session = begin(survey, this.draft ?? undefined, this.typed ?? undefined);
    this.hadDraft = this.session.faults.length > 0;
  }

  /** Takes in what is typed and not yet left. */
  readonly commit = (): void => {
    for (const field of this.renderRoot.querySelectorAll<Field>("[data-at]")) field.commit?.();
  };

  private readonly keys = (event: KeyboardEvent): void => {
    const asked = stepAsked(event);
    if (!asked) return;
    event.preventDefault();
    this.step(asked);
  };

  private step(way: "undo" | "redo"): void {
    this.commit();
    const { session } = this;
    if (!session) return;
    const step = stepped(session, way);
    if (step) {
      this.told = step.told;
      this.take(step.next);
      this.follow();
      return;
    }
    const beyond = steppedBeyond(session, this.beyond, way);
    this.told = beyond ?? editorWords.nothingMore;
    if (beyond !== null) this.tell("step-beyond", { way });
  }

  /** Goes on showing an entry whose id a step took back. */
  private follow(): void {
    const { part, id } = screenAt(this.at);
    if (!part || !("list" in part) || id === null) return;
    const was = this.identities.get(id);
    const has = (one: string) => valueIn(this.session?.draft, [part.list, { id: one }]) !== undefined;
    if (was !== undefined && !has(id) && has(was)) this.show(`${part.slug}/${encodeURIComponent(was)}`);
  }

  private edit(made: Edit): void {
    if (this.session) this.take(edit(this.session, made));
  }

  /** Goes on with a session, and tells what changed in what counts and in what does not count yet. */
  private take(session: Session): void {
    const before = this.session?.right;
    this.session = session;
    const typed = Object.fromEntries(session.typed);
    const words = before && before !== session.right ? wordsOfChange(before, session.right) : null;
    if (words !== null) this.tell("change", { survey: session.right, words, typed });
    const hasDraft = session.faults.length > 0;
    if (hasDraft || this.hadDraft)
      this.tell("draft-change", { draft: hasDraft ? session.draft : null, typed });
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
    const taken = takenIds(this.session?.draft, list);
    taken.delete(step.id);
    const id = idFrom(name, list, taken);
    this.edit({ change: (document) => withId(withValue(document, address, name), list, step.id, id) });
    this.identities.set(id, step.id);
    this.fresh = null;
    this.show(`${list}/${encodeURIComponent(id)}`);
  }

  private async go(at: string, key?: string, said = ""): Promise<void> {
    this.commit();
    this.told = said;
    this.show(at);
    await this.updateComplete;
    if (key !== undefined) return this.focusOn(key);
    this.renderRoot.querySelector<HTMLElement>(".title[tabindex], h2 a")?.focus({ preventScroll: true });
    const { top } = this.getBoundingClientRect();
    if (top < 0) this.scrollIntoView({ block: "start" });
  }

  /** Goes to the field at a path of the document. */
  openField(path: string): void {
    const { at, key } = screenOfPath(this.session?.draft ?? {}, path);
    void this.go(at, key);
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
    const editing: Editing = {
      session,
      draft: session.draft,
      right: session.right,
      faults: placed(session.draft, session.faults),
      assumed: assumedOf(session.right, () => this.requestUpdate()),
      system: this.system,
      locale: this.locale,
      opened: this.opened,
      put: (address, value, text) => this.put(address, value, text),
      note: (key, text) => {
        if (this.session) this.session = noted(this.session, key, text);
      },
      act: (change, said = "", goTo, focus) => {
        this.commit();
        this.told = said;
        this.edit({ change });
        if (goTo !== undefined) void this.go(goTo, undefined, said);
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
        this.opened = new Set(isOpen ? [...this.opened, key] : [...this.opened].filter((one) => one !== key));
      },
      show: (list, at) => nodes(editing, list, at),
    };
    return editing;
  }

  protected override render() {
    const { editing, session } = this;
    if (!editing || !session) return nothing;
    const screen = screenAt(this.at);
    return html`
      ${head(editing, canStep(session, this.beyond), this.told, (way) => this.step(way), screen.part === null)}
      <div class="spread ${screen.part === null ? "" : "inner"}">
        ${contents(editing, screen)}
        <div class="sheet">${sheet(editing, screen)}</div>
      </div>
    `;
  }
}

customElements.define("gwb-editor", Editor);
