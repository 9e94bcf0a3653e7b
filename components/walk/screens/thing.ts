import { css, html } from "lit";
import { roundWords, walkWords } from "../../../src/words/en/walk-screens.ts";
import { listWords, stopWords } from "../../../src/words/en/walk-stops.ts";
import { standsSaid, valueSaid } from "../said.ts";
import { Screen } from "../screen.ts";
import { doneBy, standingOf } from "../standing.ts";
import { type Stop, stopsOf } from "../stops.ts";

/** One bed, roof, tank, tap, draw or leak: its stops and what stands at each. */
export class ThingScreen extends Screen {
  static override properties = { ...Screen.properties, of: { attribute: false } };

  /** Its list and id: `beds/oval`. */
  declare of: string;

  static override styles = [
    ...Screen.styles,
    css`
      .answer {
        flex-wrap: wrap;
        gap: 0 0.9rem;
      }
      .answer .words {
        flex: 0 0 auto;
        max-width: 100%;
        overflow-wrap: break-word;
      }
      .end {
        flex: 0 1 auto;
        margin-inline-start: auto;
      }
      .further {
        margin-top: 0.6rem;
      }
      .done .end {
        color: var(--ink);
        text-decoration: underline;
        text-decoration-thickness: 1.5px;
        text-underline-offset: 0.2em;
      }
    `,
  ];

  constructor() {
    super();
    this.of = "";
  }

  protected override render() {
    const { survey, group, draft } = this.walk;
    const stops = stopsOf(survey).filter(({ list, id }) => `${list}/${id}` === this.of);
    const [first] = stops;
    const next = stops.find((stop) => !doneBy(survey, stop, group) && !draft.passed.includes(stop.key));
    return html`<section class="screen" aria-labelledby="head">
      ${this.top()}
      <p class="of">${first ? listWords[first.list] : ""}</p>
      <h2 id="head" tabindex="-1"><bdi>${first?.name ?? walkWords.noSuchStop}</bdi></h2>
      <ul class="answers">${stops.map((stop) => this.line(stop))}</ul>
      <p class="further">${this.toFields(this.of, roundWords.fieldsOfIt)}</p>
      <div class="grow"></div>
      ${
        next
          ? html`<div class="foot">
              <button class="main" @click=${() => this.walk.go(`stop/${next.key}`)}>
                ${roundWords.next(stopWords[next.kind]!.name)}
              </button>
            </div>`
          : ""
      }
    </section>`;
  }

  private line(stop: Stop) {
    const { survey, group, draft } = this.walk;
    const standing = standingOf(survey, stop);
    const done = doneBy(survey, stop, group);
    const said =
      stop.kind === "heads"
        ? null
        : standing.stands
          ? standsSaid(this.walk, stop, standing.stands)
          : valueSaid(this.walk, stop, standing.value);
    const end = done
      ? (said ?? walkWords.done)
      : draft.passed.includes(stop.key)
        ? roundWords.passed
        : said
          ? `${said}, ${roundWords.chosen}`
          : `${roundWords.notYet}, ${roundWords.minutes(stop.minutes)}`;
    const number = stop.kind === "thirst" && stop.planting > 0 ? ` ${stop.planting + 1}` : "";
    return html`<li>
      <button class="answer ${done ? "done" : ""}" @click=${() => this.walk.go(`stop/${stop.key}`)}>
        <span class="words">${stopWords[stop.kind]!.name}${number}</span>
        <span class="end">${end}</span>
      </button>
    </li>`;
  }
}

customElements.define("gwb-walk-thing", ThingScreen);
