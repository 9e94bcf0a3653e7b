import { css, html, LitElement, type PropertyValues } from "lit";
import type { Survey } from "../../src/survey/survey.ts";
import type { UnitSystem } from "../../src/units.ts";
import { walkWords } from "../../src/words/en/walk-screens.ts";
import { base, pressable } from "../look/base.ts";
import type { Walk, Weigh } from "./context.ts";
import { type AtStop, Drafts, emptyDraft, emptyStop, type WalkDraft } from "./draft.ts";
import { withGroup } from "./keep.ts";
import { momentText } from "./moment.ts";
import { keepPage } from "./offline/register.ts";
import type { Weight } from "./order.ts";
import { practiceSurvey } from "./practice.ts";
import { routeOf } from "./routes.ts";
import { aboutIn, figureIn, showIn } from "./show.ts";
import { type WalkStore, walkStore } from "./store.ts";
import { toTop } from "./to-top.ts";

/**
 * The walk: measuring the grounds, one thing a screen. Everything typed is kept on the machine at once.
 *
 * @property survey the site's survey; the walk never changes it, it tells of a new one
 * @property site names the site on this machine
 * @property nickname the group's, where it is known already
 * @property system units that bare numbers are in
 * @property weights what each open question does to the answer, for the short walk
 * @property weigh litres that a survey comes to
 * @property fields the address of the survey's field editor at a screen of it; null where there is none
 * @property store where drafts are kept
 * @property route the screen: blank for the one left last
 * @fires change `{ survey }` the whole new survey
 * @fires route `{ route }` the screen gone to
 */
export class GroundsWalk extends LitElement {
  static override properties = {
    survey: { attribute: false },
    site: { attribute: false },
    nickname: { attribute: false },
    system: { attribute: false },
    locale: { attribute: false },
    weights: { attribute: false },
    weigh: { attribute: false },
    fields: { attribute: false },
    store: { attribute: false },
    route: { attribute: false },
    draft: { state: true },
  };

  declare survey: Survey;
  declare site: string;
  declare nickname: string;
  declare system: UnitSystem;
  declare locale: string | undefined;
  declare weights: readonly Weight[];
  declare weigh: Weigh | null;
  declare fields: ((at: string) => string) | null;
  declare store: WalkStore;
  declare route: string;
  declare draft: WalkDraft;

  private drafts: Drafts | null = null;

  static override styles = [
    base,
    pressable,
    css`
      :host {
        display: block;
        min-width: 0;
      }
      .practice {
        padding: 0.4rem 0.8rem;
        border: 1px dashed var(--ink);
        font-size: 0.95rem;
      }
    `,
  ];

  constructor() {
    super();
    this.site = "";
    this.nickname = "";
    this.system = "metric";
    this.locale = undefined;
    this.weights = [];
    this.weigh = null;
    this.fields = null;
    this.store = walkStore();
    this.route = "";
    this.draft = emptyDraft("");
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("site") || changed.has("store") || changed.has("nickname") || this.drafts === null)
      this.takeUp();
    else if (changed.has("route") && this.route !== this.draft.route) this.keepDraft({ route: this.route });
  }

  protected override updated(changed: PropertyValues<this>): void {
    const before = changed.get("draft") as WalkDraft | undefined;
    if (before && before.route !== this.draft.route) {
      this.dispatchEvent(new CustomEvent("route", { detail: { route: this.draft.route } }));
      toTop(this);
      void this.focusHead();
    }
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void keepPage();
  }

  /** The draft of the group that walked here last, where it left off. */
  private takeUp(): void {
    this.drafts = new Drafts(this.store, this.site);
    const nickname = this.nickname || this.drafts.last() || "";
    const draft = (nickname && this.drafts.read(nickname)) || emptyDraft(nickname);
    this.draft = this.route ? { ...draft, route: this.route } : draft;
  }

  private async focusHead(): Promise<void> {
    await this.updateComplete;
    const screen = this.renderRoot.querySelector<LitElement & { focusHead?(): void }>(".place");
    if (!screen) return;
    // a screen whose code is still on its way has no head yet
    await customElements.whenDefined(screen.localName);
    await screen.updateComplete;
    screen.focusHead?.();
  }

  private get counted(): Survey {
    return this.draft.mode === "practice" && this.draft.practice ? this.draft.practice : this.survey;
  }

  private get walk(): Walk {
    const survey = this.counted;
    const { draft } = this;
    // the practice school is no site of its own: nothing was weighed for it, and no fields are kept
    const isOwn = draft.mode !== "practice";
    const group = (survey.groups ?? []).find(
      ({ nickname }) => nickname.toLowerCase() === draft.nickname.toLowerCase(),
    )?.id;
    return {
      ...{ survey, draft, group, system: this.system, locale: this.locale },
      weights: isOwn ? this.weights : [],
      fields: isOwn ? this.fields : null,
      ...{ weigh: this.weigh, store: this.store, site: this.site },
      typed: { system: this.system, ...(this.locale === undefined ? {} : { locale: this.locale }) },
      show: showIn(this.system, this.locale),
      about: aboutIn(this.system, this.locale),
      figure: figureIn(this.system, this.locale),
      now: () => momentText(new Date()),
      withGroup: () => {
        const named = withGroup(this.counted, this.draft.nickname);
        return { survey: named.survey, group: named.id };
      },
      change: (next) => this.change(next),
      go: (route) => this.keepDraft({ route }),
      keepDraft: (patch) => void this.keepWith(patch),
      atStop: (key) => this.draft.stops[key] ?? emptyStop(),
      keepStop: (key, patch) => this.keepStop(key, patch),
    };
  }

  private change(survey: Survey): void {
    if (this.draft.mode === "practice") {
      this.keepDraft({ practice: survey });
      return;
    }
    this.survey = survey;
    this.dispatchEvent(new CustomEvent("change", { detail: { survey } }));
  }

  /** Practice brings its own school with it. */
  private async keepWith(patch: Partial<WalkDraft>): Promise<void> {
    if (patch.nickname !== undefined && patch.nickname !== this.draft.nickname) {
      if (patch.nickname === "") this.drafts!.handOver();
      this.draft = (patch.nickname && this.drafts!.read(patch.nickname)) || emptyDraft(patch.nickname);
    }
    if (patch.mode === "practice" && !this.draft.practice)
      this.keepDraft({ ...patch, practice: await practiceSurvey() });
    else this.keepDraft(patch);
  }

  private keepStop(key: string, patch: Partial<AtStop>): void {
    const before = this.draft.stops[key] ?? emptyStop();
    this.keepDraft({ stops: { ...this.draft.stops, [key]: { ...before, ...patch } } });
  }

  private keepDraft(patch: Partial<WalkDraft>): void {
    this.draft = { ...this.draft, ...patch };
    this.route = this.draft.route;
    if (this.draft.nickname) this.drafts!.keep(this.draft);
  }

  protected override render() {
    if (!this.survey) return html``;
    const { walk } = this;
    return html`${
      this.draft.mode === "practice" && this.draft.nickname
        ? html`<p class="practice">${walkWords.practice}</p>`
        : ""
    }
    ${this.store.isLasting ? "" : html`<p class="practice">${walkWords.notLasting}</p>`}
    ${routeOf(walk)}`;
  }
}

customElements.define("gwb-walk", GroundsWalk);
