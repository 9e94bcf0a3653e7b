import { css, html, nothing, type TemplateResult } from "lit";
import { walkParts } from "../../../src/survey/measuring/way.ts";
import { roundWords, walkWords } from "../../../src/words/en/walk-screens.ts";
import { sheetWords } from "../../../src/words/en/walk-sheets.ts";
import { listWords, stopWords } from "../../../src/words/en/walk-stops.ts";
import { tallyOf } from "../drawings/tally.ts";
import { mostWanted, shortWalk } from "../order.ts";
import { Screen } from "../screen.ts";
import { doneBy } from "../standing.ts";
import { type Stop, stopsOf, type WalkList } from "../stops.ts";

const lists: readonly WalkList[] = ["beds", "roofs", "tanks", "taps", "draws", "leaks"];

/** All stops, thing by thing, with how far each has come; what to do next at the foot. */
export class RoundScreen extends Screen {
  static override properties = { ...Screen.properties, only: { state: true }, whole: { state: true } };

  declare only: string;
  declare whole: boolean;

  static override styles = [
    ...Screen.styles,
    css`
      .choose {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0.2rem 0.7rem;
        margin-top: 0.8rem;
      }
      .lists section {
        padding-top: 2rem;
      }
      .list {
        margin-top: 0;
        padding-top: 0.45rem;
        border-top: 1.5px solid var(--rule);
        font-weight: 400;
        font-size: 1rem;
      }
      @media (min-width: 60rem) {
        .lists {
          columns: 2;
          column-gap: 3.5rem;
        }
        .lists section {
          break-inside: avoid;
        }
      }
      .answers {
        margin-top: 0.5rem;
      }
      .end {
        min-width: 4.6rem;
      }
      .tools {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(15rem, 1fr));
        gap: 0 1.5rem;
      }
    `,
  ];

  constructor() {
    super();
    this.only = "";
    this.whole = false;
  }

  protected override render() {
    const { survey, draft, group, weights } = this.walk;
    const all = stopsOf(survey);
    const short = draft.mode === "short" && !this.whole ? shortWalk(all, weights) : null;
    const stops = (short ?? all).filter(({ part }) => this.only === "" || part === this.only);
    const isDone = (stop: Stop) => doneBy(survey, stop, group);
    const open = stops.filter((stop) => !isDone(stop) && !draft.passed.includes(stop.key));
    const [next] = open;
    const most = mostWanted(open, weights);
    return html`<section class="screen wide" aria-labelledby="head">
      <div class="top">
        <button class="plain" @click=${() => this.walk.go("")}>${walkWords.title}</button>
        <p>${walkWords.group(draft.nickname)}</p>
      </div>
      <h2 id="head" tabindex="-1">${roundWords.heading}</h2>
      <p class="lead">${roundWords.soFar(stops.filter(isDone).length, stops.length)}
        ${short ? roundWords.short(minutesOf(short), short.length) : nothing}</p>
      ${most && most !== next ? this.most(most) : nothing}
      ${this.chooser(draft.mode === "short")}
      <div class="lists">
        ${lists.map((list) => html`<section>${this.list(list, ofList(list, stops))}</section>`)}
        <section>${this.tools()}</section>
      </div>
      <div class="grow"></div>
      ${
        next
          ? html`<div class="foot">
              <button class="main" @click=${() => this.walk.go(`stop/${next.key}`)}>
                ${roundWords.nextStop(next.name, stopWords[next.kind]!.name.toLowerCase())}
              </button>
            </div>`
          : nothing
      }
    </section>`;
  }

  private most(stop: Stop): TemplateResult {
    return html`<p class="note">
      <button class="plain" @click=${() => this.walk.go(`stop/${stop.key}`)}>
        ${roundWords.most(stop.name, stopWords[stop.kind]!.name.toLowerCase())}
      </button>
    </p>`;
  }

  private chooser(isShort: boolean): TemplateResult {
    return html`<div class="choose">
      <label for="part">${roundWords.show}</label>
      <select
        id="part"
        @change=${(event: Event) => {
          this.only = (event.target as HTMLSelectElement).value;
        }}
      >
        <option value="">${roundWords.everything}</option>
        ${walkParts.map((part) => html`<option value=${part} .selected=${part === this.only}>${sheetWords.parts[part]}</option>`)}
      </select>
      ${
        isShort
          ? html`<button
              class="plain"
              @click=${() => {
                this.whole = !this.whole;
              }}
            >${this.whole ? roundWords.shorter : roundWords.whole}</button>`
          : nothing
      }
    </div>`;
  }

  private list(list: WalkList, stops: readonly Stop[]) {
    const { survey, group } = this.walk;
    const things = [...new Set(stops.map(({ id }) => id))];
    return html`<h3 class="list">${listWords[list]}</h3>
      <ul class="answers">
        ${things.map((id) => {
          const of = stops.filter((stop) => stop.id === id);
          const done = of.filter((stop) => doneBy(survey, stop, group)).length;
          return html`<li>
            <button class="answer" @click=${() => this.walk.go(`thing/${list}/${id}`)}>
              <span class="words"><strong><bdi>${of[0]!.name}</bdi></strong></span>
              ${tallyOf(done, of.length)}
              <span class="end">${roundWords.soFarShort(done, of.length)}</span>
            </button>
          </li>`;
        })}
      </ul>
      <button class="plain" @click=${() => this.walk.go(`add/${list}`)}>${roundWords.add[list]}</button>`;
  }

  private tools(): TemplateResult {
    const tools = ["check", "worth", "drawing", "shapes", "type", "sheets", "teacher"] as const;
    const words = { ...roundWords, type: roundWords.typeIn };
    return html`<h3 class="list">${roundWords.tools}</h3>
      <div class="tools">
        ${tools.map((tool) => html`<button class="plain" @click=${() => this.walk.go(tool)}>${words[tool]}</button>`)}
        ${this.toFields("", roundWords.fields)}
        <button class="plain" @click=${() => this.walk.keepDraft({ nickname: "", route: "" })}>
          ${roundWords.leave}
        </button>
      </div>`;
  }
}

function ofList(list: WalkList, stops: readonly Stop[]): Stop[] {
  return stops.filter((stop) => stop.list === list);
}

function minutesOf(stops: readonly Stop[]): number {
  return stops.reduce((sum, { minutes }) => sum + minutes, 0);
}

customElements.define("gwb-walk-round", RoundScreen);
