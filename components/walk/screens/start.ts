import { css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { startWords } from "../../../src/words/en/walk-screens.ts";
import type { WalkMode } from "../draft.ts";
import { Screen } from "../screen.ts";

/** Who walks, and for how long. */
export class StartScreen extends Screen {
  static override properties = {
    ...Screen.properties,
    nickname: { state: true },
    mode: { state: true },
    missing: { state: true },
  };

  declare nickname: string | null;
  declare mode: WalkMode | null;
  declare missing: boolean;

  static override styles = [
    ...Screen.styles,
    css`
      input[type="text"] {
        width: min(100%, 20rem);
      }
      .kit {
        padding-inline-start: 1.1rem;
      }
    `,
  ];

  constructor() {
    super();
    this.nickname = null;
    this.mode = null;
    this.missing = false;
  }

  protected override render() {
    const { draft } = this.walk;
    const mode = this.mode ?? draft.mode;
    return html`<section class="screen" aria-labelledby="head">
      <h2 id="head" tabindex="-1">${startWords.heading}</h2>
      <p class="lead">${startWords.lead}</p>
      ${this.cautions("always")}
      <h3><label for="nickname">${startWords.nickname}</label></h3>
      <p class="hint" id="nickname-hint">${startWords.nicknameHint}</p>
      <input
        id="nickname"
        type="text"
        dir="auto"
        maxlength="60"
        autocomplete="off"
        spellcheck="false"
        aria-describedby="nickname-hint"
        aria-invalid=${this.missing ? "true" : "false"}
        .value=${live(this.nickname ?? draft.nickname)}
        @input=${this.typeName}
        @keydown=${(event: KeyboardEvent) => event.key === "Enter" && this.start()}
      />
      ${this.missing ? html`<p class="wrong" role="alert">${startWords.nicknameMissing}</p>` : nothing}
      <h3 id="lengths">${startWords.lengths}</h3>
      <div class="answers" role="group" aria-labelledby="lengths">
        ${(["full", "short", "practice"] as const).map(
          (one) => html`<button
            class="answer"
            aria-pressed=${mode === one}
            @click=${() => {
              this.mode = one;
            }}
          >
            <span class="words"><strong>${startWords.modes[one].words}</strong>
              <span class="about">${startWords.modes[one].about}</span></span>
          </button>`,
        )}
      </div>
      <h3>${startWords.take}</h3>
      <ul class="kit">${startWords.kit.map((one) => html`<li>${one}</li>`)}</ul>
      <p>
        <button class="plain" @click=${() => this.walk.go("sheets")}>${startWords.sheets}</button><br />
        <button class="plain" @click=${() => this.walk.go("teacher")}>${startWords.forTeachers}</button>
      </p>
      <div class="grow"></div>
      <div class="foot">
        <button class="main" @click=${this.start}>
          ${this.isSame ? startWords.goOn(draft.nickname) : startWords.go}
        </button>
        ${
          draft.nickname
            ? html`<button class="plain" @click=${() => this.walk.keepDraft({ nickname: "" })}>
                ${startWords.otherGroup}
              </button>`
            : nothing
        }
      </div>
    </section>`;
  }

  private get isSame(): boolean {
    const { nickname } = this.walk.draft;
    return nickname !== "" && (this.nickname ?? nickname) === nickname;
  }

  private readonly typeName = (event: Event): void => {
    this.nickname = (event.target as HTMLInputElement).value;
    this.missing = false;
  };

  private readonly start = (): void => {
    const nickname = (this.nickname ?? this.walk.draft.nickname).trim();
    this.missing = nickname === "";
    if (this.missing) {
      this.renderRoot.querySelector<HTMLElement>("#nickname")?.focus();
      return;
    }
    const mode = this.mode ?? this.walk.draft.mode;
    // whoever came by a link to a stop goes on to it
    this.walk.keepDraft({ nickname, mode, route: this.walk.draft.route || "round" });
  };
}

customElements.define("gwb-walk-start", StartScreen);
