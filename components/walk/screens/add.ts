import { css, html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Unit } from "../../../src/quantities.ts";
import { withNew } from "../../../src/survey/edit/add.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { kinds, methods } from "../../../src/survey/words.ts";
import { shownUnit } from "../../../src/units.ts";
import { methodWords, plantKinds } from "../../../src/words/en/walk-answers.ts";
import { addWords } from "../../../src/words/en/walk-more.ts";
import { readQuantity } from "../../fields/writing/quantity.ts";
import { Screen } from "../screen.ts";
import type { WalkList } from "../stops.ts";

/** Size that stands until it is measured, by list: the field, and its unit. */
const sizes: Partial<Record<WalkList, { field: string; unit: Unit }>> = {
  beds: { field: "area_m2", unit: "m²" },
  roofs: { field: "area_m2", unit: "m²" },
  tanks: { field: "capacity_L", unit: "L" },
  draws: { field: "litresPerDay", unit: "L a day" },
  leaks: { field: "litresPerDay", unit: "L a day" },
};

/** Something found on the grounds that the survey does not have yet; a guess of its size stands until it is measured. */
export class AddScreen extends Screen {
  static override properties = {
    ...Screen.properties,
    list: { attribute: false },
    wrong: { state: true },
  };

  declare list: WalkList;
  declare wrong: "name" | "guess" | null;

  static override styles = [
    ...Screen.styles,
    css`
      input[type="text"] {
        width: min(100%, 20rem);
      }
      .size input {
        width: 9rem;
      }
      .answers {
        columns: 15rem;
        column-gap: 1.5rem;
      }
      .answer {
        min-height: 48px;
        break-inside: avoid;
      }
    `,
  ];

  constructor() {
    super();
    this.list = "beds";
    this.wrong = null;
  }

  private get key(): string {
    return `add/${this.list}`;
  }

  private note(name: string): string {
    return this.walk.atStop(this.key).notes?.[name] ?? "";
  }

  private keepNote(name: string, text: string): void {
    const { notes = {} } = this.walk.atStop(this.key);
    this.walk.keepStop(this.key, { notes: { ...notes, [name]: text } });
  }

  protected override render() {
    const { list } = this;
    const size = sizes[list];
    const noTank = list === "draws" && this.walk.survey.tanks.length === 0;
    return html`<section class="screen" aria-labelledby="head">
      ${this.top()}
      <h2 id="head" tabindex="-1">${addWords.heading[list]}</h2>
      ${noTank ? html`<p class="lead">${addWords.noTank}</p>` : nothing}
      <h3><label for="name">${addWords.name}</label></h3>
      <p class="hint" id="name-hint">${addWords.nameHint[list]}</p>
      <input id="name" type="text" dir="auto" maxlength="200" autocomplete="off" aria-describedby="name-hint" .value=${live(this.note("name"))} @input=${this.typed("name")} />
      ${this.wrong === "name" ? html`<p class="wrong" role="alert">${addWords.wants.name}</p>` : nothing}
      ${list === "beds" ? this.choose("kind", addWords.kind, kinds, plantKinds) : nothing}
      ${list === "beds" ? this.choose("method", addWords.method, methods, methodWords) : nothing}
      ${list === "taps" ? this.choose("source", addWords.source, ...this.sources()) : nothing}
      ${list === "draws" ? this.choose("tank", addWords.from, ...this.tanks()) : nothing}
      ${size ? this.size(list, size.unit) : nothing}
      <div class="grow"></div>
      <div class="foot"><button class="main" ?disabled=${noTank} @click=${this.add}>${addWords.add}</button></div>
    </section>`;
  }

  private typed(name: string) {
    return (event: Event) => {
      this.wrong = null;
      this.keepNote(name, (event.target as HTMLInputElement).value);
    };
  }

  private size(list: WalkList, unit: Unit) {
    return html`<h3><label for="size">${addWords.guess[list]}</label></h3>
      <p class="hint" id="size-hint">${addWords.guessHint}</p>
      <p class="size">
        <input id="size" type="text" inputmode="decimal" autocomplete="off" aria-describedby="size-hint size-unit" .value=${live(this.note("size"))} @input=${this.typed("size")} />
        <span class="unit" id="size-unit">${shownUnit(unit, this.walk.system)}${unit === "L a day" && this.walk.system === "us" ? " a day" : ""}</span>
      </p>
      ${this.wrong === "guess" ? html`<p class="wrong" role="alert">${addWords.wants.guess}</p>` : nothing}`;
  }

  private sources(): [readonly string[], Readonly<Record<string, string>>] {
    const [ids, names] = this.tanks();
    return [["mains", ...ids, "other"], { mains: addWords.mains, other: addWords.other, ...names }];
  }

  private tanks(): [readonly string[], Readonly<Record<string, string>>] {
    const { tanks } = this.walk.survey;
    return [tanks.map(({ id }) => id), Object.fromEntries(tanks.map(({ id, name }) => [id, name]))];
  }

  private chosen(name: string, values: readonly string[]): string {
    return this.note(name) || values[0] || "";
  }

  private choose(
    name: string,
    ask: string,
    values: readonly string[],
    words: Readonly<Record<string, string>>,
  ) {
    const chosen = this.chosen(name, values);
    return html`<h3 id="ask-${name}">${ask}</h3>
      <div class="answers" role="group" aria-labelledby="ask-${name}">
        ${values.map(
          (
            value,
          ) => html`<button class="answer" aria-pressed=${chosen === value} @click=${() => this.keepNote(name, value)}>
            <span class="words"><bdi>${words[value] ?? value}</bdi></span>
          </button>`,
        )}
      </div>`;
  }

  private readonly add = (): void => {
    const { list, walk } = this;
    const name = this.note("name").trim();
    const size = sizes[list];
    const read = size ? readQuantity(this.note("size"), { unit: size.unit, ...walk.typed }) : { value: 1 };
    const figure = "value" in read && typeof read.value === "number" ? read.value : 0;
    this.wrong = name === "" ? "name" : figure > 0 ? null : "guess";
    if (this.wrong) {
      this.renderRoot.querySelector<HTMLElement>(this.wrong === "name" ? "#name" : "#size")?.focus();
      return;
    }
    const { document, id } = withNew(walk.survey, list, name, {
      ...(size ? { [size.field]: figure } : {}),
      ...this.rest(),
    });
    walk.keepStop(this.key, { notes: {} });
    walk.change(document as unknown as Survey);
    walk.go(`thing/${list}/${id}`);
  };

  private rest(): Record<string, unknown> {
    if (this.list === "taps") return { source: this.chosen("source", this.sources()[0]) };
    if (this.list === "draws") return { tank: this.chosen("tank", this.tanks()[0]) };
    if (this.list !== "beds") return {};
    const method = this.chosen("method", methods);
    return {
      plantings: [{ kind: this.chosen("kind", kinds), thirst: "moderate", share: 1 }],
      watering: { method, supply: method === "none" ? "none" : "mains-only" },
    };
  }
}

customElements.define("gwb-walk-add", AddScreen);
