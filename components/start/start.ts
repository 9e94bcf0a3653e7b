import { css, html, LitElement, nothing } from "lit";
import { frameWords, startWords } from "../../src/words/en/frame.ts";
import { firstIsBegun } from "../first/begun.ts";
import type { App } from "../frame/app.ts";
import { type Keeping, keeping } from "../frame/keeping.ts";
import { sitePath } from "../frame/route.ts";
import { sheetLook } from "../frame/sheet-look.ts";
import type { SiteLine } from "../kept/answers.ts";
import { NotReached } from "../kept/sites-api.ts";
import { base, pressable } from "../look/base.ts";
import { type BroughtIn, bringIn } from "./bring-in.ts";
import { listDeleted, recover } from "./deleted.ts";

/** Lines shown before a field to find one stands above them. */
const many = 12;

/** Where one begins: the sites kept here, a first answer, the demo, a file from elsewhere. */
export class Start extends LitElement {
  static override properties = {
    app: { attribute: false },
    sites: { state: true },
    deleted: { state: true },
    isReached: { state: true },
    refused: { state: true },
    isBusy: { state: true },
    find: { state: true },
  };

  declare app: App;
  /** null while they are asked for. */
  declare sites: readonly SiteLine[] | null;
  declare deleted: readonly SiteLine[];
  declare isReached: boolean;
  declare refused: Extract<BroughtIn, { is: "refused" }> | null;
  declare isBusy: boolean;
  declare find: string;

  static override styles = [
    base,
    pressable,
    sheetLook,
    css`
      .begin {
        margin-top: 1.8rem;
      }
      .sites {
        max-width: 43rem;
        margin-top: 0.4rem;
        padding: 0;
        list-style: none;
      }
      .sites li {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        justify-content: space-between;
        gap: 0 1.5rem;
        padding: 0.55rem 0;
        border-bottom: 1px solid var(--hair);
      }
      .sites a {
        min-width: 0;
        font-size: 1.16rem;
        overflow-wrap: anywhere;
      }
      .find {
        width: min(100%, 22rem);
        min-height: 2.4rem;
        border: 0;
        border-bottom: 2px dashed var(--ink);
        background: transparent;
      }
      .primary {
        background: var(--ink);
        color: var(--on-ink);
      }
      .primary:hover {
        background: transparent;
        color: var(--ink);
      }
      @media (pointer: coarse) {
        .sites a,
        .find {
          display: inline-flex;
          align-items: center;
          min-height: 44px;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.sites = null;
    this.deleted = [];
    this.isReached = true;
    this.refused = null;
    this.isBusy = false;
    this.find = "";
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.load();
  }

  private async load(): Promise<void> {
    try {
      const { api } = await keeping();
      [this.sites, this.deleted] = await Promise.all([api.list(), listDeleted()]);
      this.isReached = true;
    } catch {
      this.sites = [];
      this.isReached = false;
    }
  }

  protected override render() {
    return html`
      <h2 class="headline">${startWords.title}</h2>
      <p class="lead">${startWords.lead}</p>
      <p class="row begin">
        <a class="press primary" href="/first">${firstIsBegun() ? startWords.goOn : startWords.begin}</a>
        <a href="/demo">${startWords.demo}</a>
      </p>
      ${this.isReached ? this.keptHere() : this.notReached()}
      <section class="section" aria-labelledby="in">
        <h3 id="in">${startWords.bringIn}</h3>
        <p class="row">
          <label class="press file">
            <input
              type="file"
              accept=".json,application/json"
              aria-labelledby="in"
              aria-describedby="in-hint"
              @change=${this.chosen}
            />
            <span>${this.isBusy ? startWords.bringing : startWords.choose}</span>
          </label>
          <span class="hint" id="in-hint">${startWords.bringInHint}</span>
        </p>
        ${this.refusals()}
      </section>
      ${this.takenOut()}
    `;
  }

  private keptHere() {
    const { sites } = this;
    if (sites === null) return html`<p class="lead quiet">${frameWords.opening}</p>`;
    const wanted = this.find.trim().toLowerCase();
    const shown = sites.filter(({ name }) => name.toLowerCase().includes(wanted));
    return html`<section class="section" aria-labelledby="kept">
      <h3 id="kept">${startWords.kept}${sites.length > many ? html`, ${startWords.many(sites.length)}` : nothing}</h3>
      ${sites.length === 0 ? html`<p class="lead quiet">${startWords.empty}</p>` : nothing}
      ${
        sites.length > many
          ? html`<label>${startWords.find}
              <input
                class="find"
                type="text"
                dir="auto"
                .value=${this.find}
                @input=${(event: Event) => {
                  this.find = (event.target as HTMLInputElement).value;
                }}
              /></label>`
          : nothing
      }
      <ul class="sites">
        ${shown.map(
          ({ id, name, changedAt, hasDraft }) => html`<li>
            <a href=${sitePath(id)}><bdi>${name}</bdi></a>
            <span class="hint">${startWords.changed(whenOf(changedAt))}${hasDraft ? `; ${startWords.draft}` : ""}</span>
          </li>`,
        )}
      </ul>
      ${wanted && shown.length === 0 ? html`<p class="quiet">${startWords.none(this.find.trim())}</p>` : nothing}
    </section>`;
  }

  private notReached() {
    return html`<div class="in-the-way">
      <h3>${frameWords.notReachedTitle}</h3>
      <p>${frameWords.notReached}</p>
      <p><button type="button" class="plain" @click=${() => void this.load()}>${frameWords.tryAgain}</button></p>
    </div>`;
  }

  private refusals() {
    const { refused } = this;
    if (!refused) return nothing;
    return html`<div class="in-the-way" role="alert">
      <h3>${refused.title}</h3>
      ${
        refused.faults.length > 0
          ? html`<ol>
              ${refused.faults.map(({ path, sentence }) => html`<li>${path ? html`<code>${path}</code> ` : nothing}${sentence}</li>`)}
            </ol>`
          : nothing
      }
      <p>${startWords.refusedFoot}</p>
    </div>`;
  }

  private takenOut() {
    if (this.deleted.length === 0) return nothing;
    return html`<section class="section" aria-labelledby="out">
      <h3 id="out">${startWords.takenOut}</h3>
      <p class="hint">${startWords.takenOutHint}</p>
      <ul class="sites">
        ${this.deleted.map(
          (site) => html`<li>
            <button type="button" class="plain" @click=${() => void this.bringBack(site)}>
              ${startWords.bringBack(site.name)}
            </button>
          </li>`,
        )}
      </ul>
    </section>`;
  }

  private async bringBack({ id, name }: SiteLine): Promise<void> {
    await recover(id).catch(() => {});
    this.app.speak(startWords.broughtBack(name));
    await this.load();
  }

  private readonly chosen = async (event: Event): Promise<void> => {
    event.stopPropagation();
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (!file) return;
    this.isBusy = true;
    this.refused = null;
    const kept: Keeping = await keeping();
    const outcome = await bringIn(file, kept).catch((error: unknown): BroughtIn => {
      if (!(error instanceof NotReached)) throw error;
      return { is: "refused", title: frameWords.notReachedTitle, faults: [] };
    });
    input.value = "";
    this.isBusy = false;
    if (outcome.is === "refused") this.refused = outcome;
    else this.app.go(sitePath(outcome.id));
  };
}

const whens = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });

function whenOf(moment: string): string {
  return whens.format(new Date(moment));
}

customElements.define("gwb-start", Start);
